# Sound: a pack that builds up to a height (base and makes), a crowfoot worked out from
# lengths, a plug of a cap with its gasket, a first pressure released by a named inspector.

manual "whistle_valve" {
  title    = "Whistle valve"
  units    = "metric"
  revision = "A"
  issued   = "2025-09-01"
  supplier = "Beck Turbine Workshop"
  signatories = ["boiler inspector"]
  order    = [procedure.bench, procedure.prove]
}
ppe "goggles" {
  name     = "Goggles"
  standard = "EN 166"
}
supply "paste" {
  name    = "Graphite paste"
  kind    = "anti-seize"
  service = "-20..600 °C"
}
tool "depth" {
  name       = "Depth micrometer"
  kind       = "depth"
  range      = "0..25 mm"
  resolution = "0.01 mm"
  accuracy   = "± 0.005 mm"
}
tool "wrench" {
  name     = "Torque wrench"
  kind     = "torque wrench"
  range    = "10..60 N·m"
  accuracy = "± 4 %"
  drive    = "3/8 in"
  length   = "300 mm"
}
tool "crowfoot" {
  name   = "Crowfoot, 24 mm"
  kind   = "adapter"
  size   = "24 mm"
  drive  = "3/8 in"
  length = "30 mm"
}
tool "vice" {
  name = "Vice with soft jaws"
  kind = "vice"
}
tool "hand_pump" {
  name       = "Hydraulic test pump with gauge"
  kind       = "pressure"
  range      = "0..25 bar"
  resolution = "0.1 bar"
  accuracy   = "± 0.2 bar"
}
part "body" {
  name     = "Valve body"
  number   = "WV-1"
  material = "gunmetal"
  faces    = ["seat", "cap"]
  ports    = ["inlet"]
}
part "disc" {
  name    = "Valve disc"
  number  = "WV-2"
  sits_on = part.body
}
part "spring" {
  name    = "Spring"
  number  = "WV-3"
  sits_on = part.disc
}
part "shim" {
  name    = "Spring shim"
  number  = "WV-4"
  sits_on = part.spring
  size "0.25 mm" { in_kit = 4 }
  size "0.50 mm" { in_kit = 3 }
}
part "gasket" {
  name     = "Cap gasket"
  number   = "WV-5"
  use_once = true
  sits_on  = part.body
}
part "cap" {
  name    = "Cap"
  number  = "WV-6"
  sits_on = part.gasket
  covers  = [part.disc, part.spring, part.shim]
}
fastening "cap" {
  name         = "Cap"
  does         = "plug"
  thread       = "M27x1.5"
  stack        = [part.gasket, part.body]
  fasteners    = part.cap
  across_flats = "24 mm"
  lubricant    = supply.paste
  torque       = "40 ± 4 N·m"
  basis        = "Drawing WV-0"
}
limit "squeeze" {
  name   = "Height of spring and shims above the cap face"
  range  = "2.10..2.40 mm"
  target = "2.25 mm"
  basis  = "Drawing WV-0"
}
procedure "bench" {
  title = "Build the valve on the bench"
  fit "body" {
    title = "Hold the body in the vice"
    part  = part.body
    tools = tool.vice
  }
  clean "seat" {
    title = "Wipe the seat and the cap face"
    on    = [part.body.face.seat, part.body.face.cap]
    text  = "Use a clean lint-free cloth."
  }
  fit "disc" {
    title = "Drop the disc on to its seat"
    part  = part.disc
  }
  fit "spring" {
    title = "Stand the spring on the disc"
    part  = part.spring
  }
  measure "height" {
    title     = "Measure how far the spring stands above the cap face"
    on        = [part.spring, part.body.face.cap]
    tools     = tool.depth
    likely    = "1.20..2.05 mm"
    otherwise = "Check that the disc lies flat, and measure again."
  }
  choose "pack" {
    title  = "Choose the shims"
    from   = part.shim
    pieces = "1..4"
    base   = measure.height
    makes  = limit.squeeze
    otherwise = "Stop and ask the supplier for another spring."
  }
  fit "shims" {
    title = "Lay the shims on the spring: ${choose.pack}"
    part  = choose.pack
  }
  fit "gasket" {
    title = "Lay the gasket on the body"
    part  = part.gasket
  }
  coat "thread" {
    title    = "Brush graphite paste on the cap thread"
    on       = fastening.cap
    supplies = supply.paste
  }
  fit "cap" {
    title = "Start the cap by hand"
    fastening = fastening.cap
  }
  torque "cap" {
    title     = "Tighten the cap"
    fastening = fastening.cap
    tools     = [tool.wrench, tool.crowfoot]
    held_by   = tool.vice
    text      = "Keep the crowfoot in line with the wrench."
  }
  example "a short spring" {
    readings = { measure.height = "1.50 mm" }
    gives    = { choose.pack.total = "0.75 mm", choose.pack.result = "2.25 mm" }
  }
}
procedure "prove" {
  title = "Prove the valve with cold water"
  hold "before_pressure" {
    title   = "Stop before the first pressure"
    checks  = [procedure.bench.torque.cap]
    before  = run.water
    release = "boiler inspector"
  }
  run "water" {
    title = "Pump the valve up to 15 bar and keep it there for ten minutes"
    on    = part.body
    by    = "pressure"
    tools = tool.hand_pump
    ppe   = ppe.goggles
    takes = "15 min"
    warning {
      hazard = "Water under pressure can burst out of a bad joint"
      result = "Cuts and injured eyes"
      avoid  = "Bleed all air, stand to the side, and wear goggles"
    }
    caution {
      hazard = "The spring pushes on the cap"
      result = "The cap may fly off when it is unscrewed"
      avoid  = "Let the pressure down and unscrew slowly"
    }
  }
  inspect "dry" {
    title     = "Look for water at the cap"
    on        = part.cap
    criterion = "No drop falls from the whole edge of the cap in five minutes"
    otherwise = "Let the pressure down and call the workshop."
  }
}
