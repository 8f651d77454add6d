procedure "coupling" {
  title = "Line up the coupling"
  after = [procedure.generator]
  when  = option.drive == "coupling"
  intro = <<-EOT
    The pads of the generator are machined low on purpose. Shims under each foot
    bring its shaft up to the turbine's, and take out the rock of the frame in
    the same go. What a dial reads over a turn is twice what the shafts differ.
  EOT

  fit "turbine_hub" {
    title = "Slide the coupling hub onto the turbine shaft"
    part  = part.turbine_hub
    takes = "3 min"
  }

  fit "spider" {
    title = "Press the rubber spider into the hub by hand"
    part  = part.spider
    takes = "1 min"
  }

  fit "generator_hub" {
    title = "Slide the coupling hub onto the generator shaft"
    part  = part.generator_hub
    takes = "3 min"
    text  = "Bring it up to the spider until a business card just fits between."
  }

  coat "hub_screws" {
    title    = "Wet the hub set screws with threadlocker"
    on       = [fastening.hub_screws]
    supplies = [supply.threadlocker_medium]
    takes    = "1 min"
  }

  fit "hub_screws" {
    title     = "Start the hub set screws by hand"
    fastening = fastening.hub_screws
    takes     = "2 min"
  }

  torque "hub_screws" {
    title     = "Tighten the hub set screws"
    fastening = fastening.hub_screws
    tools     = [tool.torque_wrench_lbin, tool.hex_bit_5_32_in]
    takes     = "3 min"
  }

  measure "rim" {
    title        = "Measure how low the generator stands"
    on           = [part.generator_hub.feature.rim]
    tools        = [tool.dial_indicator_in]
    likely       = "0.0400..0.1000 in"
    repeat       = 2
    agree_within = "0.0010 in"
    take         = "mean"
    takes        = "10 min"
    otherwise    = "See that the stand does not sag, and measure again."
    text         = <<-EOT
      Clamp the stand to the turbine hub with the tip on the rim of the other.
      Set the dial to zero at the top. Turn both shafts together by half a turn,
      and read the dial at the bottom.
    EOT
  }

  calculate "lift" {
    title = "Work out how far the generator must rise"
    is    = measure.rim / 2
    takes = "2 min"
  }

  measure "foot_gap" {
    title     = "Measure the gap under the foot, ${place}"
    on        = [part.generator]
    tools     = [tool.dial_indicator_in]
    at_each   = places.foot
    likely    = "0..0.0080 in"
    figures   = [figure.feet]
    takes     = "5 min"
    otherwise = "The frame is bent or dirt lies under a foot. Clear it, and measure again."
    text      = "Stand the dial on the pad with its tip on the foot. Press the foot down and read how far it goes."
  }

  choose "foot_pack" {
    title     = "Choose the shims for the foot, ${place}"
    from      = part.foot_shim
    at_each   = places.foot
    pieces    = "1..4"
    gap       = calculate.lift + measure.foot_gap
    leaves    = limit.foot_fit
    prefer    = "nearest"
    takes     = "3 min"
    otherwise = "Ask the workshop for a machined plate."
  }

  fit "foot_shims" {
    title   = "Slide the shims under the foot, ${place}: ${choose.foot_pack}"
    part    = choose.foot_pack
    at_each = places.foot
    tools   = [tool.pry_bar]
    ppe     = [ppe.work_gloves]
    people  = 2
    takes   = "5 min"
    text    = "One person lifts the foot with the bar, the other pushes the slots round the bolt."
  }

  adjust "side" {
    title      = "Shift the generator sideways until the coupling runs true"
    on         = [part.generator_hub.feature.rim]
    tools      = [tool.dial_indicator_in, tool.soft_mallet]
    likely     = "0..0.0300 in"
    accept     = limit.coupling_rim
    locks_with = fastening.foot_bolts
    takes      = "15 min"
    otherwise  = "Tap the generator towards the side that reads less, and read again."
  }

  torque "feet" {
    title     = "Tighten the foot bolts"
    fastening = fastening.foot_bolts
    tools     = [tool.torque_wrench_lbft, tool.socket_9_16_in, tool.spanner_9_16_in]
    takes     = "10 min"
  }

  measure "rim_again" {
    title     = "Measure the rim once more with the feet tightened"
    on        = [part.generator_hub.feature.rim]
    tools     = [tool.dial_indicator_in]
    likely    = "0..0.0100 in"
    accept    = limit.coupling_rim
    takes     = "5 min"
    otherwise = "Slacken the foot bolts, read the gap under each foot again, and line up anew."
  }

  example "a low generator on a frame that rocks" {
    readings = {
      measure.rim                     = "0.0640 in"
      measure.foot_gap["front left"]  = "0.0000 in"
      measure.foot_gap["front right"] = "0.0040 in"
      measure.foot_gap["rear left"]   = "0.0060 in"
      measure.foot_gap["rear right"]  = "0.0020 in"
    }
    gives = {
      calculate.lift                        = "0.032 in"
      choose.foot_pack["front left"].total  = "0.032 in"
      choose.foot_pack["front right"].total = "0.036 in"
      choose.foot_pack["rear left"].total   = "0.038 in"
      choose.foot_pack["rear right"].result = "0.000 in"
    }
    shown = true
  }
}
