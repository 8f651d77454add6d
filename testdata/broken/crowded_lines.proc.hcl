part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  measure "bore" { on = [part.runner]
    take = "mean"
  }
  measure "two" { on = [part.runner], take = "mean" }
  measure "three" {
    on = [part.runner] take = "mean"
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
