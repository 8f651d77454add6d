procedure "breathing" {
  title = "Fit carburettor, inlet and exhaust"
  after = [procedure.clearances]

  fit "carburettor" {
    title  = "Set the carburettor on its pedestal"
    part   = part.carburettor
    facing = "Float bowl aft"
    takes  = "2 min"
  }

  fit "carburettor_bolts" {
    title     = "Start both carburettor bolts by hand"
    fastening = fastening.carburettor_bolts
    takes     = "1 min"
  }

  torque "carburettor_bolts" {
    title     = "Tighten the carburettor"
    fastening = fastening.carburettor_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "1 min"
  }

  clean "ports" {
    title    = "Wipe the inlet and exhaust faces, ${place}"
    on       = [part.head.face.inlet, part.head.face.exhaust]
    at_each  = places.side
    supplies = [supply.solvent, supply.rags]
    takes    = "2 min"
  }

  fit "inlet_gasket" {
    title   = "Hang the inlet gasket on its studs"
    part    = part.inlet_gasket
    at_each = places.side
    takes   = "1 min"
  }

  fit "inlet_pipe" {
    title   = "Plug the inlet pipe into the carburettor"
    part    = part.inlet_pipe
    at_each = places.side
    takes   = "2 min"
    text    = "Push the plain end in first, then swing the flange over its studs."
  }

  fit "inlet_nuts" {
    title     = "Start both inlet nuts by hand"
    fastening = fastening.inlet_nuts
    at_each   = places.side
    takes     = "1 min"
  }

  torque "inlet_nuts" {
    title     = "Tighten the inlet pipe"
    fastening = fastening.inlet_nuts
    at_each   = places.side
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "2 min"
  }

  fit "exhaust_gasket" {
    title   = "Hang the exhaust gasket on its studs"
    part    = part.exhaust_gasket
    at_each = places.side
    takes   = "1 min"
  }

  coat "exhaust_studs" {
    title    = "Wipe anti-seize on the exhaust studs"
    on       = [fastening.exhaust_nuts]
    at_each  = places.side
    supplies = [supply.anti_seize]
    takes    = "1 min"
    why      = "In three seasons you will want these nuts to come off."
  }

  fit "exhaust_pipe" {
    title   = "Hang the exhaust pipe on its studs"
    part    = part.exhaust_pipe
    at_each = places.side
    facing  = "Elbow down"
    takes   = "2 min"
  }

  fit "exhaust_nuts" {
    title     = "Start both exhaust nuts by hand"
    fastening = fastening.exhaust_nuts
    at_each   = places.side
    takes     = "1 min"
  }

  torque "exhaust_nuts" {
    title     = "Tighten the exhaust pipe"
    fastening = fastening.exhaust_nuts
    at_each   = places.side
    tools     = [tool.torque_wrench_20, tool.socket_13_quarter]
    takes     = "2 min"
  }

  fit "flame_trap" {
    title = "Clip the flame trap onto the carburettor"
    part  = part.flame_trap
    takes = "1 min"
    why   = "An engine that spits back does so into a closed hull. The trap keeps the flame inside the carburettor."
  }
}
