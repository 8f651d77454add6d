package kind

import "fettle/lang/schema"

// Remove takes a part, a fastening or a tool off.
var Remove = &Kind{
	Does: []Effect{{Opens, "fastening"}, {Takes, "part"}, {PutsAway, "tool"}},
	Block: step("remove",
		"Takes a part, a fastening or a tool off. What it covered can be reached again; what is used once is spent.",
		`remove "cover" {
  title = "Lift the cover off again"
  part  = part.cover
}
`,
		schema.RefAttr("part", schema.Subject, "The part that comes off, with all it carries.", "part", "pack"),
		schema.RefAttr("fastening", schema.Subject, "The fastening that comes out.", "fastening"),
		schema.RefAttr("tool", schema.Subject, "The tool that comes off.", "tool"),
		schema.CountAttr("quantity", schema.Value, "How many of them, where not all."),
		schema.BoolAttr("for_good", schema.Property, "It does not go back."),
	),
}
