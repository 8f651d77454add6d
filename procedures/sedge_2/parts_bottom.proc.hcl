# Crankcase, crankshaft, camshaft and oil system.

part "crankcase" {
  name     = "Crankcase"
  number   = "WE-101"
  sits_on  = part.mount
  faces    = ["front", "aft", "sump", "left", "right", "serial_pad", "pump_pad", "starter_pad"]
  ports    = ["oil_filler", "pressure", "gallery_front", "gallery_aft"]
  features = ["front_bore", "cam_recess", "galleries"]
  marks    = ["oil_hole", "pointer"]
  material = "aluminium"
  mass     = "14.2 kg"
  undo     = "Take the weight on the hoist, then undo the foot nuts."
}

part "gallery_plug" {
  name     = "Gallery plug, M10x1"
  number   = "WE-102"
  quantity = 2
  sits_on  = part.crankcase
  covers   = [part.crankcase.port.gallery_front, part.crankcase.port.gallery_aft]
  mass     = "12 g"
}

part "front_bush" {
  name     = "Front main bush"
  number   = "WE-103"
  sits_on  = part.crankcase
  features = ["outside", "bore"]
  marks    = ["line"]
  material = "bronze"
  mass     = "0.2 kg"
  fits_by  = "shrink"
  undo     = "It does not come out whole: bore it out and fit a new one."
}

part "crankshaft" {
  name     = "Crankshaft"
  number   = "WE-110"
  sits_on  = part.front_bush
  faces    = ["taper"]
  features = ["left_pin", "right_pin", "nose", "oilways"]
  material = "steel"
  mass     = "9.6 kg"
}

part "crank_key" {
  name    = "Crankshaft gear key"
  number  = "WE-111"
  sits_on = part.crankshaft
  mass    = "5 g"
}

part "crank_gear" {
  name     = "Crankshaft gear"
  number   = "WE-112"
  sits_on  = [part.crankshaft, part.crank_key]
  features = ["bore"]
  marks    = ["dot"]
  mass     = "0.4 kg"
  fits_by  = "shrink"
  undo     = "Draw it off with a two-leg puller. Heat the gear first."
}

part "thrust_shim" {
  name    = "Thrust shim"
  number  = "WE-113"
  sits_on = part.crankshaft
  mass    = "8 g"

  size "0.15 mm" {
    in_kit = 2
    number = "WE-113-15"
    mark   = "15, etched"
  }
  size "0.20 mm" {
    in_kit = 2
    number = "WE-113-20"
    mark   = "20, etched"
  }
  size "0.30 mm" {
    in_kit = 2
    number = "WE-113-30"
    mark   = "30, etched"
  }
  size "0.40 mm" {
    in_kit = 2
    number = "WE-113-40"
    mark   = "40, etched"
  }
}

part "aft_housing" {
  name     = "Aft main bearing housing"
  number   = "WE-114"
  sits_on  = part.crankcase
  covers   = [part.thrust_shim, part.aft_oring]
  faces    = ["flange"]
  features = ["bore"]
  marks    = ["top"]
  material = "aluminium"
  mass     = "2.1 kg"
}

part "aft_oring" {
  name    = "O-ring of the aft housing"
  number  = "WE-115"
  sits_on = part.aft_housing
  mass    = "3 g"
}

part "aft_seal" {
  name    = "Aft lip seal"
  number  = "WE-116"
  sits_on = part.aft_housing
  mass    = "40 g"
  fits_by = "press"
}

part "aft_bolt" {
  name     = "Bolt M8x30, 8.8"
  number   = "WE-117"
  quantity = 6
  sits_on  = part.aft_housing
  mass     = "18 g"
}

part "tappet" {
  name     = "Tappet"
  number   = "WE-120"
  quantity = 2
  at_each  = places.side
  sits_on  = part.crankcase
  held_by  = part.camshaft
  mass     = "60 g"
}

part "camshaft" {
  name     = "Camshaft"
  number   = "WE-121"
  sits_on  = part.crankcase
  features = ["lobes"]
  mass     = "1.8 kg"
}

part "thrust_collar" {
  name    = "Camshaft thrust collar"
  number  = "WE-122"
  sits_on = part.camshaft
  mass    = "30 g"

  size "4.00 mm" {
    in_kit = 1
    number = "WE-122-400"
  }
  size "4.10 mm" {
    in_kit = 1
    number = "WE-122-410"
  }
  size "4.20 mm" {
    in_kit = 1
    number = "WE-122-420"
  }
  size "4.30 mm" {
    in_kit = 1
    number = "WE-122-430"
  }
  size "4.40 mm" {
    in_kit = 1
    number = "WE-122-440"
  }
}

