package kind

import "fettle/lang/schema"

// Calculate works a value out.
var Calculate = &Kind{
	Yields: Number, Judges: true, Critical: true,
	Does: []Effect{{WorksOut, "is"}},
	Block: judging(step("calculate",
		"Works a value out of others; the formula is shown.",
		`calculate "clearance" {
  title  = "Work out the clearance"
  is     = measure.bore - measure.piston
  accept = "0.05..0.09 mm"
}
`,
		schema.AnyAmountAttr("is", schema.Value, "The formula.").Must(),
		schema.AnyLimitsAttr("accept", schema.Judgement, "The limits that the value must meet."),
	)),
}
