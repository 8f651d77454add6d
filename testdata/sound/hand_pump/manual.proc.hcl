# Sound: a head taken off with all that it carries, a part removed and refitted, a
# gland, a cover on a rubber gasket, a drain plug, a helper counted where he lifts.

manual "hand_pump" {
  title    = "Garden hand pump: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.head, procedure.pump]
}

part "barrel" {
  name  = "Barrel with foot"
  faces = ["top"]
}

part "foot_valve" {
  name    = "Foot valve"
  sits_on = part.barrel
}

part "head" {
  name     = "Pump head with spout"
  sits_on  = part.barrel
  covers   = [part.foot_valve, part.cup, part.cup_clip]
  mass     = "6.5 kg"
  features = ["stuffing_box"]
  ports    = ["spout"]
}

part "rod" {
  name    = "Piston rod"
  sits_on = part.head
  mass    = "1.8 kg"
}

part "packing" {
  name     = "Packing ring"
  quantity = 3
  sits_on  = part.head
  use_once = true
}

part "gland_nut" {
  name    = "Gland nut"
  sits_on = part.head
  covers  = [part.packing]
}

part "handle" {
  name    = "Handle"
  sits_on = part.head
  mass    = "2.2 kg"
}

part "handle_pin" {
  name    = "Handle pin with ring"
  sits_on = part.handle
}

part "cup" {
  name     = "Leather cup"
  sits_on  = part.rod
  held_by  = part.cup_clip
  material = "leather"
}

part "cup_clip" {
  name    = "Spring clip of the cup"
  sits_on = part.rod
}

part "head_gasket" {
  name     = "Head gasket"
  sits_on  = part.barrel
  material = "rubber"
}

part "head_bolt" {
  name     = "Head bolt, M10, with nut"
  quantity = 4
  sits_on  = part.head
}

part "drain_plug" {
  name    = "Drain plug"
  sits_on = part.barrel
}

fastening "gland" {
  name         = "Gland nut"
  does         = "gland"
  thread       = "M30x1.5"
  fasteners    = [part.gland_nut]
  across_flats = "36 mm"
  torque       = "12 ± 2 N·m"
  basis        = "Drawing HP-3: the packing just holds the rod"
}

fastening "head_bolts" {
  name         = "Head bolts"
  thread       = "M10"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.head, part.head_gasket, part.barrel]
  fasteners    = [part.head_bolt]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "15 ± 2 N·m"
  layout       = "circle"
  pattern      = "criss-cross"
  basis        = "Drawing HP-1: squeezes the rubber gasket by a quarter"
}

fastening "drain" {
  name         = "Drain plug"
  does         = "plug"
  thread       = "G 1/4"
  fasteners    = [part.drain_plug]
  across_flats = "19 mm"
  torque       = "20 ± 2 N·m"
  basis        = "Drawing HP-1"
}

tool "torque_wrench" {
  name       = "Torque wrench, 5–25 N·m"
  kind       = "torque wrench"
  range      = "5..25 N·m"
  resolution = "0.2 N·m"
  accuracy   = "4 %"
  drive      = "1/2 in"
}

tool "socket_16" {
  name  = "Socket, 16 mm"
  kind  = "socket"
  size  = "16 mm"
  drive = "1/2 in"
}

tool "socket_19" {
  name  = "Socket, 19 mm"
  kind  = "socket"
  size  = "19 mm"
  drive = "1/2 in"
}

