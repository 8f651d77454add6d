# Flywheel, starting, ignition, fuel, cooling and the frame.

part "flywheel_key" {
  name    = "Flywheel key"
  number  = "WE-190"
  sits_on = part.crankshaft
  mass    = "8 g"
}

part "flywheel" {
  name     = "Flywheel with starter ring"
  number   = "WE-191"
  sits_on  = [part.crankshaft, part.flywheel_key]
  covers   = [part.aft_seal, fastening.aft_bolts, part.crankshaft.face.taper]
  faces    = ["taper", "rim", "coupling"]
  material = "steel"
  mass     = "17.5 kg"

  warning {
    hazard = "A flywheel that slips breaks feet; its starter ring is sharp."
    result = "A crushed foot; cut hands."
    avoid  = "Wear boots and leather gloves. Lift it in pairs, with both hands in the holes of the web."
  }
}

part "flywheel_nut" {
  name    = "Castellated nut, M18x1.5"
  number  = "WE-192"
  sits_on = part.flywheel
  mass    = "70 g"
}

part "flywheel_pin" {
  name     = "Split pin 4x36"
  number   = "WE-193"
  sits_on  = part.flywheel_nut
  mass     = "4 g"
  use_once = true
}

part "coupling" {
  name    = "Flexible half coupling"
  number  = "WE-194"
  sits_on = part.flywheel
  covers  = [fastening.flywheel_nut, part.flywheel_nut, part.flywheel_pin]
  faces   = ["spigot"]
  mass    = "3.0 kg"
}

part "coupling_bolt" {
  name     = "Bolt M8x30, 8.8, for the coupling"
  number   = "WE-195"
  quantity = 6
  sits_on  = part.coupling
  mass     = "18 g"
}

part "starter" {
  name    = "Starter motor, 12 V"
  number  = "WE-196"
  sits_on = part.crankcase
  stores  = "electric"
  mass    = "4.5 kg"

  warning {
    hazard = "The starter throws its pinion out the moment it gets current."
    result = "Crushed or severed fingers."
    avoid  = "Keep hands, sleeves and hair clear of pinion and flywheel. Leave the battery disconnected until a step connects it."
  }
}

part "starter_bolt" {
  name     = "Bolt M10x40, 8.8"
  number   = "WE-197"
  quantity = 2
  sits_on  = part.starter
  mass     = "35 g"
}

part "breaker_plate" {
  name     = "Breaker plate with contacts"
  number   = "WE-200"
  when     = option.ignition == "coil"
  sits_on  = part.timing_cover
  features = ["contacts"]
  marks    = ["line"]
  mass     = "0.25 kg"
}

part "breaker_screw" {
  name     = "Screw M5x12, 8.8, hexagon head"
  number   = "WE-201"
  quantity = 2
  when     = option.ignition == "coil"
  sits_on  = part.breaker_plate
  mass     = "4 g"
}

part "breaker_cover" {
  name    = "Breaker cover with clip"
  number  = "WE-202"
  when    = option.ignition == "coil"
  sits_on = part.timing_cover
  covers  = [part.breaker_plate, fastening.breaker_screws]
  mass    = "0.1 kg"
}

part "coil" {
  name    = "Ignition coil, double-ended, 12 V"
  number  = "WE-203"
  when    = option.ignition == "coil"
  sits_on = part.crankcase
  stores  = "electric"
  mass    = "0.8 kg"

  warning {
    hazard = "The coil gives more than 20 000 V at both ends."
    result = "An electric shock that stops a weak heart, or throws you against the engine."
    avoid  = "Leave the battery disconnected while you work on the coil or its wires."
  }
}

part "coil_bolt" {
  name     = "Bolt M6x20, 8.8, for the coil"
  number   = "WE-204"
  quantity = 2
  when     = option.ignition == "coil"
  sits_on  = part.coil
  mass     = "8 g"
}

part "drive_dog" {
  name     = "Magneto drive dog"
  number   = "WE-205"
  when     = option.ignition == "magneto"
  sits_on  = part.camshaft
  features = ["slot"]
  mass     = "0.12 kg"
}

part "magneto" {
  name    = "Magneto, double-ended"
  number  = "WE-206"
  when    = option.ignition == "magneto"
  sits_on = [part.timing_cover, part.drive_dog]
  stores  = "electric"
  marks   = ["line"]
  mass    = "2.4 kg"

  warning {
    hazard = "A magneto needs no battery: it sparks whenever its shaft turns."
    result = "An electric shock, or an engine that fires while you turn it by hand."
    avoid  = "Earth the stop terminal with its clip before you turn the crankshaft."
  }
}

part "magneto_nut" {
  name     = "Nut M8, class 8, for the magneto"
  number   = "WE-207"
  quantity = 2
  when     = option.ignition == "magneto"
  sits_on  = part.magneto
  mass     = "6 g"
}

part "raw_pump" {
  name     = "Seawater pump"
  number   = "WE-210"
  when     = option.cooling == "seawater"
  sits_on  = part.timing_cover
  features = ["housing"]
  mass     = "1.3 kg"
}

