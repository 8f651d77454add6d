package entry

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Tool is anything used and put away, instruments included.
var Tool = &schema.Block{
	Name: "tool", Label: "id",
	Doc: "A tool or instrument: what it reads, how far and how finely.",
	Example: `tool "dial_indicator" {
  name       = "Dial indicator on a magnetic stand"
  kind       = "dial indicator"
  range      = "0..10 mm"
  resolution = "0.01 mm"
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What a builder calls it.").Must(),
		schema.TextAttr("kind", schema.Property, "What kind it is; a known kind says what it reads.").Must(),
		schema.WordAttr("reads", schema.Property, "What it reads, where the kind does not say.",
			"outside", "inside", "depth", "gap", "movement", "length", "torque", "angle", "temperature", "pressure",
			"mass", "force", "time", "voltage", "current", "resistance", "speed", "flow", "volume", "level", "count"),
		schema.AnyLimitsAttr("range", schema.Property, "The range it works in."),
		schema.AnyAmountAttr("resolution", schema.Property, "The finest step it shows.").Difference(),
		schema.Attr{Name: "accuracy", Type: schema.Setting, Role: schema.Property, Diff: true, Doc: "How far its reading may be off: a value or a percentage."},
		schema.DesignationAttr("size", schema.Property, "Width across flats that it fits."),
		schema.DesignationAttr("drive", schema.Property, "Its square drive."),
		schema.AmountAttr("length", schema.Property, "Effective length: of a torque wrench from grip to drive, of an adapter from drive to fastener.", calc.Length),
		schema.AnyAmountAttr("offset", schema.Property, "Angle of an adapter to the wrench; 90° leaves the setting as it is.").WithUnit(),
		schema.AmountAttr("capacity", schema.Property, "What it can lift.", calc.Mass),
		schema.CountAttr("quantity", schema.Property, "How many there are.").By("1"),
		schema.BoolAttr("stays_on", schema.State, "Goes on with a fit step and comes off with a remove step."),
		schema.RefAttr("sits_on", schema.Property, "What it is put on.", "part", "tool"),
		schema.RefAttr("covers", schema.Property, "What cannot be reached while it is on.", "part", "fastening", "face", "port", "feature", "mark"),
		schema.BoolAttr("hot", schema.Property, "Burns who touches it."),
	},
	Blocks: Messages(),
}
