package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownUnit is reported while the manual is read.
var UnknownUnit = &rule.Rule{
	Name:     "units/unknown-unit",
	Severity: diag.Error,
	Finds:    "A unit that is not known.",
	Why:      "A number whose unit nobody knows can be neither checked nor converted.",
	Remedy:   "Write a unit of the trade; fettle explain lists them.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mn" # want "not a unit"
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
