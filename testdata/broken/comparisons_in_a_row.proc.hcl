part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  measure "bore" {
    when = 1 < measure.a < 2
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
