# Hand tools, marking, heat, force, lifting and electrical work.

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
    avoid  = "Let all air out first and stand to the side. Let the pressure off before you touch a fastener."
  }
}
