# Sound: one setting from one end of a spindle, whose lock nut at the other end is tight
# already and stays so; loosened again at one place only inside an otherwise; inch.

manual "bike_hub" {
  title    = "Front hub of the carrier cycle"
  units    = "inch"
  revision = "B"
  issued   = "2025-06-11"
  supplier = "Withybrook Engine Kits"
  history "A" {
    issued = "2024-02-01"
    reason = "First issue"
  }
  order = [procedure.hub]
}
places "side" { names = ["left", "right"] }

part "shell" {
  name   = "Hub shell"
  number = "CC-100"
  faces  = ["left_cup", "right_cup"]
}
part "spindle" {
  name    = "Spindle"
  number  = "CC-101"
  sits_on = part.shell
}
part "ball" {
  name     = "Ball, 3/16 in"
  number   = "CC-102"
  quantity = 10
  at_each  = places.side
  sits_on  = part.shell
}
part "cone" {
  name    = "Cone"
  number  = "CC-103"
  at_each = places.side
  sits_on = part.spindle
  covers  = part.ball
}
part "washer" {
  name    = "Keyed washer"
  number  = "CC-104"
  at_each = places.side
  sits_on = part.cone
}
part "locknut" {
  name    = "Lock nut"
  number  = "CC-105"
  at_each = places.side
}
fastening "lock" {
  name         = "Cone lock nut"
  does         = "lock nut"
  at_each      = places.side
  thread       = "5/16-26 BSC"
  fasteners    = part.locknut
  stack        = [part.cone, part.washer]
  across_flats = "15 mm"
  torque       = "13 ± 2 lb·ft"
  basis        = "Shop practice"
}
tool "cone_spanner" {
  name = "Cone spanner"
  kind = "spanner"
  size = "13 mm"
}
tool "torque_wrench" {
  name     = "Torque wrench with 15 mm open end"
  kind     = "torque wrench"
  range    = "5..40 lb·ft"
  size     = "15 mm"
  accuracy = "± 4 %"
}
tool "indicator" {
  name       = "Dial indicator on a stand"
  kind       = "movement"
  range      = "0..0.2 in"
  resolution = "0.0001 in"
  accuracy   = "± 0.0002 in"
}
supply "grease" {
  name = "Lithium grease"
  kind = "grease"
}
supply "spirit" {
  name = "White spirit"
  kind = "solvent"
  ppe  = ppe.gloves
  warning {
    hazard = "White spirit burns and its vapour makes you dizzy"
    result = "Fire, or fainting in a closed room"
    avoid  = "Open a window and keep flames away"
  }
}
ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}
limit "float" {
  name   = "End float of the spindle"
  range  = "0.001..0.003 in"
  target = "0.002 in"
  basis  = "Drawing CC-1"
}
procedure "hub" {
  title = "Build the hub and set the cones"
  clean "cups" {
    title    = "Wash both cups"
    on       = [part.shell.face.left_cup, part.shell.face.right_cup]
    supplies = supply.spirit
    takes    = "5 min"
  }
  fit "shell" {
    title = "Stand the shell in the soft jaws"
    part  = part.shell
  }
  coat "cups" {
    title    = "Grease both cups"
    on       = [part.shell.face.left_cup, part.shell.face.right_cup]
    supplies = supply.grease
  }
  fit "spindle" {
    title = "Pass the spindle through the shell"
    part  = part.spindle
  }
  fit "balls" {
    title   = "Press ten balls into the grease, ${place} side"
    part    = part.ball
    at_each = places.side
  }
  fit "cones" {
    title   = "Screw the cone down on to the balls, ${place} side"
    part    = part.cone
    at_each = places.side
  }
  fit "washers" {
    title   = "Slide the keyed washer on, ${place} side"
    part    = part.washer
    at_each = places.side
  }
  fit "locknuts" {
    title   = "Start the lock nut by hand, ${place} side"
    fastening = fastening.lock
    at_each = places.side
  }
  torque "first" {
    title     = "Tighten the left lock nut"
    fastening = fastening.lock
    at_each   = places.side
    only      = ["left"]
    tools     = tool.torque_wrench
    held_by   = tool.cone_spanner
  }
  adjust "float" {
    title      = "Turn the right cone until the float is right"
    on         = part.spindle
    tools      = [tool.indicator, tool.cone_spanner]
    likely     = "0.001..0.008 in"
    accept     = limit.float
    otherwise  = "Turn the right cone by 1/16 turn at a time until the float is right."
    locks_with = fastening.lock
  }
  torque "second" {
    title     = "Tighten the right lock nut"
    fastening = fastening.lock
    at_each   = places.side
    only      = ["right"]
    tools     = tool.torque_wrench
    held_by   = tool.cone_spanner
  }
  measure "float_locked" {
    title  = "Measure the end float"
    on     = part.spindle
    tools  = tool.indicator
    likely = "0.000..0.006 in"
    accept = limit.float
    otherwise {
      text = "Loosen the right lock nut and set the float again."
      loosen "right" {
        title     = "Loosen the right lock nut"
        fastening = fastening.lock
        only      = ["right"]
        tools     = tool.torque_wrench
      }
      then = adjust.float
    }
  }
  run "spin" {
    title = "Spin the spindle by hand"
    on    = part.spindle
    by    = "hand"
  }
}
