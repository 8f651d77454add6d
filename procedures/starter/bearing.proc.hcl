# A value measured on the builder's own parts decides what is fitted next.

procedure "bearing" {
  title = "Shim the bearing"

  clean "faces" {
    title = "Wipe the bore and the face of the cover"
    on    = [part.housing.face.bore, part.housing.face.cover]
  }

  fit "housing" {
    title = "Clamp the housing to the bench, bore up"
    part  = part.housing
    tools = tool.clamp
  }

  fit "shaft" {
    title = "Lower the shaft until its bearing sits on the bottom of the bore"
    part  = part.shaft
  }

  measure "gap" {
    title     = "Measure from the face of the cover down to the bearing"
    on        = [part.housing, part.shaft]
    tools     = tool.depth_gauge
    likely    = "0.55..1.15 mm"
    otherwise = "Check that the bearing is right down, and measure again."
  }

  choose "pack" {
    title     = "Choose the shims"
    from      = part.shim
    pieces    = "1..4"
    gap       = measure.gap
    leaves    = limit.end_float
    otherwise = "Stop. Send the reading to the supplier."
  }

  fit "shims" {
    title = "Lay the shims on the bearing: ${choose.pack}"
    part  = choose.pack
  }

  fit "cover" {
    title = "Lay the cover on the housing"
    part  = part.cover
  }

  coat "bolts" {
    title    = "Oil the threads of the four bolts"
    on       = fastening.cover
    supplies = supply.oil
  }

  fit "bolts" {
    title     = "Start the four bolts by hand"
    fastening = fastening.cover
  }

  torque "cover" {
    title     = "Tighten the cover bolts in the order shown"
    fastening = fastening.cover
    tools     = [tool.torque_wrench, tool.socket_13]
    held_by   = tool.clamp
  }

  example "middle of the range" {
    readings = { measure.gap = "0.83 mm" }
    gives    = { choose.pack.total = "0.70 mm", choose.pack.result = "0.13 mm" }
  }
}

procedure "first_turn" {
  title = "Turn the shaft by hand"

  run "by_hand" {
    title = "Turn the shaft ten times by hand"
    on    = part.shaft
    by    = "hand"
  }

  inspect "free" {
    title     = "Feel for a tight place"
    on        = part.shaft
    criterion = "The shaft turns all the way round with the same light pull."
    otherwise = "Stop. Take the cover off, and measure the gap again."
    takes     = "2 min"
  }
}
