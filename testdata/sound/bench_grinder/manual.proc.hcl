# Sound: a hold that covers several checks, a spindle turned by hand in a half-built
# machine, a left-hand thread, an electric run, a guard that covers what was held.

manual "bench_grinder" {
  title       = "Bench grinder: fitting the wheels"
  units       = "metric"
  revision    = "A"
  issued      = "2026-01-12"
  supplier    = "Withybrook Engine Kits"
  signatories = ["licensed electrician"]
  order       = [procedure.wheel, procedure.first_spin]
}

places "end" {
  names = ["left", "right"]
}

part "motor" {
  name   = "Motor with spindle and stand"
  stores = "electric"
  mass   = "14 kg"

  danger {
    hazard = "The spindle starts as soon as the plug is in and the switch is on."
    result = "It winds in sleeves and hair."
    avoid  = "Keep the plug out, and in your sight, until the first spin."
  }
}

part "inner_flange" {
  name    = "Inner flange"
  at_each = places.end
  sits_on = part.motor
}

part "wheel" {
  name    = "Grinding wheel"
  at_each = places.end
  sits_on = part.motor

  danger {
    hazard = "A cracked wheel bursts at speed."
    result = "Pieces kill or blind."
    avoid  = "Ring every wheel before you fit it, and stand aside for the first minute."
  }
}

part "outer_flange" {
  name    = "Outer flange"
  at_each = places.end
  sits_on = part.motor
}

part "spindle_nut" {
  name    = "Spindle nut, left-hand thread on the left end"
  at_each = places.end
  sits_on = part.outer_flange
}

part "guard" {
  name    = "Wheel guard"
  at_each = places.end
  sits_on = part.motor
  covers  = [part.wheel, part.spindle_nut, fastening.spindle_nut]
}

part "guard_screw" {
  name     = "Guard screw, M6"
  at_each  = places.end
  quantity = 3
  sits_on  = part.guard
}

fastening "spindle_nut" {
  name         = "Spindle nut"
  at_each      = places.end
  thread       = { left = "M12 LH", right = "M12" }
  bolt_class   = "4.6"
  stack        = [part.outer_flange, part.wheel, part.inner_flange, part.motor]
  fasteners    = [part.spindle_nut]
  lubricant    = "dry"
  across_flats = "18 mm"
  torque       = "33 N·m ± 10 %"
  basis        = "About 72 % of proof at K 0.20; flanges are recessed and clamp on paper rings"
}

fastening "guard_screws" {
  name         = "Guard screws"
  at_each      = places.end
  thread       = "M6"
  bolt_class   = "8.8"
  quantity     = 3
  stack        = [part.guard, part.motor]
  fasteners    = [part.guard_screw]
  lubricant    = "dry"
  across_flats = "10 mm"
  torque       = "10 N·m ± 10 %"
  basis        = "About 72 % of proof at K 0.20"
}

limit "runout" {
  name     = "Run-out of the wheel at its rim"
  range    = "0..0.50 mm"
  basis    = "Drawing BG-2"
  critical = true
}

tool "wrench" {
  name       = "Torque wrench, 8–40 N·m"
  kind       = "torque wrench"
  range      = "8..40 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "socket_18" {
  name  = "Socket, 18 mm"
  kind  = "socket"
  size  = "18 mm"
  drive = "3/8 in"
}

tool "socket_10" {
  name  = "Socket, 10 mm"
  kind  = "socket"
  size  = "10 mm"
  drive = "3/8 in"
}

tool "dial" {
  name       = "Dial indicator"
  kind       = "dial indicator"
  range      = "0..10 mm"
  resolution = "0.01 mm"
  accuracy   = "0.02 mm"
}

