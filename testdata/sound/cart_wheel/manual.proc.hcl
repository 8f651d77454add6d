# Sound: a part washed, heated and looked at in the tray, a part held in by a circlip, a
# self-locking nut with drag, a nut that is used once and stays on, an adapter.

manual "cart_wheel" {
  title    = "Hand cart: wheel and axle"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Withybrook Engine Kits"
  order    = [procedure.wheel]
}

part "frame" {
  name = "Cart frame"
}

part "axle" {
  name     = "Axle bolt, M10"
  sits_on  = part.frame
  features = ["journal"]
}

part "wheel" {
  name     = "Wheel"
  sits_on  = part.axle
  mass     = "4.1 kg"
  features = ["bore"]
}

part "bearing" {
  name    = "Ball bearing, sealed"
  sits_on = part.wheel
  fits_by = "shrink"
  held_by = part.circlip
}

part "circlip" {
  name    = "Circlip"
  sits_on = part.wheel
}

part "axle_washer" {
  name    = "Axle washer"
  sits_on = part.axle
}

part "axle_nut" {
  name     = "Self-locking nut, M10"
  sits_on  = part.axle
  use_once = true
}

fastening "axle" {
  name          = "Axle nut"
  thread        = "M10"
  bolt_class    = "8.8"
  stack         = [part.axle_washer, part.wheel, part.frame]
  fasteners     = [part.axle_nut]
  lubricant     = "dry"
  across_flats  = "17 mm"
  torque        = "48 N·m ± 8 %"
  drag          = "1.5..4.0 N·m"
  drag_included = true
  locked_by     = "drag"
  basis         = "About 70 % of proof at K 0.20, drag taken off"
}

tool "torque_wrench" {
  name       = "Torque wrench, 20–100 N·m"
  kind       = "torque wrench"
  range      = "20..100 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
  length     = "350 mm"
}

tool "crowfoot" {
  name   = "Crowfoot adapter, 17 mm"
  kind   = "adapter"
  size   = "17 mm"
  drive  = "3/8 in"
  length = "45 mm"
}

tool "spanner" {
  name = "Spanner, 17 mm"
  kind = "spanner"
  size = "17 mm"
}

tool "oven" {
  name = "Workshop oven"
  kind = "oven"
  hot  = true

  caution {
    hazard = "The oven and what comes out of it are hot."
    result = "Burnt hands."
    avoid  = "Wear heat-resistant gloves, and clear a steel tray to put the part on."
  }
}

tool "circlip_pliers" {
  name = "Circlip pliers"
  kind = "pliers"

  warning {
    hazard = "A circlip can fly off the pliers."
    result = "Loss of an eye."
    avoid  = "Wear goggles, and keep a rag over the circlip."
  }
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

ppe "heat_gloves" {
  name     = "Heat-resistant gloves"
  standard = "EN 407"
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

supply "solvent" {
  name = "Degreasing solvent"
  kind = "solvent"
  ppe  = [ppe.gloves]

  warning {
    hazard = "The solvent and its vapour catch fire easily."
    result = "Burns; dizziness in a closed room."
    avoid  = "Open a window, and keep flames, sparks and the oven away until it is dry."
  }
}

supply "grease" {
  name = "Lithium grease, NLGI grade 2"
  kind = "grease"
  ppe  = [ppe.gloves]
}

procedure "wheel" {
  title = "Fit the bearing and hang the wheel"

  clean "bore" {
    title    = "Wash the bore of the wheel"
    on       = [part.wheel.feature.bore]
    supplies = [supply.solvent]
    takes    = "3 min"
  }

  inspect "bore" {
    title     = "Look into the bore"
    on        = [part.wheel.feature.bore]
    criterion = "No burr stands at the groove of the circlip."
    takes     = "1 min"
    otherwise = "Scrape the burr off and wash the bore again."
  }

  heat "wheel" {
    title = "Warm the wheel in the oven"
    on    = [part.wheel]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "90..110 °C"
    takes = "40 min"
  }

  fit "bearing" {
    title  = "Drop the cold bearing into the hot wheel"
    part   = part.bearing
    ppe    = [ppe.heat_gloves]
    after  = [heat.wheel]
    within = "3 min"
    takes  = "1 min"
    text   = "It falls freely to its shoulder. Should it stop half way, warm the wheel again."
  }

  wait "cool" {
    title = "Let the wheel cool on the tray"
    until = [heat.wheel]
  }

  fit "circlip" {
    title = "Snap the circlip into its groove"
    part  = part.circlip
    tools = [tool.circlip_pliers]
    ppe   = [ppe.goggles]
    takes = "2 min"
  }

  inspect "seated" {
    title     = "Turn the circlip in its groove"
    on        = [part.circlip]
    criterion = "It turns, and lies below the edge of the groove all round."
    takes     = "1 min"
    otherwise = "Take it out and look for dirt under the bearing."
  }

  fit "axle" {
    title = "Push the axle bolt through the frame"
    part  = part.axle
    takes = "1 min"
  }

  coat "axle" {
    title    = "Grease the journal of the axle"
    on       = [part.axle.feature.journal]
    supplies = [supply.grease]
    takes    = "1 min"
  }

  fit "wheel" {
    title = "Slide the wheel onto the axle"
    part  = part.wheel
    takes = "1 min"
  }

  fit "washer" {
    title = "Put the washer on"
    part  = part.axle_washer
    takes = "1 min"
  }

  fit "nut" {
    title     = "Run the self-locking nut on until its collar meets the thread"
    fastening = fastening.axle
    takes     = "1 min"
  }

  torque "nut" {
    title     = "Tighten the axle nut"
    fastening = fastening.axle
    tools     = [tool.torque_wrench, tool.crowfoot]
    held_by   = tool.spanner
    takes     = "2 min"
  }

  run "spin" {
    title     = "Spin the wheel by hand"
    on        = [part.wheel]
    by        = "hand"
    criterion = "It runs for three turns and stops without a grumble."
    takes     = "1 min"
    otherwise = "Slacken the nut, and look whether the washer sits on the inner ring."
  }
}