tool "socket_36" {
  name  = "Deep socket, 36 mm"
  kind  = "socket"
  size  = "36 mm"
  drive = "1/2 in"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

supply "tallow" {
  name = "Waterproof grease"
  kind = "grease"
  ppe  = [ppe.gloves]
}

supply "water" {
  name = "Clean water"
  kind = "water"
}

procedure "head" {
  title = "Build the head on the bench"

  fit "rod" {
    title = "Push the rod up through the head"
    part  = part.rod
    takes = "1 min"
  }

  fit "packing" {
    title    = "Lay the packing rings round the rod"
    part     = part.packing
    quantity = 3
    takes    = "5 min"
  }

  fit "gland" {
    title     = "Run the gland nut on by hand"
    fastening = fastening.gland
    takes     = "1 min"
  }

  torque "gland" {
    title     = "Tighten the gland nut"
    fastening = fastening.gland
    tools     = [tool.torque_wrench, tool.socket_36]
    takes     = "2 min"
  }

  fit "handle" {
    title = "Hang the handle on the rod"
    part  = part.handle
    takes = "2 min"
  }

  fit "pin" {
    title = "Push the handle pin through"
    part  = part.handle_pin
    takes = "1 min"
  }

  fit "cup" {
    title  = "Slide the leather cup onto the rod"
    part   = part.cup
    facing = "The lip points to the handle"
    takes  = "1 min"
  }

  fit "clip" {
    title = "Snap the spring clip under the cup"
    part  = part.cup_clip
    takes = "1 min"
  }
}

procedure "pump" {
  title = "Close the pump, and shape its leather"
  after = [procedure.head]

  fit "foot_valve" {
    title = "Drop the foot valve into the barrel"
    part  = part.foot_valve
    takes = "1 min"
  }

  fit "drain" {
    title     = "Start the drain plug by hand"
    fastening = fastening.drain
    takes     = "1 min"
  }

  torque "drain" {
    title     = "Tighten the drain plug"
    fastening = fastening.drain
    tools     = [tool.torque_wrench, tool.socket_19]
    takes     = "2 min"
  }

  fit "gasket" {
    title = "Lay the gasket on the barrel"
    part  = part.head_gasket
    takes = "1 min"
  }

  fit "head" {
    title = "Set the head on the barrel"
    part  = part.head
    takes = "3 min"
  }

  fit "bolts" {
    title     = "Start the head bolts by hand"
    fastening = fastening.head_bolts
    takes     = "2 min"
  }

  torque "bolts" {
    title     = "Tighten the head bolts"
    fastening = fastening.head_bolts
    tools     = [tool.torque_wrench, tool.socket_16]
    takes     = "4 min"
  }

  run "shape" {
    title     = "Pump thirty strokes by hand to shape the leather"
    on        = [part.handle]
    by        = "hand"
    criterion = "The stroke is even from end to end."
    takes     = "3 min"
    otherwise = "Take the head off and look how the cup lies."
  }

  remove "bolts" {
    title     = "Take the head bolts out"
    fastening = fastening.head_bolts
    takes     = "2 min"
  }

  remove "head" {
    title = "Lift the head off with rod, cup and handle"
    part  = part.head
    takes = "2 min"
  }

  remove "clip" {
    title = "Draw the spring clip off"
    part  = part.cup_clip
    takes = "1 min"
  }

  remove "cup" {
    title = "Slide the cup off the rod"
    part  = part.cup
    takes = "1 min"
  }

  coat "cup" {
    title    = "Rub grease into the shaped leather"
    on       = [part.cup]
    supplies = [supply.tallow]
    takes    = "5 min"
  }

  fit "cup_again" {
    title  = "Slide the cup back onto the rod"
    part   = part.cup
    facing = "The lip points to the handle"
    takes  = "1 min"
  }

  fit "clip_again" {
    title = "Snap the spring clip under the cup again"
    part  = part.cup_clip
    takes = "1 min"
  }

  fit "head_again" {
    title = "Set the head on the barrel again"
    part  = part.head
    takes = "2 min"
  }

  fit "bolts_again" {
    title     = "Start the head bolts by hand again"
    fastening = fastening.head_bolts
    takes     = "2 min"
  }

  torque "bolts_again" {
    title     = "Tighten the head bolts for good"
    fastening = fastening.head_bolts
    tools     = [tool.torque_wrench, tool.socket_16]
    takes     = "4 min"
  }

  fill "prime" {
    title    = "Prime the pump through the spout"
    on       = [part.head]
    through  = part.head.port.spout
    supplies = [supply.water]
    amount   = "2 L"
    takes    = "2 min"
  }
}
