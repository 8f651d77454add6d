package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TwoSystems is reported while the manual is read.
var TwoSystems = &rule.Rule{
	Name:     "units/two-systems",
	Severity: diag.Error,
	Finds:    "A range or tolerance whose two numbers belong to two systems of units.",
	Why:      "A builder has one gauge in hand, and half of this is not on it.",
	Remedy:   "Give both in one unit; fettle shows the other system beside it.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98 mm..0.788 in" # want "two systems"
    otherwise = "Stop. Ask the workshop for another shaft."
  }
}
`,
	Good: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }
}
`,
	Broken: true,
}