part "impeller" {
  name     = "Rubber impeller"
  number   = "WE-211"
  when     = option.cooling == "seawater"
  sits_on  = part.raw_pump
  material = "rubber"
  mass     = "40 g"
}

part "raw_pump_bolt" {
  name     = "Bolt M6x35, 8.8, for the seawater pump"
  number   = "WE-212"
  quantity = 2
  when     = option.cooling == "seawater"
  sits_on  = part.raw_pump
  mass     = "11 g"
}

part "raw_hoses" {
  name    = "Seawater hose set with clips"
  number  = "WE-213"
  when    = option.cooling == "seawater"
  sits_on = [part.raw_pump, part.crankcase]
  mass    = "0.9 kg"
}

part "keel_pump" {
  name    = "Circulating pump"
  number  = "WE-215"
  when    = option.cooling == "keel"
  sits_on = part.timing_cover
  mass    = "1.1 kg"
}

part "keel_pump_bolt" {
  name     = "Bolt M6x35, 8.8, for the circulating pump"
  number   = "WE-216"
  quantity = 2
  when     = option.cooling == "keel"
  sits_on  = part.keel_pump
  mass     = "11 g"
}

part "header_tank" {
  name    = "Header tank"
  number  = "WE-217"
  when    = option.cooling == "keel"
  sits_on = part.crankcase
  ports   = ["filler"]
  mass    = "1.4 kg"
}

part "header_cap" {
  name    = "Pressure cap of the header tank"
  number  = "WE-218"
  when    = option.cooling == "keel"
  sits_on = part.header_tank
  covers  = [part.header_tank.port.filler]
  stores  = "pressure"
  mass    = "90 g"

  warning {
    hazard = "Hot coolant boils over when the cap comes off under pressure."
    result = "Scalded face and hands."
    avoid  = "Leave the cap on until the tank is cool enough to hold a bare hand against it."
  }
}

part "keel_hoses" {
  name    = "Keel cooling hose set with test loop and clips"
  number  = "WE-219"
  when    = option.cooling == "keel"
  sits_on = [part.keel_pump, part.header_tank]
  mass    = "1.2 kg"
}

part "carburettor" {
  name    = "Carburettor"
  number  = "WE-226"
  sits_on = part.crankcase
  ports   = ["fuel", "air"]
  mass    = "1.2 kg"
}

part "carburettor_bolt" {
  name     = "Bolt M6x25, 8.8, for the carburettor"
  number   = "WE-227"
  quantity = 2
  sits_on  = part.carburettor
  mass     = "9 g"
}

part "flame_trap" {
  name    = "Flame trap"
  number  = "WE-228"
  sits_on = part.carburettor
  covers  = [part.carburettor.port.air]
  mass    = "0.3 kg"
}

part "fuel_hose" {
  name    = "Fuel hose with union, fire-resistant"
  number  = "WE-229"
  sits_on = [part.carburettor, part.fuel_tank]
  covers  = [part.carburettor.port.fuel]
  mass    = "0.25 kg"
}

part "fuel_union_washer" {
  name     = "Sealing washer of the fuel union"
  number   = "WE-230"
  sits_on  = part.carburettor
  mass     = "1 g"
  use_once = true
}

part "frame" {
  name   = "Test and transit frame"
  number = "WE-240"
  faces  = ["bearers"]
  mass   = "15 kg"
}

part "mount" {
  name     = "Rubber engine mount"
  number   = "WE-241"
  quantity = 4
  sits_on  = part.frame
  mass     = "0.4 kg"
}

part "mount_nut" {
  name     = "Nut M10, class 8, for the mounts"
  number   = "WE-242"
  quantity = 4
  sits_on  = part.mount
  mass     = "12 g"
}

part "foot_nut" {
  name     = "Self-locking nut M10, class 8"
  number   = "WE-243"
  quantity = 4
  sits_on  = part.crankcase
  mass     = "14 g"
}

part "fuel_tank" {
  name    = "Test fuel tank, 3 L, with tap and strap"
  number  = "WE-244"
  sits_on = part.frame
  ports   = ["filler"]
  mass    = "0.9 kg"
}

part "fuel_cap" {
  name    = "Fuel tank cap, vented"
  number  = "WE-245"
  sits_on = part.fuel_tank
  covers  = [part.fuel_tank.port.filler]
  mass    = "60 g"
}

part "battery" {
  name     = "Starter battery, 12 V, 60 Ah, closed"
  supplied = false
  sits_on  = part.frame
  features = ["terminals"]
  stores   = "electric"
  mass     = "14 kg"

  danger {
    hazard = "The battery gives hundreds of amperes into a dropped spanner, and gives off explosive gas."
    result = "An explosion of acid, blindness, burns to the bone."
    avoid  = "Take rings and watches off. Wear goggles. Connect the negative terminal last, and take it off first."
  }
}

part "battery_leads" {
  name    = "Battery leads with isolating switch"
  number  = "WE-246"
  sits_on = [part.battery, part.starter]
  mass    = "1.1 kg"
}

part "data_plate" {
  name    = "Data plate, self-adhesive"
  number  = "WE-250"
  sits_on = part.crankcase
  mass    = "5 g"
}
