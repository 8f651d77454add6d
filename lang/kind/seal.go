package kind

import "fettle/lang/schema"

// Seal lays sealant; clocks run from its start.
var Seal = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Seals, "on"}},
	Block: step("seal",
		"Lays sealant on a face. The clocks of the sealant run from the start of this step.",
		`seal "flange" {
  title      = "Lay a bead on the flange"
  on         = [part.housing.face.flange]
  between    = [part.housing.face.flange, part.cover.face.flange]
  supplies   = [supply.case_sealant]
  keep_clear = [part.housing.port.oil_feed]
  closed_by  = fit.cover
}
`,
		schema.RefAttr("between", schema.Touches, "The faces that it seals.", "face", "part"),
		schema.RefAttr("keep_clear", schema.Guide, "Marks and ports that must stay free of it.", "mark", "port", "feature"),
		schema.RefAttr("closed_by", schema.Order, "The step that closes it.", "step"),
	),
}
