procedure "runner" {
  title = "Pack the gland and fit the runner"
  after = [procedure.cartridge]
  intro = <<-EOT
    The runner sits on a taper. A taper holds by area, so you look at the
    contact in blue before you trust it. The nut is a castellated one: it is
    brought inside its band of torque and then on to the next slot.
  EOT

  coat "packing" {
    title    = "Grease the packing rings"
    on       = [part.packing_ring]
    supplies = [supply.rubber_grease]
    takes    = "5 min"
  }

  fit "packing" {
    title    = "Lay the four packing rings into the gland"
    part     = part.packing_ring
    quantity = 4
    takes    = "15 min"
    text     = "Set each joint a quarter turn on from the one below."
    why      = "Joints in one line make a straight road for the water."
  }

  fit "gland" {
    title = "Slide the gland follower on"
    part  = part.gland
    takes = "3 min"
  }

  fit "gland_nuts" {
    title     = "Run the gland nuts on by hand"
    fastening = fastening.gland_nuts
    takes     = "3 min"
  }

  torque "gland" {
    title     = "Bed the packing with the gland nuts"
    fastening = fastening.gland_nuts
    tools     = [tool.torque_wrench_lbin, tool.socket_9_16_in_small]
    takes     = "5 min"
    text      = "Go from one nut to the other in half turns, so that the follower stays square."
  }

  clean "taper" {
    title    = "Wash the taper and the bore of the runner"
    on       = [part.shaft.face.taper, part.runner.face.bore]
    supplies = [supply.solvent, supply.rags]
    ppe      = [ppe.work_gloves]
    takes    = "5 min"
  }

  coat "blue" {
    title    = "Spread marking blue over the taper"
    on       = [part.shaft.face.taper]
    supplies = [supply.marking_blue]
    takes    = "5 min"
    text     = "Dab it on and rub it out to a film through which the steel still shines."
  }

  fit "runner_trial" {
    title   = "Push the runner onto the taper for a trial"
    part    = part.runner
    trial   = true
    without = [part.runner_key]
    ppe     = [ppe.work_gloves]
    takes   = "3 min"
    text    = "Push straight on with both palms, turn it by a finger's width and stop."
  }

  remove "runner_trial" {
    title = "Pull the runner off again"
    part  = part.runner
    ppe   = [ppe.work_gloves]
    takes = "2 min"
  }

  inspect "contact" {
    title     = "Look at the blue in the bore"
    on        = [part.runner.face.bore]
    criterion = "Blue covers at least three quarters of the bore, all round, and most of it at the wide end."
    critical  = true
    tools     = [tool.hand_lamp]
    takes     = "5 min"
    otherwise = "The taper does not fit. Send runner and shaft back to the workshop together."
  }

  clean "blue_off" {
    title    = "Wash the blue off taper and bore"
    on       = [part.shaft.face.taper, part.runner.face.bore]
    supplies = [supply.solvent, supply.rags]
    ppe      = [ppe.work_gloves]
    takes    = "5 min"
  }

  hold "contact" {
    title   = "Stop until a second person has seen the contact"
    checks  = [inspect.contact]
    before  = fit.runner
    release = "second person"
    takes   = "3 min"
    text    = "Show a photograph of the blue, or the rags and the bore."
  }

  fit "key" {
    title = "Tap the runner key into its keyway"
    part  = part.runner_key
    tools = [tool.soft_mallet]
    takes = "3 min"
  }

  fit "runner" {
    title  = "Push the runner onto the taper"
    part   = part.runner
    facing = "The curved edges of the blades point towards the nut"
    ppe    = [ppe.work_gloves]
    takes  = "5 min"
  }

  fit "washer" {
    title = "Lay the runner washer on"
    part  = part.runner_washer
    takes = "1 min"
  }

  coat "thread" {
    title    = "Oil the thread of the shaft end"
    on       = [fastening.runner_nut]
    supplies = [supply.engine_oil]
    takes    = "2 min"
  }

  fit "nut" {
    title     = "Run the runner nut on by hand"
    fastening = fastening.runner_nut
    takes     = "2 min"
  }

  torque "nut" {
    title     = "Tighten the runner nut to the next slot"
    fastening = fastening.runner_nut
    tools     = [tool.torque_wrench_lbft, tool.socket_3_4_in]
    held_by   = tool.shaft_bar
    ppe       = [ppe.work_gloves]
    people    = 2
    critical  = true
    takes     = "10 min"
    text      = <<-EOT
      A second person holds the bar in the drive keyway. Stop as soon as the
      wrench is inside the band, and go on only until a slot meets the hole.
      Should none meet it below the upper end, take the nut off and face its
      washer on a flat stone. Never turn the nut back to a slot.
    EOT
  }

  inspect "nut" {
    title     = "Try the runner nut again with the wrench"
    on        = [fastening.runner_nut]
    tools     = [tool.torque_wrench_lbft, tool.socket_3_4_in]
    people    = 2
    criterion = "A second person sets the wrench to the lower end of the band, and it clicks before the nut moves."
    critical  = true
    takes     = "5 min"
    otherwise = "Tighten the nut again, and have it tried again."
  }

  lock "nut" {
    title     = "Put the split pin through the nut"
    fastening = fastening.runner_nut
    by        = part.split_pin
    tools     = [tool.pliers]
    ppe       = [ppe.goggles]
    takes     = "3 min"
    text      = "Bend one leg over the end of the shaft and the other down the flat of the nut."
  }

  inspect "pin" {
    title     = "Look at the split pin"
    on        = [part.split_pin]
    criterion = "The head lies in a slot, both legs are bent, and neither is cracked."
    critical  = true
    takes     = "2 min"
    otherwise = "Draw the pin, throw it away and fit a new one."
  }

  measure "runout" {
    title     = "Measure the run-out of the runner rim"
    on        = [part.runner.face.rim]
    tools     = [tool.dial_indicator_in]
    likely    = "0..0.006 in"
    accept    = limit.runner_runout
    takes     = "10 min"
    text      = "Turn the shaft by its drive end through one turn, and read the difference between highest and lowest."
    otherwise = "Stop, and ask the workshop with the reading at hand."
  }

  hold "runner" {
    title   = "Stop until the runner nut has been signed for"
    checks  = [torque.nut, inspect.nut, inspect.pin]
    before  = procedure.casing.fit.cartridge
    release = "second person"
    takes   = "3 min"
  }
}
