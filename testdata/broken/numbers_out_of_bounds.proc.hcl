part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  calculate "gap" {
    a = 1e400000
    b = 12345678901234567890123456789012345678901
    c = 1.5
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
