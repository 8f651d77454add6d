# Sound: no threads, masses or numbers; glue over two boards and a skin, spare nails,
# hems nailed after the cure, work that lifts and loosens nothing.

manual "bellows" {
  title    = "Pedal bellows for the forge"
  units    = "metric"
  revision = "A"
  issued   = "2025-11-01"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.bellows]
}
ppe "gloves" { name = "Nitrile gloves" }
supply "glue" {
  name            = "Contact adhesive"
  kind            = "adhesive"
  assemble_within = "15 min"
  cure            = "12 h at 20 °C"
  ppe             = ppe.gloves
  warning {
    hazard = "The vapour burns and makes you dizzy"
    result = "Fire, or fainting"
    avoid  = "Open a window, keep flames away"
  }
}
supply "dressing" {
  name = "Leather dressing"
  kind = "grease"
}
part "lower_board" {
  name  = "Lower board"
  faces = ["edge"]
}
part "flap" {
  name    = "Flap valve"
  sits_on = part.lower_board
}
part "upper_board" {
  name  = "Upper board"
  faces = ["edge"]
}
part "hinge" {
  name    = "Leather hinge"
  sits_on = [part.lower_board, part.upper_board]
}
part "skin" {
  name    = "Leather skin"
  sits_on = [part.lower_board, part.upper_board]
  covers  = part.flap
  faces   = ["lower_hem", "upper_hem"]
}
part "nail" {
  name     = "Upholstery nail"
  quantity = 60
  spare    = true
  sits_on  = part.skin
}
part "spring" {
  name    = "Return spring"
  sits_on = part.upper_board
  stores  = "spring"
  caution {
    hazard = "The spring snaps back"
    result = "Pinched fingers"
    avoid  = "Hook the far end first and pull with pliers"
  }
}
tool "hammer" {
  name = "Tack hammer"
  kind = "hammer"
}
tool "pliers" {
  name = "Long pliers"
  kind = "pliers"
}
tool "brush" {
  name = "Glue brush"
  kind = "brush"
}
procedure "bellows" {
  title = "Build the bellows"
  fit "lower" {
    title = "Lay the lower board on the bench"
    part  = part.lower_board
  }
  fit "flap" {
    title = "Tack the flap over its hole"
    part  = part.flap
    tools = tool.hammer
  }
  inspect "flap" {
    title     = "Lift the flap with one finger"
    on        = part.flap
    criterion = "It falls back by its own weight and lies flat on the whole edge"
    otherwise = "Tack it again with 5 mm more slack."
  }
  fit "upper" {
    title = "Lay the upper board beside it"
    part  = part.upper_board
  }
  fit "hinge" {
    title = "Nail the hinge to both boards"
    part  = part.hinge
    tools = tool.hammer
  }
  clean "edges" {
    title = "Brush the dust off both edges and hems"
    on    = [part.lower_board.face.edge, part.upper_board.face.edge, part.skin.face.lower_hem, part.skin.face.upper_hem]
  }
  seal "skin" {
    title     = "Brush adhesive on both edges"
    on        = [part.lower_board.face.edge, part.upper_board.face.edge]
    between   = [part.lower_board, part.upper_board, part.skin]
    supplies  = supply.glue
    tools     = tool.brush
    closed_by = fit.skin
    takes     = "4 min"
  }
  fit "skin" {
    title  = "Press the skin on to both edges"
    part   = part.skin
    people = 2
    takes  = "8 min"
  }
  clean "glue" {
    title = "Rub off the adhesive that came out"
    on    = part.skin
    ppe   = ppe.gloves
    takes = "3 min"
  }
  wait "glue" {
    title = "Let the adhesive cure"
    until = seal.skin
  }
  fit "nails" {
    title    = "Nail the hems every 25 mm"
    part     = part.nail
    quantity = 50
    tools    = tool.hammer
  }
  coat "skin" {
    title    = "Rub dressing into the skin"
    on       = part.skin
    supplies = supply.dressing
  }
  fit "spring" {
    title = "Hook the return spring in"
    part  = part.spring
    tools = tool.pliers
  }
  work "pedal" {
    title = "Work the bellows twenty strokes"
    on    = part.upper_board
  }
  inspect "air" {
    title     = "Hold a strip of paper in front of the nozzle hole"
    on        = part.skin
    criterion = "The strip stands out level at every stroke, and no air is felt at the hems"
    otherwise = "Nail the leaking hem again."
  }
}
