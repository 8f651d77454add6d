package order

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WaitsForLater reads the waits for what was not begun yet.
var WaitsForLater = &rule.Rule{
	Name:     "order/waits-for-later",
	Severity: diag.Error,
	Finds:    "A wait for a cure or a cooling that begins only later.",
	Why:      "There is nothing to wait for yet, and nobody waits when there is.",
	Remedy:   "Put the wait behind the step that it waits for.",
	Bad: `
part "hub" {
  name = "Hub"
}

procedure "hub" {
  title = "Warm the hub and look at it"

  wait "cold" {
    title = "Let the hub grow cold"
    until = [heat.hub] # want "“Warm the hub in the oven”, which is done only later"
    takes = "2 h"
  }

  heat "hub" {
    title = "Warm the hub in the oven"
    on    = [part.hub]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "100 °C"
    takes = "1 h"
  }
}
`,
	Good: `
part "hub" {
  name = "Hub"
}

procedure "hub" {
  title = "Warm the hub and look at it"

  heat "hub" {
    title = "Warm the hub in the oven"
    on    = [part.hub]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "100 °C"
    takes = "1 h"
  }

  wait "cold" {
    title = "Let the hub grow cold"
    until = [heat.hub]
    takes = "2 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.WaitsForLater) {
			p.Breach(b, "This wait is for "+rule.CalledObject(b.Objects[0])+", which is done only later.")
		}
	},
}
