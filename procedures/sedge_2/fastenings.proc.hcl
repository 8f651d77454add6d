# Every joint of the Sedge 2.
#
# Clamps are set to about two thirds of the proof load of ISO 898-1 by
# T = K·F·d, and stay between half and 85 % of it over the band of K stated or,
# for dry threads, over 0.16 to 0.24.

fastening "gallery_plugs" {
  name          = "Gallery plugs"
  does          = "plug"
  thread        = "M10x1"
  quantity      = 2
  stack         = [part.crankcase]
  fasteners     = [part.gallery_plug]
  lubricant     = supply.threadlocker_medium
  thread_length = "10 mm"
  across_flats  = "hex 5 mm"
  torque        = "12 N·m ± 10 %"
  locked_by     = supply.threadlocker_medium
  basis         = "Drawing S2-003; a plug seals, it does not clamp"
}

fastening "aft_bolts" {
  name            = "Bolts of the aft main bearing housing"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 6
  stack           = [part.aft_housing, part.crankcase]
  fasteners       = [part.aft_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "16 mm"
  across_flats    = "13 mm"
  torque          = "21.5 N·m ± 5 %"
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "Drawing S2-014"
}

fastening "plate_bolts" {
  name            = "Bolts of the camshaft thrust plate"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.thrust_plate, part.crankcase]
  fasteners       = [part.plate_bolt]
  lubricant       = supply.threadlocker_medium
  nut_factor      = "0.15..0.20"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "7.8 N·m ± 5 %"
  locked_by       = supply.threadlocker_medium
  basis           = "Drawing S2-022"
}

fastening "cam_nut" {
  name         = "Camshaft nut"
  thread       = "M14x1.5 LH"
  bolt_class   = "8.8"
  nut_class    = "8"
  stack        = [part.cam_tab, part.cam_gear, part.camshaft]
  fasteners    = [part.cam_nut]
  lubricant    = supply.engine_oil
  nut_factor   = "0.14..0.18"
  across_flats = "21 mm"
  torque       = "100 N·m ± 5 %"
  locked_by    = part.cam_tab
  basis        = "Drawing S2-021"
}

fastening "rod_bolts" {
  name            = "Big-end bolts"
  thread          = "M8x1.25"
  bolt_class      = "10.9"
  quantity        = 2
  at_each         = places.side
  stack           = [part.lock_plate, part.rod_cap, part.rod_shell, part.rod]
  fasteners       = [part.rod_bolt]
  lubricant       = supply.engine_oil
  nut_factor      = "0.14..0.18"
  thread_material = "steel"
  thread_length   = "14 mm"
  across_flats    = "13 mm"
  torque          = "27 N·m ± 5 %"
  stages          = ["20 N·m", "27 N·m ± 5 %"]
  locked_by       = part.lock_plate
  basis           = "Drawing S2-031"
}

fastening "barrel_nuts" {
  name         = "Base nuts of the barrel"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 4
  at_each      = places.side
  stack        = [part.barrel, part.base_plate, part.crankcase]
  fasteners    = [part.barrel_nut]
  lubricant    = "dry"
  nut_factor   = "0.16..0.24"
  across_flats = "13 mm"
  torque       = "21.5 N·m ± 5 %"
  layout       = "circle"
  pattern      = ["1", "3", "2", "4"]
  basis        = "Drawing S2-046"
}

fastening "pump_bolts" {
  name            = "Bolts of the oil pump"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.oil_pump, part.crankcase]
  fasteners       = [part.pump_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "8.9 N·m ± 5 %"
  locked_by       = supply.lock_wire
  basis           = "Drawing S2-071"
}

