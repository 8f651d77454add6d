# Sound: a preload that can be judged only once the cap is on, a lock nut that came
# assembled, a setting read again after its lock, a transport block taken out for good.

manual "hand_winch" {
  title    = "Hand winch: drum and brake"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.drum, procedure.brake]
}

part "frame" {
  name  = "Winch frame with brake band"
  faces = ["seat"]
}

part "block" {
  name     = "Transport block"
  in_place = 1
  sits_on  = part.frame
  covers   = [part.frame.face.seat]
}

part "drum" {
  name     = "Drum with two taper bearings"
  sits_on  = part.frame
  mass     = "16 kg"
  features = ["rim"]
}

part "cap" {
  name    = "Bearing cap"
  sits_on = part.frame
  mass    = "1.9 kg"
}

part "cap_screw" {
  name     = "Cap screw, M8"
  quantity = 4
  sits_on  = part.cap
}

part "crank" {
  name    = "Crank handle"
  sits_on = part.drum
}

part "crank_pin" {
  name    = "Crank pin with ring"
  sits_on = part.crank
}

fastening "cap_screws" {
  name         = "Cap screws"
  thread       = "M8"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.cap, part.frame]
  fasteners    = [part.cap_screw]
  lubricant    = supply.oil
  across_flats = "13 mm"
  torque       = "18 N·m ± 10 %"
  layout       = "circle"
  pattern      = "criss-cross"
  basis        = "About 71 % of proof at K 0.15, oiled"
}

fastening "band_lock_nut" {
  name         = "Lock nut of the brake band"
  does         = "lock nut"
  thread       = "M10"
  across_flats = "16 mm"
  torque       = "30 ± 3 N·m"
  basis        = "Drawing HW-7"
}

limit "preload" {
  name  = "Pull at the rim that keeps the drum turning"
  range = "6..14 N"
  basis = "Drawing HW-3"
}

limit "band_gap" {
  name     = "Gap between brake band and drum, lever up"
  range    = "0.40..0.70 mm"
  basis    = "Drawing HW-7"
  critical = true
}

tool "torque_wrench" {
  name       = "Torque wrench, 10–50 N·m"
  kind       = "torque wrench"
  range      = "10..50 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "socket_13" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "socket_16" {
  name  = "Deep socket, 16 mm"
  kind  = "socket"
  size  = "16 mm"
  drive = "3/8 in"
}

tool "spanner_16" {
  name = "Spanner, 16 mm"
  kind = "spanner"
  size = "16 mm"
}

tool "spring_balance" {
  name       = "Spring balance, 0–25 N"
  kind       = "spring balance"
  reads      = "force"
  range      = "0..25 N"
  resolution = "0.2 N"
  accuracy   = "0.5 N"
}

tool "feelers" {
  name       = "Feeler gauges"
  kind       = "feeler gauges"
  range      = "0.03..1.00 mm"
  resolution = "0.01 mm"
  accuracy   = "0.005 mm"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

supply "oil" {
  name = "Machine oil"
  kind = "machine oil"
  ppe  = [ppe.gloves]

  caution {
    hazard = "Oil on the floor is slippery."
    result = "A fall."
    avoid  = "Wipe spills up at once."
  }
}

procedure "drum" {
  title = "Set the drum in its frame"

  remove "block" {
    title    = "Take the transport block out"
    part     = part.block
    for_good = true
    takes    = "1 min"
  }

  coat "seat" {
    title    = "Oil the bearing seat of the frame"
    on       = [part.frame.face.seat]
    supplies = [supply.oil]
    takes    = "1 min"
  }

  fit "drum" {
    title = "Lift the drum into the frame"
    part  = part.drum
    takes = "2 min"
  }

  fit "cap" {
    title = "Put the bearing cap on"
    part  = part.cap
    takes = "1 min"
  }

  coat "threads" {
    title    = "Oil the cap screws"
    on       = [fastening.cap_screws]
    supplies = [supply.oil]
    takes    = "1 min"
  }

  fit "screws" {
    title     = "Start the cap screws by hand"
    fastening = fastening.cap_screws
    takes     = "2 min"
  }

  torque "cap" {
    title     = "Tighten the cap screws"
    fastening = fastening.cap_screws
    tools     = [tool.torque_wrench, tool.socket_13]
    takes     = "3 min"
  }

  run "seat" {
    title     = "Turn the drum ten turns by hand"
    on        = [part.drum]
    by        = "hand"
    criterion = "It turns evenly."
    takes     = "1 min"
    otherwise = "Take the cap off and look how the bearings lie."
  }

  measure "pull" {
    title     = "Measure the pull that keeps the drum turning"
    on        = [part.drum.feature.rim]
    tools     = [tool.spring_balance]
    likely    = "4..18 N"
    accept    = limit.preload
    takes     = "3 min"
    text      = "Wind three turns of cord on the rim. Pull so that one turn takes ten seconds."
    otherwise = "Send the cap back; the supplier faces it or shims it."
  }
}

procedure "brake" {
  title = "Set the brake band"
  after = [procedure.drum]

  adjust "band" {
    title      = "Set the gap of the brake band"
    on         = [part.frame]
    tools      = [tool.feelers, tool.spanner_16]
    likely     = "0.20..1.00 mm"
    accept     = limit.band_gap
    locks_with = fastening.band_lock_nut
    takes      = "5 min"
    otherwise  = "Turn the adjuster by one flat and try again."
  }

  torque "band_lock" {
    title     = "Tighten the lock nut of the band"
    fastening = fastening.band_lock_nut
    tools     = [tool.torque_wrench, tool.socket_16]
    held_by   = tool.spanner_16
    takes     = "2 min"
  }

  measure "band" {
    title  = "Measure the gap of the brake band again"
    on     = [part.frame]
    tools  = [tool.feelers]
    likely = "0.30..0.80 mm"
    accept = limit.band_gap
    takes  = "2 min"

    otherwise {
      text = "The lock nut has moved the adjuster."
      then = adjust.band

      loosen "band_lock" {
        title     = "Slacken the lock nut"
        fastening = fastening.band_lock_nut
        by        = "1/4 turn"
        tools     = [tool.spanner_16]
        takes     = "1 min"
      }
    }
  }

  fit "crank" {
    title = "Slide the crank onto the drum shaft"
    part  = part.crank
    takes = "1 min"
  }

  fit "pin" {
    title = "Push the crank pin through"
    part  = part.crank_pin
    takes = "1 min"
  }

  hold "brake" {
    title   = "Stop until the gap of the brake has been signed for"
    checks  = [measure.band]
    before  = run.brake
    release = "second person"
    takes   = "2 min"
  }

  run "brake" {
    title     = "Turn the drum by hand with the brake on"
    on        = [part.drum]
    by        = "hand"
    criterion = "The crank lifts you rather than turn the drum."
    takes     = "1 min"
    otherwise = "Set the band again."
  }
}
