procedure "camshaft" {
  title = "Fit the camshaft and set the timing"
  after = [procedure.crankshaft]
  intro = "The tappets go in first, from the inside: their feet are wider than their bores."

  coat "tappets" {
    title    = "Oil the tappets"
    on       = [part.tappet]
    at_each  = places.side
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "tappets" {
    title   = "Push both tappets in from the inside, ${place}"
    part    = part.tappet
    at_each = places.side
    facing  = "Foot to the camshaft"
    takes   = "2 min"
  }

  coat "lobes" {
    title    = "Spread assembly paste on the lobes"
    on       = [part.camshaft.feature.lobes]
    supplies = [supply.assembly_paste]
    takes    = "3 min"
    why      = "Lobes and tappets bed in during the first minutes, before oil splash reaches them."
  }

  fit "camshaft" {
    title = "Slide the camshaft in from the front"
    part  = part.camshaft
    takes = "4 min"
    text  = "Hold the tappets out with a finger as each lobe passes."
  }

  measure "recess" {
    title     = "Measure down to the camshaft's shoulder"
    on        = [part.crankcase.feature.cam_recess]
    tools     = [tool.depth_gauge]
    repeat    = 2
    take      = "mean"
    likely    = "6.12..6.56 mm"
    otherwise = "Stop. Push the camshaft right aft, and measure again."
    takes     = "5 min"
    text      = "Push the camshaft aft until it stops. Measure from the front face of the crankcase."

    agree_within = "0.01 mm"
  }

  measure "spigot" {
    title     = "Measure the spigot of the thrust plate"
    on        = [part.thrust_plate.face.spigot]
    tools     = [tool.depth_gauge]
    spots     = ["top", "bottom"]
    take      = "mean"
    likely    = "2.00..2.04 mm"
    otherwise = "Stop. Stone the burrs off the plate, and measure again."
    takes     = "3 min"
  }

  calculate "room" {
    title = "Work out the room for the collar"
    is    = measure.recess - measure.spigot
    takes = "1 min"
  }

  choose "collar" {
    title     = "Choose the thrust collar"
    from      = part.thrust_collar
    pieces    = "1"
    gap       = calculate.room
    leaves    = limit.cam_float
    takes     = "2 min"
    otherwise = "Stop. Send both readings to Withybrook, who grind collars to order."
  }

  example "a collar of the third size" {
    readings = { measure.recess = "6.33 mm", measure.spigot = "2.02 mm" }
    gives    = { calculate.room = "4.31 mm", choose.collar.total = "4.20 mm", choose.collar.result = "0.11 mm" }
    shown    = true
  }

  fit "collar" {
    title  = "Slide the collar on: ${choose.collar}"
    part   = choose.collar
    facing = "Grooved face to the front"
    takes  = "2 min"
    why    = "The grooves feed oil to the face that takes the thrust."
  }

  fit "thrust_plate" {
    title = "Lay the thrust plate over the collar"
    part  = part.thrust_plate
    takes = "1 min"
  }

  clean "plate_threads" {
    title    = "Degrease the two plate bolts"
    on       = [fastening.plate_bolts]
    supplies = [supply.solvent]
    takes    = "4 min"
  }

  coat "plate_threads" {
    title    = "Wet the bolts with threadlocker"
    on       = [fastening.plate_bolts]
    supplies = [supply.threadlocker_medium]
    takes    = "1 min"
  }

  fit "plate_bolts" {
    title     = "Start the two bolts by hand"
    fastening = fastening.plate_bolts
    takes     = "1 min"
  }

  torque "plate_bolts" {
    title     = "Tighten the plate bolts"
    fastening = fastening.plate_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "2 min"
  }

  measure "cam_float" {
    title        = "Measure the float of the camshaft"
    on           = [part.camshaft]
    tools        = [tool.dial_indicator]
    repeat       = 2
    agree_within = "0.01 mm"
    take         = "mean"
    accept       = limit.cam_float
    takes        = "5 min"

    otherwise {
      text = "Undo the plate while the threadlocker is soft. Measure the collar, and choose again."
      then = choose.collar
    }
  }

  fit "cam_key" {
    title = "Tap the gear key into the camshaft"
    part  = part.cam_key
    tools = [tool.brass_drift, tool.hammer]
    takes = "2 min"
  }

  fit "gear" {
    title   = "Fit the camshaft gear, dot to dot"
    part    = part.cam_gear
    align   = [part.cam_gear.mark.dot, part.crank_gear.mark.dot]
    figures = [figure.timing_dots]
    takes   = "5 min"
    why     = "One tooth out, and the exhaust valve meets the piston at the first turn."
    text    = <<-EOT
      Turn the crankshaft until its dot faces the camshaft. Slide the gear on
      with its dot towards the other dot. Both lie on the line of centres.
    EOT
  }

  fit "cam_tab" {
    title = "Put the tab washer on"
    part  = part.cam_tab
    takes = "1 min"
    text  = "Its inner tongue lies in the keyway."
  }

  coat "cam_nut" {
    title    = "Oil the thread of the camshaft nut"
    on       = [fastening.cam_nut]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "cam_nut" {
    title     = "Start the camshaft nut, anticlockwise"
    fastening = fastening.cam_nut
    takes     = "1 min"
    why       = "The thread is left-hand, so that the drag of the oil pump can't unscrew it."

    notice {
      text = "This nut has a left-hand thread. Turned the usual way it comes off; forced, it strips the camshaft."
    }
  }

  torque "cam_nut" {
    title     = "Tighten the camshaft nut, anticlockwise"
    fastening = fastening.cam_nut
    tools     = [tool.torque_wrench_300, tool.socket_21, tool.gear_holder]
    held_by   = tool.gear_holder
    takes     = "4 min"
    text      = "Check that the wrench clicks in this direction before you use it."
  }

  measure "backlash" {
    title     = "Measure the backlash of the gears"
    on        = [part.cam_gear]
    tools     = [tool.dial_indicator]
    spots     = ["dots together", "1/4 turn on", "1/2 turn on", "3/4 turn on"]
    take      = "each"
    accept    = limit.backlash
    otherwise = "Stop. Withybrook keeps camshaft gears of two more sizes: send the four readings."
    takes     = "10 min"
    text      = "Stand the dial square on a tooth. Rock the camshaft gear while you hold the other still."
  }

  lock "cam_nut" {
    title     = "Bend a tab up against a flat of the nut"
    fastening = fastening.cam_nut
    by        = part.cam_tab
    tools     = [tool.brass_drift, tool.hammer]
    takes     = "3 min"
  }

  run "two_turns" {
    title     = "Turn the crankshaft twice by hand"
    on        = [part.crankshaft, part.camshaft]
    by        = "hand"
    takes     = "2 min"
    criterion = "No stiff spot in two full turns, and the dots come back together."
    otherwise = "Stop. Take the gear off and begin again at the dots."
  }

  inspect "timing" {
    title     = "Compare the dots with the picture"
    on        = [part.cam_gear, part.crank_gear]
    marks     = [part.cam_gear.mark.dot, part.crank_gear.mark.dot]
    figures   = [figure.timing_dots]
    people    = 2
    takes     = "3 min"
    critical  = true
    criterion = "The dots face each other on the line of centres. The tab lies flat on the nut over its whole width."
    otherwise = "Stop. Take the gear off and begin again at the dots."
    text      = "Each of you looks alone, and says what he sees before the other speaks."
  }

  hold "timing" {
    title   = "Stop before the cover hides the gears"
    checks  = [measure.backlash, inspect.timing]
    before  = procedure.timing_cover.fit.cover
    release = "second person"
    takes   = "2 min"
  }
}
