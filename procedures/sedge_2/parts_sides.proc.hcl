# What each side has once: rod, piston, barrel, head and what they carry.

part "rod" {
  name     = "Connecting rod"
  number   = "WE-130"
  at_each  = places.side
  sits_on  = part.crankshaft
  features = ["big_end"]
  marks    = ["number"]
  material = "steel"
  mass     = "0.62 kg"
}

part "rod_cap" {
  name       = "Big-end cap"
  number     = "WE-131"
  at_each    = places.side
  sits_on    = part.rod
  marks      = ["number"]
  mass       = "0.18 kg"
  pairs_with = part.rod
}

part "rod_shell" {
  name     = "Big-end half shell"
  number   = "WE-132"
  sits_on  = part.rod
  features = ["face"]
  mass     = "15 g"

  size "red" {
    in_kit = 4
    number = "WE-132-R"
    mark   = "red paint on the edge"
    is     = "1.982..1.986 mm"
  }
  size "blue" {
    in_kit = 4
    number = "WE-132-B"
    mark   = "blue paint on the edge"
    is     = "1.988..1.992 mm"
  }
  size "yellow" {
    in_kit = 4
    number = "WE-132-Y"
    mark   = "yellow paint on the edge"
    is     = "1.994..1.998 mm"
  }
}

part "rod_bolt" {
  name     = "Big-end bolt M8x40, 10.9"
  number   = "WE-133"
  quantity = 2
  at_each  = places.side
  sits_on  = part.rod_cap
  mass     = "22 g"
}

part "lock_plate" {
  name     = "Lock plate of the big-end bolts"
  number   = "WE-134"
  at_each  = places.side
  sits_on  = part.rod_cap
  mass     = "8 g"
  use_once = true
}

part "piston" {
  name     = "Piston"
  number   = "WE-135"
  at_each  = places.side
  sits_on  = part.rod
  held_by  = part.piston_pin
  faces    = ["crown"]
  features = ["skirt", "grooves"]
  marks    = ["arrow"]
  material = "aluminium"
  mass     = "0.34 kg"
}

part "piston_pin" {
  name    = "Gudgeon pin"
  number  = "WE-136"
  at_each = places.side
  sits_on = [part.piston, part.rod]
  held_by = part.circlip
  mass    = "0.09 kg"
}

part "circlip" {
  name     = "Gudgeon pin circlip"
  number   = "WE-137"
  quantity = 2
  at_each  = places.side
  sits_on  = part.piston
  stores   = "spring"
  mass     = "1 g"
  use_once = true

  warning {
    hazard = "The circlip is a spring, and flies when it slips."
    result = "Loss of an eye."
    avoid  = "Wear goggles. Keep one thumb over the circlip until it clicks into its groove."
  }
}

part "top_ring" {
  name    = "Top compression ring"
  number  = "WE-138"
  at_each = places.side
  sits_on = part.piston
  marks   = ["top"]
  mass    = "9 g"
}

part "second_ring" {
  name    = "Second compression ring"
  number  = "WE-139"
  at_each = places.side
  sits_on = part.piston
  marks   = ["top"]
  mass    = "10 g"
}

part "oil_ring" {
  name    = "Oil control ring"
  number  = "WE-140"
  at_each = places.side
  sits_on = part.piston
  mass    = "12 g"
}

part "base_plate" {
  name    = "Base plate of the barrel"
  number  = "WE-145"
  sits_on = part.crankcase
  mass    = "25 g"

  size "0.15 mm" {
    in_kit = 4
    number = "WE-145-15"
    mark   = "one notch"
  }
  size "0.25 mm" {
    in_kit = 4
    number = "WE-145-25"
    mark   = "two notches"
  }
  size "0.40 mm" {
    in_kit = 2
    number = "WE-145-40"
    mark   = "three notches"
  }
}

