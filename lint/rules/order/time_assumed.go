package order

import (
	"slices"
	"strconv"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// TimeAssumed reads the steps inside a running clock whose time had to be assumed.
var TimeAssumed = &rule.Rule{
	Name:     "order/time-assumed",
	Severity: diag.Advice,
	Finds:    "Steps that do not say how long they take while a clock runs.",
	Why:      "Whether the sealant is still fresh or the part still hot is judged by a guess.",
	Remedy:   "Give each of these steps a takes.",
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

  inspect "seat" { # want "“Look at the seat of the bearing” does not say how long it takes"
    title     = "Look at the seat of the bearing"
    on        = [part.housing.feature.seat]
    ppe       = [ppe.heat_gloves]
    criterion = "The seat is dry and has no burr."
    otherwise = "Wipe it dry, and dress the burr with a stone."
  }

  fit "bearing" {
    title  = "Drop the bearing into the hot housing"
    part   = part.bearing
    ppe    = [ppe.heat_gloves]
    after  = [heat.housing]
    within = "20 min"
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
    within = "20 min"
    takes  = "1 min"
  }

  wait "cold" {
    title = "Let the housing grow cold"
    for   = "3 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		var steps []*model.Step
		for _, t := range p.Traces {
			for _, act := range t.Assumed {
				if s := t.Acts[act].Step; !slices.Contains(steps, s) {
					steps = append(steps, s)
				}
			}
		}
		if len(steps) == 0 {
			return
		}
		var more []func(*diag.Finding)
		for _, s := range steps[1:min(len(steps), most)] {
			more = append(more, rule.Related(s.Name, "This one does not say so either."))
		}
		message := rule.Called(steps[0].Node) + " does not say how long it takes, and a clock is running"
		switch n := len(steps) - 1; {
		case n == 1:
			message += "; nor does one more"
		case n > 1:
			message += "; nor do " + strconv.Itoa(n) + " more"
		}
		takes := p.Threshold("default_takes")
		p.Report(steps[0].Name, message+".", append(more, rule.Reason("Each counts as "+takes.String()+
			", and whether the sealant is still fresh or the part still hot is judged by that."))...)
	},
}

// most is how many steps are pointed at.
const most = 10
