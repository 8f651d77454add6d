procedure "flywheel" {
  title = "Fit the flywheel and find top dead centre"
  after = [procedure.top_end]
  intro = <<-EOT
    The taper drives the boat; the key only places the wheel. So the two tapers
    are tried with marking blue before the nut is tightened for good.
  EOT

  clean "taper" {
    title    = "Degrease shaft and wheel"
    on       = [part.crankshaft.face.taper, part.flywheel.face.taper]
    supplies = [supply.solvent, supply.rags]
    takes    = "4 min"
  }

  coat "taper" {
    title    = "Wipe a film of marking blue on the shaft"
    on       = [part.crankshaft.face.taper]
    supplies = [supply.marking_blue]
    takes    = "2 min"
  }

  fit "flywheel_trial" {
    title   = "Push the flywheel onto the taper for trial"
    part    = part.flywheel
    trial   = true
    without = [part.flywheel_key]
    people  = 2
    takes   = "3 min"
    text    = "Push together, then turn the wheel by 10° and back."
  }

  remove "flywheel_trial" {
    title  = "Pull the flywheel off"
    part   = part.flywheel
    people = 2
    takes  = "2 min"
  }

  inspect "contact" {
    title     = "Look at the blue in the flywheel"
    on        = [part.flywheel.face.taper]
    tools     = [tool.hand_lamp]
    takes     = "2 min"
    criterion = "Blue covers three quarters of the bore or more, and most of it at the wide end."
    otherwise = "Stop. Send Withybrook a photograph of the bore."
  }

  clean "blue" {
    title    = "Wipe the blue off both tapers"
    on       = [part.crankshaft.face.taper, part.flywheel.face.taper]
    supplies = [supply.solvent, supply.rags]
    takes    = "4 min"
    why      = "The taper holds by dry friction. What is left of the blue is grease."
  }

  fit "flywheel_key" {
    title = "Tap the flywheel key into its slot"
    part  = part.flywheel_key
    tools = [tool.brass_drift, tool.hammer]
    takes = "2 min"
  }

  coat "flywheel_nut" {
    title    = "Oil the thread of the flywheel nut"
    on       = [fastening.flywheel_nut]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
    text     = "Oil the nut, not the shaft. A drop that runs down reaches the taper."
  }

  fit "flywheel" {
    title  = "Slide the flywheel over the key"
    part   = part.flywheel
    people = 2
    takes  = "3 min"
  }

  fit "flywheel_nut" {
    title     = "Start the flywheel nut by hand"
    fastening = fastening.flywheel_nut
    takes     = "1 min"
  }

  fit "flywheel_lock" {
    title = "Bolt the flywheel lock into the starter ring"
    tool  = tool.flywheel_lock
    takes = "3 min"
  }

  torque "flywheel_nut" {
    title     = "Tighten the flywheel nut to a slot"
    fastening = fastening.flywheel_nut
    tools     = [tool.torque_wrench_300, tool.socket_27]
    held_by   = tool.flywheel_lock
    critical  = true
    people    = 2
    takes     = "6 min"
    text      = <<-EOT
      One of you leans on the stand, so that it can't walk. The other pulls to the
      lower torque, then on to the first slot that shows the hole.
    EOT
    why       = "A loose wheel shears its key, and a key that shears lets 17 kg go at full speed."
  }

  inspect "flywheel_nut" {
    title     = "Check the nut with the second person's hand on the wrench"
    on        = [fastening.flywheel_nut]
    tools     = [tool.torque_wrench_300, tool.socket_27, tool.paint_marker]
    people    = 2
    takes     = "3 min"
    critical  = true
    criterion = "The wrench clicks at the lower torque before the nut moves. Nut and shaft carry one line of paint."
    otherwise = "Undo the nut, oil it, and tighten it again from the start."
  }

  remove "flywheel_lock" {
    title = "Take the flywheel lock off"
    tool  = tool.flywheel_lock
    takes = "2 min"
  }

  measure "runout" {
    title     = "Measure the runout of the flywheel"
    on        = [part.flywheel.face.coupling]
    tools     = [tool.dial_indicator]
    accept    = limit.runout
    otherwise = "Stop. Take the wheel off, and look for dirt or a burr on the taper."
    takes     = "5 min"
  }

  hold "flywheel_nut" {
    title   = "Stop before the split pin goes in"
    checks  = [torque.flywheel_nut, inspect.flywheel_nut, measure.runout]
    before  = lock.flywheel_nut
    release = "second person"
    takes   = "2 min"
  }

  lock "flywheel_nut" {
    title     = "Bend the split pin over the nut"
    fastening = fastening.flywheel_nut
    by        = part.flywheel_pin
    tools     = [tool.pliers, tool.side_cutters]
    ppe       = [ppe.goggles]
    takes     = "3 min"
  }

  clean "coupling_threads" {
    title    = "Degrease the six coupling bolts"
    on       = [fastening.coupling_bolts]
    supplies = [supply.solvent]
    takes    = "4 min"
  }

  fit "coupling" {
    title = "Set the coupling on the flywheel's spigot"
    part  = part.coupling
    takes = "2 min"
  }

  coat "coupling_threads" {
    title    = "Wet the bolts with threadlocker"
    on       = [fastening.coupling_bolts]
    supplies = [supply.threadlocker_medium]
    takes    = "2 min"
  }

  fit "coupling_bolts" {
    title     = "Start the six bolts by hand"
    fastening = fastening.coupling_bolts
    takes     = "2 min"
  }

  torque "coupling_bolts" {
    title     = "Tighten the coupling"
    fastening = fastening.coupling_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "5 min"
  }

  fit "piston_stop" {
    title   = "Screw the piston stop into the ${place} head"
    tool    = tool.piston_stop
    at_each = places.side
    only    = ["left"]
    takes   = "2 min"
    text    = "Both pistons reach the top together, so one stop serves for both."
  }

  mark "stop_one" {
    title   = "Draw a line on the rim at the first stop"
    on      = [part.flywheel.face.rim]
    how     = "pen"
    marks   = [part.crankcase.mark.pointer]
    figures = [figure.two_stops]
    takes   = "2 min"
    text    = "Turn the wheel clockwise, seen from aft, until the piston meets the stop. Draw the line at the pointer."
  }

  mark "stop_two" {
    title   = "Draw a line on the rim at the other stop"
    on      = [part.flywheel.face.rim]
    how     = "pen"
    marks   = [part.crankcase.mark.pointer]
    figures = [figure.two_stops]
    takes   = "2 min"
    text    = "Turn the wheel the other way until the piston meets the stop again."
  }

  remove "piston_stop" {
    title   = "Screw the piston stop out of the ${place} head"
    tool    = tool.piston_stop
    at_each = places.side
    only    = ["left"]
    takes   = "1 min"
  }

  mark "tdc" {
    title   = "Punch the rim halfway between the lines"
    on      = [part.flywheel.face.rim]
    how     = "punch"
    tools   = [tool.steel_tape, tool.centre_punch, tool.hammer]
    marks   = [mark.stop_one, mark.stop_two]
    figures = [figure.two_stops]
    takes   = "4 min"
    why     = "At the top the piston stands still while the wheel turns several degrees. Halfway between two stops is exact."
  }

  measure "rim" {
    title     = "Measure round the rim"
    on        = [part.flywheel.face.rim]
    tools     = [tool.steel_tape]
    likely    = "936.0..948.0 mm"
    otherwise = "Stop. Lay the tape square to the rim, and measure again."
    takes     = "3 min"
  }

  calculate "arc" {
    title = "Work out how far ahead the spark comes"
    is    = measure.rim * limit.advance.target / "360°"
    takes = "1 min"
    why   = "The drawing gives the spark in degrees, and a tape knows only millimetres."
  }

  mark "firing" {
    title = "Scribe the firing line ${calculate.arc} before the punch mark"
    on    = [part.flywheel.face.rim]
    how   = "scribe"
    tools = [tool.steel_tape, tool.scriber]
    marks = [mark.tdc]
    takes = "4 min"
    text  = "The crankshaft turns clockwise seen from the front. The firing line reaches the pointer first."
  }
}
