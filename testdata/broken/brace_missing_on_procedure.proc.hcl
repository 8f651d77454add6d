part "runner" {
  name = "Runner"
}

procedure "one" {
  title = "First"

  fit "a" {
    part = part.runner
  }

procedure "two" {
  title = "Second"
}

limit "float" {
  range = "0.08..0.14 mm"
}
