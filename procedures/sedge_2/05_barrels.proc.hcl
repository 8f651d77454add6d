procedure "barrels" {
  title   = "Fit pistons and barrels"
  after   = [procedure.rods]
  at_each = places.side
  was     = ["cylinders"]
  intro   = <<-EOT
    Base plates under the barrel set how far the piston stops below the head.
    That distance is the compression, so each side gets its own plates.
    The barrel goes on twice: bare, to measure, then with rings, plates and O-ring.
  EOT

  clean "barrel" {
    title    = "Wash the barrel"
    on       = [part.barrel.feature.bore, part.barrel.face.base, part.barrel.face.top]
    tools    = [tool.brush, tool.drip_tray]
    supplies = [supply.solvent, supply.rags]
    takes    = "8 min"
    text     = "Wipe the bore with white rags until one comes out white."
  }

  measure "bore" {
    title     = "Measure the barrel bore"
    on        = [part.barrel.feature.bore]
    tools     = [tool.bore_gauge]
    spots     = ["top, across", "top, fore and aft", "middle, across", "middle, fore and aft"]
    take      = "largest"
    likely    = "76.000..76.019 mm"
    otherwise = "Stop, and send the readings to Withybrook."
    takes     = "8 min"
  }

  measure "skirt" {
    title     = "Measure the piston skirt"
    on        = [part.piston.feature.skirt]
    tools     = [tool.micrometer_100]
    repeat    = 2
    take      = "mean"
    likely    = "75.930..75.949 mm"
    otherwise = "Stop, and send the readings to Withybrook."
    takes     = "4 min"
    text      = "Measure across the thrust faces, 10 mm above the lower edge."

    agree_within = "0.004 mm"
  }

  calculate "clearance" {
    title     = "Work out the clearance of the piston"
    is        = measure.bore - measure.skirt
    accept    = limit.piston_clearance
    takes     = "1 min"
    otherwise = "Try the other side's piston in this barrel, and measure both again. If neither fits, stop."
  }

  example "a usual pair" {
    readings = { measure.bore = "76.010 mm", measure.skirt = "75.941 mm" }
    gives    = { calculate.clearance = "0.069 mm" }
  }

  measure "top_gap" {
    title  = "Measure the gap of the top ring"
    on     = [part.top_ring]
    tools  = [tool.feeler_gauges]
    accept = limit.ring_gap
    likely = "0.20..0.50 mm"
    takes  = "5 min"
    text   = "Push the ring 20 mm down the barrel it will live in. Square it with the piston crown."
    why    = "A ring whose ends meet when hot breaks, and scores the barrel."

    otherwise {
      when = "below"
      text = "New rings are often long. File one end only, a stroke at a time, from the outside inwards."

      work "file_top" {
        title = "File one end of the top ring"
        on    = [part.top_ring]
        tools = [tool.fine_file, tool.vice]
        takes = "5 min"
      }

      then = "read again"
    }

    otherwise {
      when = "above"
      text = "Stop. The ring is too short: ask Withybrook for another."
      then = "stop"
    }
  }

  measure "second_gap" {
    title  = "Measure the gap of the second ring"
    on     = [part.second_ring]
    tools  = [tool.feeler_gauges]
    accept = limit.ring_gap
    likely = "0.20..0.50 mm"
    takes  = "5 min"

    otherwise {
      when = "below"

      work "file_second" {
        title = "File one end of the second ring"
        on    = [part.second_ring]
        tools = [tool.fine_file, tool.vice]
        takes = "5 min"
      }

      then = "read again"
    }

    otherwise {
      when = "above"
      text = "Stop. The ring is too short: ask Withybrook for another."
      then = "stop"
    }
  }

  fit "first_circlip" {
    title    = "Click one circlip into the piston"
    part     = part.circlip
    quantity = 1
    tools    = [tool.circlip_pliers]
    ppe      = [ppe.goggles]
    takes    = "2 min"
    text     = "Put it on the aft side, opening towards the crown."
  }

  fit "piston" {
    title  = "Hang the piston on the rod"
    part   = part.piston
    facing = "Arrow on the crown to the front"
    takes  = "2 min"
  }

  coat "piston_pin" {
    title    = "Oil the gudgeon pin"
    on       = [part.piston_pin]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "piston_pin" {
    title = "Push the gudgeon pin through from the front"
    part  = part.piston_pin
    takes = "2 min"
    text  = "Stop when the pin rests against the aft circlip."
  }

  fit "second_circlip" {
    title    = "Click the other circlip in"
    part     = part.circlip
    quantity = 1
    tools    = [tool.circlip_pliers]
    ppe      = [ppe.goggles]
    takes    = "2 min"
    text     = "Lay a rag in the crankcase opening first. What falls in there ends in the gears."
    supplies = [supply.rags]
  }

  inspect "circlips" {
    title     = "Turn each circlip in its groove"
    on        = [part.circlip]
    tools     = [tool.screwdriver]
    takes     = "2 min"
    criterion = "Each circlip turns in its groove and springs back. The rag is out of the opening again."
    otherwise = "Take the circlip out, and fit a new one."
  }

  fit "barrel_trial" {
    title   = "Slide the bare barrel over the piston for trial"
    part    = part.barrel
    trial   = true
    without = [part.base_plate, part.barrel_oring, part.oil_ring, part.second_ring, part.top_ring]
    facing  = "UP mark away from the sump opening"
    takes   = "3 min"
  }

  fit "barrel_nuts_trial" {
    title     = "Start the four base nuts by hand"
    fastening = fastening.barrel_nuts
    takes     = "2 min"
  }

  torque "barrel_nuts_trial" {
    title     = "Tighten the barrel for the trial"
    fastening = fastening.barrel_nuts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "3 min"
  }

  run "to_the_top" {
    title     = "Turn the ${place} piston to the top of its stroke"
    on        = [part.crankshaft, part.piston]
    by        = "hand"
    tools     = [tool.dial_indicator]
    takes     = "3 min"
    criterion = "The dial on the crown has reached its highest reading, and just begins to fall."
    otherwise = "Turn the crankshaft back by a quarter turn, and come up again."
  }

  measure "deck" {
    title     = "Measure the crown against the top of the barrel"
    on        = [part.piston.face.crown, part.barrel.face.top]
    tools     = [tool.deck_bridge, tool.surface_plate]
    figures   = [figure.deck]
    spots     = ["front end of the pin", "aft end of the pin"]
    take      = "mean"
    likely    = "-0.45..0.05 mm"
    otherwise = "Stop. Look for dirt under the barrel, then measure again."
    takes     = "5 min"
    was       = ["squish"]
    text      = "Zero the bridge on the surface plate. A crown below the face reads positive, a crown above it negative."
    why       = "A piston rocks about its pin. Over the pin, it does not."
  }

  remove "barrel_nuts" {
    title     = "Take the base nuts off"
    fastening = fastening.barrel_nuts
    tools     = [tool.spanner_13]
    takes     = "2 min"
  }

  remove "barrel" {
    title = "Draw the barrel off"
    part  = part.barrel
    takes = "2 min"
  }

  choose "plates" {
    title     = "Choose the base plates"
    from      = part.base_plate
    pieces    = "1..3"
    base      = measure.deck
    makes     = limit.deck
    takes     = "3 min"
    otherwise = "Stop. Send both deck readings to Withybrook."
    why       = "Each plate lifts the barrel, and leaves the piston lower by its own thickness."
  }

  example "a piston that stands proud" {
    readings = { measure.deck = "-0.18 mm" }
    gives    = { choose.plates.total = "0.40 mm", choose.plates.result = "0.22 mm" }
    shown    = true
  }

  example "a piston that stands prouder" {
    readings = { measure.deck = "-0.40 mm" }
    gives    = { choose.plates.total = "0.65 mm", choose.plates.result = "0.25 mm" }
  }

  clean "base" {
    title    = "Wipe both faces of the joint"
    on       = { left = [part.crankcase.face.left, part.barrel.face.base], right = [part.crankcase.face.right, part.barrel.face.base] }
    supplies = [supply.solvent, supply.rags]
    takes    = "3 min"
  }

  fit "plates" {
    title = "Slide the plates over the studs: ${choose.plates}"
    part  = choose.plates
    takes = "2 min"
  }

  fit "barrel_oring" {
    title = "Roll the O-ring onto the barrel"
    part  = part.barrel_oring
    takes = "2 min"
  }

  fit "oil_ring" {
    title = "Fit the oil ring in the lowest groove"
    part  = part.oil_ring
    tools = [tool.ring_pliers]
    takes = "2 min"
  }

  fit "second_ring" {
    title  = "Fit the second ring in the middle groove"
    part   = part.second_ring
    facing = "TOP towards the crown"
    tools  = [tool.ring_pliers]
    takes  = "2 min"
  }

  fit "top_ring" {
    title  = "Fit the top ring in the upper groove"
    part   = part.top_ring
    facing = "TOP towards the crown"
    tools  = [tool.ring_pliers]
    takes  = "2 min"
  }

  work "stagger" {
    title = "Turn the ring gaps a third of a turn apart"
    on    = [part.top_ring, part.second_ring, part.oil_ring]
    takes = "1 min"
    why   = "Gaps in one line are a path for the gas. Keep each clear of the thrust faces."
  }

  coat "bore" {
    title    = "Oil piston, rings and bore"
    on       = [part.barrel.feature.bore, part.piston.feature.skirt]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "2 min"
  }

  fit "barrel" {
    title  = "Slide the barrel over the rings"
    part   = part.barrel
    facing = "UP mark away from the sump opening"
    marks  = [part.barrel.mark.up]
    tools  = [tool.ring_compressor]
    people = 2
    takes  = "6 min"
    text   = <<-EOT
      One of you holds the barrel square to the studs. The other closes the
      compressor on the rings and eases them in, one after another.
    EOT

    notice {
      text = "A ring that catches is not pushed: it breaks. Draw the barrel back, and start again."
    }
  }

  fit "barrel_nuts" {
    title     = "Start the four base nuts by hand again"
    fastening = fastening.barrel_nuts
    takes     = "2 min"
  }

  torque "barrel_nuts" {
    title     = "Tighten the barrel"
    fastening = fastening.barrel_nuts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "4 min"
  }

  measure "deck_final" {
    title   = "Measure the crown again at the top of the stroke"
    on      = [part.piston.face.crown, part.barrel.face.top]
    tools   = [tool.deck_bridge, tool.surface_plate]
    figures = [figure.deck]
    spots   = ["front end of the pin", "aft end of the pin"]
    take    = "mean"
    accept  = limit.deck
    takes   = "6 min"
    text    = "The choice promised ${choose.plates.result}."

    otherwise {
      text = "Measure the plates one by one. Choose again with the thicknesses you found."
      then = choose.plates
    }
  }
}
