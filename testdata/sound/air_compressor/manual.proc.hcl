# Sound: a trial fit with the gasket left out used to measure, its own trial torque, four
# fasteners in the order 1 3 2 4, a re-tightening after settling, a run by power.

manual "air_compressor" {
  title    = "Small air compressor: fitting the head"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Withybrook Engine Kits"
  order    = [procedure.squish, procedure.head]
}

part "body" {
  name     = "Body with crank, piston and flywheel"
  faces    = ["top"]
  features = ["crown"]
  material = "cast iron"

  warning {
    hazard = "The flywheel turns, and it has no spokes to see it by."
    result = "Crushed fingers; sleeves wound in."
    avoid  = "Keep the belt off while you work, and hands and sleeves away when it runs."
  }
}

part "gasket" {
  name     = "Head gasket, copper"
  sits_on  = part.body
  material = "copper"

  size "0.40 mm" { in_kit = 1 }
  size "0.60 mm" { in_kit = 1 }
  size "0.80 mm" { in_kit = 1 }
}

part "head" {
  name    = "Cylinder head with valves"
  sits_on = part.body
  covers  = [part.body.feature.crown, part.gasket]
  mass    = "2.4 kg"
  faces   = ["joint"]
}

part "head_bolt" {
  name     = "Head bolt, M8"
  quantity = 4
  sits_on  = part.head
}

fastening "head_bolts" {
  name            = "Head bolts"
  thread          = "M8"
  bolt_class      = "8.8"
  quantity        = 4
  stack           = [part.head, part.gasket, part.body]
  fasteners       = [part.head_bolt]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "16 mm"
  across_flats    = "13 mm"
  torque          = "25 N·m ± 10 %"
  stages          = ["12 N·m", "25 N·m"]
  layout          = "circle"
  pattern         = ["1", "3", "2", "4"]
  basis           = "About 74 % of proof at K 0.20"
}

limit "squish" {
  name   = "Gap between piston crown and head"
  range  = "0.80..1.10 mm"
  target = "0.95 mm"
  basis  = "Drawing AC-2"
}

tool "torque_wrench" {
  name       = "Torque wrench, 10–50 N·m"
  kind       = "torque wrench"
  range      = "10..50 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "socket" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "gauge_strip" {
  name       = "Crushable gauge strip with its card"
  kind       = "gauge strip"
  range      = "0.05..1.00 mm"
  resolution = "0.02 mm"
  accuracy   = "0.02 mm"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

ppe "ear_protection" {
  name     = "Ear protection"
  standard = "EN 352-1"
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

procedure "squish" {
  title = "Find the gasket"

  clean "faces" {
    title    = "Wash the top of the body and the head"
    on       = [part.body.face.top, part.head.face.joint]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  fit "trial_head" {
    title   = "Set the head on for a trial, with a gauge strip on the crown"
    part    = part.head
    trial   = true
    without = [part.gasket]
    tools   = [tool.gauge_strip]
    takes   = "2 min"
  }

  fit "trial_bolts" {
    title     = "Start the head bolts by hand for the trial"
    fastening = fastening.head_bolts
    trial     = true
    takes     = "2 min"
  }

  torque "trial" {
    title     = "Tighten the head bolts for the trial"
    fastening = fastening.head_bolts
    to        = "12 N·m"
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "3 min"
    why       = "Metal on metal needs no more, and more would mark the faces."
  }

  run "over_top" {
    title     = "Turn the crank once by hand"
    on        = [part.body]
    by        = "hand"
    criterion = "The piston passes its highest point and nothing strikes."
    takes     = "1 min"
    otherwise = "Take the head off, and ask the supplier."
  }

  remove "bolts" {
    title     = "Take the head bolts out"
    fastening = fastening.head_bolts
    takes     = "2 min"
  }

  remove "head" {
    title = "Lift the head off"
    part  = part.head
    takes = "1 min"
  }

  measure "strip" {
    title  = "Measure the crushed strip with its card"
    on     = [part.body.feature.crown]
    tools  = [tool.gauge_strip]
    likely = "0.10..0.60 mm"
    takes  = "2 min"
  }

  choose "gasket" {
    title     = "Choose the gasket"
    from      = part.gasket
    pieces    = "1"
    base      = measure.strip
    makes     = limit.squish
    takes     = "2 min"
    otherwise = "Ask the supplier for a gasket of another thickness."
  }

  example "a middling piston" {
    readings = { measure.strip = "0.34 mm" }
    gives    = { choose.gasket.total = "0.60 mm", choose.gasket.result = "0.94 mm" }
  }
}

procedure "head" {
  title = "Fit the head and run it in"
  after = [procedure.squish]

  fit "gasket" {
    title = "Lay the gasket on: ${procedure.squish.choose.gasket}"
    part  = procedure.squish.choose.gasket
    takes = "1 min"
  }

  fit "head" {
    title = "Set the head on the gasket"
    part  = part.head
    takes = "1 min"
  }

  fit "bolts" {
    title     = "Start the head bolts by hand"
    fastening = fastening.head_bolts
    takes     = "2 min"
  }

  torque "bolts" {
    title     = "Tighten the head bolts"
    fastening = fastening.head_bolts
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "4 min"
  }

  inspect "turns" {
    title     = "Feel the flywheel over the top"
    on        = [part.body]
    criterion = "It goes over the top with a hiss and without a knock."
    critical  = true
    takes     = "1 min"
    otherwise = "Take the head off and measure again."
  }

  hold "power" {
    title   = "Stop before the belt goes on"
    checks  = [inspect.turns]
    before  = run.power
    release = "second person"
    takes   = "2 min"
  }

  run "power" {
    title     = "Run the compressor for ten minutes, its outlet open"
    on        = [part.body, part.head]
    by        = "power"
    ppe       = [ppe.goggles, ppe.ear_protection]
    criterion = "It sounds even, and no air hisses at the joint."
    takes     = "10 min"
    otherwise = "Stop it, and look for what knocks or hisses."
  }

  wait "cold" {
    title = "Let the head grow cold"
    for   = "2 h"
  }

  torque "again" {
    title     = "Tighten the head bolts again after settling"
    fastening = fastening.head_bolts
    from      = "tight"
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "3 min"
    why       = "Copper settles in its first heat."
  }
}
