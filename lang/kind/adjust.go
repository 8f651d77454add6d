package kind

import "fettle/lang/schema"

// Adjust sets something to a reading.
var Adjust = &Kind{
	NeedsOn: true, Yields: Reading, Records: true, Judges: true, Critical: true,
	Does: []Effect{{Sets, "on"}},
	Block: judging(step("adjust",
		"Sets something until the reading is right. Tightening its lock disturbs it, so it is read again.",
		`adjust "guide_vanes" {
  title      = "Set the opening of the guide vanes"
  on         = [part.vane_ring]
  tools      = [tool.feeler_gauges]
  accept     = "0.040 in ± 0.005 in"
  locks_with = fastening.vane_lock_nut
  otherwise  = "Turn the adjuster and set it again."
}
`,
		append(reading(),
			schema.RefAttr("locks_with", schema.Property, "The fastening that keeps the setting.", "fastening"))...,
	)),
}
