# What building a small engine asks for, beyond the rest of the shop.

# Engine tools.

tool "ring_pliers" {
  name = "Piston ring pliers"
  kind = "pliers"

  caution {
    hazard = "A ring is sharp, and breaks when it is opened too far."
    result = "Cut fingers."
    avoid  = "Open the ring only until it clears the crown."
  }
}

tool "ring_compressor" {
  name = "Piston ring compressor, two halves, 60–90 mm"
  kind = "ring compressor"
}

tool "valve_lapper" {
  name = "Valve lapping stick with sucker"
  kind = "lapping stick"
}

tool "expanding_reamer" {
  name = "Expanding hand reamer, 40–46 mm, with pilot"
  kind = "reamer"
}

tool "gear_holder" {
  name = "Peg spanner that holds a gear by its web"
  kind = "holding tool"
}

tool "wire_pliers" {
  name = "Lock-wire pliers"
  kind = "pliers"
}

tool "test_lamp" {
  name = "Test lamp, 12 V, with two clips"
  kind = "test lamp"
}

tool "battery_charger" {
  name = "Battery charger, 12 V"
  kind = "battery charger"
}

tool "water_tub" {
  name = "Tub, 60 L, for fresh water"
  kind = "tub"
}

tool "steel_tape" {
  name       = "Steel tape, 2 m, narrow"
  kind       = "steel tape"
  reads      = "length"
  range      = "0..2000 mm"
  resolution = "0.5 mm"
  accuracy   = "0.5 mm"
}

tool "extinguisher" {
  name = "Foam extinguisher, rated for petrol"
  kind = "fire extinguisher"
}

# Torque tools.

tool "socket_27" {
  name  = "Socket, 27 mm, 1/2 in drive"
  kind  = "socket"
  size  = "27 mm"
  drive = "1/2 in"
}

tool "crowfoot_13_quarter" {
  name   = "Crowfoot adapter, 13 mm, 1/4 in drive"
  kind   = "adapter"
  size   = "13 mm"
  drive  = "1/4 in"
  length = "30 mm"
}

# Supplies.

supply "lapping_paste" {
  name   = "Lapping paste, fine, water-based"
  kind   = "abrasive paste"
  amount = "1 tin of 50 g"
  ppe    = [ppe.gloves]
}

supply "lock_wire" {
  name   = "Lock wire, stainless, 0.8 mm"
  kind   = "lock wire"
  amount = "0.5 m"
  ppe    = [ppe.goggles]

  caution {
    hazard = "The cut end of lock wire is a needle."
    result = "A deep prick in hand or eye."
    avoid  = "Cut it short, bend the end under, and pick the offcut up at once."
  }
}

supply "paraffin" {
  name   = "Paraffin"
  kind   = "paraffin"
  amount = "0.2 L"
  ppe    = [ppe.gloves, ppe.goggles]

  warning {
    hazard = "Paraffin burns, and a soaked rag burns like a wick."
    result = "Burns."
    avoid  = "Keep flames and heaters out of the room. Put used rags in a closed metal bin."
  }
}

supply "petrol" {
  name   = "Petrol, unleaded, fresh"
  kind   = "fuel"
  amount = "3 L"
  ppe    = [ppe.gloves, ppe.goggles]

  danger {
    hazard = "Petrol vapour is heavier than air and lights from one spark."
    result = "Explosion and deadly burns."
    avoid  = "Handle petrol outdoors, with the battery disconnected. Put out every flame within 10 m. Keep the extinguisher within reach."
  }
}

supply "coolant" {
  name   = "Coolant for aluminium, ready mixed"
  kind   = "coolant"
  amount = "4 L"
  ppe    = [ppe.gloves, ppe.goggles]

  warning {
    hazard = "Coolant is poisonous, and tastes sweet to children and animals."
    result = "Kidney failure."
    avoid  = "Wipe spills up at once. Keep it in its own closed can, never in a drink bottle."
  }
}
