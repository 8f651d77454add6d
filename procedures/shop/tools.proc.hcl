# Tools and instruments of the workshop. A manual uses what it needs of them.
#
# Drives, widths across flats and hexagon keys are designations: an across_flats of
# "13 mm" is fitted by a size of "13 mm", in these very words.

# Instruments, metric.

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

tool "surface_plate" {
  name = "Surface plate"
  kind = "surface plate"
}

tool "vee_blocks" {
  name = "Pair of vee blocks"
  kind = "vee blocks"
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

tool "compression_gauge" {
  name       = "Compression gauge, 0–16 bar"
  kind       = "pressure gauge"
  range      = "0..16 bar"
  resolution = "0.2 bar"
  accuracy   = "0.2 bar"
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

# Instruments, inch.

tool "micrometer_1_in" {
  name       = "Outside micrometer, 0–1 in, digital"
  kind       = "outside micrometer"
  range      = "0..1 in"
  resolution = "0.00005 in"
  accuracy   = "0.0001 in"
}

tool "micrometer_2_in" {
  name       = "Outside micrometer, 1–2 in, digital"
  kind       = "outside micrometer"
  range      = "1..2 in"
  resolution = "0.00005 in"
  accuracy   = "0.0001 in"
}

tool "bore_gauge_in" {
  name       = "Bore gauge with dial, 1.4–6 in, set in a ring"
  kind       = "bore gauge"
  range      = "1.4..6 in"
  resolution = "0.0001 in"
  accuracy   = "0.0002 in"
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

tool "caliper_in" {
  name       = "Vernier caliper, 0–6 in"
  kind       = "vernier caliper"
  range      = "0..6 in"
  resolution = "0.001 in"
  accuracy   = "0.001 in"
}

# Torque wrenches. Below a fifth of full scale a wrench has no accuracy to go by,
# so each range begins there (ISO 6789-1).

tool "torque_wrench_20" {
  name       = "Torque wrench, 4–20 N·m"
  kind       = "torque wrench"
  range      = "4..20 N·m"
  resolution = "0.1 N·m"
  accuracy   = "4 %"
  drive      = "1/4 in"
  length     = "250 mm"
}

tool "torque_wrench_100" {
  name       = "Torque wrench, 20–100 N·m"
  kind       = "torque wrench"
  range      = "20..100 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
  length     = "350 mm"
}

tool "torque_wrench_300" {
  name       = "Torque wrench, 60–300 N·m"
  kind       = "torque wrench"
  range      = "60..300 N·m"
  resolution = "1 N·m"
  accuracy   = "4 %"
  drive      = "1/2 in"
  length     = "550 mm"
}

tool "torque_wrench_lbin" {
  name       = "Torque wrench, 50–250 lb·in"
  kind       = "torque wrench"
  range      = "50..250 lb·in"
  resolution = "1 lb·in"
  accuracy   = "4 %"
  drive      = "3/8 in"
  length     = "11 in"
}

tool "torque_wrench_lbft" {
  name       = "Torque wrench, 20–100 lb·ft"
  kind       = "torque wrench"
  range      = "20..100 lb·ft"
  resolution = "0.5 lb·ft"
  accuracy   = "4 %"
  drive      = "1/2 in"
  length     = "18 in"
}

# Sockets, metric.

tool "socket_8" {
  name  = "Socket, 8 mm, 1/4 in drive"
  kind  = "socket"
  size  = "8 mm"
  drive = "1/4 in"
}

tool "socket_10" {
  name  = "Socket, 10 mm, 1/4 in drive"
  kind  = "socket"
  size  = "10 mm"
  drive = "1/4 in"
}

tool "socket_13_quarter" {
  name  = "Socket, 13 mm, 1/4 in drive"
  kind  = "socket"
  size  = "13 mm"
  drive = "1/4 in"
}

tool "socket_13" {
  name  = "Socket, 13 mm, 3/8 in drive"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "socket_16" {
  name  = "Socket, 16 mm, 3/8 in drive"
  kind  = "socket"
  size  = "16 mm"
  drive = "3/8 in"
}

tool "socket_18" {
  name  = "Socket, 18 mm, 3/8 in drive"
  kind  = "socket"
  size  = "18 mm"
  drive = "3/8 in"
}

tool "socket_18_half" {
  name  = "Socket, 18 mm, 1/2 in drive"
  kind  = "socket"
  size  = "18 mm"
  drive = "1/2 in"
}

tool "socket_21_spark" {
  name  = "Spark plug socket, 21 mm, 3/8 in drive"
  kind  = "socket"
  size  = "21 mm"
  drive = "3/8 in"
}

tool "socket_21" {
  name  = "Socket, 21 mm, 1/2 in drive"
  kind  = "socket"
  size  = "21 mm"
  drive = "1/2 in"
}

tool "socket_24" {
  name  = "Socket, 24 mm, 1/2 in drive"
  kind  = "socket"
  size  = "24 mm"
  drive = "1/2 in"
}

tool "socket_30" {
  name  = "Socket, 30 mm, 1/2 in drive"
  kind  = "socket"
  size  = "30 mm"
  drive = "1/2 in"
}

tool "socket_36" {
  name  = "Socket, 36 mm, 1/2 in drive"
  kind  = "socket"
  size  = "36 mm"
  drive = "1/2 in"
}

tool "hex_bit_5" {
  name  = "Hexagon bit, 5 mm, 1/4 in drive"
  kind  = "socket"
  size  = "hex 5 mm"
  drive = "1/4 in"
}

tool "hex_bit_6" {
  name  = "Hexagon bit, 6 mm, 3/8 in drive"
  kind  = "socket"
  size  = "hex 6 mm"
  drive = "3/8 in"
}

tool "hex_bit_8" {
  name  = "Hexagon bit, 8 mm, 3/8 in drive"
  kind  = "socket"
  size  = "hex 8 mm"
  drive = "3/8 in"
}

# Sockets, inch.

tool "socket_7_16_in" {
  name  = "Socket, 7/16 in, 3/8 in drive"
  kind  = "socket"
  size  = "7/16 in"
  drive = "3/8 in"
}

tool "socket_1_2_in" {
  name  = "Socket, 1/2 in, 3/8 in drive"
  kind  = "socket"
  size  = "1/2 in"
  drive = "3/8 in"
}

tool "socket_9_16_in" {
  name  = "Socket, 9/16 in, 1/2 in drive"
  kind  = "socket"
  size  = "9/16 in"
  drive = "1/2 in"
}

tool "socket_3_4_in" {
  name  = "Socket, 3/4 in, 1/2 in drive"
  kind  = "socket"
  size  = "3/4 in"
  drive = "1/2 in"
}

tool "socket_15_16_in" {
  name  = "Socket, 15/16 in, 1/2 in drive"
  kind  = "socket"
  size  = "15/16 in"
  drive = "1/2 in"
}

# Adapters. The setting of the wrench is worked out from length and offset.

tool "crowfoot_13" {
  name   = "Crowfoot adapter, 13 mm, 3/8 in drive"
  kind   = "adapter"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "40 mm"
}

tool "crowfoot_17" {
  name   = "Crowfoot adapter, 17 mm, 3/8 in drive"
  kind   = "adapter"
  size   = "17 mm"
  drive  = "3/8 in"
  length = "45 mm"
}

tool "crowfoot_9_16_in" {
  name   = "Crowfoot adapter, 9/16 in, 1/2 in drive"
  kind   = "adapter"
  size   = "9/16 in"
  drive  = "1/2 in"
  length = "2 in"
}

# Spanners and keys.

tool "spanner_10" {
  name = "Spanner, 10 mm"
  kind = "spanner"
  size = "10 mm"
}

tool "spanner_13" {
  name = "Spanner, 13 mm"
  kind = "spanner"
  size = "13 mm"
}

tool "spanner_16" {
  name = "Spanner, 16 mm"
  kind = "spanner"
  size = "16 mm"
}

tool "spanner_18" {
  name = "Spanner, 18 mm"
  kind = "spanner"
  size = "18 mm"
}

tool "spanner_7_16_in" {
  name = "Spanner, 7/16 in"
  kind = "spanner"
  size = "7/16 in"
}

tool "spanner_1_2_in" {
  name = "Spanner, 1/2 in"
  kind = "spanner"
  size = "1/2 in"
}

tool "spanner_9_16_in" {
  name = "Spanner, 9/16 in"
  kind = "spanner"
  size = "9/16 in"
}

tool "hex_keys" {
  name = "Hexagon keys, 2–10 mm"
  kind = "hexagon keys"
}

tool "hex_keys_in" {
  name = "Hexagon keys, 1/16–3/8 in"
  kind = "hexagon keys"
}

tool "screwdriver" {
  name = "Screwdriver, flat, 6 mm"
  kind = "screwdriver"
}

tool "cross_screwdriver" {
  name = "Screwdriver, cross slot, no. 2"
  kind = "screwdriver"
}

# Hand tools.

tool "soft_mallet" {
  name = "Mallet, soft face"
  kind = "mallet"
}

tool "hammer" {
  name = "Hammer, 300 g"
  kind = "hammer"
}

tool "brass_drift" {
  name = "Brass drift"
  kind = "drift"
}

tool "pliers" {
  name = "Combination pliers"
  kind = "pliers"
}

tool "circlip_pliers" {
  name = "Circlip pliers, inside and outside"
  kind = "pliers"

  warning {
    hazard = "A circlip can fly off the pliers."
    result = "Loss of an eye."
    avoid  = "Wear goggles and keep a rag over the circlip."
  }
}

tool "side_cutters" {
  name = "Side cutters"
  kind = "cutters"
}

tool "crimping_tool" {
  name = "Crimping tool, insulated terminals"
  kind = "crimping tool"
}

tool "fine_file" {
  name = "Fine flat file"
  kind = "file"
}

tool "oil_stone" {
  name = "Fine oil stone"
  kind = "oil stone"
}

tool "scraper" {
  name = "Plastic scraper"
  kind = "scraper"
}

tool "brush" {
  name = "Flux brush"
  kind = "brush"
}

tool "oil_can" {
  name = "Oil can"
  kind = "oil can"
}

tool "grease_gun" {
  name = "Grease gun"
  kind = "grease gun"
}

tool "funnel" {
  name = "Funnel with strainer"
  kind = "funnel"
}

tool "drip_tray" {
  name = "Drip tray, 10 L"
  kind = "drip tray"
}

tool "inspection_mirror" {
  name = "Inspection mirror"
  kind = "mirror"
}

tool "hand_lamp" {
  name = "Hand lamp, battery"
  kind = "lamp"
}

tool "vice" {
  name = "Bench vice with soft jaws"
  kind = "vice"
}

tool "engine_stand" {
  name     = "Assembly stand"
  kind     = "stand"
  capacity = "250 kg"
}

# Marking.

tool "scriber" {
  name = "Scriber"
  kind = "scriber"
}

tool "centre_punch" {
  name = "Centre punch"
  kind = "punch"
}

tool "paint_marker" {
  name = "Paint marker"
  kind = "paint marker"
}

# Heat, force and lifting.

tool "oven" {
  name       = "Workshop oven"
  kind       = "oven"
  reads      = "temperature"
  range      = "40..200 °C"
  resolution = "1 °C"
  accuracy   = "5 °C"
  hot        = true

  caution {
    hazard = "The oven and what comes out of it are hot."
    result = "Burnt hands."
    avoid  = "Wear heat-resistant gloves and clear a steel tray to put the part on."
  }
}

tool "freezer" {
  name       = "Freezer"
  kind       = "freezer"
  reads      = "temperature"
  range      = "-25..0 °C"
  resolution = "1 °C"
  accuracy   = "2 °C"

  caution {
    hazard = "A part at freezer temperature sticks to damp skin."
    result = "Torn skin."
    avoid  = "Handle it with dry, thick gloves."
  }
}

tool "torch" {
  name = "Gas torch"
  kind = "torch"
  hot  = true

  warning {
    hazard = "The flame lights vapour, oil and rags, and the nozzle stays hot."
    result = "Fire and burns."
    avoid  = "Clear solvent and rags from the bench, keep an extinguisher at hand and wear heat-resistant gloves."
  }
}

tool "press" {
  name     = "Arbor press"
  kind     = "press"
  capacity = "2000 kg"

  warning {
    hazard = "A part that slips under the press flies out; the ram crushes."
    result = "Crushed fingers or an eye lost."
    avoid  = "Seat the part square on its support, keep hands off it under load and wear goggles."
  }
}

tool "hoist" {
  name     = "Chain hoist with sling"
  kind     = "hoist"
  capacity = "250 kg"

  danger {
    hazard = "A load that hangs can fall or swing."
    result = "It kills whoever is under it and crushes hands."
    avoid  = "Stand clear of the load and its path, look over hook and sling before each lift, and wear boots."
  }
}

# Electrical.

tool "voltage_tester" {
  name       = "Two-pole voltage tester, category III"
  kind       = "voltage tester"
  reads      = "voltage"
  range      = "0..690 V"
  resolution = "1 V"
  accuracy   = "1 V"

  danger {
    hazard = "The tester is used where a conductor may be live."
    result = "Electric shock or arc burns, which can kill."
    avoid  = "Prove the tester on a known live source before and after each use. Hold the probes behind their guards."
  }
}

tool "multimeter" {
  name       = "Digital multimeter, set to d.c. volts"
  kind       = "multimeter"
  reads      = "voltage"
  range      = "0..600 V"
  resolution = "0.01 V"
  accuracy   = "1 %"
}

tool "ohmmeter" {
  name       = "Low-range ohmmeter"
  kind       = "ohmmeter"
  reads      = "resistance"
  range      = "0..200 Ω"
  resolution = "0.01 Ω"
  accuracy   = "0.02 Ω"
}

tool "insulation_tester" {
  name       = "Insulation tester, 500 V d.c."
  kind       = "insulation tester"
  reads      = "resistance"
  range      = "0..1000 MΩ"
  resolution = "0.1 MΩ"
  accuracy   = "5 %"

  warning {
    hazard = "The tester puts 500 V on the winding, and the winding keeps the charge."
    result = "Electric shock, and a fall after it."
    avoid  = "Keep everybody off the leads, hold the tester's discharge until it shows zero, and only then touch a terminal."
  }
}

tool "lockout_set" {
  name = "Lock-out set: padlock with one key, hasp and tag"
  kind = "lock-out"
}

tool "timing_light" {
  name       = "Stroboscopic timing light"
  kind       = "timing light"
  reads      = "angle"
  range      = "0..60°"
  resolution = "0.5°"
  accuracy   = "0.5°"
}

tool "tachometer" {
  name       = "Optical tachometer"
  kind       = "tachometer"
  reads      = "speed"
  range      = "60..20000 rpm"
  resolution = "1 rpm"
  accuracy   = "2 rpm"
}

tool "test_pump" {
  name = "Hand test pump with hose"
  kind = "test pump"

  warning {
    hazard = "A fitting can let go under test pressure."
    result = "Injured eyes or cut skin."
    avoid  = "Let all air out first, stand to the side, wear goggles and let the pressure off before you touch a fastener."
  }
}
