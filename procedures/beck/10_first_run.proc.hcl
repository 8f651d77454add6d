procedure "first_run" {
  title = "Let the water in, then make current"
  after = [procedure.control]
  intro = <<-EOT
    Two first times, one after the other. First water alone, with the isolator
    still locked: the set turns, drips and is listened to. Then current, into
    the ballast load. Local codes decide who may be present and who must be.
  EOT

  fit "inlet_gasket" {
    title = "Hang the inlet gasket on the studs"
    part  = part.inlet_gasket
    takes = "1 min"
  }

  fit "inlet_pipe" {
    title = "Join the inlet pipe to valve and casing"
    part  = part.inlet_pipe
    ppe   = [ppe.boots]
    takes = "10 min"
  }

  fit "inlet_bolts" {
    title     = "Start the inlet bolts by hand"
    fastening = fastening.inlet_bolts
    takes     = "5 min"
  }

  torque "inlet" {
    title     = "Tighten the inlet bolts"
    fastening = fastening.inlet_bolts
    tools     = [tool.torque_wrench_lbin, tool.socket_9_16_in_small, tool.spanner_9_16_in]
    takes     = "5 min"
  }

  run "by_hand" {
    title     = "Turn the whole set by hand"
    on        = [part.shaft]
    by        = "hand"
    criterion = "It turns with one hand, evenly, through three turns."
    takes     = "3 min"
    otherwise = "Find what binds before anything else is done."
  }

  fit "guard" {
    title = "Put the guard over the drive"
    part  = part.guard
    takes = "3 min"
  }

  fit "guard_screws" {
    title     = "Start the guard screws by hand"
    fastening = fastening.guard_screws
    takes     = "3 min"
  }

  torque "guard" {
    title     = "Tighten the guard screws"
    fastening = fastening.guard_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_7_16_in]
    takes     = "5 min"
  }

  wait "hub_screws" {
    title = "Let the threadlocker of the hub screws cure"
    when  = option.drive == "coupling"
    until = [procedure.coupling.coat.hub_screws]
  }

  wait "pulley_screws" {
    title = "Let the threadlocker of the pulley screws cure"
    when  = option.drive == "belt"
    until = [procedure.belt.coat.pulley_screws]
  }

  inspect "ready" {
    title     = "Walk round the set"
    on        = [part.casing, part.generator, part.guard]
    criterion = "Guard and covers are on, nothing lies on the plate, and the tail race is clear."
    critical  = true
    takes     = "5 min"
    otherwise = "Put it right, and walk round again."
  }

  hold "water" {
    title   = "Stop before the water is let in"
    checks  = [inspect.ready]
    before  = run.water
    release = "inspector"
    takes   = "15 min"
    text    = "Nobody but the one who hung the tag takes it off."
  }

  remove "valve_lock" {
    title = "Take your lock off the penstock valve"
    tool  = tool.penstock_lock
    takes = "2 min"
  }

  run "water" {
    title     = "Open the penstock valve by a quarter"
    on        = [part.casing]
    by        = "fluid"
    ppe       = [ppe.goggles, ppe.ear_protection]
    people    = 2
    criterion = "The set turns evenly, and no flange leaks."
    takes     = "15 min"
    text      = <<-EOT
      Close the drain cock of the penstock valve. Open the vent cock until water
      comes without air, and close it. A second person stays at the valve and
      shuts it when you raise a hand.
    EOT
    otherwise = "Raise your hand. When the shaft stands, lock the valve and find the cause."

    warning {
      hazard = "With no load on it the set runs away when the valve is opened further."
      result = "The generator bursts and throws metal."
      avoid  = "Open the valve by no more than a quarter, and watch the tachometer."
    }
  }

  adjust "drip" {
    title      = "Set the drip of the gland"
    on         = [part.gland]
    tools      = [tool.drip_glass, tool.stopwatch, tool.spanner_9_16_in]
    ppe        = [ppe.goggles]
    likely     = "0..80 drops/min"
    accept     = limit.gland_drip
    locks_with = fastening.gland_lock_nuts
    takes      = "20 min"
    why        = "The drip cools the packing. A dry gland burns, and scores the shaft."
    text       = "Turn both nuts by one flat, wait three minutes, and count again."
    otherwise  = "Turn both nuts by one flat the other way, and count again."
  }

  fit "valve_lock" {
    title = "Lock the penstock valve shut again"
    tool  = tool.penstock_lock
    takes = "5 min"
    text  = "Shut the valve, and wait until the shaft stands. Open the drain cock of the valve until it runs dry."
  }

  fit "gland_lock_nuts" {
    title     = "Run the gland lock nuts on by hand"
    fastening = fastening.gland_lock_nuts
    takes     = "3 min"
  }

  torque "gland_lock_nuts" {
    title     = "Tighten the gland lock nuts"
    fastening = fastening.gland_lock_nuts
    tools     = [tool.torque_wrench_lbin, tool.socket_9_16_in_small, tool.spanner_9_16_in]
    takes     = "5 min"
    text      = "Hold each gland nut with the spanner."
  }

  torque "anchors_again" {
    title     = "Tighten the anchor nuts again after settling"
    fastening = fastening.anchors
    from      = "tight"
    held_by   = part.plinth
    tools     = [tool.torque_wrench_lbft, tool.socket_3_4_in]
    takes     = "5 min"
    why       = "Paint and grout creep under the first shake."
  }

  inspect "clear" {
    title     = "Walk round the set once more"
    on        = [part.casing, part.guard]
    criterion = "No tool lies on the set, and no flange is wet."
    takes     = "3 min"
    otherwise = "Put it right, and walk round again."
  }

  remove "valve_lock_again" {
    title = "Take your lock off the penstock valve again"
    tool  = tool.penstock_lock
    takes = "2 min"
  }

  run "speed" {
    title     = "Bring the set up to speed without load"
    on        = [part.casing, part.generator]
    by        = "fluid"
    ppe       = [ppe.goggles, ppe.ear_protection]
    people    = 2
    criterion = "It runs without a knock or a growl."
    takes     = "10 min"
    text      = "The second person opens the valve in small steps and calls each one."
    otherwise = "Shut the valve, lock it and find the cause."

    warning {
      hazard = "With no load on it the set runs away when the valve is opened further."
      result = "The generator bursts and throws metal."
      avoid  = "Shut the valve when the tachometer passes the upper limit of the speed."
    }
  }

  measure "speed" {
    title     = "Measure the speed of the generator"
    on        = [part.generator]
    tools     = [tool.tachometer]
    ppe       = [ppe.goggles, ppe.ear_protection]
    likely    = "1700..1900 rpm"
    accept    = limit.speed
    takes     = "3 min"
    otherwise = "Move the valve and measure again."
  }

  measure "drip_again" {
    title     = "Count the drip of the gland again"
    on        = [part.gland]
    tools     = [tool.drip_glass, tool.stopwatch]
    ppe       = [ppe.goggles]
    likely    = "10..60 drops/min"
    accept    = limit.gland_drip
    takes     = "5 min"
    otherwise = "Shut the water off, slacken the lock nuts and set the gland again."
  }

  hold "current" {
    title   = "Stop before the isolator is unlocked"
    checks  = [measure.speed, measure.drip_again, procedure.control.measure.earth]
    before  = run.current
    release = "licensed electrician"
    takes   = "10 min"
  }

  remove "isolator_lock" {
    title = "Take your lock off the isolator"
    tool  = tool.isolator_lock
    takes = "2 min"
  }

  run "current" {
    title     = "Switch the set onto its ballast load"
    on        = [part.generator, part.control_box]
    by        = "electric"
    ppe       = [ppe.goggles, ppe.ear_protection, ppe.boots]
    people    = 2
    criterion = "The needle of the box stands in the green, and the ballast grows warm evenly."
    takes     = "30 min"
    text      = "The licensed electrician closes the isolator, or says who does. A second person stays at the valve."
    otherwise = "Open the isolator, shut the valve, and lock both before you look for the cause."
  }

  inspect "after_run" {
    title     = "Listen and look for half an hour"
    on        = [part.casing, part.generator, part.control_box]
    criterion = "Speed and needle stay where they are, and no new noise comes."
    takes     = "30 min"
    ppe       = [ppe.ear_protection]
    otherwise = "Open the isolator, shut the valve, lock both and call the workshop."
  }
}
