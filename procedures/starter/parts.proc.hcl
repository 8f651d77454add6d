# What is in the kit, what sits on what, and how it is held together.

part "housing" {
  name   = "Bearing housing"
  number = "M-001"
  faces  = ["bore", "cover"]
}

part "shaft" {
  name    = "Shaft with its bearing"
  number  = "M-002"
  sits_on = part.housing
}

part "shim" {
  name    = "Shim"
  number  = "M-003"
  sits_on = part.shaft

  size "0.10 mm" { in_kit = 3 }
  size "0.20 mm" { in_kit = 2 }
  size "0.50 mm" { in_kit = 2 }
}

part "cover" {
  name    = "Cover"
  number  = "M-004"
  sits_on = part.housing
  covers  = [part.shim]
}

part "bolt" {
  name     = "Bolt, M8 × 25"
  number   = "M-005"
  quantity = 4
}

fastening "cover" {
  name         = "Cover bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 4
  layout       = "circle"
  pattern      = "criss-cross"
  stack        = [part.cover, part.housing]
  fasteners    = part.bolt
  lubricant    = supply.oil
  across_flats = "13 mm"
  torque       = "18 ± 2 N·m"
  basis        = "Drawing M-010"
}

limit "end_float" {
  name   = "End float of the shaft"
  range  = "0.05..0.15 mm"
  target = "0.10 mm"
  basis  = "Drawing M-010"
}
