manual "water_pump" {
  title    = "Garden water pump, electric"
  units    = "metric"
  revision = "A"
  issued   = "2025-04-04"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.wet_end, procedure.first_run]
}
ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}
supply "silicone" {
  name            = "Neutral silicone sealant"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "20 min"
  handling        = "2 h at 20 °C"
  cure            = "24 h at 20 °C"
  service         = "-40..150 °C"
  ppe             = ppe.gloves
  caution {
    hazard = "Fresh sealant irritates skin and eyes"
    result = "Sore skin and eyes"
    avoid  = "Wear gloves and rinse eyes with water"
  }
}
supply "cleaner" {
  name = "Solvent cleaner"
  kind = "solvent"
  ppe  = ppe.gloves
  warning {
    hazard = "The cleaner and its vapour burn"
    result = "Fire"
    avoid  = "Keep flames away and open a window"
  }
}
supply "water" {
  name = "Clean water"
  kind = "water"
}
part "motor" {
  name   = "Motor with bracket"
  number = "WP-1"
  mass   = "6 kg"
  stores = "electric"
  faces  = ["flange"]
  danger {
    hazard = "The motor is worked by mains current"
    result = "Electric shock can kill"
    avoid  = "Keep the plug out and in your pocket until the step that runs it; wiring is for a licensed electrician"
  }
}
part "impeller" {
  name    = "Impeller"
  number  = "WP-2"
  sits_on = part.motor
}
part "impeller_nut" {
  name   = "Impeller nut M8 LH"
  number = "WP-3"
}
part "volute" {
  name    = "Volute"
  number  = "WP-4"
  mass    = "2 kg"
  sits_on = part.motor
  covers  = [part.impeller, part.impeller_nut]
  faces   = ["joint"]
  ports   = ["priming"]
}
part "volute_bolt" {
  name     = "Bolt M6 × 25"
  number   = "WP-5"
  quantity = 6
}
part "plug" {
  name   = "Priming plug"
  number = "WP-6"
}
fastening "impeller" {
  name         = "Impeller nut"
  does         = "lock nut"
  thread       = "M8x1.25 LH"
  fasteners    = part.impeller_nut
  stack        = [part.impeller]
  torque       = "12 ± 2 N·m"
  across_flats = "13 mm"
  basis        = "Drawing WP-0"
}
fastening "volute" {
  name         = "Volute bolts"
  thread       = "M6x1.0"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 6
  fasteners    = part.volute_bolt
  stack        = [part.volute]
  lubricant    = "dry"
  torque       = "9 ± 1 N·m"
  across_flats = "10 mm"
  layout       = "circle"
  pattern      = "criss-cross"
}
fastening "plug" {
  name         = "Priming plug"
  does         = "plug"
  thread       = "G 1/4"
  fasteners    = part.plug
  torque       = "15 ± 3 N·m"
  across_flats = "17 mm"
  basis        = "Drawing WP-0"
}
tool "wrench" {
  name     = "Torque wrench, small"
  kind     = "torque wrench"
  range    = "4..20 N·m"
  accuracy = "± 4 %"
  drive    = "1/4 in"
}
tool "socket_10" {
  name  = "Socket, 10 mm"
  kind  = "socket"
  size  = "10 mm"
  drive = "1/4 in"
}
tool "socket_13" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "1/4 in"
}
tool "socket_17" {
  name  = "Socket, 17 mm"
  kind  = "socket"
  size  = "17 mm"
  drive = "1/4 in"
}
tool "strap" {
  name = "Strap wrench"
  kind = "strap wrench"
}
tool "feelers" {
  name       = "Feeler gauges"
  kind       = "gap"
  range      = "0.05..1.00 mm"
  resolution = "0.05 mm"
  accuracy   = "± 0.005 mm"
}
limit "tip" {
  name  = "Gap between impeller and volute"
  range = "0.30..0.80 mm"
  basis = "Drawing WP-0"
}
