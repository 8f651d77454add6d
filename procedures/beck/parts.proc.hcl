# The site, which the builder provides.

part "plinth" {
  name     = "Concrete plinth with four anchor studs"
  supplied = false
  faces    = ["top"]
}

part "penstock_valve" {
  name     = "Penstock valve with its drain cock"
  supplied = false
  in_place = 1
  sits_on  = part.plinth
  ports    = ["outlet"]
  stores   = "pressure"

  danger {
    hazard = "The penstock holds water under pressure behind this valve."
    result = "Water or a flying part kills or maims, and the set starts with you in it."
    avoid  = "Shut the valve, lock it, hang your tag on it and keep the only key. See that the drain cock runs dry."
  }
}

# The wet end.

part "base" {
  name    = "Bed plate"
  number  = "BK-001"
  sits_on = part.plinth
  mass    = "95 lb"
  faces   = ["pads", "foot_pads"]
}

part "anchor_nut" {
  name     = "Anchor nut, 1/2-13"
  number   = "BK-002"
  quantity = 4
  sits_on  = part.base
}

part "anchor_washer" {
  name     = "Anchor washer"
  number   = "BK-003"
  quantity = 4
  sits_on  = part.base
}

part "casing" {
  name     = "Spiral casing"
  number   = "BK-010"
  sits_on  = part.base
  mass     = "62 lb"
  material = "cast iron"
  faces    = ["rear_flange", "front_flange", "inlet_flange"]
  ports    = ["inlet"]
  features = ["ring_seat"]
  marks    = ["top"]
}

part "casing_bolt" {
  name     = "Casing bolt, 3/8-16, with nut"
  number   = "BK-011"
  quantity = 4
  sits_on  = part.casing
}

part "vent_cock" {
  name     = "Vent cock"
  number   = "BK-012"
  in_place = 1
  sits_on  = part.casing
  ports    = ["outlet"]
}

part "drain_cock" {
  name     = "Drain cock"
  number   = "BK-013"
  in_place = 1
  sits_on  = part.casing
  ports    = ["outlet"]
}

part "vane_ring" {
  name    = "Guide vane ring with its adjuster"
  number  = "BK-020"
  sits_on = part.casing
  mass    = "9 lb"
  faces   = ["back"]
  marks   = ["top"]
}

part "guide_vane" {
  name     = "Guide vane"
  number   = "BK-021"
  quantity = 8
  sits_on  = part.vane_ring
  features = ["pin"]
}

part "vane_ring_screw" {
  name     = "Vane ring screw, 1/4-20"
  number   = "BK-022"
  quantity = 4
  sits_on  = part.vane_ring
}

part "draft_elbow" {
  name    = "Draft elbow"
  number  = "BK-014"
  sits_on = part.casing
  covers  = [part.runner, fastening.runner_nut, part.split_pin, part.casing.feature.ring_seat]
  mass    = "24 lb"
  faces   = ["flange"]
  ports   = ["outlet"]
}

part "elbow_bolt" {
  name     = "Elbow bolt, 5/16-18"
  number   = "BK-015"
  quantity = 8
  sits_on  = part.draft_elbow
}

part "inlet_pipe" {
  name    = "Inlet pipe"
  number  = "BK-016"
  sits_on = [part.casing, part.penstock_valve]
  mass    = "18 lb"
}

part "inlet_gasket" {
  name     = "Inlet gasket, rubber"
  number   = "BK-017"
  sits_on  = part.casing
  material = "rubber"
}

part "inlet_bolt" {
  name     = "Inlet bolt, 3/8-16, with nut"
  number   = "BK-018"
  quantity = 4
  sits_on  = part.inlet_pipe
}

# The bearing cartridge.

part "bearing_housing" {
  name     = "Bearing housing"
  number   = "BK-030"
  sits_on  = part.casing
  covers   = [part.vane_ring, fastening.vane_ring_screws, fastening.vane_lock_nut]
  mass     = "34 lb"
  material = "cast iron"
  faces    = ["flange", "cap_face"]
  features = ["runner_bore", "drive_bore", "gland_bore"]
}

