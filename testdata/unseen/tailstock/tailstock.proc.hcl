manual "tailstock" {
  title      = "Tailstock of the small lathe"
  units      = "metric"
  revision   = "C"
  issued     = "2025-10-20"
  supplier   = "Withybrook Engine Kits"
  contact    = "Workshop office"
  conditions = "20 °C"
  order      = [procedure.barrel, procedure.on_bed]
  history "A" {
    issued = "2023-01-10"
    reason = "First issue"
  }
  history "B" {
    issued = "2024-05-15"
    reason = "Longer clamp bolt"
  }
}
ppe "mitts" {
  name     = "Heat-proof gloves"
  standard = "EN 407"
}
tool "oven" {
  name  = "Bench oven"
  kind  = "oven"
  range = "20..200 °C"
  hot   = true
  warning {
    hazard = "The oven and what comes out of it are hot"
    result = "Burnt hands"
    avoid  = "Wear heat-proof gloves and set hot parts down on bricks"
  }
}
tool "thermometer" {
  name       = "Contact thermometer"
  kind       = "temperature"
  range      = "0..250 °C"
  resolution = "1 °C"
  accuracy   = "± 2 °C"
}
tool "test_bar" {
  name       = "Test bar and dial indicator"
  kind       = "alignment set"
  reads      = "movement"
  range      = "-0.5..0.5 mm"
  resolution = "0.001 mm"
  accuracy   = "± 0.002 mm"
}
tool "wrench" {
  name     = "Torque wrench"
  kind     = "torque wrench"
  range    = "10..100 N·m"
  accuracy = "± 3 %"
  drive    = "1/2 in"
}
tool "small_wrench" {
  name     = "Torque wrench, small"
  kind     = "torque wrench"
  range    = "2..20 N·m"
  accuracy = "± 4 %"
}
tool "socket" {
  name  = "Socket, 19 mm"
  kind  = "socket"
  size  = "19 mm"
  drive = "1/2 in"
}
tool "hex" {
  name = "Hexagon key, 5 mm"
  kind = "hexagon key"
  size = "5 mm"
}
supply "way_oil" {
  name = "Slideway oil, ISO VG 68"
  kind = "oil"
}
part "bed" {
  name     = "Lathe bed"
  in_place = 1
  supplied = false
  faces    = ["ways"]
}
part "base" {
  name    = "Base plate"
  number  = "TS-01"
  mass    = "3.5 kg"
  sits_on = part.bed
}
part "casting" {
  name    = "Tailstock casting"
  number  = "TS-02"
  mass    = "9 kg"
  sits_on = part.base
  faces   = ["bore"]
}
part "bush" {
  name    = "Bronze bush"
  number  = "TS-03"
  sits_on = part.casting
  fits_by = "shrink"
  mass    = "0.3 kg"
}
part "barrel" {
  name    = "Barrel"
  number  = "TS-04"
  sits_on = part.bush
  mass    = "1.2 kg"
}
part "clamp_plate" {
  name    = "Clamp plate"
  number  = "TS-05"
  sits_on = part.bed
  mass    = "0.5 kg"
}
part "clamp_bolt" {
  name   = "Clamp bolt M12 × 110"
  number = "TS-06"
}
part "set_over_screw" {
  name     = "Set-over screw"
  number   = "TS-07"
  quantity = 2
}
fastening "clamp" {
  name         = "Clamp bolt"
  thread       = "M12x1.75"
  bolt_class   = "8.8"
  nut_class    = "8"
  fasteners    = part.clamp_bolt
  stack        = [part.casting, part.base, part.bed, part.clamp_plate]
  lubricant    = supply.way_oil
  across_flats = "19 mm"
  torque       = "50 +5/-3 N·m"
  locked_by    = "drag"
}
fastening "set_over" {
  name         = "Set-over screws"
  does         = "adjuster"
  thread       = "M8x1.25"
  quantity     = 2
  fasteners    = part.set_over_screw
  torque       = "6 ± 2 N·m"
  across_flats = "5 mm"
  basis        = "Shop practice"
}
procedure "barrel" {
  title = "Shrink the casting on to the bush and fit the barrel"
  clean "bore" {
    title = "Wipe the bore"
    on    = part.casting.face.bore
  }
  heat "casting" {
    title = "Heat the casting to 120 °C"
    on    = part.casting
    to    = "120 ± 5 °C"
    tools = [tool.oven, tool.thermometer]
    takes = "45 min"
    ppe   = ppe.mitts
  }
  fit "bush" {
    title  = "Drop the bush into the hot casting"
    part   = part.bush
    after  = [heat.casting]
    within = "2 min"
    takes  = "1 min"
    ppe    = ppe.mitts
  }
  wait "cool" {
    title = "Let the casting cool"
    until = heat.casting
    for   = "90 min"
  }
  coat "barrel" {
    title    = "Oil the barrel"
    on       = part.barrel
    supplies = supply.way_oil
  }
  fit "barrel" {
    title = "Slide the barrel into the bush"
    part  = part.barrel
  }
  inspect "slides" {
    title     = "Slide the barrel from end to end"
    on        = part.barrel
    criterion = "It moves under the push of one thumb and does not catch"
    otherwise = "Stop, and ask the workshop to hone the bush."
  }
}
procedure "on_bed" {
  title = "Set the tailstock on the bed and align it"
  after = [procedure.barrel]
  coat "ways" {
    title    = "Oil the ways"
    on       = part.bed.face.ways
    supplies = supply.way_oil
  }
  fit "base" {
    title = "Lay the base plate on the ways"
    part  = part.base
  }
  fit "casting" {
    title = "Set the casting on the base plate"
    part  = part.casting
  }
  fit "plate" {
    title  = "Hold the clamp plate under the bed"
    part   = part.clamp_plate
    people = 2
  }
  coat "bolt" {
    title    = "Oil the thread of the clamp bolt"
    on       = fastening.clamp
    supplies = supply.way_oil
  }
  fit "bolt" {
    title     = "Start the clamp bolt by hand"
    fastening = fastening.clamp
  }
  fit "screws" {
    title     = "Start both set-over screws by hand"
    fastening = fastening.set_over
  }
  torque "clamp" {
    title     = "Tighten the clamp bolt"
    fastening = fastening.clamp
    tools     = [tool.wrench, tool.socket]
  }
  adjust "line" {
    title      = "Bring the barrel into line with the set-over screws"
    on         = part.barrel
    tools      = [tool.test_bar, tool.hex]
    likely     = "-0.08..0.08 mm"
    accept     = within(adjust.line - "0.00 mm", "0.01 mm")
    otherwise  = "Turn the two screws against each other and read again."
    locks_with = fastening.set_over
  }
  torque "set_over" {
    title     = "Tighten both set-over screws"
    fastening = fastening.set_over
    tools     = [tool.small_wrench, tool.hex]
  }
  measure "line" {
    title  = "Read the line again"
    on     = part.barrel
    tools  = tool.test_bar
    likely = "-0.05..0.05 mm"
    accept = "0.00 ± 0.01 mm"
    otherwise {
      text = "Loosen the screws and set the line again."
      loosen "screws" {
        title     = "Loosen both set-over screws"
        fastening = fastening.set_over
        tools     = tool.hex
      }
      then = adjust.line
    }
  }
}
