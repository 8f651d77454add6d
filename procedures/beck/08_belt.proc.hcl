procedure "belt" {
  title = "Line up the belt"
  after = [procedure.generator]
  when  = option.drive == "belt"
  intro = "The belt lets the generator stand beside the turbine. It asks for less truth than the coupling, and for a second look after the first hours."

  fit "turbine_pulley" {
    title = "Slide the pulley onto the turbine shaft"
    part  = part.turbine_pulley
    takes = "3 min"
  }

  fit "generator_pulley" {
    title = "Slide the pulley onto the generator shaft"
    part  = part.generator_pulley
    takes = "3 min"
  }

  coat "pulley_screws" {
    title    = "Wet the pulley set screws with threadlocker"
    on       = [fastening.pulley_screws]
    supplies = [supply.threadlocker_medium]
    takes    = "1 min"
  }

  fit "pulley_screws" {
    title     = "Start the pulley set screws by hand"
    fastening = fastening.pulley_screws
    takes     = "2 min"
  }

  torque "pulley_screws" {
    title     = "Tighten the pulley set screws"
    fastening = fastening.pulley_screws
    tools     = [tool.torque_wrench_lbin, tool.hex_bit_5_32_in]
    takes     = "3 min"
  }

  fit "belt" {
    title = "Lay the belt over both pulleys"
    part  = part.belt
    takes = "3 min"
    text  = "Push the generator in first. Never roll a belt on over the edge of a pulley."
  }

  adjust "tension" {
    title      = "Pull the generator out until the belt has its tension"
    on         = [part.belt]
    tools      = [tool.spring_balance, tool.steel_rule]
    likely     = "10..40 N"
    accept     = limit.belt_force
    locks_with = fastening.foot_bolts
    takes      = "10 min"
    otherwise  = "Move the generator and try again."
    text       = "Hook the balance to the belt half way between the pulleys, and pull square to it."
  }

  torque "feet" {
    title     = "Tighten the foot bolts"
    fastening = fastening.foot_bolts
    tools     = [tool.torque_wrench_lbft, tool.socket_9_16_in, tool.spanner_9_16_in]
    takes     = "10 min"
  }

  measure "tension_again" {
    title     = "Measure the tension of the belt again"
    on        = [part.belt]
    tools     = [tool.spring_balance]
    likely    = "15..35 N"
    accept    = limit.belt_force
    takes     = "3 min"
    otherwise = "Slacken the foot bolts and set the tension again."
  }

  inspect "in_line" {
    title     = "Lay a straight edge across both pulleys"
    on        = [part.turbine_pulley.feature.face, part.generator_pulley.feature.face]
    tools     = [tool.straight_edge]
    criterion = "The edge touches both faces over their whole width."
    takes     = "3 min"
    otherwise = "Slacken the foot bolts and swing the generator until it does."
  }
}
