procedure "ignition_coil" {
  title = "Fit the coil ignition"
  after = [procedure.clearances]
  when  = option.ignition == "coil"
  intro = "One coil feeds both plugs at once. One spark fires its barrel; the other meets spent gas and does nothing."

  run "to_the_firing_line" {
    title     = "Turn the flywheel to the firing line"
    on        = [part.crankshaft]
    by        = "hand"
    marks     = [procedure.flywheel.mark.firing, part.crankcase.mark.pointer]
    takes     = "2 min"
    criterion = "The firing line is at the pointer, reached in the running direction."
    otherwise = "Turn back by a quarter turn, and come up to the line again."
  }

  clean "contacts" {
    title    = "Wipe the contacts with solvent"
    on       = [part.breaker_plate.feature.contacts]
    supplies = [supply.solvent, supply.rags]
    takes    = "2 min"
  }

  fit "breaker_plate" {
    title = "Set the breaker plate in the timing cover"
    part  = part.breaker_plate
    align = [part.breaker_plate.mark.line, part.timing_cover.mark.line]
    takes = "2 min"
  }

  fit "breaker_screws" {
    title     = "Start both breaker screws by hand"
    fastening = fastening.breaker_screws
    takes     = "1 min"
  }

  adjust "gap" {
    title      = "Set the breaker gap"
    on         = [part.breaker_plate.feature.contacts]
    tools      = [tool.feeler_gauges, tool.screwdriver]
    accept     = limit.breaker_gap
    locks_with = fastening.breaker_screws
    otherwise  = "Move the plate in its slot, and try the leaf again."
    takes      = "5 min"
    text       = "Turn the crankshaft until the contacts are fully open."
  }

  torque "breaker_screws" {
    title     = "Tighten the breaker screws"
    fastening = fastening.breaker_screws
    tools     = [tool.torque_wrench_20, tool.socket_8]
    takes     = "2 min"
  }

  measure "gap" {
    title  = "Measure the breaker gap again"
    on     = [part.breaker_plate.feature.contacts]
    tools  = [tool.feeler_gauges]
    accept = limit.breaker_gap
    takes  = "2 min"

    otherwise {
      text = "Slacken both screws by half a turn, and set the gap again."

      loosen "breaker_screws" {
        title     = "Slacken the breaker screws"
        fastening = fastening.breaker_screws
        by        = "1/2 turn"
        tools     = [tool.socket_8]
        takes     = "1 min"
      }

      then = adjust.gap
    }
  }

  inspect "lamp" {
    title     = "Watch the test lamp as the contacts open"
    on        = [part.breaker_plate.feature.contacts]
    tools     = [tool.test_lamp]
    marks     = [procedure.flywheel.mark.firing, part.crankcase.mark.pointer]
    takes     = "4 min"
    criterion = "The lamp changes within 5 mm of rim either side of the firing line."
    otherwise = "Stop. Take the plate out and turn it by one notch of its slot."
  }

  fit "breaker_cover" {
    title = "Clip the breaker cover on"
    part  = part.breaker_cover
    takes = "1 min"
  }

  fit "coil" {
    title = "Set the coil on its bracket"
    part  = part.coil
    takes = "2 min"
  }

  fit "coil_bolts" {
    title     = "Start both coil bolts by hand"
    fastening = fastening.coil_bolts
    takes     = "1 min"
  }

  torque "coil_bolts" {
    title     = "Tighten the coil"
    fastening = fastening.coil_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "1 min"
  }
}
