procedure "turn_over" {
  title = "Fill the engine and turn it over"
  after = [procedure.frame]
  intro = <<-EOT
    Pressure, oil and electricity come to the engine for the first time, one
    after another. There is no petrol near it yet, and there must not be.
  EOT

  clean "oil_gauge" {
    title    = "Degrease the thread of the oil gauge"
    on       = [fastening.oil_gauge]
    supplies = [supply.solvent]
    takes    = "3 min"
  }

  coat "oil_gauge" {
    title    = "Wet the gauge with thread sealant"
    on       = [fastening.oil_gauge]
    supplies = [supply.thread_sealant]
    takes    = "1 min"
  }

  fit "oil_gauge" {
    title     = "Start the oil gauge by hand"
    fastening = fastening.oil_gauge
    takes     = "1 min"
  }

  torque "oil_gauge" {
    title     = "Tighten the oil gauge"
    fastening = fastening.oil_gauge
    tools     = [tool.torque_wrench_100, tool.crowfoot_17]
    takes     = "1 min"
  }

  wait "cure" {
    title = "Let every sealant cure"
    until = [
      procedure.crankcase.coat.plug_threads,
      procedure.camshaft.coat.plate_threads,
      procedure.sump.seal.sump,
      procedure.timing_cover.seal.cover,
      procedure.flywheel.coat.coupling_threads,
      coat.oil_gauge,
    ]
    why = "Oil that reaches soft silicone washes it out. A good day for the boat's paint."
  }

  inspect "jackets" {
    title     = "Look round both jackets"
    on        = [part.barrel, part.head]
    at_each   = places.side
    tools     = [tool.hand_lamp]
    takes     = "3 min"
    criterion = "Every hose is clipped, and every tapping of the jacket is closed but the test tapping."
    otherwise = "Close what is open before you go on."
  }

  hold "pressure" {
    title   = "Stop before the pressure test"
    checks  = [inspect.jackets]
    before  = run.jackets
    release = "second person"
    takes   = "1 min"
  }

  run "jackets" {
    title     = "Pump the ${place} jacket up to 1 bar with water"
    on        = [part.barrel, part.head]
    by        = "pressure"
    at_each   = places.side
    tools     = [tool.test_pump, tool.pressure_gauge]
    ppe       = [ppe.goggles]
    takes     = "15 min"
    criterion = "The gauge stands still for 10 min, and both ends of the barrel stay dry."
    otherwise = "Let the pressure off. Mark the leak with chalk, and take that joint apart."

    warning {
      hazard = "A hose that comes off under pressure whips."
      result = "An eye lost, a broken tooth."
      avoid  = "Stand to one side of the hoses. Bleed all air out before you pump."
    }
  }

  fill "coolant" {
    title    = "Fill the header tank with coolant"
    on       = [part.header_tank]
    when     = option.cooling == "keel"
    through  = part.header_tank.port.filler
    tools    = [tool.funnel]
    supplies = [supply.coolant]
    amount   = "3.5 L"
    takes    = "8 min"
    text     = "Squeeze the hoses as you pour, so that the air comes up."
  }

  fit "header_cap" {
    title = "Screw the pressure cap on"
    part  = part.header_cap
    when  = option.cooling == "keel"
    takes = "1 min"
  }

  fill "oil" {
    title    = "Fill the sump with engine oil"
    on       = [part.crankcase]
    through  = part.crankcase.port.oil_filler
    tools    = [tool.funnel, tool.measuring_jug]
    supplies = [supply.engine_oil]
    amount   = "2.2 L"
    takes    = "6 min"
  }

  fit "oil_cap" {
    title = "Screw the filler cap in"
    part  = part.oil_cap
    takes = "1 min"
  }

  fit "battery" {
    title  = "Strap the battery into the frame"
    part   = part.battery
    ppe    = [ppe.goggles]
    people = 2
    takes  = "4 min"
  }

  measure "battery" {
    title     = "Measure the battery at rest"
    on        = [part.battery.feature.terminals]
    tools     = [tool.multimeter]
    ppe       = [ppe.goggles]
    likely    = "11.80..13.00 V"
    otherwise = "Stop. A battery below this range is past charging."
    takes     = "2 min"
  }

  work "charge" {
    title = "Charge the battery overnight"
    on    = [part.battery.feature.terminals]
    when  = measure.battery < "12.40 V"
    tools = [tool.battery_charger]
    ppe   = [ppe.goggles]
    takes = "10 h"
    why   = "A weak battery turns the engine too slowly to lift the oil, and you would look for the fault in the pump."
  }

  fit "battery_leads" {
    title = "Connect the leads, switch off"
    part  = part.battery_leads
    tools = [tool.spanner_10]
    ppe   = [ppe.goggles]
    takes = "6 min"
    text  = "Positive first, negative last."
  }

  inspect "clear" {
    title     = "Look round the engine before it turns"
    on        = [part.flywheel, part.crankcase]
    people    = 2
    takes     = "3 min"
    criterion = "Both plug holes open, no tool on the engine, nobody within reach of the flywheel, no petrol in the room."
    otherwise = "Put it right before the switch is closed."
  }

  hold "electric" {
    title   = "Stop before the starter gets current"
    checks  = [inspect.clear, procedure.flywheel.inspect.flywheel_nut]
    before  = run.crank
    release = "second person"
    takes   = "1 min"
  }

  run "crank" {
    title     = "Turn the engine over on the starter"
    on        = [part.crankcase, part.starter]
    by        = "electric"
    ppe       = [ppe.goggles, ppe.ear_protection]
    people    = 2
    takes     = "4 min"
    criterion = "The oil gauge leaves zero within 15 s of turning, and nothing knocks."
    otherwise = "Stop. Open the isolating switch, and call Withybrook: a pump that does not draw has to be primed through its gallery."
    text      = "Turn for 5 s, rest for 30 s, and turn again. One of you works the switch, the other watches the gauge."

    warning {
      hazard = "Flywheel, coupling and pump turn without a guard."
      result = "Caught sleeves, broken arms."
      avoid  = "Tie hair and sleeves back. Stand in front of the timing cover, clear of the coupling."
    }
  }

  measure "cranking_oil" {
    title     = "Read the oil pressure while the starter turns"
    on        = [part.oil_gauge]
    tools     = [tool.pressure_gauge]
    people    = 2
    accept    = "≥ 0.8 bar"
    text      = "Push the test gauge into the coupling below the dial: it reads finer than the dial does."
    likely    = "0.5..2.5 bar"
    otherwise = "Stop. Open the isolating switch, and look for the leak before the engine turns again."
    takes     = "2 min"
  }

  measure "compression" {
    title     = "Measure the compression of the ${place} barrel"
    on        = [part.head.port.plug]
    at_each   = places.side
    tools     = [tool.compression_gauge]
    ppe       = [ppe.goggles]
    people    = 2
    accept    = "min 6.0 bar"
    likely    = "5.0..9.0 bar"
    otherwise = "Stop. Pour a spoon of oil in and measure again: a rise points to the rings, no rise to a valve."
    takes     = "4 min"
    text      = "Hold the throttle wide open. One of you presses the gauge into the hole, the other works the switch."
  }

  calculate "spread" {
    title     = "Compare the two compressions"
    is        = max(measure.compression) - min(measure.compression)
    accept    = "max 2.0 bar"
    takes     = "1 min"
    otherwise = "Stop. Set the valve clearances of the weaker side again."
  }

  example "two healthy barrels" {
    readings = { measure.compression["left"] = "7.4 bar", measure.compression["right"] = "7.0 bar" }
    gives    = { calculate.spread = "0.4 bar" }
  }

  work "isolate" {
    title = "Open the isolating switch"
    on    = [part.battery_leads]
    takes = "1 min"
    gives = ["battery isolated"]
  }

  adjust "plug_gap" {
    title     = "Set the gap of the ${place} plug"
    on        = [part.spark_plug.feature.gap]
    at_each   = places.side
    tools     = [tool.feeler_gauges, tool.pliers]
    accept    = limit.plug_gap
    otherwise = "Bend the side electrode, never the middle one, and try again."
    takes     = "2 min"
  }

  fit "spark_plugs" {
    title     = "Start the ${place} plug by hand"
    fastening = fastening.spark_plugs
    at_each   = places.side
    takes     = "1 min"
    why       = "Fingers feel a crossed thread, a wrench does not. It is the head's thread that pays."
  }

  torque "spark_plugs" {
    title     = "Tighten the ${place} plug"
    fastening = fastening.spark_plugs
    at_each   = places.side
    tools     = [tool.torque_wrench_100, tool.socket_21_spark]
    takes     = "1 min"
  }

  fit "ht_leads" {
    title   = "Push the lead onto the ${place} plug"
    part    = part.ht_lead
    at_each = places.side
    takes   = "1 min"
  }
}
