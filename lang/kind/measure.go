package kind

import "fettle/lang/schema"

// Measure takes a reading.
var Measure = &Kind{
	NeedsOn: true, Yields: Reading, Records: true, Judges: true, Critical: true,
	Does: []Effect{{Reads, "on"}},
	Block: judging(step("measure",
		"Takes a reading off the engine and keeps it exact.",
		`measure "float" {
  title        = "Measure the float without shims"
  on           = [part.runner_shaft]
  tools        = [tool.dial_indicator]
  likely       = "0.55..1.45 mm"
  repeat       = 3
  agree_within = "0.02 mm"
  take         = "mean"
  otherwise    = "Check that the shaft reaches its stop, and measure again."
}
`,
		reading()...,
	)),
}

// reading are the attributes of a step that reads a value.
func reading() []schema.Attr {
	return []schema.Attr{
		schema.AnyLimitsAttr("likely", schema.Expected, "The range in which readings are expected."),
		schema.AnyLimitsAttr("accept", schema.Judgement, "The limits that the reading must meet."),
		schema.CountAttr("repeat", schema.Method, "How often the same spot is read."),
		schema.NamesAttr("spots", schema.Method, "The spots that are read: their names, or how many."),
		schema.AnyAmountAttr("agree_within", schema.Method, "How far apart the readings may lie.").Difference(),
		schema.WordAttr("take", schema.Method, "Which of several readings counts.", "mean", "largest", "smallest", "each"),
	}
}