part "thrust_plate" {
  name     = "Camshaft thrust plate"
  number   = "WE-123"
  sits_on  = part.crankcase
  covers   = [part.thrust_collar, part.crankcase.feature.cam_recess]
  faces    = ["spigot"]
  material = "steel"
  mass     = "0.15 kg"
}

part "plate_bolt" {
  name     = "Bolt M6x18, 8.8"
  number   = "WE-124"
  quantity = 2
  sits_on  = part.thrust_plate
  mass     = "7 g"
}

part "cam_key" {
  name    = "Camshaft gear key"
  number  = "WE-125"
  sits_on = part.camshaft
  mass    = "4 g"
}

part "cam_gear" {
  name    = "Camshaft gear"
  number  = "WE-126"
  sits_on = [part.camshaft, part.cam_key]
  covers  = [part.thrust_plate, fastening.plate_bolts]
  marks   = ["dot"]
  mass    = "1.1 kg"
}

part "cam_tab" {
  name     = "Tab washer of the camshaft nut"
  number   = "WE-127"
  sits_on  = part.cam_gear
  mass     = "6 g"
  use_once = true
}

part "cam_nut" {
  name    = "Camshaft nut, M14x1.5 left-hand"
  number  = "WE-128"
  sits_on = part.cam_tab
  mass    = "25 g"
}

part "oil_pump" {
  name     = "Oil pump"
  number   = "WE-170"
  sits_on  = part.crankcase
  features = ["inlet"]
  material = "aluminium"
  mass     = "0.9 kg"
}

part "pump_bolt" {
  name     = "Bolt M6x25, 8.8, head drilled for wire"
  number   = "WE-171"
  quantity = 2
  sits_on  = part.oil_pump
  mass     = "9 g"
}

part "strainer" {
  name    = "Oil strainer with clip"
  number  = "WE-172"
  sits_on = part.oil_pump
  mass    = "0.15 kg"
}

part "sump" {
  name     = "Sump"
  number   = "WE-173"
  sits_on  = part.crankcase
  covers   = [part.oil_pump, part.strainer, fastening.pump_bolts, fastening.rod_bolts]
  faces    = ["flange"]
  ports    = ["drain"]
  material = "aluminium"
  mass     = "2.6 kg"
}

part "sump_bolt" {
  name     = "Bolt M6x20, 8.8"
  number   = "WE-174"
  quantity = 10
  sits_on  = part.sump
  mass     = "8 g"
}

part "drain_washer" {
  name     = "Copper washer of the drain plug"
  number   = "WE-175"
  quantity = 2
  sits_on  = part.sump
  mass     = "2 g"
  use_once = true
}

part "drain_plug" {
  name    = "Drain plug, M16x1.5"
  number  = "WE-176"
  sits_on = part.drain_washer
  covers  = [part.sump.port.drain]
  mass    = "60 g"
}

part "oil_cap" {
  name    = "Oil filler cap with dipstick"
  number  = "WE-177"
  sits_on = part.crankcase
  covers  = [part.crankcase.port.oil_filler]
  mass    = "80 g"
}

part "oil_gauge" {
  name    = "Oil pressure gauge with test coupling"
  number  = "WE-178"
  sits_on = part.crankcase
  covers  = [part.crankcase.port.pressure]
  mass    = "70 g"
}

part "timing_cover" {
  name     = "Timing cover"
  number   = "WE-180"
  sits_on  = part.crankcase
  covers   = [part.cam_gear, part.crank_gear, part.cam_gear.mark.dot, part.crank_gear.mark.dot, fastening.cam_nut]
  faces    = ["flange", "pump_pad", "ignition_pad"]
  ports    = ["breather"]
  marks    = ["line"]
  material = "aluminium"
  mass     = "1.9 kg"
}

part "front_seal" {
  name    = "Front lip seal"
  number  = "WE-181"
  sits_on = part.timing_cover
  mass    = "35 g"
  fits_by = "press"
}

part "cover_bolt" {
  name     = "Bolt M6x25, 8.8"
  number   = "WE-182"
  quantity = 8
  sits_on  = part.timing_cover
  mass     = "9 g"
}