tool "knocker" {
  name = "Wooden handle"
  kind = "mallet"
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

procedure "wheel" {
  title   = "Fit the wheels, ${place}"
  at_each = places.end

  inspect "ring" {
    title     = "Ring the wheel with a wooden handle"
    on        = [part.wheel]
    tools     = [tool.knocker]
    criterion = "It rings clear at four points, and shows no crack or chip."
    critical  = true
    takes     = "2 min"
    otherwise = "Break the wheel up so that nobody can use it, and take another."
  }

  fit "inner_flange" {
    title = "Slide the inner flange on"
    part  = part.inner_flange
    takes = "1 min"
  }

  fit "wheel" {
    title = "Slide the wheel on, ${place}"
    part  = part.wheel
    takes = "1 min"
  }

  fit "outer_flange" {
    title = "Slide the outer flange on"
    part  = part.outer_flange
    takes = "1 min"
  }

  fit "nut" {
    title     = "Run the spindle nut on by hand"
    fastening = fastening.spindle_nut
    takes     = "1 min"
  }

  torque "nut" {
    title     = "Tighten the spindle nut, ${place}"
    fastening = fastening.spindle_nut
    held_by   = "second person"
    people    = 2
    critical  = true
    tools     = [tool.wrench, tool.socket_18]
    takes     = "2 min"
    text      = "A second person holds the other end of the spindle."
  }

  inspect "nut" {
    title     = "Try the spindle nut once more with the wrench"
    on        = [fastening.spindle_nut]
    tools     = [tool.wrench, tool.socket_18]
    people    = 2
    criterion = "A second person hears the click before the nut moves."
    critical  = true
    takes     = "1 min"
    otherwise = "Tighten the nut again, and try it again."
  }

  run "turn" {
    title     = "Turn the wheel by hand"
    on        = [part.wheel]
    by        = "hand"
    criterion = "It turns three turns and touches nothing."
    takes     = "1 min"
    otherwise = "Take the nut off and look for dirt between flange and wheel."
  }

  measure "runout" {
    title     = "Measure the run-out of the rim"
    on        = [part.wheel]
    tools     = [tool.dial]
    likely    = "0..0.80 mm"
    accept    = limit.runout
    takes     = "3 min"
    otherwise = "Slacken the nut, turn the wheel a quarter on its flange and tighten again."
  }

  hold "wheel" {
    title   = "Stop until a second person has seen wheel and nut"
    checks  = [inspect.ring, torque.nut, inspect.nut, measure.runout]
    before  = fit.guard
    release = "second person"
    takes   = "3 min"
  }

  fit "guard" {
    title = "Put the guard on, ${place}"
    part  = part.guard
    takes = "1 min"
  }

  fit "guard_screws" {
    title     = "Start the guard screws by hand"
    fastening = fastening.guard_screws
    takes     = "1 min"
  }

  torque "guard" {
    title     = "Tighten the guard screws"
    fastening = fastening.guard_screws
    tools     = [tool.wrench, tool.socket_10]
    takes     = "2 min"
  }
}

procedure "first_spin" {
  title = "Run the wheels for the first time"
  after = [procedure.wheel]

  inspect "plug" {
    title     = "Look over plug, lead and switch"
    on        = [part.motor]
    criterion = "The lead is whole, and the switch snaps back when it is let go."
    critical  = true
    takes     = "2 min"
    otherwise = "A licensed electrician mends it, as local codes ask."
  }

  hold "spin" {
    title   = "Stop before the first spin"
    checks  = [inspect.plug, procedure.wheel.measure.runout, procedure.wheel.inspect.ring]
    before  = run.spin
    release = "licensed electrician"
    takes   = "5 min"
  }

  run "spin" {
    title     = "Let the grinder run for a minute"
    on        = [part.motor]
    by        = "electric"
    ppe       = [ppe.goggles]
    criterion = "It comes up to speed without a shake or a scrape."
    takes     = "2 min"
    text      = "Plug it in, stand to the side, and switch on."
    otherwise = "Switch off, draw the plug and look at the wheel."
  }
}
