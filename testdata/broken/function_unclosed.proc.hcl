part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  calculate "gap" {
    is    = max(measure.a, measure.b
    title = "Work out the gap"
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
