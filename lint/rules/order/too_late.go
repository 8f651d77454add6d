package order

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TooLate reads the steps that began when their time was over.
var TooLate = &rule.Rule{
	Name:     "order/too-late",
	Severity: diag.Error,
	Finds:    "More time between two steps than `within` allows.",
	Why:      "The part is cold, the primer dry or the paste skinned over by the time the builder comes to it.",
	Remedy:   "Move the steps between them, shorten them, or allow more time.",
	Bad: `
part "housing" {
  name     = "Housing"
  features = ["seat"]
}

part "bearing" {
  name    = "Bearing"
  sits_on = part.housing
}

procedure "bearing" {
  title = "Drop the bearing in"

  heat "housing" {
    title = "Warm the housing in the oven"
    on    = [part.housing]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "100 °C"
    takes = "1 h"
  }

  inspect "seat" {
    title     = "Look at the seat of the bearing"
    on        = [part.housing.feature.seat]
    ppe       = [ppe.heat_gloves]
    criterion = "The seat is dry and has no burr."
    takes     = "5 min"
    otherwise = "Wipe it dry, and dress the burr with a stone."
  }

  fit "bearing" {
    title  = "Drop the bearing into the hot housing"
    part   = part.bearing
    ppe    = [ppe.heat_gloves]
    after  = [heat.housing]
    within = "2 min" # want "begins 5 min after “Warm the housing in the oven”"
    takes  = "1 min"
  }

  wait "cold" {
    title = "Let the housing grow cold"
    for   = "3 h"
  }
}
`,
	Good: `
part "housing" {
  name     = "Housing"
  features = ["seat"]
}

part "bearing" {
  name    = "Bearing"
  sits_on = part.housing
}

procedure "bearing" {
  title = "Drop the bearing in"

  heat "housing" {
    title = "Warm the housing in the oven"
    on    = [part.housing]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "100 °C"
    takes = "1 h"
  }

  inspect "seat" {
    title     = "Look at the seat of the bearing"
    on        = [part.housing.feature.seat]
    ppe       = [ppe.heat_gloves]
    criterion = "The seat is dry and has no burr."
    takes     = "1 min"
    otherwise = "Wipe it dry, and dress the burr with a stone."
  }

  fit "bearing" {
    title  = "Drop the bearing into the hot housing"
    part   = part.bearing
    ppe    = [ppe.heat_gloves]
    after  = [heat.housing]
    within = "2 min"
    takes  = "1 min"
  }

  wait "cold" {
    title = "Let the housing grow cold"
    for   = "3 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.TooLate) {
			p.Breach(b, "This begins "+rule.Lasting(b.Got)+" after "+rule.CalledObject(b.Objects[0])+"; no more than "+rule.Lasting(b.Want)+" are allowed.")
		}
	},
}
