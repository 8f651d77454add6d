procedure "first_start" {
  title = "Start the engine for the first time"
  after = [procedure.turn_over]
  intro = <<-EOT
    Wheel the frame out of doors. Exhaust gas kills in a shed with the door open.
    Ask for an hour of your second person: one of you watches gauges, the other
    stands at the switch.
  EOT

  fit "fuel_tank" {
    title = "Strap the fuel tank to the frame"
    part  = part.fuel_tank
    takes = "4 min"
    text  = "Close its tap."
  }

  fit "fuel_washer" {
    title = "Put the sealing washer on the carburettor's inlet"
    part  = part.fuel_union_washer
    takes = "1 min"
  }

  fit "fuel_hose" {
    title = "Join tank and carburettor with the fuel hose"
    part  = part.fuel_hose
    takes = "3 min"
  }

  fit "fuel_union" {
    title     = "Start the fuel union by hand"
    fastening = fastening.fuel_union
    takes     = "1 min"
  }

  torque "fuel_union" {
    title     = "Tighten the fuel union"
    fastening = fastening.fuel_union
    tools     = [tool.torque_wrench_100, tool.crowfoot_17]
    takes     = "2 min"
  }

  fill "petrol" {
    title    = "Pour petrol into the test tank"
    on       = [part.fuel_tank]
    through  = part.fuel_tank.port.filler
    tools    = [tool.funnel, tool.extinguisher]
    supplies = [supply.petrol]
    amount   = "2 L"
    takes    = "4 min"
    text     = "Keep the can's spout on the funnel: the spark of a static charge needs an air gap."
  }

  fit "fuel_cap" {
    title = "Screw the tank's cap on"
    part  = part.fuel_cap
    takes = "1 min"
  }

  inspect "fuel_leaks" {
    title     = "Look for petrol at every joint of the fuel line"
    on        = [part.fuel_hose, part.fuel_tank, part.carburettor, fastening.fuel_union]
    tools     = [tool.hand_lamp, tool.extinguisher]
    supplies  = [supply.rags]
    people    = 2
    takes     = "12 min"
    critical  = true
    criterion = "Ten minutes after the tap was opened, a dry rag wiped round each joint stays dry and smells of nothing."
    otherwise = "Close the tap. Let the vapour clear for half an hour before you put the joint right."
  }

  hold "fuel" {
    title   = "Stop until the surveyor has seen the fuel line"
    checks  = [inspect.fuel_leaks]
    before  = run.first_start
    release = "boat surveyor"
    takes   = "10 min"
    why     = "Revision B asks for this. Most fires in small boats begin at a fuel joint that its builder had looked at."
  }

  work "water" {
    title = "Hang the suction hose in a tub of fresh water"
    on    = [part.raw_hoses]
    when  = option.cooling == "seawater"
    tools = [tool.water_tub]
    takes = "4 min"
  }

  inspect "ready" {
    title     = "Walk round the engine together"
    on        = [part.crankcase, part.flywheel, part.battery_leads]
    tools     = [tool.extinguisher]
    people    = 2
    takes     = "4 min"
    criterion = "Frame out of doors and chocked, extinguisher at arm's length. Oil at the upper line, throttle closed. Both of you have had a hand on the stop switch."
    otherwise = "Put it right, and walk round again."
  }

  hold "power" {
    title   = "Stop before the first start"
    checks  = [inspect.ready, procedure.turn_over.measure.cranking_oil, procedure.turn_over.calculate.spread]
    before  = run.first_start
    release = "second person"
    takes   = "2 min"
  }

  run "first_start" {
    title     = "Start the engine"
    on        = [part.crankcase]
    by        = "power"
    ppe       = [ppe.goggles, ppe.ear_protection]
    tools     = [tool.extinguisher]
    people    = 2
    takes     = "5 min"
    criterion = "Oil pressure rises within 10 s, water or warm coolant returns within 60 s, and nothing knocks."
    otherwise = "Stop the engine at once, close the fuel tap, and open the isolating switch."
    text      = "Close the isolating switch, open the fuel tap, and press the button for no longer than 5 s."

    danger {
      hazard = "Exhaust gas holds carbon monoxide, which nobody can smell."
      result = "Death within minutes in a closed room."
      avoid  = "Run the engine out of doors only, with the exhaust blowing away from you and from open windows."
    }

    warning {
      hazard = "Flywheel, coupling and pump turn without a guard; the exhaust glows."
      result = "Caught sleeves, broken arms, burns."
      avoid  = "Tie hair and sleeves back. Stay in front of the timing cover, and touch nothing but switch and throttle."
    }
  }

  adjust "idle" {
    title     = "Set the idle speed"
    on        = [part.carburettor]
    tools     = [tool.tachometer, tool.screwdriver]
    ppe       = [ppe.goggles, ppe.ear_protection]
    people    = 2
    accept    = "650 ± 50 rpm"
    otherwise = "Turn the throttle stop screw by a quarter turn, wait for the engine to settle, and read again."
    takes     = "6 min"
  }

  measure "advance" {
    title     = "Measure the spark with the timing light"
    on        = [part.flywheel.face.rim]
    when      = option.ignition == "coil"
    tools     = [tool.timing_light]
    ppe       = [ppe.goggles, ppe.ear_protection]
    marks     = [procedure.flywheel.mark.tdc]
    people    = 2
    accept    = limit.advance
    likely    = "5..20°"
    otherwise = "Stop the engine, and set the breaker gap again."
    takes     = "4 min"
  }

  measure "oil" {
    title     = "Read the oil pressure of the warm engine"
    on        = [part.oil_gauge]
    tools     = [tool.pressure_gauge, tool.thermometer]
    ppe       = [ppe.ear_protection]
    people    = 2
    accept    = limit.hot_oil
    likely    = "1.5..5.0 bar"
    otherwise = "Stop the engine. Call Withybrook before it turns again."
    takes     = "20 min"
    text      = "Let the engine idle until the thermometer shows 60 °C on the sump. Then push the test gauge into its coupling."
  }

  measure "jacket" {
    title     = "Measure the ${place} jacket's temperature"
    on        = [part.barrel.feature.jacket]
    at_each   = places.side
    tools     = [tool.thermometer]
    ppe       = [ppe.heat_gloves, ppe.ear_protection]
    people    = 2
    accept    = limit.jacket
    likely    = "40..90 °C"
    otherwise = "Stop the engine. Look for a kinked hose on that side."
    takes     = "3 min"

    warning {
      hazard = "Jacket and exhaust are hot, and the flywheel is near."
      result = "Burns; a caught sleeve."
      avoid  = "Wear heat-resistant gloves, and come from the front of the engine."
    }
  }

  work "stop" {
    title = "Stop the engine"
    on    = [part.battery_leads, part.fuel_tank]
    takes = "3 min"
    text  = "Close the fuel tap, and let the engine run itself out of petrol. Then open the isolating switch."
    gives = ["battery isolated"]
  }
}
