procedure "ignition_magneto" {
  title = "Fit the magneto"
  after = [procedure.clearances]
  when  = option.ignition == "magneto"

  run "to_the_firing_line" {
    title     = "Turn the flywheel to the firing line"
    on        = [part.crankshaft]
    by        = "hand"
    marks     = [procedure.flywheel.mark.firing, part.crankcase.mark.pointer]
    takes     = "2 min"
    criterion = "The firing line is at the pointer, reached in the running direction."
    otherwise = "Turn back by a quarter turn, and come up to the line again."
  }

  fit "drive_dog" {
    title  = "Push the drive dog into the camshaft's end"
    part   = part.drive_dog
    facing = "Wide slot up"
    takes  = "1 min"
  }

  coat "drive_dog" {
    title    = "Grease the slot of the drive dog"
    on       = [part.drive_dog.feature.slot]
    supplies = [supply.grease]
    takes    = "1 min"
  }

  fit "magneto" {
    title = "Slide the magneto over its studs"
    part  = part.magneto
    align = [part.magneto.mark.line, part.timing_cover.mark.line]
    takes = "4 min"
    text  = "Turn the magneto's shaft until its line shows in the window. Then the dog drops in by itself."
  }

  fit "magneto_nuts" {
    title     = "Start both magneto nuts by hand"
    fastening = fastening.magneto_nuts
    takes     = "1 min"
  }

  torque "magneto_nuts" {
    title     = "Tighten the magneto"
    fastening = fastening.magneto_nuts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "2 min"
  }

  inspect "click" {
    title     = "Listen for the impulse at the firing line"
    on        = [part.magneto]
    marks     = [procedure.flywheel.mark.tdc, part.crankcase.mark.pointer]
    takes     = "3 min"
    criterion = "Turned slowly forwards by hand, the magneto clicks once each turn, within 10 mm of rim of the punch mark."
    otherwise = "Stop. Take the magneto off, and set its line in the window again."
    why       = "The impulse delays the spark until the top for starting, and lets go above 200 rpm."
  }
}
