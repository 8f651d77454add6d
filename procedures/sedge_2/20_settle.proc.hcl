procedure "settle" {
  title = "Go over the engine after its first run"
  after = [procedure.first_start]
  intro = <<-EOT
    A new gasket settles with its first heat, and the head comes down with it.
    So the nuts are pulled again, and the valves measured again.
    The first oil carries what the machining left behind: it goes out today.
  EOT

  remove "drain_plug" {
    title     = "Take the drain plug out"
    fastening = fastening.drain_plug
    tools     = [tool.socket_18, tool.drip_tray]
    ppe       = [ppe.heat_gloves, ppe.goggles]
    takes     = "3 min"

    warning {
      hazard = "The oil is hot enough to scald."
      result = "Scalded hands and arms."
      avoid  = "Wear heat-resistant gloves and goggles. Pull the plug away in one move, with your hand to the side of the hole."
    }
  }

  drain "oil" {
    title   = "Drain the running-in oil"
    on      = [part.sump]
    through = part.sump.port.drain
    tools   = [tool.drip_tray]
    takes   = "20 min"
    why     = "Warm oil takes the swarf along. Take the old oil to a collecting point."
  }

  inspect "swarf" {
    title     = "Look at the drained oil in the light"
    on        = [part.drain_plug]
    tools     = [tool.hand_lamp]
    takes     = "3 min"
    criterion = "Grey shimmer, and at most five specks. No flake that a fingernail can lift."
    otherwise = "Stop. Send Withybrook a photograph of the flakes beside a coin."
  }

  remove "drain_washer" {
    title    = "Peel the old washer off"
    part     = part.drain_washer
    for_good = true
    quantity = 1
    takes    = "1 min"
  }

  fit "drain_washer" {
    title    = "Put the second copper washer on the drain hole"
    part     = part.drain_washer
    quantity = 1
    takes    = "1 min"
  }

  fit "drain_plug" {
    title     = "Start the drain plug by hand"
    fastening = fastening.drain_plug
    takes     = "1 min"
  }

  torque "drain_plug" {
    title     = "Tighten the drain plug again"
    fastening = fastening.drain_plug
    tools     = [tool.torque_wrench_100, tool.socket_18]
    takes     = "1 min"
  }

  wait "cold" {
    title = "Let the engine go cold overnight"
    for   = "10 h"
    why   = "The clearances are given for a cold engine, and a warm head gives a false torque."
  }

  remove "rocker_knobs" {
    title     = "Take the cover bolts out, ${place}"
    fastening = fastening.rocker_knobs
    at_each   = places.side
    tools     = [tool.spanner_10]
    takes     = "1 min"
  }

  remove "rocker_cover" {
    title   = "Lift the ${place} rocker cover off"
    part    = part.rocker_cover
    at_each = places.side
    takes   = "1 min"
    text    = "Leave the rubber gasket in its groove."
  }

  torque "head_nuts" {
    title     = "Pull the ${place} head nuts again"
    fastening = fastening.head_nuts
    at_each   = places.side
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_16]
    takes     = "4 min"
  }

  run "to_the_mark" {
    title     = "Turn the ${place} piston to its firing top"
    on        = [part.crankshaft, part.rocker_gear]
    at_each   = places.side
    by        = "hand"
    marks     = [procedure.flywheel.mark.tdc, part.crankcase.mark.pointer]
    takes     = "2 min"
    criterion = "The punch mark is at the pointer, and both rockers of this side can be rocked by hand."
    otherwise = "Turn the crankshaft once round, to the same mark."

    warning {
      hazard = "An engine that has run can fire when it is turned by hand."
      result = "A broken wrist, a crushed hand."
      avoid  = "Leave the fuel tap closed and the isolating switch open, and pull both leads off their plugs while you turn."
    }
  }

  measure "inlet" {
    title   = "Measure the ${place} inlet clearance"
    on      = [part.rocker_gear.feature.inlet_rocker]
    at_each = places.side
    tools   = [tool.feeler_gauges]
    accept  = limit.inlet_clearance
    likely  = "0.08..0.25 mm"
    takes   = "2 min"

    otherwise {
      when = "below"
      text = "The head has come down. Give the valve its clearance back."

      loosen "inlet_lock_nut" {
        title     = "Slacken the lock nut of the inlet adjuster"
        fastening = fastening.inlet_lock_nut
        by        = "1/2 turn"
        tools     = [tool.spanner_13]
        takes     = "1 min"
      }

      work "inlet_adjuster" {
        title = "Turn the inlet adjuster until the leaf slides"
        on    = [part.rocker_gear.feature.inlet_rocker]
        tools = [tool.feeler_gauges, tool.screwdriver]
        takes = "3 min"
      }

      torque "inlet_lock_nut" {
        title     = "Tighten the lock nut of the inlet adjuster"
        fastening = fastening.inlet_lock_nut
        from      = "loosened"
        tools     = [tool.torque_wrench_20, tool.crowfoot_13_quarter, tool.screwdriver]
        takes     = "2 min"
      }

      then = "read again"
    }
  }

  measure "exhaust" {
    title   = "Measure the ${place} exhaust clearance"
    on      = [part.rocker_gear.feature.exhaust_rocker]
    at_each = places.side
    tools   = [tool.feeler_gauges]
    accept  = limit.exhaust_clearance
    likely  = "0.18..0.35 mm"
    takes   = "2 min"

    otherwise {
      when = "below"
      text = "The head has come down. Give the valve its clearance back."

      loosen "exhaust_lock_nut" {
        title     = "Slacken the lock nut of the exhaust adjuster"
        fastening = fastening.exhaust_lock_nut
        by        = "1/2 turn"
        tools     = [tool.spanner_13]
        takes     = "1 min"
      }

      work "exhaust_adjuster" {
        title = "Turn the exhaust adjuster until the leaf slides"
        on    = [part.rocker_gear.feature.exhaust_rocker]
        tools = [tool.feeler_gauges, tool.screwdriver]
        takes = "3 min"
      }

      torque "exhaust_lock_nut" {
        title     = "Tighten the lock nut of the exhaust adjuster"
        fastening = fastening.exhaust_lock_nut
        from      = "loosened"
        tools     = [tool.torque_wrench_20, tool.crowfoot_13_quarter, tool.screwdriver]
        takes     = "2 min"
      }

      then = "read again"
    }
  }

  fit "rocker_cover" {
    title   = "Put the ${place} rocker cover back"
    part    = part.rocker_cover
    at_each = places.side
    takes   = "1 min"
  }

  fit "rocker_knobs" {
    title     = "Start both cover bolts by hand, ${place}"
    fastening = fastening.rocker_knobs
    at_each   = places.side
    takes     = "1 min"
  }

  torque "rocker_knobs" {
    title     = "Tighten the ${place} cover bolts"
    fastening = fastening.rocker_knobs
    at_each   = places.side
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "1 min"
  }

  remove "oil_cap" {
    title = "Screw the filler cap out"
    part  = part.oil_cap
    takes = "1 min"
  }

  fill "oil" {
    title    = "Fill the sump with fresh oil"
    on       = [part.crankcase]
    through  = part.crankcase.port.oil_filler
    tools    = [tool.funnel, tool.measuring_jug]
    supplies = [supply.engine_oil]
    amount   = "2.2 L"
    takes    = "6 min"
  }

  fit "oil_cap" {
    title = "Screw the filler cap in again"
    part  = part.oil_cap
    takes = "1 min"
  }
}
