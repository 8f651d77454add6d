# Torques by T = K·F·d with proof strengths of SAE J429; the basis says where else one comes from.

fastening "anchors" {
  name         = "Anchor nuts"
  thread       = "1/2-13 UNC"
  bolt_class   = "grade 2"
  quantity     = 4
  stack        = [part.base, part.plinth]
  fasteners    = [part.anchor_nut, part.anchor_washer]
  lubricant    = "dry"
  across_flats = "3/4 in"
  torque       = "46 lb·ft ± 10 %"
  stages       = ["23 lb·ft", "46 lb·ft"]
  layout       = "grid 2x2"
  pattern      = "criss-cross"
  basis        = "About 71 % of proof at K 0.20"
}

fastening "casing_bolts" {
  name         = "Casing bolts"
  thread       = "3/8-16 UNC"
  bolt_class   = "grade 5"
  quantity     = 4
  stack        = [part.casing, part.base]
  fasteners    = [part.casing_bolt]
  lubricant    = "dry"
  across_flats = "9/16 in"
  torque       = "30 lb·ft ± 10 %"
  layout       = "grid 2x2"
  pattern      = "criss-cross"
  basis        = "About 73 % of proof at K 0.20"
}

fastening "vane_ring_screws" {
  name            = "Vane ring screws"
  thread          = "1/4-20 UNC"
  bolt_class      = "grade 5"
  quantity        = 4
  stack           = [part.vane_ring, part.casing]
  fasteners       = [part.vane_ring_screw]
  lubricant       = supply.threadlocker_medium
  nut_factor      = "0.18..0.22"
  thread_material = "cast iron"
  thread_length   = "0.5 in"
  across_flats    = "7/16 in"
  torque          = "85 lb·in ± 8 %"
  layout          = "circle"
  pattern         = "criss-cross"
  locked_by       = supply.threadlocker_medium
  basis           = "About 63 % of proof at K 0.20, threadlocker wet"
}

fastening "vane_lock_nut" {
  name         = "Lock nut of the vane adjuster"
  does         = "lock nut"
  thread       = "5/16-18 UNC"
  across_flats = "1/2 in"
  torque       = "100 lb·in ± 10 %"
  basis        = "Drawing BK-020, issue 2"
}

fastening "cap_screws" {
  name            = "Cap screws"
  thread          = "5/16-18 UNC"
  bolt_class      = "grade 5"
  quantity        = 6
  stack           = [part.bearing_cap, part.bearing_shim, part.bearing_housing]
  fasteners       = [part.cap_screw]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "0.5 in"
  across_flats    = "1/2 in"
  torque          = "205 lb·in ± 10 %"
  stages          = ["100 lb·in", "205 lb·in"]
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "About 73 % of proof at K 0.20"
}

fastening "gland_nuts" {
  name         = "Gland nuts"
  does         = "gland"
  thread       = "3/8-16 UNC"
  quantity     = 2
  stack        = [part.gland, part.packing_ring, part.bearing_housing]
  fasteners    = [part.gland_nut]
  across_flats = "9/16 in"
  torque       = "60 ± 6 lb·in"
  basis        = "Workshop sheet BK-W4: beds four rings of packing"
}

fastening "gland_lock_nuts" {
  name         = "Gland lock nuts"
  does         = "lock nut"
  thread       = "3/8-16 UNC"
  quantity     = 2
  fasteners    = [part.gland_lock_nut]
  across_flats = "9/16 in"
  torque       = "150 ± 15 lb·in"
  basis        = "Workshop sheet BK-W4"
}

fastening "runner_nut" {
  name         = "Runner nut"
  thread       = "1/2-20 UNF"
  bolt_class   = "grade 5"
  stack        = [part.runner_washer, part.runner, part.shaft]
  fasteners    = [part.runner_nut]
  lubricant    = supply.engine_oil
  nut_factor   = "0.15..0.18"
  across_flats = "3/4 in"
  torque       = "52..70 lb·ft"
  to_slot      = true
  locked_by    = part.split_pin
  basis        = "FAA AC 43.13-1B, table 7-1, row 1/2-20, gives 480 to 690 lb·in dry and 1100 at most. A taper asks for more than its least."
}

fastening "housing_bolts" {
  name            = "Housing bolts"
  thread          = "3/8-16 UNC"
  bolt_class      = "grade 5"
  quantity        = 6
  stack           = [part.bearing_housing, part.housing_shim, part.casing]
  fasteners       = [part.housing_bolt]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "0.65 in"
  across_flats    = "9/16 in"
  torque          = "30 lb·ft ± 10 %"
  stages          = ["20 lb·ft", "30 lb·ft"]
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "About 73 % of proof at K 0.20"
}

