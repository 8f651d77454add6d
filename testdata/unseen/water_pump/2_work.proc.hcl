procedure "wet_end" {
  title = "Build the wet end"
  fit "motor" {
    title = "Stand the motor on the bench"
    part  = part.motor
    text  = "The plug stays out of the wall."
  }
  fit "impeller" {
    title = "Slide the impeller on the shaft"
    part  = part.impeller
  }
  fit "impeller_nut" {
    title     = "Start the impeller nut by hand"
    fastening = fastening.impeller
    text      = "It has a left-hand thread: turn it anticlockwise."
  }
  torque "impeller" {
    title     = "Tighten the impeller nut"
    fastening = fastening.impeller
    tools     = [tool.wrench, tool.socket_13]
    held_by   = tool.strap
  }
  measure "tip" {
    title     = "Measure the gap at the impeller"
    on        = part.impeller
    tools     = tool.feelers
    spots     = 3
    take      = "smallest"
    likely    = "0.10..1.00 mm"
    accept    = limit.tip
    otherwise = "Stop. Ask the workshop for another impeller."
  }
  clean "joint" {
    title    = "Wash both joint faces"
    on       = [part.motor.face.flange, part.volute.face.joint]
    supplies = supply.cleaner
    takes    = "3 min"
  }
  seal "joint" {
    title      = "Lay a 3 mm bead of silicone on the flange"
    on         = part.motor.face.flange
    between    = [part.motor.face.flange, part.volute.face.joint]
    keep_clear = part.volute.port.priming
    supplies   = supply.silicone
    closed_by  = fit.volute
    takes      = "2 min"
  }
  fit "volute" {
    title = "Set the volute on the flange"
    part  = part.volute
    takes = "1 min"
  }
  fit "bolts" {
    title     = "Start the six bolts by hand"
    fastening = fastening.volute
    takes     = "2 min"
  }
  torque "bolts" {
    title     = "Tighten the volute bolts"
    fastening = fastening.volute
    tools     = [tool.wrench, tool.socket_10]
    takes     = "4 min"
  }
  clean "squeeze" {
    title = "Wipe off the sealant that came out"
    on    = [part.volute, part.motor]
    takes = "2 min"
    ppe   = ppe.gloves
  }
  wait "cure" {
    title = "Let the sealant cure"
    until = seal.joint
  }
}
procedure "first_run" {
  title = "Fill the pump and run it"
  after = [procedure.wet_end]
  fill "prime" {
    title    = "Fill the pump with water"
    on       = part.volute
    through  = part.volute.port.priming
    supplies = supply.water
    amount   = "0.8 L"
  }
  fit "plug" {
    title     = "Start the priming plug by hand"
    fastening = fastening.plug
  }
  torque "plug" {
    title     = "Tighten the priming plug"
    fastening = fastening.plug
    tools     = [tool.wrench, tool.socket_17]
  }
  hold "before_current" {
    title   = "Stop before the current is switched on"
    checks  = [procedure.wet_end.torque.bolts, procedure.wet_end.measure.tip, torque.plug]
    before  = run.current
    release = "second person"
  }
  run "current" {
    title = "Run the pump for one minute"
    on    = part.motor
    by    = "electric"
    takes = "1 min"
    text  = "Keep your hands dry. Switch on at the protected socket."
  }
  inspect "leaks" {
    title     = "Look for leaks at the joint"
    on        = part.volute
    criterion = "The joint is dry all round after one minute"
    otherwise = "Pull out the plug and call the workshop."
  }
}
