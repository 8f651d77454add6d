procedure "crankshaft" {
  title = "Fit the crankshaft"
  after = [procedure.crankcase]
  intro = <<-EOT
    The aft housing is fitted twice: once without shims, to measure, and once
    for good. The shims behind it decide how far the crankshaft can float.
    The timing gear follows hot, over the nose, when the float is right.
  EOT

  clean "crankshaft" {
    title    = "Wash the crankshaft"
    on       = [part.crankshaft, part.crankshaft.feature.oilways, part.crankshaft.feature.nose]
    tools    = [tool.brush]
    supplies = [supply.solvent, supply.rags]
    takes    = "15 min"
    text     = "Brush every oilway from both ends."
  }

  inspect "oilways" {
    title     = "Look through the oilways"
    on        = [part.crankshaft.feature.oilways]
    tools     = [tool.hand_lamp]
    takes     = "4 min"
    criterion = "Light shows through every oilway."
    otherwise = "Brush the oilway again, and look again."
  }

  coat "front_bush" {
    title    = "Oil the front bush"
    on       = [part.front_bush.feature.bore]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "crankshaft" {
    title  = "Slide the crankshaft into the front bush"
    part   = part.crankshaft
    facing = "Nose to the front, taper aft"
    people = 2
    takes  = "5 min"
    text   = <<-EOT
      Lower it through the aft opening together. One of you steers the nose with
      a finger in the bush, the other carries the weight.
    EOT

    caution {
      hazard = "The webs close on the opening like shears."
      result = "Crushed fingers."
      avoid  = "Hold the shaft by its taper and its nose. Keep fingers off the webs."
    }
  }

  fit "aft_housing_trial" {
    title   = "Put the aft housing on for trial"
    part    = part.aft_housing
    trial   = true
    without = [part.thrust_shim, part.aft_oring, part.aft_seal]
    facing  = "TOP up"
    takes   = "3 min"
  }

  fit "aft_bolts_trial" {
    title     = "Start the six housing bolts by hand"
    fastening = fastening.aft_bolts
    takes     = "2 min"
  }

  torque "aft_bolts_trial" {
    title     = "Tighten the housing for the trial"
    fastening = fastening.aft_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "4 min"
  }

  measure "float" {
    title        = "Measure the float without shims"
    on           = [part.crankshaft]
    tools        = [tool.dial_indicator]
    figures      = [figure.thrust_shims]
    repeat       = 3
    agree_within = "0.02 mm"
    take         = "mean"
    likely       = "0.55..1.35 mm"
    otherwise    = "Stop. Look for a burr on the shoulder or dirt under the housing, then measure again."
    takes        = "8 min"
    was          = ["end_play"]
    text         = <<-EOT
      Stand the dial on the end of the taper. Push the shaft forward until it
      stops, set the dial to zero, then pull the shaft aft. Read the dial.
    EOT
  }

  remove "aft_bolts" {
    title     = "Take the six bolts out"
    fastening = fastening.aft_bolts
    tools     = [tool.spanner_13]
    takes     = "3 min"
  }

  remove "aft_housing" {
    title = "Draw the housing off"
    part  = part.aft_housing
    takes = "2 min"
  }

  choose "pack" {
    title     = "Choose the shim pack"
    from      = part.thrust_shim
    pieces    = "2..4"
    gap       = measure.float
    leaves    = limit.crank_float
    takes     = "3 min"
    otherwise = "Stop. Send the float to Withybrook, who grind shims to order."
  }

  example "a float in the middle" {
    readings = { measure.float = "0.93 mm" }
    gives    = { choose.pack.total = "0.80 mm", choose.pack.result = "0.13 mm" }
    shown    = true
  }

  example "a small float" {
    readings = { measure.float = "0.60 mm" }
    gives    = { choose.pack.total = "0.45 mm", choose.pack.result = "0.15 mm" }
  }

  fit "shims" {
    title   = "Slide the shims onto the shaft: ${choose.pack}"
    part    = choose.pack
    figures = [figure.thrust_shims]
    takes   = "3 min"
    why     = "Thick shims lie against the shoulder. The thin ones are kept flat between them and the housing."
  }

  fit "aft_seal" {
    title  = "Press the aft seal into its housing"
    part   = part.aft_seal
    facing = "Spring side to the inside"
    tools  = [tool.press]
    ppe    = [ppe.goggles]
    takes  = "5 min"
    text   = "Stop when the seal is flush with the housing."
  }

  coat "aft_seal" {
    title    = "Grease the lip of the seal"
    on       = [part.aft_seal]
    supplies = [supply.grease]
    takes    = "1 min"
    why      = "A dry lip burns in the first ten seconds of the first run."
  }

  fit "aft_oring" {
    title = "Roll the O-ring into its groove"
    part  = part.aft_oring
    takes = "2 min"
  }

  coat "aft_housing_bore" {
    title    = "Oil the bearing in the aft housing"
    on       = [part.aft_housing.feature.bore]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "1 min"
  }

  fit "aft_housing" {
    title  = "Put the aft housing on for good"
    part   = part.aft_housing
    facing = "TOP up"
    takes  = "4 min"
    text   = "Turn the crankshaft to and fro as the lip passes the edge of the taper."
  }

  fit "aft_bolts" {
    title     = "Start the six housing bolts again"
    fastening = fastening.aft_bolts
    takes     = "2 min"
  }

  torque "aft_bolts" {
    title     = "Tighten the housing"
    fastening = fastening.aft_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "5 min"
  }

  measure "float_shimmed" {
    title        = "Measure the float again"
    on           = [part.crankshaft]
    tools        = [tool.dial_indicator]
    repeat       = 3
    agree_within = "0.01 mm"
    take         = "mean"
    accept       = limit.crank_float
    takes        = "8 min"
    text         = "The choice promised ${choose.pack.result}. The dial must agree with it."

    otherwise {
      text = "Measure each shim with the micrometer, and choose again with the thicknesses you found."
      then = choose.pack
    }
  }

  run "by_hand" {
    title     = "Turn the crankshaft ten times by hand"
    on        = [part.crankshaft]
    by        = "hand"
    takes     = "2 min"
    criterion = "It turns with two fingers on the taper, and with the same drag all the way round."
    otherwise = "Stop. Loosen the housing and look for dirt under its flange."
  }

  measure "nose" {
    title     = "Measure the seat of the gear"
    on        = [part.crankshaft.feature.nose]
    tools     = [tool.micrometer_50]
    spots     = ["over the keyway", "a quarter turn on"]
    take      = "largest"
    likely    = "30.035..30.048 mm"
    otherwise = "Stop, and send the reading to Withybrook."
    takes     = "4 min"
  }

  measure "gear_bore" {
    title     = "Measure the bore of the crankshaft gear"
    on        = [part.crank_gear.feature.bore]
    tools     = [tool.bore_gauge_50]
    spots     = ["front face", "back face"]
    take      = "smallest"
    likely    = "30.000..30.021 mm"
    otherwise = "Stop, and send the reading to Withybrook."
    takes     = "4 min"
  }

  calculate "interference" {
    title     = "Work out the grip of the gear"
    is        = measure.nose - measure.gear_bore
    accept    = limit.gear_interference
    takes     = "2 min"
    otherwise = "Stop. Ask Withybrook for a gear that pairs with this shaft, and quote both readings."
  }

  example "gear and nose as most of them come" {
    readings = { measure.nose = "30.041 mm", measure.gear_bore = "30.010 mm" }
    gives    = { calculate.interference = "0.031 mm" }
  }

  fit "crank_key" {
    title = "Tap the gear key into its slot"
    part  = part.crank_key
    tools = [tool.brass_drift, tool.hammer]
    takes = "3 min"
  }

  work "nose_up" {
    title  = "Swing the crankcase until the nose points up"
    on     = [part.crankcase]
    tools  = [tool.build_stand]
    people = 2
    takes  = "2 min"
    text   = "One of you holds the crankshaft against the float while the other works the locking pin."
  }

  heat "crank_gear" {
    title = "Heat the crankshaft gear in the oven"
    on    = [part.crank_gear]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "180..200 °C"
    takes = "30 min"
  }

  fit "crank_gear" {
    title  = "Drop the hot gear over the key"
    part   = part.crank_gear
    facing = "Dot outwards, to the front"
    ppe    = [ppe.heat_gloves]
    after  = [heat.crank_gear]
    within = "1 min"
    takes  = "1 min"
    why    = "The gear grips within seconds. Look for the dot before you lift it out of the oven."

    caution {
      hazard = "The gear is near 200 °C."
      result = "Deep burns."
      avoid  = "Wear heat-resistant gloves. Carry the gear by its rim, over the bench."
    }
  }

  wait "gear_cool" {
    title = "Let the gear cool on the shaft"
    until = [heat.crank_gear]
    takes = "45 min"
  }

  hold "float" {
    title   = "Stop before the crankcase fills up"
    checks  = [measure.float_shimmed, run.by_hand]
    before  = procedure.camshaft.fit.tappets
    release = "second person"
    takes   = "5 min"
    text    = "The second person moves the shaft, reads the dial and signs the number."
    why     = "From here on the shims cost a whole day to reach."
  }
}
