# Drawing limits of the Sedge 2. Drawings are Withybrook's own, S2-001 to S2-080.

limit "front_bore" {
  name  = "Front bearing bore of the crankcase"
  range = "48.000..48.025 mm"
  basis = "Drawing S2-003; H7 of ISO 286-2"
}

limit "bush_outside" {
  name  = "Front bush, outside"
  range = "48.043..48.059 mm"
  basis = "Drawing S2-005; s6 of ISO 286-2"
}

limit "bush_interference" {
  name  = "Interference of the front bush in the crankcase"
  range = "0.025..0.052 mm"
  basis = "Drawing S2-005, note 2"
}

limit "bush_bore" {
  name  = "Front bush, inside, fitted"
  range = "42.030..42.060 mm"
  basis = "Drawing S2-005"
}

limit "gear_interference" {
  name  = "Interference of the crankshaft gear on its seat"
  range = "0.018..0.042 mm"
  basis = "Drawing S2-012"
}

limit "crank_float" {
  name     = "End float of the crankshaft, assembled"
  range    = "0.10..0.22 mm"
  target   = "0.16 mm"
  basis    = "Drawing S2-010, note 4"
  critical = true
}

limit "cam_float" {
  name  = "End float of the camshaft, assembled"
  range = "0.08..0.18 mm"
  basis = "Drawing S2-020"
}

limit "backlash" {
  name  = "Backlash of the timing gears, at the teeth"
  range = "0.05..0.17 mm"
  basis = "Drawing S2-021"
}

limit "big_end" {
  name   = "Running clearance of the big end"
  range  = "0.025..0.060 mm"
  target = "0.040 mm"
  basis  = "Drawing S2-030"
}

limit "rod_side" {
  name  = "Side clearance of the rod on its pin"
  range = "0.15..0.35 mm"
  basis = "Drawing S2-030"
}

limit "piston_clearance" {
  name  = "Clearance of the piston skirt in the barrel"
  range = "0.050..0.090 mm"
  basis = "Drawing S2-035"
}

limit "ring_gap" {
  name  = "Gap of the two compression rings"
  range = "0.25..0.45 mm"
  basis = "Drawing S2-036"
}

limit "deck" {
  name   = "Piston crown below the barrel's top face, at top dead centre"
  range  = "0.20..0.30 mm"
  target = "0.25 mm"
  basis  = "Drawing S2-046, revision B"
}

limit "runout" {
  name  = "Runout of the flywheel face near the rim"
  range = "max 0.20 mm"
  basis = "Drawing S2-090"
}

limit "inlet_clearance" {
  name  = "Clearance of the inlet valve, cold"
  range = "0.15..0.25 mm"
  basis = "Drawing S2-050"
}

limit "exhaust_clearance" {
  name  = "Clearance of the exhaust valve, cold"
  range = "0.25..0.35 mm"
  basis = "Drawing S2-050"
}

limit "plug_gap" {
  name  = "Gap of the spark plug"
  range = "0.60..0.70 mm"
  basis = "Drawing S2-064"
}

limit "breaker_gap" {
  name  = "Gap of the contact breaker, fully open"
  range = "0.35..0.45 mm"
  basis = "Drawing S2-061"
}

limit "advance" {
  name  = "Spark before top dead centre, at idle"
  range = "12° ± 3°"
  basis = "Drawing S2-060"
}

limit "hot_oil" {
  name     = "Oil pressure, warm, at idle"
  range    = "2.0..4.5 bar"
  basis    = "Drawing S2-070"
  critical = true
}

limit "jacket" {
  name  = "Temperature of the barrel jackets, warm, at idle"
  range = "45..80 °C"
  basis = "Drawing S2-075"
}
