# Sound: an option that removes a whole procedure, spare parts, parts already in place,
# a fastening with no torque wrench but a word on why, wood and iron with no sealant at all.

manual "garden_gate" {
  title    = "Garden gate: hanging it on its post"
  units    = "inch"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Withybrook Engine Kits"
  order    = [procedure.hang, procedure.closer, procedure.latch]
}

option "closer" {
  name    = "Spring closer"
  choices = ["without", "with"]
  default = "without"
}

part "post" {
  name     = "Gate post with two hinge pins"
  supplied = false
  faces    = ["side"]
}

part "hinge_pin" {
  name     = "Hinge pin"
  quantity = 2
  in_place = 2
  sits_on  = part.post
}

part "gate" {
  name    = "Gate with two hinge eyes"
  sits_on = part.post
  mass    = "44 lb"
  faces   = ["stile"]
}

part "pin_cap" {
  name     = "Cap that keeps the gate on its pin"
  sits_on  = part.post
  use_once = true
}

part "spring" {
  name    = "Closer spring"
  when    = option.closer == "with"
  sits_on = [part.post, part.gate]
  stores  = "spring"

  warning {
    hazard = "The wound spring whips round when it slips."
    result = "Broken fingers or a lost eye."
    avoid  = "Wear goggles and leather gloves, and keep the pin in the winder until the spring is hooked."
  }
}

part "catch" {
  name    = "Catch plate"
  sits_on = part.post
}

part "latch" {
  name    = "Latch"
  sits_on = part.gate
}

part "latch_bolt" {
  name     = "Latch bolt, 5/16-18, with nut"
  quantity = 2
  sits_on  = part.latch
}

part "catch_screw" {
  name     = "Catch screw"
  quantity = 3
  spare    = true
  sits_on  = part.catch
}

fastening "latch_bolts" {
  name         = "Latch bolts"
  thread       = "5/16-18 UNC"
  bolt_class   = "grade 2"
  quantity     = 2
  stack        = [part.latch, part.gate]
  fasteners    = [part.latch_bolt]
  lubricant    = "dry"
  across_flats = "1/2 in"
  torque       = "130 lb·in ± 10 %"
  basis        = "About 72 % of proof at K 0.20, on wide washers"
}

fastening "catch_screws" {
  name         = "Catch screws"
  does         = "set screw"
  thread       = "1/4-20 UNC"
  quantity     = 2
  fasteners    = [part.catch_screw]
  across_flats = "7/16 in"
  torque       = "60 ± 10 lb·in"
  basis        = "Into the threaded plate of the post: enough to hold, not to bend the catch"
}

tool "torque_wrench" {
  name       = "Torque wrench, 50–250 lb·in"
  kind       = "torque wrench"
  range      = "50..250 lb·in"
  resolution = "1 lb·in"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "socket_1_2" {
  name  = "Socket, 1/2 in"
  kind  = "socket"
  size  = "1/2 in"
  drive = "3/8 in"
}

tool "socket_7_16" {
  name  = "Socket, 7/16 in"
  kind  = "socket"
  size  = "7/16 in"
  drive = "3/8 in"
}

tool "winder" {
  name = "Spring winder with pin"
  kind = "winder"
}

tool "mallet" {
  name = "Mallet"
  kind = "mallet"
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

ppe "work_gloves" {
  name     = "Leather work gloves"
  standard = "EN 388"
}

supply "grease" {
  name = "Waterproof grease"
  kind = "grease"
  ppe  = [ppe.work_gloves]
}

procedure "hang" {
  title = "Hang the gate"

  coat "pins" {
    title    = "Grease both hinge pins"
    on       = [part.hinge_pin]
    supplies = [supply.grease]
    takes    = "2 min"
  }

  fit "gate" {
    title  = "Lift the gate onto its pins"
    part   = part.gate
    people = 2
    takes  = "5 min"
    text   = "A helper steers the lower eye while you lower the upper one."
  }

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    criterion = "It falls freely to its lowest point and touches nothing."
    takes     = "2 min"
    otherwise = "Plane off what touches the post."
  }

  fit "cap" {
    title = "Tap the cap onto the upper pin"
    part  = part.pin_cap
    tools = [tool.mallet]
    takes = "1 min"
  }
}

procedure "closer" {
  title = "Hook the closer in"
  after = [procedure.hang]
  when  = option.closer == "with"

  fit "spring" {
    title = "Hook the spring between post and gate"
    part  = part.spring
    tools = [tool.winder]
    ppe   = [ppe.goggles, ppe.work_gloves]
    takes = "10 min"
  }

  inspect "closes" {
    title     = "Let the gate go from half open"
    on        = [part.gate]
    criterion = "It closes by itself in less than five seconds and does not slam."
    takes     = "2 min"
    otherwise = "Wind the spring by one more hole, or one less."
  }
}

procedure "latch" {
  title = "Fit latch and catch"
  after = [procedure.hang]

  fit "latch" {
    title = "Put the latch on the gate"
    part  = part.latch
    takes = "2 min"
  }

  fit "latch_bolts" {
    title     = "Start the latch bolts by hand"
    fastening = fastening.latch_bolts
    takes     = "2 min"
  }

  torque "latch" {
    title     = "Tighten the latch bolts"
    fastening = fastening.latch_bolts
    tools     = [tool.torque_wrench, tool.socket_1_2]
    takes     = "2 min"
  }

  fit "catch" {
    title = "Put the catch plate on the post"
    part  = part.catch
    takes = "2 min"
  }

  fit "catch_screws" {
    title     = "Start two catch screws by hand"
    fastening = fastening.catch_screws
    takes     = "2 min"
    text      = "The third screw is a spare."
  }

  torque "catch" {
    title     = "Tighten the catch screws"
    fastening = fastening.catch_screws
    tools     = [tool.torque_wrench, tool.socket_7_16]
    takes     = "2 min"
  }

  inspect "snaps" {
    title     = "Push the gate shut"
    on        = [part.latch]
    criterion = "The latch snaps in by its own weight."
    takes     = "1 min"
    otherwise = "Move the catch plate in its slots."
  }
}
