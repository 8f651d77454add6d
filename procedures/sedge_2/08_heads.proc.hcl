procedure "heads" {
  title   = "Build the heads on the bench"
  at_each = places.side
  intro   = "Inlet and exhaust valves look alike. The inlet valve has the wider head, and its guide carries no groove."

  clean "head" {
    title    = "Wash the head"
    on       = [part.head, part.head.feature.seats, part.head.feature.guides]
    tools    = [tool.brush, tool.drip_tray]
    supplies = [supply.solvent]
    takes    = "8 min"
  }

  work "lap_inlet" {
    title    = "Lap the inlet valve into its seat"
    on       = [part.inlet_valve.feature.seat, part.head.feature.seats]
    tools    = [tool.valve_lapper]
    supplies = [supply.lapping_paste]
    takes    = "12 min"
    text     = "Twirl the stick to and fro. Lift the valve every ten strokes, and set it down a sixth of a turn further round."
  }

  work "lap_exhaust" {
    title    = "Lap the exhaust valve into its seat"
    on       = [part.exhaust_valve.feature.seat, part.head.feature.seats]
    tools    = [tool.valve_lapper]
    supplies = [supply.lapping_paste]
    takes    = "12 min"
  }

  inspect "seats" {
    title     = "Look at the ring on seats and valves"
    on        = [part.head.feature.seats, part.inlet_valve.feature.seat, part.exhaust_valve.feature.seat]
    tools     = [tool.hand_lamp]
    takes     = "3 min"
    criterion = "A grey ring, unbroken and of one width between 1 and 2 mm, on each seat and each valve."
    otherwise = "Lap the valve again."
  }

  clean "paste" {
    title    = "Wash every trace of paste away"
    on       = [part.head.feature.seats, part.head.feature.guides, part.inlet_valve, part.exhaust_valve]
    tools    = [tool.brush, tool.drip_tray]
    supplies = [supply.solvent, supply.rags]
    takes    = "10 min"
    why      = "Lapping paste does not know when to stop. In the oil it laps the bearings."
  }

  coat "stems" {
    title    = "Oil both valve stems"
    on       = [part.inlet_valve.feature.stem, part.exhaust_valve.feature.stem]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "inlet_valve" {
    title = "Slide the inlet valve into its guide"
    part  = part.inlet_valve
    takes = "1 min"
  }

  fit "inlet_spring" {
    title  = "Set the inlet spring over the stem"
    part   = part.inlet_spring
    facing = "Close coils to the head"
    takes  = "1 min"
  }

  fit "compressor_inlet" {
    title = "Close the compressor on the inlet spring"
    tool  = tool.spring_compressor
    ppe   = [ppe.goggles]
    takes = "2 min"
  }

  fit "inlet_cotters" {
    title = "Drop both cotters into the inlet stem's groove"
    part  = part.inlet_cotter
    ppe   = [ppe.goggles]
    takes = "2 min"
    text  = "A dab of grease on the screwdriver carries each one there."
    tools = [tool.screwdriver]

    supplies = [supply.grease]
  }

  remove "compressor_inlet" {
    title = "Open the compressor and take it off"
    tool  = tool.spring_compressor
    ppe   = [ppe.goggles]
    takes = "1 min"
    text  = "Watch the cotters as the cap rises. Both must stand level."
  }

  fit "exhaust_valve" {
    title = "Slide the exhaust valve into its guide"
    part  = part.exhaust_valve
    takes = "1 min"
  }

  fit "exhaust_spring" {
    title  = "Set the exhaust spring over the stem"
    part   = part.exhaust_spring
    facing = "Close coils to the head"
    takes  = "1 min"
  }

  fit "compressor_exhaust" {
    title = "Close the compressor on the exhaust spring"
    tool  = tool.spring_compressor
    ppe   = [ppe.goggles]
    takes = "2 min"
  }

  fit "exhaust_cotters" {
    title = "Drop both cotters into the exhaust stem's groove"
    part  = part.exhaust_cotter
    tools = [tool.screwdriver]
    ppe   = [ppe.goggles]
    takes = "2 min"

    supplies = [supply.grease]
  }

  remove "compressor_exhaust" {
    title = "Open the compressor again and take it off"
    tool  = tool.spring_compressor
    ppe   = [ppe.goggles]
    takes = "1 min"
  }

  fill "leak_test" {
    title    = "Pour paraffin into the exhaust port"
    on       = [part.head]
    through  = part.head.port.exhaust
    supplies = [supply.paraffin]
    amount   = "40 mL"
    takes    = "2 min"
    text     = "Prop the head with its gasket face down and the port up."
  }

  wait "leak_test" {
    title = "Leave the paraffin to find its way"
    for   = "5 min"
  }

  inspect "leak_test" {
    title     = "Look under the exhaust valve"
    on        = [part.head, part.exhaust_valve.feature.seat]
    tools     = [tool.inspection_mirror, tool.hand_lamp]
    takes     = "1 min"
    criterion = "The edge of the valve is dry all the way round."
    otherwise = "Take the valve out and lap it again."
  }

  drain "leak_test" {
    title   = "Pour the paraffin out"
    on      = [part.head]
    through = part.head.port.exhaust
    tools   = [tool.drip_tray]
    takes   = "1 min"
  }
}
