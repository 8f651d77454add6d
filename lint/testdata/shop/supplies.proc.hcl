# Supplies, named by kind.

supply "solvent" {
  name   = "Degreasing solvent"
  kind   = "solvent"
  amount = "0.5 L"
  ppe    = [ppe.gloves, ppe.goggles]

  warning {
    hazard = "The solvent and its vapour catch fire easily."
    result = "Burns; dizziness in a closed room."
    avoid  = "Open a door and a window. Keep flames, sparks and heaters out of the room. Put used rags in a closed metal bin."
  }
}

supply "rags" {
  name = "Lint-free rags"
  kind = "wipes"
}

supply "silicone_sealant" {
  name            = "Silicone sealant, neutral cure"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "20 min"
  handling        = "2 h at 20 °C"
  cure            = ["24 h at 20 °C", "48 h at 10 °C"]
  service         = "-50..200 °C"
  amount          = "1 tube of 80 mL"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured silicone irritates the eyes."
    result = "Red, watering eyes for some hours."
    avoid  = "Keep your gloves away from your face. Rinse an eye with water for 15 min and see a doctor."
  }
}

supply "flange_sealant" {
  name            = "Anaerobic flange sealant"
  kind            = "sealant"
  assemble_within = "15 min"
  tighten_within  = "30 min"
  handling        = "2 h at 20 °C"
  cure            = ["24 h at 20 °C", "72 h at 10 °C"]
  service         = "-55..150 °C"
  amount          = "1 tube of 50 mL"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured anaerobic sealant can make the skin allergic."
    result = "A rash that comes back at every later contact."
    avoid  = "Wear the gloves, change them when they are smeared, and wash with soap."
  }
}

supply "threadlocker_medium" {
  name            = "Threadlocker, medium strength"
  kind            = "threadlocker"
  assemble_within = "10 min"
  tighten_within  = "15 min"
  handling        = "20 min at 20 °C"
  cure            = ["24 h at 20 °C", "72 h at 10 °C"]
  service         = "-55..150 °C"
  amount          = "1 bottle of 10 mL"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured threadlocker can make the skin allergic."
    result = "A rash that comes back at every later contact."
    avoid  = "Wear the gloves, change them when they are smeared, and wash with soap."
  }
}

supply "threadlocker_high" {
  name            = "Threadlocker, high strength"
  kind            = "threadlocker"
  assemble_within = "10 min"
  tighten_within  = "15 min"
  handling        = "30 min at 20 °C"
  cure            = ["24 h at 20 °C", "72 h at 10 °C"]
  service         = "-55..150 °C"
  amount          = "1 bottle of 10 mL"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured threadlocker can make the skin allergic."
    result = "A rash that comes back at every later contact."
    avoid  = "Wear the gloves, change them when they are smeared, and wash with soap."
  }
}

supply "engine_oil" {
  name   = "Engine oil, SAE 30"
  kind   = "oil"
  amount = "5 L"
  ppe    = [ppe.gloves]

  caution {
    hazard = "Oil on the floor is slippery."
    result = "A fall."
    avoid  = "Wipe spills up at once and scatter absorbent on what is left."
  }
}

supply "grease" {
  name   = "Lithium grease, NLGI grade 2"
  kind   = "grease"
  amount = "1 cartridge of 400 g"
  ppe    = [ppe.gloves]
}

supply "anti_seize" {
  name   = "Anti-seize paste, copper-free"
  kind   = "anti-seize"
  amount = "1 tube of 50 g"
  ppe    = [ppe.gloves]
}

supply "assembly_paste" {
  name   = "Assembly paste for bearings and cams"
  kind   = "grease"
  amount = "1 tube of 50 g"
  ppe    = [ppe.gloves]
}
