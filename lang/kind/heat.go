package kind

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Heat makes a part hot or cold.
var Heat = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Heats, "on"}},
	Block: step("heat",
		"Makes a part hot, or cold, to fit it.",
		`heat "bearing" {
  title = "Warm the bearing in the oven"
  on    = [part.bearing]
  tools = [tool.oven]
  to    = "80..100 °C"
}
`,
		schema.Attr{Name: "to", Type: schema.Setting, Dim: calc.Temperature, HasDim: true, Role: schema.Value, Required: true, Doc: "The temperature."},
		schema.BoolAttr("cool", schema.Property, "It is cooled, not heated."),
	),
}
