# Sound: a fastening loosened and tightened again, a nut that sets a bearing at a few
# per cent of proof, parts already in place, one part turned while it is tightened.

manual "trailer_hub" {
  title    = "Trailer hub: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Withybrook Engine Kits"
  order    = [procedure.hub]
}

part "axle" {
  name     = "Stub axle"
  material = "steel"
  features = ["journal"]
}

part "back_plate" {
  name     = "Brake back plate"
  in_place = 1
  sits_on  = part.axle
}

part "back_bolt" {
  name     = "Back plate bolt, M10"
  quantity = 4
  in_place = 4
  sits_on  = part.back_plate
}

part "hub" {
  name    = "Hub with inner bearing and seal"
  sits_on = part.axle
  covers  = [part.back_plate, fastening.back_bolts, part.axle.feature.journal]
  mass    = "9.5 kg"
}

part "outer_bearing" {
  name    = "Outer bearing"
  sits_on = part.axle
}

part "tab_washer" {
  name     = "Tab washer"
  sits_on  = part.axle
  use_once = true
}

part "hub_nut" {
  name    = "Hub nut"
  sits_on = part.axle
}

part "dust_cap" {
  name    = "Dust cap"
  sits_on = part.hub
  covers  = [fastening.hub_nut, part.hub_nut, part.tab_washer, part.outer_bearing]
  fits_by = "press"
}

part "spare_seal" {
  name    = "Seal of the hub, spare"
  spare   = true
  sits_on = part.hub
}

fastening "back_bolts" {
  name         = "Back plate bolts"
  thread       = "M10"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.back_plate, part.axle]
  fasteners    = [part.back_bolt]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "50 N·m ± 10 %"
  layout       = "circle"
  pattern      = "criss-cross"
  basis        = "About 74 % of proof at K 0.20"
}

fastening "hub_nut" {
  name         = "Hub nut"
  does         = "set bearing"
  thread       = "M20x1.5"
  bolt_class   = "8.8"
  stack        = [part.tab_washer, part.outer_bearing, part.hub]
  fasteners    = [part.hub_nut]
  lubricant    = supply.grease
  across_flats = "30 mm"
  torque       = "25 ± 3 N·m"
  locked_by    = part.tab_washer
  basis        = "Drawing TH-4: takes the float out of the bearings and no more"
}

limit "float" {
  name     = "Rock of the hub at its rim"
  range    = "0.02..0.08 mm"
  basis    = "Drawing TH-4"
  critical = true
}

tool "torque_wrench" {
  name       = "Torque wrench, 12–60 N·m"
  kind       = "torque wrench"
  range      = "12..60 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "1/2 in"
}

tool "socket" {
  name  = "Socket, 30 mm"
  kind  = "socket"
  size  = "30 mm"
  drive = "1/2 in"
}

tool "dial" {
  name       = "Dial indicator"
  kind       = "dial indicator"
  range      = "0..10 mm"
  resolution = "0.001 mm"
  accuracy   = "0.004 mm"
}

tool "mallet" {
  name = "Soft mallet"
  kind = "mallet"
}

tool "chisel" {
  name = "Blunt chisel"
  kind = "chisel"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

supply "grease" {
  name = "Lithium grease, NLGI grade 2"
  kind = "grease"
  ppe  = [ppe.gloves]
}

procedure "hub" {
  title = "Fit the hub and set its bearings"

  coat "bearing" {
    title    = "Pack the outer bearing with grease"
    on       = [part.outer_bearing, part.axle.feature.journal]
    supplies = [supply.grease]
    takes    = "5 min"
  }

  fit "hub" {
    title = "Slide the hub onto the axle"
    part  = part.hub
    takes = "3 min"
  }

  fit "bearing" {
    title = "Slide the outer bearing in"
    part  = part.outer_bearing
    takes = "1 min"
  }

  fit "washer" {
    title = "Put the tab washer on, its tongue in the slot of the axle"
    part  = part.tab_washer
    takes = "1 min"
  }

  coat "thread" {
    title    = "Grease the thread of the axle"
    on       = [fastening.hub_nut]
    supplies = [supply.grease]
    takes    = "1 min"
  }

  fit "nut" {
    title     = "Run the hub nut on by hand"
    fastening = fastening.hub_nut
    takes     = "1 min"
  }

  torque "seat" {
    title     = "Tighten the hub nut to seat the rollers"
    fastening = fastening.hub_nut
    to        = "50 N·m"
    turning   = true
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "3 min"
    why       = "A higher torque squeezes the grease out and brings the rollers against their ribs. It is taken off again at once."
  }

  loosen "nut" {
    title     = "Back the hub nut off"
    fastening = fastening.hub_nut
    by        = "1/2 turn"
    takes     = "1 min"
  }

  torque "set" {
    title     = "Tighten the hub nut to its setting"
    fastening = fastening.hub_nut
    from      = "loosened"
    turning   = true
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "3 min"
  }

  measure "rock" {
    title  = "Measure the rock of the hub at its rim"
    on     = [part.hub]
    tools  = [tool.dial]
    likely = "0.01..0.12 mm"
    accept = limit.float
    takes  = "5 min"
    text   = "Stand the dial on the axle with its tip on the rim. Pull and push the rim, and read the difference."
    otherwise {
      text = "The rollers were not seated."
      then = loosen.nut
    }
  }

  lock "nut" {
    title     = "Bend the tab up against the nut"
    fastening = fastening.hub_nut
    by        = part.tab_washer
    tools     = [tool.mallet, tool.chisel]
    ppe       = [ppe.goggles]
    takes     = "2 min"
  }

  hold "rock" {
    title   = "Stop until the rock has been signed for"
    checks  = [measure.rock]
    before  = fit.cap
    release = "second person"
    takes   = "2 min"
  }

  fit "cap" {
    title = "Tap the dust cap on"
    part  = part.dust_cap
    tools = [tool.mallet]
    takes = "1 min"
  }
}
