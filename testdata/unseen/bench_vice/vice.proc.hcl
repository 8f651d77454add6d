# Terse: no numbers, no masses, no takes, no figures, no torque values.
manual "bench_vice" {
  title    = "Bench vice, four inch"
  units    = "metric"
  revision = "A"
  issued   = "2025-03-02"
  supplier = "Withybrook Engine Kits"
  order    = [procedure.build]
}

part "body" { name = "Body" }
part "slide" {
  name    = "Sliding jaw"
  sits_on = part.body
}
part "nut" {
  name    = "Screw nut"
  sits_on = part.body
}
part "screw" {
  name    = "Main screw"
  sits_on = part.slide
}
part "split_pin" {
  name     = "Split pin"
  use_once = true
  sits_on  = part.screw
}
part "jaw_plate" {
  name     = "Jaw plate"
  quantity = 2
  sits_on  = [part.body, part.slide]
}
part "jaw_screw" {
  name     = "Countersunk screw M6 × 16"
  quantity = 4
}

tool "key" {
  name = "Hexagon key, 4 mm"
  kind = "hexagon key"
}
tool "pliers" {
  name = "Pliers"
  kind = "pliers"
}
supply "grease" {
  name = "Lithium grease"
  kind = "grease"
}

fastening "jaw_screws" {
  name       = "Jaw plate screws"
  thread     = "M6x1.0"
  quantity   = 4
  fasteners  = part.jaw_screw
  stack      = [part.jaw_plate]
  torque     = "10 ± 1 N·m"
  bolt_class = "8.8"
  nut_class  = "8"
  lubricant  = "dry"
}
tool "wrench" {
  name       = "Torque wrench, small"
  kind       = "torque wrench"
  range      = "2..20 N·m"
  resolution = "0.1 N·m"
  accuracy   = "± 4 %"
}

procedure "build" {
  title = "Put the vice together"

  fit "body" {
    title = "Stand the body on the bench"
    part  = part.body
  }
  fit "nut" {
    title = "Drop the nut into the body"
    part  = part.nut
  }
  coat "ways" {
    title    = "Grease the slide"
    on       = part.slide
    supplies = supply.grease
  }
  fit "slide" {
    title = "Push the sliding jaw into the body"
    part  = part.slide
  }
  fit "screw" {
    title = "Turn the screw into the nut"
    part  = part.screw
  }
  fit "pin" {
    title = "Push the split pin through the screw"
    part  = part.split_pin
    tools = tool.pliers
  }
  fit "plates" {
    title = "Set the jaw plates against the jaws"
    part  = part.jaw_plate
  }
  fit "screws" {
    title     = "Start the four screws by hand"
    fastening = fastening.jaw_screws
  }
  torque "screws" {
    title     = "Tighten the jaw plate screws"
    fastening = fastening.jaw_screws
    tools     = [tool.wrench, tool.key]
  }
  run "jaws" {
    title = "Wind the jaw from end to end"
    on    = part.screw
    by    = "hand"
    text  = "The jaw moves freely over its whole travel."
  }
}
