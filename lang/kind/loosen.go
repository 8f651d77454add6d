package kind

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Loosen slackens a fastening and leaves it on.
var Loosen = &Kind{
	Does: []Effect{{Slackens, "fastening"}},
	Block: step("loosen",
		"Slackens a fastening and leaves it on. It is no longer tight or locked, and a lock used once is spent.",
		`loosen "hub_nut" {
  title     = "Back the hub nut off"
  fastening = fastening.hub_nut
  by        = "1/2 turn"
}
`,
		schema.RefAttr("fastening", schema.Subject, "The fastening.", "fastening").Must(),
		schema.AmountAttr("by", schema.Value, "How far.", calc.Angle),
	),
}
