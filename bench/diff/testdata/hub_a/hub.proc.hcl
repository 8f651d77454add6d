# An invented trailer hub, in two revisions.

manual "hub" {
  title    = "Trailer hub: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-02-01"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.wash, procedure.bearing, procedure.close]
}

part "axle" {
  name  = "Axle"
  faces = ["flange"]
}

part "hub" {
  name    = "Hub"
  number  = "H-2"
  mass    = "6 kg"
  sits_on = part.axle
}

part "cap" {
  name    = "Cap"
  number  = "H-3"
  sits_on = part.hub
}

part "shim" {
  name    = "Shim"
  sits_on = part.axle
  size "0.10 mm" { in_kit = 4 }
  size "0.20 mm" { in_kit = 2 }
}

tool "dial" {
  name       = "Dial indicator"
  kind       = "dial indicator"
  range      = "0..10 mm"
  resolution = "0.01 mm"
}

tool "wrench" {
  name  = "Torque wrench"
  kind  = "torque wrench"
  range = "20..120 N·m"
}

supply "grease" {
  name = "Bearing grease"
  kind = "grease"
}

fastening "cap_bolts" {
  name   = "Cap bolts"
  thread = "M8x1.25"
  stack  = [part.cap, part.hub]
  torque = "22 N·m ± 10 %"
  basis  = "Drawing H-9"
}

limit "float" {
  name  = "Float of the hub"
  range = "0.05..0.25 mm"
  basis = "Drawing H-7"
}

limit "runout" {
  name     = "Runout of the flange"
  range    = "max 0.10 mm"
  critical = true
}

procedure "wash" {
  title = "Wash everything"

  clean "axle" {
    title = "Wash the axle"
    on    = [part.axle]
  }

  inspect "axle" {
    title     = "Look for cracks"
    on        = [part.axle]
    criterion = "There is no crack."
    otherwise = "Stop."
  }
}

procedure "bearing" {
  title = "Fit the hub"

  fit "hub" {
    title  = "Push the hub on"
    part   = part.hub
    people = 1
    text   = "Push it until it stops. Turn it once."
  }

  measure "end_play" {
    title     = "Measure the float"
    on        = [part.hub]
    tools     = [tool.dial]
    likely    = "0.20..0.60 mm"
    otherwise = "Turn the hub, and measure again."
  }

  choose "pack" {
    title  = "Choose the shims"
    from   = part.shim
    pieces = "1..3"
    gap    = measure.end_play
    leaves = limit.float
  }

  measure "runout" {
    title     = "Measure the runout"
    on        = [part.axle.face.flange]
    tools     = [tool.dial]
    accept    = limit.runout
    otherwise = "Stop."
  }
}

procedure "close" {
  title = "Close the hub"

  coat "cap" {
    title    = "Grease the cap"
    on       = [part.cap]
    supplies = [supply.grease]
  }

  fit "cap" {
    title = "Put the cap on"
    part  = part.cap
  }

  torque "cap" {
    title     = "Tighten the cap"
    fastening = fastening.cap_bolts
    tools     = [tool.wrench]
  }

  inspect "spin" {
    title     = "Spin the hub"
    on        = [part.hub]
    criterion = "It runs without noise."
    otherwise = "Stop."
  }
}
