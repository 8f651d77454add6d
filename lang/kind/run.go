package kind

import "fettle/lang/schema"

// Run turns or pressurises the machine.
var Run = &Kind{
	NeedsOn: true, Records: true, Judges: true, Critical: true,
	Does: []Effect{{Drives, "on"}},
	Block: judging(step("run",
		"Turns, fills, pressurises or powers the machine. By hand it asks nothing; any other way asks that what it proves is tight, locked, cured and accepted.",
		`run "first_start" {
  title     = "Start the engine"
  on        = [part.crankcase]
  by        = "power"
  criterion = "Oil pressure rises within 10 s."
}
`,
		schema.WordAttr("by", schema.Method, "What drives it.", "hand", "fluid", "pressure", "electric", "power").Must(),
		schema.TextAttr("criterion", schema.Judgement, "What must be seen, heard or felt."),
	)),
}
