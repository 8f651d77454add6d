package kind

import "fettle/lang/schema"

// Lock locks a fastening.
var Lock = &Kind{
	Does: []Effect{{Locks, "fastening"}},
	Block: step("lock",
		"Locks a fastening: fits the locking device, or sets one that is already on.",
		`lock "hub_nut" {
  title     = "Bend the tab up against the nut"
  fastening = fastening.hub_nut
  by        = part.tab_washer
}
`,
		schema.RefAttr("fastening", schema.Subject, "The fastening.", "fastening").Must(),
		schema.RefAttr("by", schema.Method, "The device, where not the fastening's own.", "part", "supply").Or("drag"),
	),
}
