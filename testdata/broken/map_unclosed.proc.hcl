part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  measure "bore" {
    accept = { inlet = "5 mm"
    on     = [part.runner]
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