fastening "elbow_bolts" {
  name            = "Elbow bolts"
  thread          = "5/16-18 UNC"
  bolt_class      = "grade 5"
  quantity        = 8
  stack           = [part.draft_elbow, part.casing]
  fasteners       = [part.elbow_bolt]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "0.5 in"
  across_flats    = "1/2 in"
  torque          = "205 lb·in ± 10 %"
  stages          = ["100 lb·in", "205 lb·in"]
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "About 73 % of proof at K 0.20"
}

fastening "inlet_bolts" {
  name         = "Inlet bolts"
  thread       = "3/8-16 UNC"
  bolt_class   = "grade 5"
  quantity     = 4
  stack        = [part.inlet_pipe, part.inlet_gasket, part.casing]
  fasteners    = [part.inlet_bolt]
  lubricant    = "dry"
  across_flats = "9/16 in"
  torque       = "150 lb·in ± 10 %"
  layout       = "circle"
  pattern      = "criss-cross"
  basis        = "Squeezes the rubber gasket by a quarter; the bolt itself would bear more"
}

fastening "foot_bolts" {
  name         = "Foot bolts"
  thread       = "3/8-16 UNC"
  bolt_class   = "grade 5"
  quantity     = 4
  stack        = [part.generator, part.foot_shim, part.base]
  fasteners    = [part.foot_bolt]
  lubricant    = "dry"
  across_flats = "9/16 in"
  torque       = "30 lb·ft ± 10 %"
  layout       = "grid 2x2"
  pattern      = "criss-cross"
  basis        = "About 73 % of proof at K 0.20"
}

fastening "hub_screws" {
  name         = "Hub set screws"
  does         = "set screw"
  when         = option.drive == "coupling"
  thread       = "5/16-18 UNC"
  quantity     = 2
  fasteners    = [part.hub_screw]
  lubricant    = supply.threadlocker_medium
  across_flats = "hex 5/32 in"
  torque       = "120 ± 12 lb·in"
  locked_by    = supply.threadlocker_medium
  basis        = "Drawing BK-082, issue 1"
}

fastening "pulley_screws" {
  name         = "Pulley set screws"
  does         = "set screw"
  when         = option.drive == "belt"
  thread       = "5/16-18 UNC"
  quantity     = 2
  fasteners    = [part.pulley_screw]
  lubricant    = supply.threadlocker_medium
  across_flats = "hex 5/32 in"
  torque       = "120 ± 12 lb·in"
  locked_by    = supply.threadlocker_medium
  basis        = "Drawing BK-089, issue 1"
}

fastening "guard_screws" {
  name         = "Guard screws"
  thread       = "1/4-20 UNC"
  bolt_class   = "grade 5"
  quantity     = 4
  stack        = [part.guard, part.base]
  fasteners    = [part.guard_screw]
  lubricant    = "dry"
  across_flats = "7/16 in"
  torque       = "100 lb·in ± 10 %"
  layout       = "grid 2x2"
  pattern      = "criss-cross"
  basis        = "About 73 % of proof at K 0.20"
}

fastening "box_screws" {
  name         = "Box screws"
  thread       = "5/16-18 UNC"
  bolt_class   = "grade 5"
  quantity     = 4
  stack        = [part.control_box, part.base]
  fasteners    = [part.box_screw]
  lubricant    = "dry"
  across_flats = "1/2 in"
  torque       = "205 lb·in ± 10 %"
  layout       = "grid 2x2"
  pattern      = "criss-cross"
  basis        = "About 73 % of proof at K 0.20"
}

fastening "terminal_nuts" {
  name         = "Terminal nuts"
  thread       = "5/16-18 UNC"
  proof        = "30000 psi"
  at_each      = places.terminal
  stack        = [part.generator_cable, part.generator]
  fasteners    = [part.terminal_nut, part.spring_washer]
  lubricant    = "dry"
  across_flats = "1/2 in"
  torque       = "72 lb·in ± 8 %"
  basis        = "Brass stud: about 73 % of proof at K 0.20"
}

fastening "earth_screws" {
  name         = "Earth screws"
  thread       = "5/16-18 UNC"
  bolt_class   = "grade 5"
  quantity     = 2
  stack        = [part.earth_strap, part.base]
  fasteners    = [part.earth_screw]
  lubricant    = "dry"
  across_flats = "1/2 in"
  torque       = "205 lb·in ± 10 %"
  basis        = "About 73 % of proof at K 0.20"
}

fastening "cover_screws" {
  name            = "Terminal cover screws"
  thread          = "1/4-20 UNC"
  bolt_class      = "grade 5"
  quantity        = 2
  stack           = [part.terminal_cover, part.generator]
  fasteners       = [part.cover_screw]
  lubricant       = "dry"
  thread_material = "aluminium alloy"
  thread_length   = "0.5 in"
  across_flats    = "7/16 in"
  torque          = "100 lb·in ± 10 %"
  basis           = "About 73 % of proof at K 0.20"
}
