package entry

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Part is a piece of the kit.
var Part = &schema.Block{
	Name: "part", Label: "id",
	Doc: "A piece of the kit: what it sits on, what it covers, and how many there are.",
	Example: `part "thrust_shim" {
  name    = "Thrust shim"
  number  = "BK-041"
  sits_on = part.runner_shaft
  size "0.20 mm" { in_kit = 4 }
  size "0.30 mm" { in_kit = 2 }
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What a builder calls it.").Must(),
		schema.DesignationAttr("number", schema.Identity, "The part number."),
		schema.CountAttr("quantity", schema.Property, "How many the kit holds, for each place where at_each is given.").By("1"),
		schema.BoolAttr("spare", schema.Property, "Need not be used."),
		schema.CountAttr("in_place", schema.State, "How many are already on what they sit on at the start, tight and locked.").By("0"),
		schema.BoolAttr("supplied", schema.Property, "false: the builder's own.").By("true"),
		schema.RefAttr("at_each", schema.Where, "The places that each have one.", "places"),
		schema.ConditionAttr("when", schema.Choice, "The option that brings it."),
		schema.RefAttr("sits_on", schema.Property, "What it is put on or into.", "part", "tool"),
		schema.RefAttr("covers", schema.Property, "What cannot be reached or seen while it is on.", "part", "fastening", "face", "port", "feature", "mark"),
		schema.NamesAttr("faces", schema.Property, "Its named faces."),
		schema.NamesAttr("ports", schema.Property, "Its named openings."),
		schema.NamesAttr("features", schema.Property, "Its named features: bores, journals, seats."),
		schema.NamesAttr("marks", schema.Property, "The maker's own marks on it."),
		schema.TextAttr("material", schema.Property, "What it is made of."),
		schema.AmountAttr("mass", schema.Property, "What one weighs.", calc.Mass),
		schema.BoolAttr("use_once", schema.Property, "Spent when it is taken off."),
		schema.WordAttr("fits_by", schema.Property, "How it goes on.", "hand", "press", "shrink").By("hand"),
		schema.RefAttr("held_by", schema.Property, "What must come off before it: a circlip, a pin, another part.", "part", "fastening"),
		schema.RefAttr("pairs_with", schema.Property, "The part it was made with; never mixed with another's.", "part"),
		schema.WordAttr("stores", schema.Property, "Energy it holds.", "spring", "pressure", "electric", "height"),
		schema.ProseAttr("undo", schema.Remedy, "How it comes off, for rework."),
	},
	Blocks: append([]*schema.Block{Size}, Messages()...),
}

// Size is one grade of a graded part.
var Size = &schema.Block{
	Name: "size", Label: "a size",
	Doc: "One grade of a graded part: a value, or a name with `is`.",
	Attrs: []schema.Attr{
		schema.CountAttr("in_kit", schema.Property, "How many the kit holds.").Must(),
		schema.DesignationAttr("number", schema.Identity, "Its part number."),
		schema.TextAttr("mark", schema.Identity, "How it is marked."),
		schema.AnyLimitsAttr("is", schema.Value, "Its value, or the band it lies in, where the label is a name.").WithUnit(),
	},
}
