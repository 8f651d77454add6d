manual "hub" {
  title    = "Trailer hub: assembly"
  units    = "metric"
  revision = "B"
  issued   = "2026-06-01"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.clean, procedure.bearing, procedure.close]

  history "A" {
    issued = "2026-02-01"
    reason = "Two hubs ran loose. The float is tighter now, and a second person looks at it."
  }
}

part "axle" {
  name  = "Axle"
  faces = ["flange"]
}

part "wheel_hub" {
  name    = "Hub"
  number  = "H-2"
  mass    = "6 kg"
  sits_on = part.axle
}

part "cap" {
  name    = "Cap"
  number  = "H-3a"
  sits_on = part.wheel_hub
}

part "shim" {
  name    = "Shim"
  sits_on = part.axle
  size "0.05 mm" { in_kit = 2 }
  size "0.10 mm" { in_kit = 6 }
  size "0.20 mm" { in_kit = 2 }
}

tool "dial" {
  name       = "Dial indicator"
  kind       = "dial indicator"
  range      = "0..10 mm"
  resolution = "0.01 mm"
}

tool "wrench" {
  name  = "Torque wrench"
  kind  = "torque wrench"
  range = "20..120 N·m"
}

supply "grease" {
  name = "Bearing grease"
  kind = "grease"
  caution {
    hazard = "The grease irritates the skin."
    result = "A rash."
    avoid  = "Wear gloves."
  }
}

fastening "cap_bolts" {
  name   = "Cap bolts"
  thread = "M8x1.25"
  stack  = [part.cap, part.wheel_hub]
  torque = "24 N·m ± 10 %"
  basis  = "Drawing H-9, issue 2"
}

limit "float" {
  name  = "Float of the hub"
  range = "0.05..0.20 mm"
  basis = "Drawing H-7"
}

limit "runout" {
  name     = "Runout of the flange"
  range    = "max 0.12 mm"
  critical = true
}
