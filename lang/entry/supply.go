package entry

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Supply is what is used up: sealant, oil, solvent.
var Supply = &schema.Block{
	Name: "supply", Label: "id",
	Doc: "What is used up: sealant, threadlocker, oil, grease, solvent. Named by kind.",
	Example: `supply "case_sealant" {
  name            = "Silicone sealant, neutral cure"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "20 min"
  cure            = "24 h at 20 °C"
  service         = "-50..200 °C"
  ppe             = [ppe.gloves]
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What a builder calls it.").Must(),
		schema.TextAttr("kind", schema.Property, "sealant, threadlocker, oil, grease, anti-seize, solvent, adhesive, …").Must(),
		schema.AmountAttr("assemble_within", schema.Clock, "From the start of the seal until the joint is closed.", calc.Time),
		schema.AmountAttr("tighten_within", schema.Clock, "From the start of the seal until it is tight.", calc.Time),
		schema.TimeAtAttr("handling", schema.Clock, "Until it may be handled; one time, or one for each temperature."),
		schema.TimeAtAttr("cure", schema.Clock, "Until it is fully cured; one time, or one for each temperature."),
		schema.LimitsAttr("service", schema.Property, "The temperatures it stands once cured.", calc.Temperature),
		schema.RefAttr("ppe", schema.Protection, "What to wear.", "ppe"),
		schema.TextAttr("amount", schema.Property, "How much the job needs."),
	},
	Blocks: Messages(),
}

// PPE is what a builder wears.
var PPE = &schema.Block{
	Name: "ppe", Label: "id",
	Doc: "Personal protective equipment.",
	Example: `ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What it is.").Must(),
		schema.TextAttr("standard", schema.Identity, "The standard it meets."),
	},
}