fastening "sump_bolts" {
  name            = "Sump bolts"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 10
  stack           = [part.sump, part.crankcase]
  fasteners       = [part.sump_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "8.9 N·m ± 5 %"
  stages          = ["5 N·m", "8.9 N·m ± 5 %"]
  layout          = "grid 2x5"
  pattern         = "criss-cross"
  basis           = "Drawing S2-072"
}

fastening "drain_plug" {
  name         = "Drain plug"
  does         = "plug"
  thread       = "M16x1.5"
  stack        = [part.drain_washer, part.sump]
  fasteners    = [part.drain_plug]
  lubricant    = "dry"
  across_flats = "18 mm"
  torque       = "35 N·m ± 10 %"
  basis        = "Drawing S2-072; enough to crush the copper washer"
}

fastening "cover_bolts" {
  name            = "Bolts of the timing cover"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 8
  stack           = [part.timing_cover, part.crankcase]
  fasteners       = [part.cover_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "8.9 N·m ± 5 %"
  stages          = ["5 N·m", "8.9 N·m ± 5 %"]
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "Drawing S2-080"
}

fastening "head_nuts" {
  name         = "Head nuts"
  thread       = "M10x1.5"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 6
  at_each      = places.side
  stack        = [part.head, part.head_gasket, part.barrel]
  fasteners    = [part.head_nut]
  lubricant    = supply.engine_oil
  nut_factor   = "0.14..0.18"
  across_flats = "16 mm"
  torque       = "35 N·m ± 5 %"
  stages       = ["20 N·m", "28 N·m", "35 N·m ± 5 %"]
  layout       = "circle"
  pattern      = "criss-cross"
  basis        = "Drawing S2-047"
}

fastening "rocker_bolts" {
  name            = "Bolts of the rocker gear"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  at_each         = places.side
  stack           = [part.rocker_gear, part.head]
  fasteners       = [part.rocker_bolt]
  lubricant       = supply.engine_oil
  nut_factor      = "0.14..0.18"
  thread_material = "aluminium"
  thread_length   = "18 mm"
  across_flats    = "13 mm"
  torque          = "17.5 N·m ± 5 %"
  stages          = ["8 N·m", "17.5 N·m ± 5 %"]
  basis           = "Drawing S2-051"
}

fastening "inlet_lock_nut" {
  name         = "Lock nut of the inlet adjuster"
  does         = "lock nut"
  thread       = "M8x1"
  at_each      = places.side
  stack        = [part.rocker_gear]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "12 N·m ± 10 %"
  basis        = "Drawing S2-051; holds the adjuster, clamps nothing"
}

fastening "exhaust_lock_nut" {
  name         = "Lock nut of the exhaust adjuster"
  does         = "lock nut"
  thread       = "M8x1"
  at_each      = places.side
  stack        = [part.rocker_gear]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "12 N·m ± 10 %"
  basis        = "Drawing S2-051; holds the adjuster, clamps nothing"
}

fastening "rocker_knobs" {
  name            = "Bolts of the rocker cover"
  thread          = "M6x1"
  bolt_class      = "5.8"
  quantity        = 2
  at_each         = places.side
  stack           = [part.rocker_cover, part.rocker_gasket, part.head]
  fasteners       = [part.rocker_knob]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "5.9 N·m ± 5 %"
  basis           = "Drawing S2-052; the collar under the head stops on the cover"
}

fastening "spark_plugs" {
  name         = "Spark plug"
  does         = "plug"
  thread       = "M14x1.25"
  at_each      = places.side
  stack        = [part.head]
  fasteners    = [part.spark_plug]
  lubricant    = "dry"
  across_flats = "21 mm"
  torque       = "24 N·m ± 10 %"
  basis        = "Drawing S2-064; new captive washer, aluminium head"
}

fastening "flywheel_nut" {
  name         = "Flywheel nut"
  thread       = "M18x1.5"
  bolt_class   = "8.8"
  nut_class    = "8"
  stack        = [part.flywheel, part.crankshaft]
  fasteners    = [part.flywheel_nut]
  lubricant    = supply.engine_oil
  nut_factor   = "0.14..0.18"
  across_flats = "27 mm"
  torque       = "220..260 N·m"
  to_slot      = true
  locked_by    = part.flywheel_pin
  basis        = "Drawing S2-091"
}

fastening "coupling_bolts" {
  name            = "Bolts of the coupling"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 6
  stack           = [part.coupling, part.flywheel]
  fasteners       = [part.coupling_bolt]
  lubricant       = supply.threadlocker_medium
  nut_factor      = "0.15..0.20"
  thread_material = "steel"
  thread_length   = "14 mm"
  across_flats    = "13 mm"
  torque          = "21 N·m ± 4 %"
  layout          = "circle"
  pattern         = "criss-cross"
  locked_by       = supply.threadlocker_medium
  basis           = "Drawing S2-092"
}

fastening "starter_bolts" {
  name            = "Bolts of the starter motor"
  thread          = "M10x1.5"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.starter, part.crankcase]
  fasteners       = [part.starter_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "20 mm"
  across_flats    = "16 mm"
  torque          = "43 N·m ± 5 %"
  basis           = "Drawing S2-094"
}

fastening "breaker_screws" {
  name            = "Screws of the breaker plate"
  thread          = "M5x0.8"
  bolt_class      = "8.8"
  quantity        = 2
  when            = option.ignition == "coil"
  stack           = [part.breaker_plate, part.timing_cover]
  fasteners       = [part.breaker_screw]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "10 mm"
  across_flats    = "8 mm"
  torque          = "5.3 N·m ± 5 %"
  basis           = "Drawing S2-061"
}

fastening "coil_bolts" {
  name            = "Bolts of the ignition coil"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 2
  when            = option.ignition == "coil"
  stack           = [part.coil, part.crankcase]
  fasteners       = [part.coil_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "8.9 N·m ± 5 %"
  basis           = "Drawing S2-062"
}

fastening "magneto_nuts" {
  name         = "Nuts of the magneto"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 2
  when         = option.ignition == "magneto"
  stack        = [part.magneto, part.timing_cover]
  fasteners    = [part.magneto_nut]
  lubricant    = "dry"
  nut_factor   = "0.16..0.24"
  across_flats = "13 mm"
  torque       = "21.5 N·m ± 5 %"
  basis        = "Drawing S2-063"
}

fastening "raw_pump_bolts" {
  name            = "Bolts of the seawater pump"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 2
  when            = option.cooling == "seawater"
  stack           = [part.raw_pump, part.timing_cover]
  fasteners       = [part.raw_pump_bolt]
  lubricant       = supply.anti_seize
  nut_factor      = "0.12..0.15"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "6.0 N·m ± 5 %"
  basis           = "Drawing S2-076; the paste keeps salt out of the threads"
}

fastening "keel_pump_bolts" {
  name            = "Bolts of the circulating pump"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 2
  when            = option.cooling == "keel"
  stack           = [part.keel_pump, part.timing_cover]
  fasteners       = [part.keel_pump_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "8.9 N·m ± 5 %"
  basis           = "Drawing S2-077"
}

fastening "inlet_nuts" {
  name         = "Nuts of the inlet pipe"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 2
  at_each      = places.side
  stack        = [part.inlet_pipe, part.inlet_gasket, part.head]
  fasteners    = [part.inlet_nut]
  lubricant    = "dry"
  nut_factor   = "0.16..0.24"
  across_flats = "13 mm"
  torque       = "21.5 N·m ± 5 %"
  basis        = "Drawing S2-065"
}

fastening "exhaust_nuts" {
  name         = "Nuts of the exhaust pipe"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 2
  at_each      = places.side
  stack        = [part.exhaust_pipe, part.exhaust_gasket, part.head]
  fasteners    = [part.exhaust_nut]
  lubricant    = supply.anti_seize
  nut_factor   = "0.12..0.15"
  across_flats = "13 mm"
  torque       = "14.5 N·m ± 5 %"
  basis        = "Drawing S2-066"
}

fastening "carburettor_bolts" {
  name            = "Bolts of the carburettor"
  thread          = "M6x1"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.carburettor, part.crankcase]
  fasteners       = [part.carburettor_bolt]
  lubricant       = "dry"
  nut_factor      = "0.16..0.24"
  thread_material = "aluminium"
  thread_length   = "12 mm"
  across_flats    = "10 mm"
  torque          = "8.9 N·m ± 5 %"
  basis           = "Drawing S2-067"
}

fastening "fuel_union" {
  name         = "Fuel union at the carburettor"
  does         = "pipe"
  thread       = "M14x1.5"
  stack        = [part.fuel_hose, part.fuel_union_washer, part.carburettor]
  lubricant    = "dry"
  across_flats = "17 mm"
  torque       = "24 N·m ± 10 %"
  basis        = "Drawing S2-068; the nut belongs to the hose"
}

fastening "oil_gauge" {
  name         = "Oil pressure gauge"
  does         = "pipe"
  thread       = "M14x1.5"
  stack        = [part.crankcase]
  fasteners    = [part.oil_gauge]
  lubricant    = supply.thread_sealant
  across_flats = "17 mm"
  torque       = "24 N·m ± 10 %"
  basis        = "Drawing S2-073"
}

fastening "mount_nuts" {
  name         = "Nuts of the engine mounts"
  thread       = "M10x1.5"
  bolt_class   = "8.8"
  nut_class    = "8"
  quantity     = 4
  stack        = [part.mount, part.frame]
  fasteners    = [part.mount_nut]
  lubricant    = "dry"
  nut_factor   = "0.16..0.24"
  across_flats = "16 mm"
  torque       = "43 N·m ± 5 %"
  layout       = "grid 2x2"
  pattern      = "criss-cross"
  basis        = "Drawing S2-101"
}

fastening "foot_nuts" {
  name          = "Nuts of the engine feet"
  thread        = "M10x1.5"
  bolt_class    = "8.8"
  nut_class     = "8"
  quantity      = 4
  stack         = [part.crankcase, part.mount]
  fasteners     = [part.foot_nut]
  lubricant     = "dry"
  nut_factor    = "0.16..0.24"
  across_flats  = "16 mm"
  torque        = "46 N·m ± 5 %"
  drag          = "3 N·m"
  drag_included = true
  layout        = "grid 2x2"
  pattern       = "criss-cross"
  locked_by     = "drag"
  basis         = "Drawing S2-101"
}
