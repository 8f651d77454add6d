# A gearbox with a bit of everything, for the stories of the bench. Shared, so
# that a story need not use all of it.

part "housing" {
  name     = "Housing"
  faces    = ["flange", "side"]
  ports    = ["filler", "drain"]
  features = ["bore"]
  mass     = "18 kg"
}

part "shaft" {
  name    = "Shaft"
  sits_on = part.housing
  faces   = ["end", "taper"]
  mass    = "4 kg"
}

part "gear" {
  name    = "Gear"
  sits_on = part.shaft
  faces   = ["front"]
  marks   = ["dot"]
  mass    = "2 kg"
}

part "gasket" {
  name     = "Gasket"
  sits_on  = part.housing
  use_once = true
}

part "cover" {
  name    = "Cover"
  sits_on = part.housing
  covers  = [part.gear, part.housing.feature.bore, fastening.gear_nut]
  faces   = ["flange"]
  mass    = "6 kg"
}

part "cover_bolt" {
  name     = "Cover bolt"
  quantity = 4
  sits_on  = part.cover
}

part "lid" {
  name    = "Lid"
  sits_on = part.housing
  faces   = ["flange"]
  ports   = ["vent"]
}

part "lid_bolt" {
  name     = "Lid bolt"
  quantity = 4
  sits_on  = part.lid
}

part "tab" {
  name     = "Tab washer"
  sits_on  = part.gear
  use_once = true
}

part "nut" {
  name    = "Gear nut"
  sits_on = part.gear
}

part "plug" {
  name    = "Drain plug"
  sits_on = part.housing
  covers  = [part.housing.port.drain]
}

part "cap" {
  name    = "Filler cap"
  sits_on = part.housing
  covers  = [part.housing.port.filler]
}

part "circlip" {
  name     = "Circlip"
  sits_on  = part.shaft
  quantity = 3
  use_once = true
}

part "bush" {
  name    = "Bush"
  sits_on = part.shaft
  held_by = part.circlip
}

part "shim" {
  name    = "Shim"
  sits_on = part.shaft

  size "0.1 mm" {
    in_kit = 4
  }
  size "0.2 mm" {
    in_kit = 4
  }
}

part "arm" {
  name    = "Arm"
  at_each = places.side
  sits_on = part.housing
}

part "arm_bolt" {
  name    = "Arm bolt"
  at_each = places.side
  sits_on = part.arm
}

places "side" {
  names = ["left", "right"]
}

fastening "cover_bolts" {
  name      = "Cover bolts"
  quantity  = 4
  stack     = [part.cover, part.gasket, part.housing]
  fasteners = [part.cover_bolt]
  torque    = "20 N·m"
}

fastening "lid_bolts" {
  name      = "Lid bolts"
  quantity  = 4
  stack     = [part.lid, part.housing]
  fasteners = [part.lid_bolt]
  torque    = "10 N·m"
}

fastening "gear_nut" {
  name      = "Gear nut"
  stack     = [part.tab, part.gear, part.shaft]
  fasteners = [part.nut]
  lubricant = supply.oil
  torque    = "60 N·m"
  locked_by = part.tab
}

fastening "plug" {
  name      = "Drain plug"
  does      = "plug"
  stack     = [part.housing]
  fasteners = [part.plug]
  torque    = "30 N·m"
}

fastening "grub_screw" {
  name      = "Grub screw"
  does      = "set screw"
  torque    = "5 N·m"
  locked_by = supply.locker
}

fastening "adjuster_nut" {
  name   = "Lock nut of the adjuster"
  does   = "lock nut"
  torque = "12 N·m"
}

fastening "arm_bolts" {
  name      = "Arm bolt"
  at_each   = places.side
  stack     = [part.arm, part.housing]
  fasteners = [part.arm_bolt]
  torque    = "25 N·m"
}

supply "oil" {
  name = "Oil"
  kind = "oil"
}

supply "grease" {
  name = "Grease"
  kind = "grease"
}

supply "solvent" {
  name = "Solvent"
  kind = "solvent"
}

supply "locker" {
  name = "Threadlocker"
  kind = "threadlocker"
}

supply "sealant" {
  name            = "Sealant"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "30 min"
  cure            = ["24 h at 20 °C", "48 h at 10 °C"]
  service         = "-50..150 °C"
}

supply "quick_sealant" {
  name = "Quick sealant"
  kind = "sealant"
  cure = "2 h at 20 °C"
}

tool "gauge" {
  name       = "Depth gauge"
  kind       = "depth gauge"
  range      = "0..50 mm"
  resolution = "0.01 mm"
}

tool "ring" {
  name     = "Setting ring"
  kind     = "ring"
  stays_on = true
  sits_on  = part.housing
  covers   = [part.housing.face.side]
}

tool "clamp" {
  name     = "Holding clamp"
  kind     = "clamp"
  stays_on = true
  sits_on  = part.shaft
}

tool "hoist" {
  name     = "Hoist"
  kind     = "hoist"
  capacity = "100 kg"
}
