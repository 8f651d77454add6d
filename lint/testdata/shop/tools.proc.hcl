# Hand tools for the fragments of the rules.

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

tool "spanner_18" {
  name = "Spanner, 18 mm"
  kind = "spanner"
  size = "18 mm"
}

tool "screwdriver" {
  name = "Screwdriver, flat, 6 mm"
  kind = "screwdriver"
}

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

tool "oil_can" {
  name = "Oil can"
  kind = "oil can"
}

tool "funnel" {
  name = "Funnel with strainer"
  kind = "funnel"
}

tool "drip_tray" {
  name = "Drip tray, 10 L"
  kind = "drip tray"
}

tool "vice" {
  name = "Bench vice with soft jaws"
  kind = "vice"
}

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
    avoid  = "Stand clear of the load and its path. Look over hook and sling before each lift, and wear boots."
  }
}

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

tool "lockout_set" {
  name = "Lock-out set: padlock with one key, hasp and tag"
  kind = "lock-out"
}

tool "test_pump" {
  name = "Hand test pump with hose"
  kind = "test pump"

  warning {
    hazard = "A fitting can let go under test pressure."
    result = "Injured eyes or cut skin."
    avoid  = "Wear goggles and stand to the side. Let all air out first, and the pressure off before you touch a fastener."
  }
}

tool "hand_lamp" {
  name = "Hand lamp, battery"
  kind = "lamp"
}
