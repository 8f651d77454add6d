# Sound: sealant on the far side of the plate from a mark, a cover on a rubber gasket,
# a pipe thread and a 3/8 in drive in a metric manual, four fasteners 1 3 2 4.

manual "tank_hatch" {
  title    = "Water tank: hatch and sight glass"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.close]
}

part "tank" {
  name     = "Tank"
  material = "steel"
  faces    = ["rim"]
  ports    = ["filler"]
  marks    = ["top"]
}

part "hatch" {
  name    = "Hatch plate"
  sits_on = part.tank
  mass    = "5.5 kg"
  faces   = ["inner", "outer"]
}

part "hatch_screw" {
  name     = "Hatch screw, M8"
  quantity = 4
  sits_on  = part.hatch
}

part "glass_gasket" {
  name     = "Gasket of the sight glass"
  sits_on  = part.tank
  material = "rubber"
}

part "sight_glass" {
  name    = "Sight glass in its frame"
  sits_on = part.tank
}

part "glass_screw" {
  name     = "Glass screw, M6"
  quantity = 4
  sits_on  = part.sight_glass
}

part "plug" {
  name    = "Drain plug, G 1/2"
  sits_on = part.tank
}

fastening "hatch_screws" {
  name         = "Hatch screws"
  thread       = "M8"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.hatch, part.tank]
  fasteners    = [part.hatch_screw]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "25 N·m ± 10 %"
  layout       = "circle"
  pattern      = ["1", "3", "2", "4"]
  basis        = "About 74 % of proof at K 0.20"
}

fastening "glass_screws" {
  name         = "Glass screws"
  thread       = "M6"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.sight_glass, part.glass_gasket, part.tank]
  fasteners    = [part.glass_screw]
  lubricant    = "dry"
  across_flats = "10 mm"
  torque       = "3.0 ± 0.3 N·m"
  layout       = "circle"
  pattern      = "criss-cross"
  basis        = "Drawing WT-6: squeezes the rubber and spares the glass"
}

fastening "plug" {
  name         = "Drain plug"
  does         = "plug"
  thread       = "G 1/2"
  fasteners    = [part.plug]
  lubricant    = supply.thread_sealant
  across_flats = "27 mm"
  torque       = "40 ± 4 N·m"
  basis        = "Drawing WT-2"
}

tool "torque_wrench" {
  name       = "Torque wrench, 10–50 N·m"
  kind       = "torque wrench"
  range      = "10..50 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "small_wrench" {
  name       = "Torque wrench, 1–5 N·m"
  kind       = "torque wrench"
  range      = "1..5 N·m"
  resolution = "0.1 N·m"
  accuracy   = "4 %"
  drive      = "1/4 in"
}

tool "socket_13" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "socket_27" {
  name  = "Socket, 27 mm"
  kind  = "socket"
  size  = "27 mm"
  drive = "3/8 in"
}

tool "socket_10" {
  name  = "Socket, 10 mm"
  kind  = "socket"
  size  = "10 mm"
  drive = "1/4 in"
}

tool "punch" {
  name = "Centre punch and hammer"
  kind = "punch"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
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
    avoid  = "Open a window, and keep flames and sparks out of the room."
  }
}

supply "sealant" {
  name            = "Silicone sealant, neutral cure"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "20 min"
  cure            = ["24 h at 20 °C", "48 h at 10 °C"]
  service         = "-50..200 °C"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured silicone irritates the eyes."
    result = "Red, watering eyes for some hours."
    avoid  = "Keep your gloves away from your face."
  }
}

supply "thread_sealant" {
  name            = "Anaerobic thread sealant"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "15 min"
  cure            = "24 h at 20 °C"
  service         = "-55..150 °C"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured anaerobic sealant can make the skin allergic."
    result = "A rash that comes back at every later contact."
    avoid  = "Wear the gloves, and wash with soap."
  }
}

supply "water" {
  name = "Clean water"
  kind = "water"
}

procedure "close" {
  title = "Close the tank and fill it"

  mark "top" {
    title = "Punch a dot on the outer face of the hatch, at its top"
    on    = [part.hatch.face.outer]
    how   = "punch"
    tools = [tool.punch]
    ppe   = [ppe.goggles]
    takes = "1 min"
  }

  fit "glass_gasket" {
    title = "Lay the gasket of the sight glass on the tank"
    part  = part.glass_gasket
    takes = "1 min"
  }

  fit "glass" {
    title = "Set the sight glass on its gasket"
    part  = part.sight_glass
    takes = "1 min"
  }

  fit "glass_screws" {
    title     = "Start the glass screws by hand"
    fastening = fastening.glass_screws
    takes     = "2 min"
  }

  torque "glass" {
    title     = "Tighten the glass screws"
    fastening = fastening.glass_screws
    tools     = [tool.small_wrench, tool.socket_10]
    takes     = "3 min"
  }

  coat "plug" {
    title    = "Wet the thread of the drain plug with sealant"
    on       = [fastening.plug]
    supplies = [supply.thread_sealant]
    takes    = "1 min"
  }

  fit "plug" {
    title     = "Start the drain plug by hand"
    fastening = fastening.plug
    takes     = "1 min"
  }

  torque "plug" {
    title     = "Tighten the drain plug"
    fastening = fastening.plug
    tools     = [tool.torque_wrench, tool.socket_27]
    takes     = "1 min"
  }

  clean "rim" {
    title    = "Wash the rim of the tank and the inner face of the hatch"
    on       = [part.tank.face.rim, part.hatch.face.inner]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "hatch" {
    title      = "Lay a bead on the inner face of the hatch"
    on         = [part.hatch.face.inner]
    between    = [part.hatch.face.inner, part.tank.face.rim]
    supplies   = [supply.sealant]
    keep_clear = [part.tank.mark.top]
    closed_by  = fit.hatch
    takes      = "4 min"
    text       = "Run the bead along the whole edge, inside the holes."
  }

  fit "hatch" {
    title = "Set the hatch on the rim, dot to the arrow of the tank"
    part  = part.hatch
    align = [mark.top, part.tank.mark.top]
    takes = "2 min"
  }

  fit "screws" {
    title     = "Start the hatch screws by hand"
    fastening = fastening.hatch_screws
    takes     = "2 min"
  }

  torque "hatch" {
    title     = "Tighten the hatch screws"
    fastening = fastening.hatch_screws
    tools     = [tool.torque_wrench, tool.socket_13]
    takes     = "4 min"
  }

  clean "bead" {
    title = "Wipe off the sealant that came out"
    on    = [part.hatch, part.tank]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "cure" {
    title = "Let both sealants cure"
    until = [seal.hatch, coat.plug]
  }

  fill "tank" {
    title    = "Fill the tank through its filler"
    on       = [part.tank]
    through  = part.tank.port.filler
    supplies = [supply.water]
    amount   = "180 L"
    takes    = "20 min"
  }

  inspect "dry" {
    title     = "Wipe a dry rag round hatch, glass and plug"
    on        = [part.hatch, part.sight_glass, part.plug]
    criterion = "The rag stays dry after an hour."
    takes     = "1 h"
    otherwise = "Mark the wet spot, drain the tank and make that joint again."
  }
}
