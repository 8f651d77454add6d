# Generator, drive and control.

part "generator" {
  name    = "Generator, 5 kW"
  number  = "BK-070"
  sits_on = part.base
  mass    = "88 lb"
  stores  = "electric"

  danger {
    hazard = "The generator makes a deadly voltage as soon as it turns, with nothing switched on."
    result = "Electric shock, which can kill."
    avoid  = "Touch the terminals only with the penstock valve locked and the shaft standing, and prove them dead first."
  }
}

part "foot_bolt" {
  name     = "Foot bolt, 3/8-16, with nut and washer"
  number   = "BK-071"
  quantity = 4
  sits_on  = part.generator
}

part "foot_shim" {
  name    = "Foot shim, slotted"
  number  = "BK-072"
  when    = option.drive == "coupling"
  sits_on = part.base

  size "0.002 in" { in_kit = 4 }
  size "0.004 in" { in_kit = 4 }
  size "0.008 in" { in_kit = 4 }
  size "0.016 in" { in_kit = 4 }
  size "0.032 in" { in_kit = 4 }
}

part "drive_key" {
  name    = "Drive key of the turbine shaft"
  number  = "BK-080"
  sits_on = part.shaft
}

part "generator_key" {
  name    = "Drive key of the generator shaft"
  number  = "BK-081"
  sits_on = part.generator
}

part "turbine_hub" {
  name     = "Coupling hub, turbine"
  number   = "BK-082"
  when     = option.drive == "coupling"
  sits_on  = part.shaft
  features = ["rim"]
}

part "generator_hub" {
  name     = "Coupling hub, generator"
  number   = "BK-083"
  when     = option.drive == "coupling"
  sits_on  = part.generator
  features = ["rim"]
}

part "spider" {
  name    = "Rubber spider"
  number  = "BK-084"
  when    = option.drive == "coupling"
  sits_on = part.turbine_hub
}

part "hub_screw" {
  name     = "Hub set screw, 5/16-18"
  number   = "BK-085"
  when     = option.drive == "coupling"
  quantity = 2
  sits_on  = [part.turbine_hub, part.generator_hub]
}

part "turbine_pulley" {
  name     = "Pulley, turbine"
  number   = "BK-086"
  when     = option.drive == "belt"
  sits_on  = part.shaft
  features = ["face"]
}

part "generator_pulley" {
  name     = "Pulley, generator"
  number   = "BK-087"
  when     = option.drive == "belt"
  sits_on  = part.generator
  features = ["face"]
}

part "pulley_screw" {
  name     = "Pulley set screw, 5/16-18"
  number   = "BK-088"
  when     = option.drive == "belt"
  quantity = 2
  sits_on  = [part.turbine_pulley, part.generator_pulley]
}

part "belt" {
  name    = "Ribbed belt"
  number  = "BK-089"
  when    = option.drive == "belt"
  sits_on = [part.turbine_pulley, part.generator_pulley]
}

part "guard" {
  name    = "Drive guard"
  number  = "BK-090"
  sits_on = part.base
  covers  = [part.turbine_hub, part.generator_hub, part.spider, part.turbine_pulley, part.generator_pulley, part.belt]
  mass    = "7 lb"
}

part "guard_screw" {
  name     = "Guard screw, 1/4-20"
  number   = "BK-091"
  quantity = 4
  sits_on  = part.guard
}

part "control_box" {
  name    = "Control box with ballast load and isolator"
  number  = "BK-100"
  sits_on = part.base
  mass    = "26 lb"
  stores  = "electric"
  ports   = ["gland_plate"]

  danger {
    hazard = "The box is live while the generator turns, and its capacitors stay charged for 5 min after."
    result = "Electric shock, which can kill."
    avoid  = "Keep it shut while the set turns. Lock the isolator, wait, and prove the terminals dead before you reach in."
  }
}

part "box_screw" {
  name     = "Box screw, 5/16-18"
  number   = "BK-101"
  quantity = 4
  sits_on  = part.control_box
}

part "generator_cable" {
  name    = "Generator cable with crimped eyes"
  number  = "BK-102"
  sits_on = [part.generator, part.control_box]
}

part "terminal_nut" {
  name    = "Terminal nut, brass, 5/16-18"
  number  = "BK-103"
  at_each = places.terminal
  sits_on = part.generator_cable
}

part "spring_washer" {
  name    = "Spring washer"
  number  = "BK-104"
  at_each = places.terminal
  sits_on = part.generator_cable
}

part "earth_strap" {
  name    = "Earth strap"
  number  = "BK-105"
  sits_on = [part.base, part.generator]
}

part "earth_screw" {
  name     = "Earth screw, 5/16-18, with toothed washer"
  number   = "BK-106"
  quantity = 2
  sits_on  = part.earth_strap
}

part "terminal_cover" {
  name    = "Terminal cover"
  number  = "BK-107"
  sits_on = part.generator
  covers  = [fastening.terminal_nuts]
}

part "cover_screw" {
  name     = "Terminal cover screw, 1/4-20"
  number   = "BK-108"
  quantity = 2
  sits_on  = part.terminal_cover
}
