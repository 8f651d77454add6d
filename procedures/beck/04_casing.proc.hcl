procedure "casing" {
  title = "Set the casing up and close it on the runner"
  after = [procedure.runner]
  intro = <<-EOT
    The casing goes on the bed plate, the guide vanes go into the casing, and
    the cartridge goes in behind them. Shims at the housing flange decide how
    close the runner comes to its ring seat. Too close, and it rubs when the
    casing is cold; too far, and the water goes past it unpaid.
  EOT

  fit "casing" {
    title  = "Lower the casing onto the bed plate"
    part   = part.casing
    facing = "The inlet flange faces the penstock valve"
    tools  = [tool.hoist]
    ppe    = [ppe.boots, ppe.work_gloves]
    people = 2
    takes  = "15 min"
  }

  fit "casing_bolts" {
    title     = "Start the casing bolts by hand"
    fastening = fastening.casing_bolts
    takes     = "5 min"
  }

  torque "casing" {
    title     = "Tighten the casing bolts"
    fastening = fastening.casing_bolts
    tools     = [tool.torque_wrench_lbft, tool.socket_9_16_in, tool.spanner_9_16_in]
    takes     = "10 min"
    text      = "Hold each head with the spanner and turn its nut."
  }

  coat "vane_pins" {
    title    = "Grease the pins of the guide vanes"
    on       = [part.guide_vane.feature.pin]
    supplies = [supply.grease]
    takes    = "5 min"
  }

  fit "vanes" {
    title    = "Drop the eight guide vanes into their ring"
    part     = part.guide_vane
    quantity = 8
    takes    = "15 min"
  }

  inspect "vanes_swing" {
    title     = "Swing each guide vane"
    on        = [part.guide_vane]
    criterion = "Each vane falls freely through its whole way."
    takes     = "5 min"
    otherwise = "Take the vane out and dress its pin with the oil stone."
  }

  clean "ring_threads" {
    title    = "Wash the vane ring screws and their threads"
    on       = [fastening.vane_ring_screws, part.vane_ring.face.back]
    supplies = [supply.solvent, supply.rags]
    takes    = "5 min"
    why      = "Threadlocker holds on clean metal only."
  }

  fit "vane_ring" {
    title = "Set the vane ring into the casing"
    part  = part.vane_ring
    align = [part.vane_ring.mark.top, part.casing.mark.top]
    takes = "5 min"
  }

  coat "ring_threads" {
    title    = "Wet the vane ring screws with threadlocker"
    on       = [fastening.vane_ring_screws]
    supplies = [supply.threadlocker_medium]
    takes    = "2 min"
  }

  fit "ring_screws" {
    title     = "Start the vane ring screws by hand"
    fastening = fastening.vane_ring_screws
    takes     = "3 min"
  }

  torque "ring" {
    title     = "Tighten the vane ring screws"
    fastening = fastening.vane_ring_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_7_16_in]
    takes     = "5 min"
  }

  adjust "opening" {
    title      = "Set the opening of the guide vanes"
    on         = [part.vane_ring]
    tools      = [tool.feeler_gauges_in, tool.spanner_1_2_in]
    likely     = "0.020..0.040 in"
    accept     = limit.vane_opening
    locks_with = fastening.vane_lock_nut
    takes      = "10 min"
    otherwise  = "Turn the adjuster and try the feelers again."
    text       = "Hold the ring against its stop and read the gap between two neighbouring vanes."
  }

  torque "vane_lock_nut" {
    title     = "Tighten the lock nut of the adjuster"
    fastening = fastening.vane_lock_nut
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "3 min"
  }

  measure "opening" {
    title  = "Measure the opening again"
    on     = [part.vane_ring]
    tools  = [tool.feeler_gauges_in]
    likely = "0.020..0.040 in"
    accept = limit.vane_opening
    takes  = "3 min"

    otherwise {
      text = "The lock nut has moved the adjuster."
      then = adjust.opening

      loosen "vane_lock_nut" {
        title     = "Slacken the lock nut"
        fastening = fastening.vane_lock_nut
        by        = "1/2 turn"
        tools     = [tool.spanner_1_2_in]
        takes     = "1 min"
      }
    }
  }

  clean "flanges" {
    title    = "Wash the rear flange and the ring seat"
    on       = [part.casing.face.rear_flange, part.casing.feature.ring_seat, part.bearing_housing.face.flange]
    supplies = [supply.solvent, supply.rags]
    takes    = "5 min"
    why      = "A crumb under the depth gauge is a shim too many."
  }

  measure "casing_depth" {
    title        = "Measure from the rear flange down to the ring seat"
    on           = [part.casing.face.rear_flange, part.casing.feature.ring_seat]
    tools        = [tool.depth_gauge_in]
    likely       = "4.0000..4.0100 in"
    spots        = ["top", "right", "bottom", "left"]
    agree_within = "0.0020 in"
    take         = "mean"
    takes        = "10 min"
    otherwise    = "Wash the seat and the flange, and measure again."
  }

  measure "runner_height" {
    title        = "Measure from the housing flange up to the runner rim"
    on           = [part.bearing_housing.face.flange, part.runner.face.rim]
    tools        = [tool.depth_gauge_in]
    likely       = "4.0050..4.0150 in"
    spots        = ["1", "2", "3", "4"]
    agree_within = "0.0040 in"
    take         = "mean"
    takes        = "10 min"
    otherwise    = "Read the run-out of the rim again, and ask the workshop."
    text         = "Pull the shaft towards the runner first. Its float is part of the height."
  }

  choose "housing_pack" {
    title     = "Choose the housing shims"
    from      = part.housing_shim
    pieces    = "1..3"
    base      = measure.casing_depth - measure.runner_height
    makes     = limit.runner_clearance
    takes     = "5 min"
    otherwise = "Send both readings to the workshop. Do not file a shim."
  }

  fit "o_ring" {
    title    = "Roll the O-ring into the groove of the spigot"
    part     = part.housing_o_ring
    supplies = [supply.rubber_grease]
    takes    = "3 min"
  }

  fit "housing_shims" {
    title = "Lay the housing shims round the spigot: ${choose.housing_pack}"
    part  = choose.housing_pack
    takes = "3 min"
  }

  fit "cartridge" {
    title   = "Slide the cartridge into the casing"
    part    = part.bearing_housing
    facing  = "The gland window looks upwards"
    figures = [figure.section]
    tools   = [tool.hoist]
    ppe     = [ppe.boots, ppe.work_gloves]
    people  = 2
    takes   = "20 min"
    text    = <<-EOT
      Hang the cartridge level. One person keeps the load on the hoist, the
      other steers the runner past the vanes. Nothing may be forced.
    EOT
  }

  fit "housing_bolts" {
    title     = "Start the housing bolts by hand"
    fastening = fastening.housing_bolts
    takes     = "5 min"
  }

  torque "housing" {
    title     = "Tighten the housing bolts"
    fastening = fastening.housing_bolts
    tools     = [tool.torque_wrench_lbft, tool.socket_9_16_in]
    takes     = "10 min"
  }

  run "turn" {
    title     = "Turn the runner three turns by hand"
    on        = [part.shaft]
    by        = "hand"
    criterion = "It turns without a rub or a scrape."
    takes     = "3 min"
    otherwise = "Find what it touches with a lamp through the outlet. Do not go on."
  }

  measure "clearance" {
    title     = "Measure the clearance at the ring seat through the outlet"
    on        = [part.runner.face.rim, part.casing.feature.ring_seat]
    tools     = [tool.feeler_gauges_in, tool.inspection_mirror]
    likely    = "0.008..0.018 in"
    accept    = limit.runner_clearance
    spots     = ["top", "right", "bottom", "left"]
    take      = "each"
    takes     = "10 min"
    otherwise = "Pull the cartridge, measure depth and height again, and choose again."
  }

  hold "clearance" {
    title   = "Stop until a second person has read the clearance"
    checks  = [measure.clearance]
    before  = fit.draft_elbow
    release = "second person"
    takes   = "5 min"
  }

  clean "elbow" {
    title    = "Wash the front flange and the flange of the elbow"
    on       = [part.casing.face.front_flange, part.draft_elbow.face.flange]
    supplies = [supply.solvent, supply.rags]
    takes    = "5 min"
  }

  seal "front" {
    title     = "Draw a bead of sealant round the front flange"
    on        = [part.casing.face.front_flange]
    between   = [part.casing.face.front_flange, part.draft_elbow.face.flange]
    supplies  = [supply.flange_sealant]
    closed_by = fit.draft_elbow
    takes     = "5 min"
    text      = "Run it inside the bolt holes and round each of them, without a break."
  }

  fit "draft_elbow" {
    title  = "Set the draft elbow on the casing"
    part   = part.draft_elbow
    facing = "The outlet points down into the tail race"
    ppe    = [ppe.boots]
    takes  = "5 min"
  }

  fit "elbow_bolts" {
    title     = "Start the elbow bolts by hand"
    fastening = fastening.elbow_bolts
    takes     = "5 min"
  }

  torque "elbow" {
    title     = "Tighten the elbow bolts"
    fastening = fastening.elbow_bolts
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "10 min"
  }

  clean "squeeze_out" {
    title    = "Wipe off the sealant that came out"
    on       = [part.casing, part.draft_elbow]
    supplies = [supply.rags]
    ppe      = [ppe.gloves]
    takes    = "3 min"
  }

  example "a runner that stands proud" {
    readings = { measure.casing_depth = "4.0040 in", measure.runner_height = "4.0120 in" }
    gives    = { choose.housing_pack.total = "0.020 in", choose.housing_pack.result = "0.0120 in" }
    shown    = true
  }
}
