# A bench press for bushes: small, and with one of everything that is printed.

manual "press" {
  title       = "Bush press: assembly"
  units       = "metric"
  revision    = "B"
  issued      = "2026-02-03"
  supplier    = "Withybrook Engine Kits"
  contact     = "Technical desk"
  signatories = ["inspector of the yard"]
  conditions  = "20 °C"
  order       = [procedure.columns, procedure.ram, procedure.motor]

  history "A" {
    issued = "2025-10-01"
    reason = "First issue."
  }
}

option "drive" {
  name    = "Drive"
  choices = ["hand", "motor"]
}

places "side" {
  names = ["left", "right"]
}

figure "gap" {
  file    = "gap.svg"
  alt     = "The gap between ram and guide."
  made_at = "A"
}

media "film" {
  address = "Film 1 on the kit's disc"
  made_at = "B"
  governs = "This manual prevails."
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

tool "torque_wrench" {
  name       = "Torque wrench, 10–60 N·m"
  kind       = "torque wrench"
  range      = "10..60 N·m"
  resolution = "0.5 N·m"
  length     = "300 mm"
}

tool "crowfoot" {
  name   = "Crowfoot adapter, 17 mm"
  kind   = "adapter"
  size   = "17 mm"
  length = "100 mm"
}

tool "depth_gauge" {
  name       = "Depth gauge"
  kind       = "depth gauge"
  range      = "0..25 mm"
  resolution = "0.01 mm"
}

tool "hoist" {
  name     = "Hoist"
  kind     = "hoist"
  capacity = "250 kg"

  danger {
    hazard = "A hung load falls."
    result = "It crushes who stands below."
    avoid  = "Never stand under it."
  }
}

supply "sealant" {
  name            = "Silicone sealant, neutral cure"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "20 min"
  cure            = ["24 h at 20 °C", "48 h at 10 °C"]
  ppe             = [ppe.goggles]

  caution {
    hazard = "The uncured sealant smarts in the eyes."
    result = "Sore eyes."
    avoid  = "Wear goggles."
  }
}

part "base" {
  name  = "Base"
  mass  = "40 kg"
  faces = ["top"]
}

part "column" {
  name    = "Column"
  number  = "WE-901"
  at_each = places.side
  sits_on = part.base
}

part "nut" {
  name     = "Column nut"
  number   = "WE-902"
  quantity = 2
  at_each  = places.side
  sits_on  = part.column
}

part "ram" {
  name    = "Ram"
  number  = "WE-903"
  mass    = "6 kg"
  sits_on = part.base
}

part "shim" {
  name    = "Guide shim"
  number  = "WE-904"
  sits_on = part.ram

  size "0.10 mm" {
    in_kit = 2
    mark   = "one notch"
  }
  size "0.25 mm" {
    in_kit = 2
  }
}

part "motor" {
  name    = "Motor"
  when    = option.drive == "motor"
  sits_on = part.base
}

fastening "nuts" {
  name      = "Column nuts"
  thread    = "M10x1.5"
  quantity  = 4
  fasteners = [part.nut]
  lubricant = "dry"
  torque    = "40 N·m ± 5 %"
  stages    = ["20 N·m", "40 N·m ± 5 %"]
  layout    = "circle"
  pattern   = "criss-cross"
}

limit "play" {
  name     = "Play of the ram"
  range    = "0.05..0.20 mm"
  target   = "0.10 mm"
  basis    = "Drawing WE-903"
  critical = true
}

procedure "columns" {
  title = "Set up the columns"
  intro = "Work on a level bench.\n\n- Base first.\n- Then the *columns*."

  fit "base" {
    title  = "Lift the base onto the bench"
    part   = part.base
    tools  = [tool.hoist]
    people = 2
    takes  = "10 min"
    why    = "Two people keep it level."
  }

  clean "seat" {
    title   = "Wipe the seats of the columns"
    on      = [part.base.face.top]
    at_each = places.side
    takes   = "2 min"
  }

  fit "turn_base" {
    title = "Lower the base a little"
    tool  = tool.hoist
    takes = "1 min"
  }

  fit "column" {
    title   = "Screw in the column, ${place}"
    part    = part.column
    at_each = places.side
    takes   = "5 min"
  }

  measure "height" {
    title   = "Measure how far the column stands in"
    on      = [part.column]
    tools   = [tool.depth_gauge]
    accept  = "12.0..12.5 mm"
    at_each = places.side
    takes   = "2 min"

    otherwise {
      when = "below"
      text = "Screw it in further."
    }

    otherwise {
      when = "above"
      text = "It is too deep."
      then = fit.column

      remove "column" {
        title = "Take the column out"
        part  = part.column
      }
    }
  }

  torque "nuts" {
    title     = "Tighten the column nuts"
    fastening = fastening.nuts
    tools     = [tool.torque_wrench, tool.crowfoot]
    critical  = true
    takes     = "5 min"
  }
}

procedure "ram" {
  title = "Fit the ram"
  after = [procedure.columns]

  seal "seat" {
    title     = "Lay a bead round the seat"
    on        = [part.base.face.top]
    supplies  = [supply.sealant]
    closed_by = fit.ram
    takes     = "4 min"
  }

  fit "ram" {
    title   = "Set the ram into its guide"
    part    = part.ram
    facing  = "Keyway to the front"
    after   = [seal.seat]
    within  = "8 min"
    figures = [figure.gap, media.film]
  }

  wait "cure" {
    title = "Let the sealant cure"
    until = [seal.seat]
  }

  measure "gap" {
    title        = "Measure the gap without shims"
    on           = [part.ram]
    tools        = [tool.depth_gauge]
    likely       = "0.30..0.80 mm"
    repeat       = 2
    agree_within = "0.02 mm"
    take         = "mean"
    takes        = "6 min"
    otherwise    = "Look for dirt, and measure again."
  }

  choose "pack" {
    title     = "Choose the shims"
    from      = part.shim
    pieces    = "1..4"
    gap       = measure.gap - "0.02 mm"
    leaves    = limit.play
    prefer    = "nearest"
    otherwise = "Ask for a thicker shim."
  }

  fit "shims" {
    title = "Lay the shims in: ${choose.pack}"
    part  = choose.pack
    text  = "They leave ${choose.pack.result}. The limit is ${limit.play}."
  }

  calculate "half" {
    title     = "Work out half the gap"
    is        = measure.gap / 2
    accept    = "0.10..0.50 mm"
    otherwise = "Stop."
  }

  inspect "ram" {
    title     = "Move the ram by hand"
    on        = [part.ram]
    criterion = "It moves freely over its whole way."
    critical  = true
    otherwise = "Take it out and look for burrs."
  }

  hold "ram" {
    title   = "Stop until the ram has been seen"
    checks  = [inspect.ram, procedure.columns.measure.height]
    before  = procedure.motor.fit.motor
    release = "inspector of the yard"
  }

  example "a common gap" {
    readings = { measure.gap = "0.47 mm" }
    gives    = { choose.pack.total = "0.35 mm", choose.pack.result = "0.10 mm" }
    shown    = true
  }
}

procedure "motor" {
  title = "Fit the motor"
  when  = option.drive == "motor"

  fit "motor" {
    title        = "Put the motor on"
    part         = part.motor
    irreversible = true
  }
}
