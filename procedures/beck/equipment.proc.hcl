# Tools and supplies that only this manual needs.

tool "penstock_lock" {
  name     = "Valve lock-out clamp with padlock and tag"
  kind     = "lock-out"
  stays_on = true
  sits_on  = part.penstock_valve
}

tool "isolator_lock" {
  name     = "Isolator lock-out with padlock and tag"
  kind     = "lock-out"
  stays_on = true
  sits_on  = part.control_box
}

tool "setting_ring" {
  name     = "Setting ring, ground to 0.0600 in"
  kind     = "setting ring"
  stays_on = true
  sits_on  = part.bearing_housing
}

tool "cup_drift" {
  name = "Bearing cup drift"
  kind = "drift"
}

tool "shaft_bar" {
  name = "Holding bar for the drive keyway"
  kind = "holding bar"
}

tool "machine_level" {
  name = "Machine level"
  kind = "level"
}

tool "inlet_blank" {
  name     = "Test blank for the inlet, with clamps"
  kind     = "test blank"
  stays_on = true
  sits_on  = part.casing
  covers   = [part.casing.port.inlet]
}

tool "outlet_blank" {
  name     = "Test blank for the draft elbow, with clamps"
  kind     = "test blank"
  stays_on = true
  sits_on  = part.draft_elbow
  covers   = [part.draft_elbow.port.outlet]
}

tool "test_gauge" {
  name       = "Test gauge, 0–100 psi, digital"
  kind       = "pressure gauge"
  range      = "0..100 psi"
  resolution = "0.1 psi"
  accuracy   = "0.2 psi"
}

tool "drip_glass" {
  name       = "Sight glass with drop counter"
  kind       = "drop counter"
  reads      = "count"
  range      = "0..120 drops/min"
  resolution = "1 drop/min"
  accuracy   = "1 drop/min"
}

tool "hex_bit_5_32_in" {
  name  = "Hexagon bit, 5/32 in, 3/8 in drive"
  kind  = "socket"
  size  = "hex 5/32 in"
  drive = "3/8 in"
}

supply "test_water" {
  name   = "Clean water"
  kind   = "water"
  amount = "4 gal"
}

tool "pry_bar" {
  name = "Pry bar, 24 in"
  kind = "pry bar"
}
