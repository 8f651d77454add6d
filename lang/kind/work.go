package kind

import "fettle/lang/schema"

// Work is anything that no other kind is for.
var Work = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Touches, "on"}, {Lifts, "lifts"}, {Slackens, "loosens"}, {Declares, "gives"}},
	Block: step("work",
		"Any other work: it does what it declares.",
		`work "lift" {
  title  = "Lift the engine onto its mounts"
  on     = [part.crankcase]
  tools  = [tool.hoist]
  people = 2
  lifts  = [part.crankcase]
}
`,
		schema.RefAttr("lifts", schema.State, "What is lifted, with all it carries.", "part"),
		schema.RefAttr("loosens", schema.State, "Fastenings that it leaves loose.", "fastening"),
		schema.NamesAttr("gives", schema.State, "States that it declares."),
	),
}
