part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  fit "runner" {
    title = "Warm to 80 °C"
    part  = part.runner # ÿ
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
