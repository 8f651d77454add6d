package kind

import "fettle/lang/schema"

// Fit joins a part to what it sits on, starts a fastening by hand, or puts a tool on.
var Fit = &Kind{
	Does: []Effect{{Joins, "part"}, {Starts, "fastening"}, {PutsOn, "tool"}},
	Block: step("fit",
		"Puts a part on what it sits on, starts all fasteners of a fastening by hand, or puts on a tool that stays.",
		`fit "cover" {
  title  = "Put the cover on the housing"
  part   = part.cover
  facing = "Drain hole down"
}
`,
		schema.RefAttr("part", schema.Subject, "The part, or the pack that was chosen.", "part", "pack"),
		schema.RefAttr("fastening", schema.Subject, "The fastening: all its fasteners, started by hand.", "fastening"),
		schema.RefAttr("tool", schema.Subject, "The tool that stays on.", "tool"),
		schema.CountAttr("quantity", schema.Value, "How many of them, where not all."),
		schema.TextAttr("facing", schema.Instruction, "Which way round it goes."),
		schema.RefAttr("align", schema.Guide, "The marks that must line up.", "mark"),
		schema.BoolAttr("trial", schema.Property, "A trial fit: it comes off again."),
		schema.RefAttr("without", schema.Property, "Parts left out on purpose.", "part"),
	),
}
