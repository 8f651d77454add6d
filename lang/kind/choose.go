package kind

import "fettle/lang/schema"

// Choose picks a pack of graded parts.
var Choose = &Kind{
	Yields: Pack, Records: true,
	Does: []Effect{{Picks, "from"}},
	Block: judgingOnly(step("choose",
		"Picks pieces of a graded part so that a gap is filled, or a height built up, to within limits.",
		`choose "pack" {
  title  = "Choose the shim pack"
  from   = part.thrust_shim
  pieces = "2..5"
  gap    = measure.float
  leaves = limit.shaft_float
}
`,
		schema.RefAttr("from", schema.Subject, "The graded part.", "part").Must(),
		schema.AnyLimitsAttr("pieces", schema.Method, "How many pieces a pack may have.").By("1"),
		schema.AnyAmountAttr("gap", schema.Value, "The gap that the pack fills.").WithUnit(),
		schema.AnyLimitsAttr("leaves", schema.Judgement, "What may be left of the gap."),
		schema.AnyAmountAttr("base", schema.Value, "What the pack is built up on.").WithUnit(),
		schema.AnyLimitsAttr("makes", schema.Judgement, "What base and pack must make together."),
		schema.WordAttr("prefer", schema.Method, "Which pack is best.", "fewest", "nearest").By("fewest"),
	)),
}