part "barrel" {
  name     = "Barrel with water jacket"
  number   = "WE-146"
  at_each  = places.side
  sits_on  = part.crankcase
  covers   = [part.piston_pin, part.circlip, part.top_ring, part.second_ring, part.oil_ring, part.base_plate, part.barrel_oring]
  faces    = ["base", "top"]
  ports    = ["water_in", "water_out", "test"]
  features = ["bore", "jacket"]
  marks    = ["up"]
  material = "cast iron"
  mass     = "5.6 kg"
}

part "barrel_oring" {
  name    = "Barrel O-ring"
  number  = "WE-147"
  at_each = places.side
  sits_on = part.barrel
  mass    = "4 g"
}

part "barrel_stud" {
  name     = "Stud M8, 8.8"
  number   = "WE-148"
  quantity = 4
  in_place = 4
  at_each  = places.side
  sits_on  = part.crankcase
  mass     = "20 g"
}

part "barrel_nut" {
  name     = "Nut M8, class 8"
  number   = "WE-149"
  quantity = 4
  at_each  = places.side
  sits_on  = part.barrel
  mass     = "6 g"
}

part "head_stud" {
  name     = "Stud M10, 8.8"
  number   = "WE-144"
  quantity = 6
  in_place = 6
  at_each  = places.side
  sits_on  = part.barrel
  mass     = "50 g"
}

part "head" {
  name     = "Cylinder head"
  number   = "WE-150"
  at_each  = places.side
  sits_on  = part.barrel
  covers   = [part.piston.face.crown, part.barrel.face.top, part.head_gasket]
  faces    = ["gasket", "rocker", "inlet", "exhaust"]
  ports    = ["inlet", "exhaust", "plug"]
  features = ["seats", "guides"]
  material = "aluminium"
  mass     = "3.4 kg"
}

part "inlet_valve" {
  name     = "Inlet valve"
  number   = "WE-151"
  at_each  = places.side
  sits_on  = part.head
  features = ["seat", "stem"]
  mass     = "70 g"
}

part "exhaust_valve" {
  name     = "Exhaust valve"
  number   = "WE-152"
  at_each  = places.side
  sits_on  = part.head
  features = ["seat", "stem"]
  mass     = "75 g"
}

part "inlet_spring" {
  name    = "Inlet valve spring with cap"
  number  = "WE-153"
  at_each = places.side
  sits_on = [part.head, part.inlet_valve]
  stores  = "spring"
  mass    = "0.1 kg"

  warning {
    hazard = "The compressed spring can jump off the valve."
    result = "Loss of an eye; a broken finger."
    avoid  = "Wear goggles. Keep your face out of line with the spring until the cotters are home."
  }
}

part "exhaust_spring" {
  name    = "Exhaust valve spring with cap"
  number  = "WE-154"
  at_each = places.side
  sits_on = [part.head, part.exhaust_valve]
  stores  = "spring"
  mass    = "0.1 kg"

  warning {
    hazard = "The compressed spring can jump off the valve."
    result = "Loss of an eye; a broken finger."
    avoid  = "Wear goggles. Keep your face out of line with the spring until the cotters are home."
  }
}

part "inlet_cotter" {
  name     = "Cotter of the inlet valve, half"
  number   = "WE-155"
  quantity = 2
  at_each  = places.side
  sits_on  = part.inlet_spring
  mass     = "2 g"
}

part "exhaust_cotter" {
  name     = "Cotter of the exhaust valve, half"
  number   = "WE-156"
  quantity = 2
  at_each  = places.side
  sits_on  = part.exhaust_spring
  mass     = "2 g"
}

part "head_gasket" {
  name     = "Head gasket"
  number   = "WE-157"
  at_each  = places.side
  sits_on  = part.barrel
  marks    = ["top"]
  mass     = "40 g"
  use_once = true
}

part "head_nut" {
  name     = "Nut M10, class 8"
  number   = "WE-158"
  quantity = 6
  at_each  = places.side
  sits_on  = part.head
  mass     = "12 g"
}

