procedure "clean" {
  title = "Wash everything"
  was   = ["wash"]

  inspect "axle" {
    title     = "Look for cracks"
    on        = [part.axle]
    criterion = "There is no crack."
    otherwise = "Stop."
  }

  clean "axle" {
    title = "Wash the axle"
    on    = [part.axle]
  }
}

procedure "bearing" {
  title = "Fit the hub"

  fit "hub" {
    title  = "Push the hub on"
    part   = part.wheel_hub
    people = 2
    text   = "Push it home until it stops. Turn it twice."
  }

  measure "float" {
    title     = "Measure the float"
    on        = [part.wheel_hub]
    tools     = [tool.dial]
    likely    = "0.20..0.60 mm"
    was       = ["end_play"]
    otherwise = "Turn the hub, and measure again."
  }

  choose "pack" {
    title  = "Choose the shims"
    from   = part.shim
    pieces = "1..4"
    gap    = measure.float
    leaves = limit.float
  }

  measure "runout" {
    title     = "Measure the runout"
    on        = [part.axle.face.flange]
    tools     = [tool.dial]
    accept    = limit.runout
    otherwise = "Stop."
  }

  hold "float" {
    title   = "Stop before the cap goes on"
    checks  = [measure.float]
    before  = procedure.close.fit.cap
    release = "second person"
  }

  inspect "spin" {
    title     = "Spin the hub"
    on        = [part.wheel_hub]
    criterion = "It runs without noise."
    otherwise = "Stop."
  }
}

procedure "close" {
  title = "Close the hub"

  fit "cap" {
    title = "Put the cap on"
    part  = part.cap
  }

  torque "cap" {
    title     = "Tighten the cap"
    fastening = fastening.cap_bolts
    tools     = [tool.wrench]
  }
}
