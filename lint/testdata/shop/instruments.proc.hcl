# Instruments.

tool "micrometer_25" {
  name       = "Outside micrometer, 0–25 mm, digital"
  kind       = "outside micrometer"
  range      = "0..25 mm"
  resolution = "0.001 mm"
  accuracy   = "0.002 mm"
}

tool "micrometer_50" {
  name       = "Outside micrometer, 25–50 mm, digital"
  kind       = "outside micrometer"
  range      = "25..50 mm"
  resolution = "0.001 mm"
  accuracy   = "0.002 mm"
}

tool "micrometer_100" {
  name       = "Outside micrometer, 75–100 mm, digital"
  kind       = "outside micrometer"
  range      = "75..100 mm"
  resolution = "0.001 mm"
  accuracy   = "0.003 mm"
}

tool "bore_gauge_50" {
  name       = "Bore gauge with dial, 18–50 mm, set in a ring"
  kind       = "bore gauge"
  range      = "18..50 mm"
  resolution = "0.001 mm"
  accuracy   = "0.003 mm"
}

tool "bore_gauge" {
  name       = "Bore gauge with dial, 50–100 mm, set in a ring"
  kind       = "bore gauge"
  range      = "50..100 mm"
  resolution = "0.001 mm"
  accuracy   = "0.003 mm"
}

tool "dial_indicator" {
  name       = "Dial indicator, digital, on a magnetic stand"
  kind       = "dial indicator"
  range      = "0..12 mm"
  resolution = "0.001 mm"
  accuracy   = "0.004 mm"
}

tool "feeler_gauges" {
  name       = "Feeler gauges, 0.03–1.00 mm"
  kind       = "feeler gauges"
  range      = "0.03..1.00 mm"
  resolution = "0.01 mm"
  accuracy   = "0.005 mm"
}

tool "depth_gauge" {
  name       = "Depth micrometer, 0–150 mm, with rods"
  kind       = "depth gauge"
  range      = "0..150 mm"
  resolution = "0.001 mm"
  accuracy   = "0.005 mm"
}

tool "caliper" {
  name       = "Vernier caliper, 0–150 mm"
  kind       = "vernier caliper"
  range      = "0..150 mm"
  resolution = "0.02 mm"
  accuracy   = "0.03 mm"
}

tool "steel_rule" {
  name       = "Steel rule, 300 mm"
  kind       = "steel rule"
  reads      = "length"
  range      = "0..300 mm"
  resolution = "0.5 mm"
  accuracy   = "0.1 mm"
}

tool "straight_edge" {
  name = "Straight edge, 300 mm"
  kind = "straight edge"
}

tool "degree_wheel" {
  name       = "Degree wheel with pointer"
  kind       = "degree wheel"
  reads      = "angle"
  range      = "0..360°"
  resolution = "0.5°"
  accuracy   = "0.25°"
}

tool "thermometer" {
  name       = "Contact thermometer"
  kind       = "thermometer"
  range      = "-20..250 °C"
  resolution = "1 °C"
  accuracy   = "2 °C"
}

tool "spring_balance" {
  name       = "Spring balance, 0–50 N"
  kind       = "spring balance"
  reads      = "force"
  range      = "0..50 N"
  resolution = "0.5 N"
  accuracy   = "0.5 N"
}

tool "pressure_gauge" {
  name       = "Test gauge, 0–10 bar"
  kind       = "pressure gauge"
  range      = "0..10 bar"
  resolution = "0.05 bar"
  accuracy   = "0.06 bar"
}

tool "stopwatch" {
  name       = "Stopwatch"
  kind       = "stopwatch"
  reads      = "time"
  range      = "0..3600 s"
  resolution = "0.1 s"
  accuracy   = "0.2 s"
}

tool "measuring_jug" {
  name       = "Measuring jug, 2 L"
  kind       = "measuring jug"
  reads      = "volume"
  range      = "0..2 L"
  resolution = "0.05 L"
  accuracy   = "0.05 L"
}

tool "scales" {
  name       = "Bench scales"
  kind       = "scales"
  reads      = "mass"
  range      = "0..5 kg"
  resolution = "1 g"
  accuracy   = "2 g"
}

tool "dial_indicator_in" {
  name       = "Dial indicator, 1/2 in travel, on a magnetic stand"
  kind       = "dial indicator"
  range      = "0..0.5 in"
  resolution = "0.0001 in"
  accuracy   = "0.0002 in"
}

tool "feeler_gauges_in" {
  name       = "Feeler gauges, 1.5–40 thou"
  kind       = "feeler gauges"
  range      = "1.5..40 thou"
  resolution = "0.5 thou"
  accuracy   = "0.2 thou"
}

tool "depth_gauge_in" {
  name       = "Depth micrometer, 0–6 in, with rods"
  kind       = "depth gauge"
  range      = "0..6 in"
  resolution = "0.0001 in"
  accuracy   = "0.0002 in"
}

tool "micrometer_1_in" {
  name       = "Outside micrometer, 0–1 in, digital"
  kind       = "outside micrometer"
  range      = "0..1 in"
  resolution = "0.00005 in"
  accuracy   = "0.0001 in"
}
