procedure "rods" {
  title   = "Fit the connecting rods"
  after   = [procedure.camshaft]
  at_each = places.side
  intro   = <<-EOT
    The clearance of a big end is made by two thin half shells. You measure the
    rod and the pin, and choose the shells by colour. Rod and cap were bored
    together, and carry the same number: never mix them.
  EOT

  work "swing" {
    title = "Swing the crankcase until the sump opening is up"
    on    = [part.crankcase]
    tools = [tool.build_stand]
    only  = ["left"]
    takes = "2 min"
  }

  inspect "numbers" {
    title     = "Compare the numbers of rod and cap"
    on        = [part.rod.mark.number, part.rod_cap.mark.number]
    takes     = "1 min"
    criterion = "Both numbers are the same, and no edge of either is chipped."
    otherwise = "Stop. Sort the rods by number, and send back what has no partner."
  }

  clean "big_end" {
    title    = "Wipe the big end dry"
    on       = [part.rod.feature.big_end, part.rod_cap]
    supplies = [supply.solvent, supply.rags]
    takes    = "3 min"
  }

  coat "bolts_trial" {
    title    = "Oil the big-end bolts"
    on       = [fastening.rod_bolts]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "cap_trial" {
    title   = "Put the cap on the rod for trial"
    part    = part.rod_cap
    trial   = true
    without = [part.rod_shell, part.lock_plate]
    align   = [part.rod.mark.number, part.rod_cap.mark.number]
    takes   = "1 min"
  }

  fit "bolts_trial" {
    title     = "Start both bolts by hand"
    fastening = fastening.rod_bolts
    takes     = "1 min"
  }

  torque "bolts_trial" {
    title     = "Tighten the cap for the trial"
    fastening = fastening.rod_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13, tool.vice]
    held_by   = tool.vice
    takes     = "3 min"
    text      = "Hold the rod in the soft jaws by its shank."
  }

  measure "bore" {
    title     = "Measure the bore of the big end"
    on        = [part.rod.feature.big_end]
    tools     = [tool.bore_gauge_50]
    spots     = ["in line with the shank", "a third of a turn on", "two thirds of a turn on"]
    take      = "mean"
    likely    = "46.000..46.016 mm"
    otherwise = "Stop. Look for dirt in the split of rod and cap, then measure again."
    takes     = "6 min"
  }

  remove "bolts" {
    title     = "Take both bolts out"
    fastening = fastening.rod_bolts
    tools     = [tool.spanner_13, tool.vice]
    takes     = "2 min"
  }

  remove "cap" {
    title = "Take the cap off"
    part  = part.rod_cap
    takes = "1 min"
  }

  measure "pin" {
    title     = "Measure the ${place} crank pin"
    on        = { left = [part.crankshaft.feature.left_pin], right = [part.crankshaft.feature.right_pin] }
    tools     = [tool.micrometer_50]
    spots     = ["front", "middle", "aft"]
    take      = "largest"
    likely    = "41.975..41.991 mm"
    otherwise = "Stop, and send the reading to Withybrook."
    takes     = "5 min"
    text      = "Both pins are within reach through the sump opening. The left pin is the one nearer the front."
  }

  choose "shells" {
    title     = "Choose two half shells"
    from      = part.rod_shell
    pieces    = "2"
    gap       = measure.bore - measure.pin
    leaves    = limit.big_end
    takes     = "3 min"
    otherwise = "Stop. Send bore and pin to Withybrook, who keep shells for reground pins."
    why       = "Two shells of different colours are allowed. They give the steps in between."
  }

  example "bore and pin in the middle" {
    readings = { measure.bore = "46.008 mm", measure.pin = "41.983 mm" }
    gives    = { choose.shells.result = "0.039 mm" }
    shown    = true
  }

  example "a large bore on a small pin" {
    readings = { measure.bore = "46.016 mm", measure.pin = "41.975 mm" }
    gives    = { choose.shells.result = "0.049 mm" }
  }

  fit "shells" {
    title  = "Click the shells into rod and cap: ${choose.shells}"
    part   = choose.shells
    facing = "Tongue in its notch"
    takes  = "3 min"
    why    = "A fingerprint behind a shell makes a hot spot in front of it. Hold shells by their edges."
  }

  coat "shells" {
    title    = "Spread assembly paste on the shells"
    on       = [part.rod_shell.feature.face]
    supplies = [supply.assembly_paste]
    takes    = "1 min"
  }

  fit "rod" {
    title  = "Set the rod on its pin through the barrel opening"
    part   = part.rod
    facing = { left = "Spray hole to the camshaft, number to the front", right = "Spray hole to the camshaft, number aft" }
    takes  = "4 min"
    why    = "The two rods are alike, and face opposite ways. Both spray holes look at the camshaft, so the numbers look away from each other."
  }

  fit "cap" {
    title = "Put the cap on through the sump opening"
    part  = part.rod_cap
    align = [part.rod.mark.number, part.rod_cap.mark.number]
    takes = "2 min"
  }

  fit "lock_plate" {
    title = "Lay the lock plate on the cap"
    part  = part.lock_plate
    takes = "1 min"
  }

  coat "bolts" {
    title    = "Oil the big-end bolts again"
    on       = [fastening.rod_bolts]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
    why      = "The torque is meant for an oiled thread and an oiled head. Dry, it pulls a quarter less."
  }

  fit "bolts" {
    title     = "Start both bolts by hand again"
    fastening = fastening.rod_bolts
    takes     = "2 min"
  }

  torque "bolts" {
    title     = "Tighten the big-end bolts"
    fastening = fastening.rod_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    critical  = true
    takes     = "4 min"
    text      = "Pull each stage in one slow sweep. If a bolt creaks, back it off and sweep again."
    why       = "A big-end bolt that lets go puts the rod through the side of the crankcase."
  }

  inspect "bolts" {
    title     = "Check the bolts with the second person's hand on the wrench"
    on        = [fastening.rod_bolts]
    tools     = [tool.torque_wrench_100, tool.socket_13, tool.paint_marker]
    people    = 2
    takes     = "3 min"
    critical  = true
    criterion = "The wrench clicks on each bolt before the bolt moves. Each checked head carries a dot of paint."
    otherwise = "Take both bolts out, oil them, and tighten them again from the first stage."
  }

  hold "bolts" {
    title   = "Stop before the plate is bent"
    checks  = [torque.bolts, inspect.bolts]
    before  = lock.bolts
    release = "second person"
    takes   = "2 min"
  }

  lock "bolts" {
    title     = "Bend the lock plate up against both heads"
    fastening = fastening.rod_bolts
    by        = part.lock_plate
    tools     = [tool.brass_drift, tool.hammer]
    takes     = "4 min"
  }

  measure "side" {
    title     = "Measure the side clearance of the rod"
    on        = [part.rod]
    tools     = [tool.feeler_gauges]
    accept    = limit.rod_side
    otherwise = "Stop. A rod without side clearance has its cap on crooked or the wrong way round."
    takes     = "3 min"
  }

  run "by_hand" {
    title     = "Turn the crankshaft five times by hand"
    on        = [part.crankshaft, part.rod]
    by        = "hand"
    takes     = "2 min"
    criterion = "The rod falls freely over the top on its own weight, and nothing touches the crankcase."
    otherwise = "Stop. Take the cap off and look at the shells."
  }
}
