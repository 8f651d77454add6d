procedure "cartridge" {
  title = "Build the bearing cartridge"
  after = [procedure.site]
  intro = <<-EOT
    Housing, shaft and two taper bearings become one cartridge on the bench. The
    bearing cap pushes the outer cup inwards; shims under the cap stop it where
    the shaft still has a few thou of float. You find the shims with a ring of
    known thickness, so nothing is guessed.
  EOT

  clean "bores" {
    title    = "Wash the bores of the housing"
    on       = [part.bearing_housing.feature.runner_bore, part.bearing_housing.feature.drive_bore, part.bearing_housing.face.cap_face]
    supplies = [supply.solvent, supply.rags]
    takes    = "10 min"
  }

  clean "journals" {
    title    = "Wash the bearing journals of the shaft"
    on       = [part.shaft.feature.runner_journal, part.shaft.feature.drive_journal]
    supplies = [supply.solvent, supply.rags]
    takes    = "5 min"
  }

  inspect "journals" {
    title     = "Draw a fingernail along both journals"
    on        = [part.shaft.feature.runner_journal, part.shaft.feature.drive_journal]
    criterion = "The nail catches on no burr or score."
    takes     = "5 min"
    otherwise = "Take a burr off with the fine oil stone. A scored shaft goes back to the workshop."
    tools     = [tool.oil_stone]
  }

  heat "cone" {
    title   = "Warm the cone for ${place} in the oven"
    on      = [part.cone]
    tools   = [tool.oven]
    ppe     = [ppe.heat_gloves]
    to      = "200..230 °F"
    at_each = places.end
    takes   = "25 min"
    why     = "Hotter than that, the steel begins to lose its hardness."
  }

  fit "cone" {
    title   = "Slide the cone onto the shaft, ${place}"
    part    = part.cone
    facing  = "The wide end of the rollers rests against the shoulder in the middle of the shaft"
    ppe     = [ppe.heat_gloves]
    at_each = places.end
    after   = [heat.cone]
    within  = "3 min"
    takes   = "1 min"
    text    = "Push it home in one movement and hold it against the shoulder for a slow count of twenty."
  }

  wait "cones_cool" {
    title = "Let both cones cool"
    until = [heat.cone]
    takes = "30 min"
  }

  fit "runner_cup" {
    title  = "Press the cup of the runner end into the housing"
    part   = part.runner_cup
    tools  = [tool.press, tool.cup_drift]
    ppe    = [ppe.goggles]
    takes  = "10 min"
    facing = "The narrow end of the taper faces into the housing"
  }

  inspect "cup_seated" {
    title     = "Try the seat of the cup with the thinnest feeler"
    on        = [part.runner_cup]
    tools     = [tool.feeler_gauges_in]
    criterion = "The 1.5 thou blade enters nowhere between cup and shoulder."
    takes     = "5 min"
    otherwise = "Press the cup on until the blade no longer enters."
  }

  coat "bearings" {
    title    = "Pack both cones with grease"
    on       = [part.cone]
    supplies = [supply.grease]
    takes    = "10 min"
    text     = "Press grease in from the wide end until it shows between all the rollers."
  }

  fit "shaft" {
    title   = "Lower the shaft into the housing"
    part    = part.shaft
    facing  = "The taper leaves the housing at the flange"
    takes   = "5 min"
    figures = [figure.section]
  }

  fit "drive_cup" {
    title  = "Slide the cup of the drive end into its bore"
    part   = part.drive_cup
    facing = "The wide end of the taper faces the rollers"
    takes  = "5 min"
  }

  fit "setting_ring" {
    title = "Lay the setting ring on the housing"
    tool  = tool.setting_ring
    takes = "2 min"
  }

  fit "cap_trial" {
    title   = "Put the cap on over the setting ring"
    part    = part.bearing_cap
    trial   = true
    without = [part.bearing_shim, part.cap_seal]
    takes   = "3 min"
  }

  fit "screws_trial" {
    title     = "Start the cap screws by hand"
    fastening = fastening.cap_screws
    trial     = true
    takes     = "5 min"
  }

  torque "trial" {
    title     = "Tighten the cap screws for the trial"
    fastening = fastening.cap_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "10 min"
  }

  run "seat_rollers" {
    title     = "Turn the shaft ten turns by hand"
    on        = [part.shaft]
    by        = "hand"
    criterion = "It turns evenly and floats lengthwise."
    takes     = "2 min"
    why       = "Turning brings the rollers against their ribs; a still shaft reads short."
    otherwise = "The ring is not flat or a cup is cocked. Take the cap off and seat them again."
  }

  measure "trial_float" {
    title        = "Measure the float over the setting ring"
    on           = [part.shaft]
    tools        = [tool.dial_indicator_in]
    likely       = "0.0140..0.0300 in"
    repeat       = 3
    agree_within = "0.0005 in"
    take         = "mean"
    takes        = "10 min"
    otherwise    = "Look for dirt under the ring, and measure again."
    text         = <<-EOT
      Stand the dial on the cap with its tip on the end of the shaft. Push the
      shaft in while you turn it back and forth; set the dial to zero. Pull it
      out in the same way. Read the dial.
    EOT
  }

  remove "screws" {
    title     = "Take the cap screws out"
    fastening = fastening.cap_screws
    takes     = "5 min"
  }

  remove "cap" {
    title = "Lift the cap off"
    part  = part.bearing_cap
    takes = "2 min"
  }

  remove "setting_ring" {
    title = "Put the setting ring back in its box"
    tool  = tool.setting_ring
    takes = "2 min"
  }

  fit "cap_seal" {
    title  = "Press the grease seal into the cap"
    part   = part.cap_seal
    tools  = [tool.press]
    ppe    = [ppe.goggles]
    facing = "The lip points outwards, away from the bearing"
    takes  = "5 min"
    why    = "Spray from the gland must not get in; old grease may find its way out."
  }

  coat "seal_lip" {
    title    = "Grease the lip of the seal"
    on       = [part.cap_seal]
    supplies = [supply.grease]
    takes    = "2 min"
  }

  choose "bearing_pack" {
    title     = "Choose the bearing shims"
    from      = part.bearing_shim
    pieces    = "2..4"
    base      = measure.trial_float - "0.0600 in"
    makes     = limit.bearing_float
    prefer    = "nearest"
    takes     = "5 min"
    why       = "The ring gave too much float by the difference between it and the pack."
    otherwise = "Send the reading to the workshop; a thicker shim will be ground."
  }

  fit "shims" {
    title = "Lay the shims on the housing: ${choose.bearing_pack}"
    part  = choose.bearing_pack
    takes = "3 min"
  }

  fit "cap" {
    title = "Put the cap on over the shims"
    part  = part.bearing_cap
    takes = "3 min"
    text  = "Turn the cap back and forth as its seal passes the keyway."
  }

  fit "screws" {
    title     = "Start the cap screws by hand, for good"
    fastening = fastening.cap_screws
    takes     = "5 min"
  }

  torque "cap" {
    title     = "Tighten the cap screws"
    fastening = fastening.cap_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "10 min"
  }

  measure "float" {
    title        = "Measure the float with the shims in"
    on           = [part.shaft]
    tools        = [tool.dial_indicator_in]
    likely       = "0.0010..0.0060 in"
    accept       = limit.bearing_float
    repeat       = 3
    agree_within = "0.0005 in"
    take         = "mean"
    takes        = "10 min"
    text         = "Measure as before: turn, push, zero, turn, pull, read."

    otherwise {
      text = "Take the cap off, measure each shim with the micrometer, and choose again by what they are."
      then = choose.bearing_pack
    }
  }

  hold "float" {
    title   = "Stop until the float has been read by a second person"
    checks  = [measure.float]
    before  = procedure.runner.fit.packing
    release = "second person"
    takes   = "5 min"
  }

  example "float in the middle" {
    readings = { measure.trial_float = "0.0230 in" }
    gives    = { choose.bearing_pack.total = "0.040 in", choose.bearing_pack.result = "0.003 in" }
    shown    = true
  }
}