part "pushrod" {
  name     = "Pushrod"
  number   = "WE-159"
  quantity = 2
  at_each  = places.side
  sits_on  = part.tappet
  held_by  = part.rocker_gear
  mass     = "45 g"
}

part "rocker_gear" {
  name     = "Rocker gear with pedestal and adjusters"
  number   = "WE-160"
  at_each  = places.side
  sits_on  = part.head
  features = ["inlet_rocker", "exhaust_rocker"]
  mass     = "0.7 kg"
}

part "rocker_bolt" {
  name     = "Bolt M8x45, 8.8"
  number   = "WE-161"
  quantity = 2
  at_each  = places.side
  sits_on  = part.rocker_gear
  mass     = "24 g"
}

part "rocker_gasket" {
  name     = "Rocker cover gasket"
  number   = "WE-162"
  at_each  = places.side
  sits_on  = part.head
  material = "rubber"
  mass     = "15 g"
}

part "rocker_cover" {
  name    = "Rocker cover"
  number  = "WE-163"
  at_each = places.side
  sits_on = part.head
  covers  = [part.rocker_gear, part.rocker_gasket, fastening.rocker_bolts, fastening.inlet_lock_nut, fastening.exhaust_lock_nut]
  faces   = ["flange"]
  mass    = "0.5 kg"
}

part "rocker_knob" {
  name     = "Bolt M6x40, 5.8, with sealing collar"
  number   = "WE-164"
  quantity = 2
  at_each  = places.side
  sits_on  = part.rocker_cover
  mass     = "12 g"
}

part "spark_plug" {
  name     = "Spark plug, 14 mm, with captive washer"
  number   = "WE-165"
  at_each  = places.side
  sits_on  = part.head
  covers   = [part.head.port.plug]
  features = ["gap"]
  mass     = "50 g"
}

part "ht_lead" {
  name    = "High-tension lead with cap"
  number  = "WE-166"
  at_each = places.side
  sits_on = part.spark_plug
  stores  = "electric"
  mass    = "60 g"

  warning {
    hazard = "The lead carries more than 20 000 V whenever the crankshaft turns with the ignition on."
    result = "An electric shock that stops a weak heart, or throws you against the engine."
    avoid  = "Switch the ignition off and wait for the flywheel to stop before you touch a lead."
  }
}

part "inlet_gasket" {
  name     = "Inlet pipe gasket"
  number   = "WE-220"
  at_each  = places.side
  sits_on  = part.head
  mass     = "4 g"
  use_once = true
}

part "inlet_pipe" {
  name    = "Inlet pipe"
  number  = "WE-221"
  at_each = places.side
  sits_on = [part.head, part.carburettor]
  mass    = "0.5 kg"
}

part "inlet_nut" {
  name     = "Nut M8, class 8, for the inlet pipe"
  number   = "WE-222"
  quantity = 2
  at_each  = places.side
  sits_on  = part.inlet_pipe
  mass     = "6 g"
}

part "exhaust_gasket" {
  name     = "Exhaust gasket"
  number   = "WE-223"
  at_each  = places.side
  sits_on  = part.head
  mass     = "8 g"
  use_once = true
}

part "exhaust_pipe" {
  name    = "Exhaust pipe with elbow"
  number  = "WE-224"
  at_each = places.side
  sits_on = part.head
  mass    = "1.1 kg"

  warning {
    hazard = "The exhaust pipe is above 300 °C within a minute of the start, and stays hot for an hour."
    result = "Deep burns."
    avoid  = "Keep clear of the pipe and of its whole length. Wear heat-resistant gloves near it."
  }
}

part "exhaust_nut" {
  name     = "Nut M8, class 8, plated, for the exhaust pipe"
  number   = "WE-225"
  quantity = 2
  at_each  = places.side
  sits_on  = part.exhaust_pipe
  mass     = "6 g"
}
