package kind

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Measure takes a reading.
var Measure = &Kind{
	NeedsOn: true, Yields: Reading, Records: true, Judges: true, Critical: true,
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

// scalar dimensions that instruments read, by the word in a tool's reads.
var reads = map[string]calc.Dim{
	"outside": calc.Length, "inside": calc.Length, "depth": calc.Length, "gap": calc.Length,
	"movement": calc.Length, "length": calc.Length, "level": calc.Length, "torque": calc.Torque, "angle": calc.Angle,
	"temperature": calc.Temperature, "pressure": calc.Pressure, "mass": calc.Mass, "force": calc.Force,
	"time": calc.Time, "voltage": calc.Voltage, "current": calc.Current, "resistance": calc.Resistance,
	"speed": calc.RotationalSpeed, "flow": calc.FlowRate, "volume": calc.Volume, "count": calc.Counted,
}

// Reads is the dimension of what a tool reads, by the word in its reads.
func Reads(word string) (calc.Dim, bool) { d, ok := reads[word]; return d, ok }
