manual "chain_saw" {
  title    = "Bar and chain of the mill saw"
  units    = "inch"
  revision = "A"
  issued   = "2025-10-01"
  supplier = "Withybrook Engine Kits"
  order    = procedure.bar
}
ppe "cut_gloves" {
  name     = "Cut-resistant gloves"
  standard = "EN 388"
}
part "head" {
  name     = "Power head"
  mass     = "14 lb"
  in_place = 1
  supplied = false
}
part "bar" {
  name    = "Guide bar"
  number  = "MS-1"
  sits_on = part.head
}
part "chain" {
  name    = "Chain"
  number  = "MS-2"
  sits_on = part.bar
  caution {
    hazard = "The cutters are sharp even when the chain stands still"
    result = "Cut hands"
    avoid  = "Wear cut-resistant gloves whenever you touch the chain"
  }
}
part "cover" {
  name    = "Sprocket cover"
  number  = "MS-3"
  sits_on = part.bar
}
part "nut" {
  name     = "Bar nut"
  number   = "MS-4"
  quantity = 2
}
fastening "bar_nuts" {
  name            = "Bar nuts"
  thread          = "5/16-18 UNC"
  bolt_class      = "Grade 5"
  quantity        = 2
  fasteners       = part.nut
  stack           = [part.bar, part.cover]
  lubricant       = "dry"
  thread_material = "steel"
  thread_length   = "3/8 in"
  torque          = "14 lb·ft ± 10 %"
  across_flats    = "1/2 in"
}
limit "sag" {
  name   = "Sag of the chain at the middle of the bar"
  range  = "1/8..1/4 in"
  target = "3/16 in"
  basis  = "Shop practice"
}
tool "wrench" {
  name     = "Torque wrench"
  kind     = "torque wrench"
  range    = "5..50 lb·ft"
  accuracy = "± 4 %"
  drive    = "3/8 in"
}
tool "socket" {
  name  = "Socket, 1/2 in"
  kind  = "socket"
  size  = "1/2 in"
  drive = "3/8 in"
}
tool "rule" {
  name       = "Steel rule in 64ths"
  kind       = "rule"
  reads      = "length"
  range      = "0..6 in"
  resolution = "1/64 in"
  accuracy   = "± 0.005 in"
}
procedure "bar" {
  title = "Fit the bar and set the chain"
  fit "bar" {
    title = "Hang the bar on its studs"
    part  = part.bar
  }
  fit "chain" {
    title = "Lay the chain round the bar"
    part  = part.chain
    ppe   = ppe.cut_gloves
    text  = "The cutters on the top run point away from the power head."
  }
  fit "cover" {
    title = "Set the cover on the studs"
    part  = part.cover
  }
  fit "nuts" {
    title     = "Start both nuts by hand"
    fastening = fastening.bar_nuts
  }
  adjust "sag" {
    title      = "Set the sag of the chain"
    on         = part.chain
    tools      = tool.rule
    ppe        = ppe.cut_gloves
    likely     = "0..3/8 in"
    accept     = limit.sag
    otherwise  = "Turn the tension screw and read again."
    locks_with = fastening.bar_nuts
    text       = "Hold the nose of the bar up while you read."
  }
  torque "nuts" {
    title     = "Tighten both nuts"
    fastening = fastening.bar_nuts
    tools     = [tool.wrench, tool.socket]
    text      = "Still hold the nose of the bar up."
  }
  measure "sag" {
    title  = "Measure the sag again"
    on     = part.chain
    tools  = tool.rule
    ppe    = ppe.cut_gloves
    likely = "1/16..5/16 in"
    accept = limit.sag
    otherwise {
      when = "above"
      text = "The chain is slack. Loosen the nuts and set it again."
      loosen "slack" {
        title     = "Loosen both nuts"
        fastening = fastening.bar_nuts
        by        = "1/2 turn"
        tools     = tool.socket
      }
      then = adjust.sag
    }
    otherwise {
      when = "below"
      text = "The chain is tight. Loosen the nuts and set it again."
      loosen "taut" {
        title     = "Loosen both nuts"
        fastening = fastening.bar_nuts
        by        = "1/2 turn"
        tools     = tool.socket
      }
      then = adjust.sag
    }
  }
  run "pull" {
    title = "Pull the chain round the bar by hand"
    on    = part.chain
    by    = "hand"
    ppe   = ppe.cut_gloves
  }
}
