package kind

import "fettle/lang/schema"

// Inspect looks, listens or feels, and accepts.
var Inspect = &Kind{
	NeedsOn: true, Records: true, Judges: true, Critical: true,
	Does: []Effect{{Accepts, "on"}},
	Block: judging(step("inspect",
		"Looks, listens or feels, and accepts by a criterion.",
		`inspect "bead" {
  title     = "Look at the squeezed-out bead"
  on        = [part.cover]
  criterion = "The bead shows all round without a break."
}
`,
		schema.TextAttr("criterion", schema.Judgement, "What must be seen, heard or felt."),
	)),
}
