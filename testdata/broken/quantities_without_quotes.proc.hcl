part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  measure "bore" {
    likely   = 2..5
    takes    = 5 min
    quantity = .5
    size     = 1_000
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
