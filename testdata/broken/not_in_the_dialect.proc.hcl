part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  fit "runner" {
    on    = [for p in part.list : p]
    parts = part.list.*.name
    all   = max(measure.bore[*])
    text  = "%{ if true }a%{ endif }"
    x     = other::thing(1)
    y     = part.list.0
    z     = max(part.list...)
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
