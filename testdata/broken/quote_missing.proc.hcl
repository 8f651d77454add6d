part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  fit "runner" {
    title = "Fit the runner
    part  = part.runner
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
