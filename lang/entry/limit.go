package entry

import "fettle/lang/schema"

// Limit is an authored limit with a name; .low, .high, .target and .width may be used anywhere.
var Limit = &schema.Block{
	Name: "limit", Label: "id",
	Doc: "A limit from a drawing or standard. `.low`, `.high`, `.target` and `.width` may be used anywhere.",
	Example: `limit "shaft_float" {
  name   = "Axial float of the runner shaft, assembled"
  range  = "0.08..0.14 mm"
  target = "0.11 mm"
  basis  = "Drawing BK-040, issue 3"
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What it limits.").Must(),
		schema.AnyLimitsAttr("range", schema.Judgement, "The limits.").Must(),
		schema.AnyAmountAttr("target", schema.Value, "What to aim at; the middle where none is given."),
		schema.TextAttr("basis", schema.Identity, "Drawing or standard it comes from."),
		schema.BoolAttr("critical", schema.Judgement, "Someone may be hurt if it is not met."),
	},
}
