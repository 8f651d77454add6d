package kind

import "fettle/lang/schema"

// MarkStep makes a mark on a face.
var MarkStep = &Kind{
	NeedsOn: true, Yields: Mark,
	Does: []Effect{{MakesMark, "on"}},
	Block: step("mark",
		"Makes a mark that later steps go by.",
		`mark "tdc" {
  title = "Scribe the rim at the pointer"
  on    = [part.flywheel.face.rim]
  how   = "scribe"
}
`,
		schema.WordAttr("how", schema.Method, "What it is made with; pen and paint wipe off.", "punch", "scribe", "pen", "paint").Must(),
	),
}
