package kind

import "fettle/lang/schema"

// Fill puts a liquid in.
var Fill = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Fills, "on"}},
	Block: step("fill",
		"Puts a liquid in through an open port.",
		`fill "oil" {
  title    = "Fill the gearbox with oil"
  on       = [part.gearbox]
  through  = part.gearbox.port.filler
  supplies = [supply.gear_oil]
  amount   = "1.2 L"
}
`,
		liquid()...,
	),
}

func liquid() []schema.Attr {
	return []schema.Attr{
		schema.RefAttr("through", schema.Method, "The opening.", "port", "fastening"),
		schema.AnyAmountAttr("amount", schema.Value, "How much.").WithUnit(),
	}
}
