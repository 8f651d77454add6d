package kind

// Coat wets a fastening or a face with a supply.
var Coat = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Wets, "on"}},
	Block: step("coat",
		"Wets a fastening or a face with oil, grease, threadlocker or the like.",
		`coat "threads" {
  title    = "Oil the threads"
  on       = [fastening.cover_bolts]
  supplies = [supply.engine_oil]
}
`),
}
