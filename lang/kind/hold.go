package kind

import "fettle/lang/schema"

// Hold stops the work until somebody lets it go on.
var Hold = &Kind{
	Records: true,
	Does:    []Effect{{Stops, "title"}},
	Block: step("hold",
		"Stops the work: nothing after it starts until it is released.",
		`hold "before_seal" {
  title   = "Stop before the seal covers the shims"
  checks  = [measure.float_shimmed]
  before  = fit.shaft_seal
  release = "second person"
}
`,
		schema.RefAttr("checks", schema.Judgement, "What must have been accepted.", "step"),
		schema.RefAttr("before", schema.Order, "The step that it guards.", "step"),
		schema.TextAttr("release", schema.Release, "Who releases it: second person, supplier, inspector, or a signatory of the manual."),
	),
}
