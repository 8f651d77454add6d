package kind

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Wait lets time pass.
var Wait = &Kind{
	Does: []Effect{{Waits, "title"}},
	Block: step("wait",
		"Lets time pass: a stated time, until what is named has cured or cooled, or until a distance or count.",
		`wait "cure" {
  title = "Let the sealant cure"
  until = [seal.flange]
}
`,
		schema.AmountAttr("for", schema.Duration, "How long.", calc.Time),
		schema.RefAttr("until", schema.Order, "The seals, coats and heats that must be done curing or cooling; or a distance or count in words.", "step").Or("*"),
	),
}
