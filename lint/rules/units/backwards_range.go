package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// BackwardsRange is reported while the manual is read.
var BackwardsRange = &rule.Rule{
	Name:     "units/backwards-range",
	Severity: diag.Error,
	Finds:    "A range whose low end stands behind its high end, or that holds one value only.",
	Why:      "No reading lies in it, so every one would be refused.",
	Remedy:   "Write the smaller end first, and check both numbers.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "20.00..19.98 mm" # want "runs from 20.00 down to 19.98"
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