part "housing_bolt" {
  name     = "Housing bolt, 3/8-16"
  number   = "BK-031"
  quantity = 6
  sits_on  = part.bearing_housing
}

part "housing_o_ring" {
  name     = "O-ring of the housing spigot"
  number   = "BK-032"
  sits_on  = part.bearing_housing
  use_once = true
}

part "housing_shim" {
  name    = "Housing shim, split"
  number  = "BK-033"
  sits_on = part.bearing_housing

  size "0.005 in" { in_kit = 2 }
  size "0.010 in" { in_kit = 2 }
  size "0.020 in" { in_kit = 1 }
}

part "shaft" {
  name     = "Turbine shaft"
  number   = "BK-034"
  sits_on  = part.bearing_housing
  mass     = "13 lb"
  material = "steel"
  faces    = ["taper"]
  features = ["runner_journal", "drive_journal", "keyway"]

  danger {
    hazard = "The shaft turns as soon as water reaches the runner."
    result = "It winds in sleeves, hair and rags, and tears off fingers."
    avoid  = "Lock the penstock valve before you touch it. Run only with the guard on, sleeves and hair tied back."
  }
}

part "cone" {
  name    = "Bearing cone, taper roller"
  number  = "BK-035"
  at_each = places.end
  sits_on = part.shaft
  fits_by = "shrink"
}

part "runner_cup" {
  name    = "Bearing cup, runner end"
  number  = "BK-036"
  sits_on = part.bearing_housing
  fits_by = "press"
}

part "drive_cup" {
  name    = "Bearing cup, drive end"
  number  = "BK-037"
  sits_on = part.bearing_housing
}

part "bearing_cap" {
  name    = "Bearing cap"
  number  = "BK-038"
  sits_on = part.bearing_housing
  covers  = [part.drive_cup, part.bearing_shim]
  mass    = "4 lb"
  faces   = ["flange"]
}

part "cap_seal" {
  name     = "Grease seal of the bearing cap"
  number   = "BK-039"
  sits_on  = part.bearing_cap
  fits_by  = "press"
  use_once = true
}

part "cap_screw" {
  name     = "Cap screw, 5/16-18"
  number   = "BK-040"
  quantity = 6
  sits_on  = part.bearing_cap
}

part "bearing_shim" {
  name    = "Bearing shim"
  number  = "BK-041"
  sits_on = part.bearing_housing

  size "0.003 in" { in_kit = 2 }
  size "0.005 in" { in_kit = 2 }
  size "0.010 in" { in_kit = 2 }
  size "0.020 in" { in_kit = 2 }
}

part "packing_ring" {
  name     = "Gland packing ring"
  number   = "BK-042"
  quantity = 4
  sits_on  = part.bearing_housing
  use_once = true
}

part "gland" {
  name    = "Gland follower"
  number  = "BK-043"
  sits_on = part.bearing_housing
  covers  = [part.packing_ring]
}

part "gland_nut" {
  name     = "Gland nut, 3/8-16"
  number   = "BK-044"
  quantity = 2
  sits_on  = part.gland
}

part "gland_lock_nut" {
  name     = "Gland lock nut, 3/8-16"
  number   = "BK-045"
  quantity = 2
  sits_on  = part.gland
}

# The runner.

part "runner" {
  name     = "Runner"
  number   = "BK-050"
  sits_on  = part.shaft
  mass     = "21 lb"
  material = "aluminium bronze"
  faces    = ["bore", "rim"]

  caution {
    hazard = "The edges of the blades are as sharp as a knife."
    result = "Cut hands."
    avoid  = "Lift the runner by its hub and wear leather work gloves."
  }
}

part "runner_key" {
  name    = "Runner key"
  number  = "BK-051"
  sits_on = part.shaft
}

part "runner_washer" {
  name    = "Runner washer"
  number  = "BK-052"
  sits_on = part.runner
}

part "runner_nut" {
  name    = "Runner nut, castellated, 1/2-20, six slots"
  number  = "BK-053"
  sits_on = part.runner
}

part "split_pin" {
  name     = "Split pin"
  number   = "BK-054"
  sits_on  = part.runner_nut
  use_once = true
}
