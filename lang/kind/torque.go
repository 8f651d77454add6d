package kind

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Torque tightens a fastening.
var Torque = &Kind{
	Critical: true,
	Does:     []Effect{{Tightens, "fastening"}},
	Block: step("torque",
		"Tightens a fastening to its torque, in its stages and pattern.",
		`torque "cover" {
  title     = "Tighten the cover bolts"
  fastening = fastening.cover_bolts
  tools     = [tool.torque_wrench, tool.socket_13]
}
`,
		schema.RefAttr("fastening", schema.Subject, "The fastening.", "fastening").Must(),
		schema.SettingAttr("to", schema.Value, "Another torque than the fastening's; `why` says why.", calc.Torque),
		schema.WordAttr("from", schema.State, "How the fastening is found.", "hand", "loosened", "tight").By("hand"),
		schema.RefAttr("held_by", schema.Method, "What or who keeps the part from turning.", "tool", "part").Or("second person"),
		schema.BoolAttr("turning", schema.Method, "The part is turned while it is tightened."),
		schema.BoolAttr("critical", schema.Judgement, "Someone may be hurt if it is wrong."),
	),
}
