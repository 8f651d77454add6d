part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  measure "float" {
    on = [part.runner]
    otherwise {
      text = "Read again."
      then = "stop"
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
