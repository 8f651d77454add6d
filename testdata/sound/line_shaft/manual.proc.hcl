# Sound: places that draw on one heap of shims, a sub-assembly joined on the bench before
# it goes on, a value by place, two people for what only the whole group weighs.

manual "line_shaft" {
  title    = "Line shaft on two blocks: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.shaft, procedure.blocks]
}

places "side" {
  names = ["left", "right"]
}

part "bed" {
  name  = "Bed"
  faces = ["pad"]
}

part "shaft" {
  name    = "Shaft"
  sits_on = part.bed
  mass    = "11 kg"
}

part "pulley_key" {
  name    = "Pulley key"
  sits_on = part.shaft
}

part "pulley" {
  name    = "Pulley"
  sits_on = part.shaft
  mass    = "7.5 kg"
}

part "pulley_screw" {
  name    = "Pulley set screw"
  sits_on = part.pulley
}

part "block" {
  name    = "Plummer block with its bearing"
  at_each = places.side
  sits_on = part.shaft
  mass    = "3.2 kg"
}

part "shim" {
  name    = "Block shim"
  sits_on = part.bed

  size "0.10 mm" { in_kit = 2 }
  size "0.20 mm" { in_kit = 2 }
  size "0.40 mm" { in_kit = 2 }
  size "0.80 mm" { in_kit = 2 }
}

part "block_bolt" {
  name     = "Block bolt, M10, with nut"
  at_each  = places.side
  quantity = 2
  sits_on  = part.block
}

fastening "pulley_screw" {
  name         = "Pulley set screw"
  does         = "set screw"
  thread       = "M8"
  fasteners    = [part.pulley_screw]
  lubricant    = supply.threadlocker
  across_flats = "hex 4 mm"
  torque       = "12 ± 1 N·m"
  locked_by    = supply.threadlocker
  basis        = "Drawing LS-2"
}

fastening "block_bolts" {
  name         = "Block bolts"
  at_each      = places.side
  thread       = "M10"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.block, part.shim, part.bed]
  fasteners    = [part.block_bolt]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "49 N·m ± 10 %"
  basis        = "About 73 % of proof at K 0.20"
}

limit "seat" {
  name  = "Gap left under a block"
  range = "0..0.10 mm"
  basis = "Drawing LS-1"
}

tool "torque_wrench" {
  name       = "Torque wrench, 12–60 N·m"
  kind       = "torque wrench"
  range      = "12..60 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "small_wrench" {
  name       = "Torque wrench, 4–20 N·m"
  kind       = "torque wrench"
  range      = "4..20 N·m"
  resolution = "0.1 N·m"
  accuracy   = "4 %"
  drive      = "1/4 in"
}

tool "socket_16" {
  name  = "Socket, 16 mm"
  kind  = "socket"
  size  = "16 mm"
  drive = "3/8 in"
}

tool "hex_4" {
  name  = "Hexagon bit, 4 mm"
  kind  = "socket"
  size  = "hex 4 mm"
  drive = "1/4 in"
}

tool "spanner_16" {
  name = "Spanner, 16 mm"
  kind = "spanner"
  size = "16 mm"
}

tool "depth_gauge" {
  name       = "Depth micrometer on a long bridge"
  kind       = "depth gauge"
  range      = "0..25 mm"
  resolution = "0.001 mm"
  accuracy   = "0.005 mm"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

ppe "boots" {
  name     = "Safety boots"
  standard = "ISO 20345"
}

supply "threadlocker" {
  name            = "Threadlocker, medium strength"
  kind            = "threadlocker"
  assemble_within = "10 min"
  tighten_within  = "15 min"
  cure            = "24 h at 20 °C"
  service         = "-55..150 °C"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured threadlocker can make the skin allergic."
    result = "A rash that comes back at every later contact."
    avoid  = "Wear the gloves, and wash with soap."
  }
}

procedure "shaft" {
  title = "Build the shaft up on the bench"

  fit "key" {
    title = "Lay the key into its keyway"
    part  = part.pulley_key
    takes = "1 min"
  }

  fit "pulley" {
    title = "Slide the pulley over the key"
    part  = part.pulley
    takes = "2 min"
  }

  coat "screw" {
    title    = "Wet the set screw with threadlocker"
    on       = [fastening.pulley_screw]
    supplies = [supply.threadlocker]
    takes    = "1 min"
  }

  fit "screw" {
    title     = "Start the set screw by hand"
    fastening = fastening.pulley_screw
    takes     = "1 min"
  }

  torque "screw" {
    title     = "Tighten the set screw"
    fastening = fastening.pulley_screw
    tools     = [tool.small_wrench, tool.hex_4]
    takes     = "1 min"
  }

  fit "block" {
    title   = "Slide the block onto its end of the shaft, ${place}"
    part    = part.block
    at_each = places.side
    takes   = "2 min"
  }
}

procedure "blocks" {
  title = "Set the blocks on the bed"
  after = [procedure.shaft]

  measure "pad" {
    title   = "Measure how deep the pad lies, ${place}"
    on      = [part.bed.face.pad]
    tools   = [tool.depth_gauge]
    at_each = places.side
    likely  = "0.300..1.200 mm"
    takes   = "3 min"
  }

  choose "pack" {
    title     = "Choose the shims, ${place}"
    from      = part.shim
    at_each   = places.side
    pieces    = "1..3"
    gap       = measure.pad
    leaves    = limit.seat
    takes     = "2 min"
    otherwise = "Ask the workshop for a thicker shim."
  }

  fit "shims" {
    title   = "Lay the shims on the pad, ${place}: ${choose.pack}"
    part    = choose.pack
    at_each = places.side
    takes   = "1 min"
  }

  fit "shaft" {
    title  = "Lift the shaft with its blocks onto the bed"
    part   = part.shaft
    ppe    = [ppe.boots]
    people = 2
    takes  = "3 min"
  }

  fit "bolts" {
    title     = "Start the block bolts by hand, ${place}"
    fastening = fastening.block_bolts
    at_each   = places.side
    takes     = "2 min"
  }

  torque "bolts" {
    title     = "Tighten the block bolts, ${place}"
    fastening = fastening.block_bolts
    at_each   = places.side
    tools     = [tool.torque_wrench, tool.socket_16, tool.spanner_16]
    takes     = "3 min"
  }

  run "turn" {
    title     = "Turn the shaft by hand"
    on        = [part.shaft]
    by        = "hand"
    criterion = "A push with one finger keeps it turning for two turns."
    takes     = "1 min"
    otherwise = "Slacken one block after the other to find which one binds."
  }

  example "one pad deeper than the other" {
    readings = { measure.pad["left"] = "0.450 mm", measure.pad["right"] = "0.860 mm" }
    gives    = { choose.pack["left"].total = "0.40 mm", choose.pack["right"].total = "0.80 mm", choose.pack["right"].result = "0.060 mm" }
  }
}
