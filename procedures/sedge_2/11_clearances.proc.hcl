procedure "clearances" {
  title   = "Set the valve clearances"
  after   = [procedure.flywheel]
  at_each = places.side
  intro   = <<-EOT
    Both pistons come up together, but only one of them on its firing stroke.
    For the second side, turn the crankshaft once more to the same mark.
  EOT

  run "to_the_mark" {
    title     = "Turn the ${place} piston to its firing top"
    on        = [part.crankshaft, part.rocker_gear]
    by        = "hand"
    marks     = [procedure.flywheel.mark.tdc, part.crankcase.mark.pointer]
    takes     = "2 min"
    criterion = "The punch mark is at the pointer, and both rockers of this side can be rocked by hand."
    otherwise = "Turn the crankshaft once round, to the same mark."
  }

  adjust "inlet" {
    title      = "Set the clearance of the inlet valve"
    on         = [part.rocker_gear.feature.inlet_rocker]
    tools      = [tool.feeler_gauges, tool.screwdriver]
    accept     = limit.inlet_clearance
    locks_with = fastening.inlet_lock_nut
    otherwise  = "Turn the adjuster out until the leaf slides again, and begin anew."
    takes      = "4 min"
  }

  torque "inlet_lock_nut" {
    title     = "Tighten the lock nut of the inlet adjuster"
    fastening = fastening.inlet_lock_nut
    tools     = [tool.torque_wrench_20, tool.crowfoot_13_quarter, tool.screwdriver]
    takes     = "2 min"
    text      = "Hold the adjuster with the screwdriver while the nut turns."
  }

  measure "inlet" {
    title  = "Measure the inlet clearance again"
    on     = [part.rocker_gear.feature.inlet_rocker]
    tools  = [tool.feeler_gauges]
    accept = limit.inlet_clearance
    takes  = "2 min"
    why    = "A lock nut carries its adjuster along. It is the reading after it that counts."

    otherwise {
      text = "Slacken the lock nut by half a turn, and set the clearance again."

      loosen "inlet_lock_nut" {
        title     = "Slacken the lock nut of the inlet adjuster"
        fastening = fastening.inlet_lock_nut
        by        = "1/2 turn"
        tools     = [tool.spanner_13]
        takes     = "1 min"
      }

      then = adjust.inlet
    }
  }

  adjust "exhaust" {
    title      = "Set the clearance of the exhaust valve"
    on         = [part.rocker_gear.feature.exhaust_rocker]
    tools      = [tool.feeler_gauges, tool.screwdriver]
    accept     = limit.exhaust_clearance
    locks_with = fastening.exhaust_lock_nut
    otherwise  = "Turn the adjuster out until the leaf slides again, and begin anew."
    takes      = "4 min"
    why        = "The exhaust valve runs hotter, grows longer, and needs the wider gap."
  }

  torque "exhaust_lock_nut" {
    title     = "Tighten the lock nut of the exhaust adjuster"
    fastening = fastening.exhaust_lock_nut
    tools     = [tool.torque_wrench_20, tool.crowfoot_13_quarter, tool.screwdriver]
    takes     = "2 min"
  }

  measure "exhaust" {
    title  = "Measure the exhaust clearance again"
    on     = [part.rocker_gear.feature.exhaust_rocker]
    tools  = [tool.feeler_gauges]
    accept = limit.exhaust_clearance
    takes  = "2 min"

    otherwise {
      text = "Slacken the lock nut by half a turn, and set the clearance again."

      loosen "exhaust_lock_nut" {
        title     = "Slacken the lock nut of the exhaust adjuster"
        fastening = fastening.exhaust_lock_nut
        by        = "1/2 turn"
        tools     = [tool.spanner_13]
        takes     = "1 min"
      }

      then = adjust.exhaust
    }
  }

  inspect "cups" {
    title     = "Look at the cups of both pushrods"
    on        = [part.rocker_gear]
    tools     = [tool.hand_lamp]
    takes     = "2 min"
    criterion = "The ball of each adjuster lies in the cup of its pushrod, and no edge of a cup is chipped."
    otherwise = "Stop. Lift the rocker gear off, and fit another pushrod."
    why       = "A ball beside its cup gives the right clearance once. It slips in at the first start, and the valve no longer opens."
  }

  coat "rockers" {
    title    = "Pour oil over the rocker gear"
    on       = [part.rocker_gear]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
    why      = "Up here oil arrives last."
  }

  clean "rocker_face" {
    title    = "Wipe the rocker face of the head"
    on       = [part.head.face.rocker, part.rocker_cover.face.flange]
    supplies = [supply.rags]
    takes    = "1 min"
  }

  fit "rocker_gasket" {
    title = "Lay the rubber gasket in its groove"
    part  = part.rocker_gasket
    takes = "1 min"
  }

  fit "rocker_cover" {
    title = "Put the rocker cover on"
    part  = part.rocker_cover
    takes = "1 min"
  }

  fit "rocker_knobs" {
    title     = "Start both cover bolts by hand"
    fastening = fastening.rocker_knobs
    takes     = "1 min"
  }

  torque "rocker_knobs" {
    title     = "Tighten the cover bolts"
    fastening = fastening.rocker_knobs
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "1 min"
  }
}
