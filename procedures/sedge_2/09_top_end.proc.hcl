procedure "top_end" {
  title   = "Fit heads and rocker gear"
  after   = [procedure.barrels, procedure.heads]
  at_each = places.side

  clean "faces" {
    title    = "Wipe both faces of the head joint"
    on       = [part.barrel.face.top, part.head.face.gasket]
    supplies = [supply.solvent, supply.rags]
    takes    = "4 min"
  }

  fit "head_gasket" {
    title  = "Hang the head gasket on the studs"
    part   = part.head_gasket
    facing = "TOP towards you"
    takes  = "1 min"
    why    = "The gasket is dry on both faces. Grease makes it slip when it is hot."
  }

  coat "studs" {
    title    = "Oil the threads of the head studs"
    on       = [fastening.head_nuts]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "head" {
    title  = "Slide the head onto its studs"
    part   = part.head
    facing = "Exhaust port down"
    takes  = "2 min"
  }

  fit "head_nuts" {
    title     = "Start the six head nuts by hand"
    fastening = fastening.head_nuts
    takes     = "2 min"
  }

  torque "head_nuts" {
    title     = "Tighten the head"
    fastening = fastening.head_nuts
    tools     = [tool.torque_wrench_100, tool.socket_16]
    takes     = "8 min"
    text      = "Finish each stage on all six nuts before you set the wrench to the next."
    why       = "The gasket flattens in steps. One nut ahead of the others tilts the head for good."
  }

  coat "pushrods" {
    title    = "Dip both ends of the pushrods in oil"
    on       = [part.pushrod]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "pushrods" {
    title = "Stand both pushrods in their tappets"
    part  = part.pushrod
    takes = "2 min"
    text  = "Rattle each one in its cup. A pushrod beside its cup feels springy."
  }

  coat "rocker_bolts" {
    title    = "Oil the rocker bolts"
    on       = [fastening.rocker_bolts]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "rocker_gear" {
    title  = "Set the rocker gear on the head"
    part   = part.rocker_gear
    facing = "Oil hole towards the crankcase"
    takes  = "2 min"
    text   = "Screw both adjusters right back first, so that no valve is pushed open."
  }

  fit "rocker_bolts" {
    title     = "Start both rocker bolts by hand"
    fastening = fastening.rocker_bolts
    takes     = "1 min"
  }

  torque "rocker_bolts" {
    title     = "Tighten the rocker gear"
    fastening = fastening.rocker_bolts
    tools     = [tool.torque_wrench_20, tool.socket_13_quarter]
    takes     = "4 min"
    text      = "Go from bolt to bolt by half turns, so that the pedestal comes down level."
  }

  run "by_hand" {
    title     = "Turn the crankshaft twice by hand"
    on        = [part.crankshaft, part.rocker_gear]
    by        = "hand"
    takes     = "2 min"
    criterion = "Both rockers move, and both valves close again."
    otherwise = "Stop. Lift the rocker gear off, and look for a pushrod beside its cup."
  }
}
