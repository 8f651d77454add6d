package seal

// screws holds the cover of the little machine.
const screws = `
part "screw" {
  name     = "Cover screw, M8"
  quantity = 4
  sits_on  = part.cover
}

fastening "screws" {
  name            = "Cover screws"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 4
  stack           = [part.cover, part.housing]
  fasteners       = [part.screw]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "16 mm"
  across_flats    = "13 mm"
  torque          = "25 N·m ± 10 %"
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "About 74 % of proof at K 0.20"
}
`
