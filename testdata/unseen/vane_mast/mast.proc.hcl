manual "vane_mast" {
  title    = "Mast of the wind vane"
  units    = "metric"
  revision = "A"
  issued   = "2025-08-08"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.head, procedure.raise]
}
option "ground" {
  name    = "What the mast stands on"
  choices = ["concrete", "timber"]
  default = "concrete"
}
ppe "helmet" {
  name     = "Safety helmet"
  standard = "EN 397"
}
part "plinth" {
  name     = "Concrete plinth with studs"
  supplied = false
  in_place = 1
  when     = option.ground == "concrete"
}
part "sleeper" {
  name     = "Timber sleeper with studs"
  supplied = false
  in_place = 1
  when     = option.ground == "timber"
}
part "foot" {
  name    = "Mast with foot plate"
  number  = "VM-1"
  mass    = "14 kg"
  sits_on = [part.plinth, part.sleeper]
}
part "spindle" {
  name    = "Spindle"
  number  = "VM-2"
  mass    = "1 kg"
  sits_on = part.foot
}
part "bearing" {
  name    = "Bearing"
  number  = "VM-3"
  sits_on = part.spindle
  fits_by = "press"
}
part "vane" {
  name    = "Vane arm"
  number  = "VM-4"
  mass    = "2 kg"
  sits_on = part.bearing
}
part "castle_nut" {
  name   = "Castellated nut M16 × 1.5"
  number = "VM-5"
}
part "cotter" {
  name     = "Split pin 4 × 32"
  number   = "VM-6"
  use_once = true
  sits_on  = part.castle_nut
}
part "stud_nut" {
  name     = "Nut M12"
  number   = "VM-7"
  quantity = 4
}
part "wide_washer" {
  name     = "Wide washer"
  number   = "VM-8"
  quantity = 4
  sits_on  = part.foot
  when     = option.ground == "timber"
}
fastening "spindle_nut" {
  name         = "Vane nut"
  does         = "set bearing"
  thread       = "M16x1.5"
  fasteners    = part.castle_nut
  stack        = [part.bearing, part.vane]
  torque       = "20..60 N·m"
  to_slot      = true
  across_flats = "24 mm"
  lubricant    = "dry"
  locked_by    = part.cotter
  basis        = "Drawing VM-0"
}
fastening "foot_nuts" {
  name         = "Foot nuts"
  thread       = "M12x1.75"
  bolt_class   = "4.6"
  nut_class    = "5"
  quantity     = 4
  fasteners    = part.stud_nut
  stack        = [part.foot]
  lubricant    = "dry"
  across_flats = "19 mm"
  torque       = "25 ± 3 N·m"
  stages       = ["20 N·m", "25 N·m"]
  layout       = "circle"
  pattern      = "criss-cross"
}
tool "wrench" {
  name     = "Torque wrench"
  kind     = "torque wrench"
  range    = "10..100 N·m"
  accuracy = "± 4 %"
  drive    = "1/2 in"
}
tool "socket_24" {
  name  = "Socket, 24 mm"
  kind  = "socket"
  size  = "24 mm"
  drive = "1/2 in"
}
tool "socket_19" {
  name  = "Socket, 19 mm"
  kind  = "socket"
  size  = "19 mm"
  drive = "1/2 in"
}
tool "vice" {
  name = "Vice with soft jaws"
  kind = "vice"
}
tool "press" {
  name = "Arbor press"
  kind = "press"
  caution {
    hazard = "The ram pinches, and a bearing that is pressed askew can split"
    result = "Crushed fingers and splinters in the eye"
    avoid  = "Keep your fingers out and stop when it goes askew"
  }
}
tool "level" {
  name       = "Digital level"
  kind       = "inclinometer"
  reads      = "angle"
  range      = "0..90°"
  resolution = "0.05°"
  accuracy   = "± 0.1°"
}
procedure "head" {
  title = "Build the head on the bench"
  fit "bearing" {
    title = "Press the bearing on to the spindle"
    part  = part.bearing
    tools = tool.press
    text  = "Press on the inner ring."
  }
  fit "vane" {
    title = "Slide the vane arm over the bearing"
    part  = part.vane
  }
  fit "nut" {
    title     = "Start the nut by hand"
    fastening = fastening.spindle_nut
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.spindle_nut
    tools     = [tool.wrench, tool.socket_24]
    held_by   = tool.vice
    text      = "Go on to the next slot that lines up with the hole."
  }
  lock "nut" {
    title     = "Bend the split pin round the nut"
    fastening = fastening.spindle_nut
    by        = part.cotter
  }
}
procedure "raise" {
  title = "Raise the mast"
  after = [procedure.head]
  fit "spindle" {
    title = "Lower the head into the mast"
    part  = part.spindle
  }
  fit "mast" {
    title  = "Stand the mast on its studs"
    part   = part.foot
    people = 2
    ppe    = ppe.helmet
    caution {
      hazard = "A mast that is being raised can fall"
      result = "Bruises and broken bones"
      avoid  = "Keep everyone else outside the length of the mast"
    }
  }
  fit "washers" {
    title = "Lay the wide washers on the foot"
    part  = part.wide_washer
    when  = option.ground == "timber"
  }
  fit "nuts" {
    title     = "Start the four nuts by hand"
    fastening = fastening.foot_nuts
  }
  torque "nuts" {
    title     = "Tighten the foot nuts crosswise"
    fastening = fastening.foot_nuts
    tools     = [tool.wrench, tool.socket_19]
  }
  measure "plumb" {
    title     = "Measure how plumb the mast stands"
    on        = part.foot
    tools     = tool.level
    spots     = 2
    take      = "each"
    likely    = "88..90°"
    accept    = "min 89°"
    otherwise = "Stop. The studs must be straightened first."
  }
}
