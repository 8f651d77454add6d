package values

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// CircularCalculation is reported while the manual is read.
var CircularCalculation = &rule.Rule{
	Name:     "values/circular-calculation",
	Severity: diag.Error,
	Finds:    "A value that is worked out from itself.",
	Why:      "Nothing can be worked out: each value waits for another.",
	Remedy:   "Break the circle: one of the values must be measured.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  calculate "wear" {
    title = "Work out the wear" # want@-1 "worked out from itself"
    is    = "20.00 mm" - calculate.left
  }

  calculate "left" {
    title = "Work out what is left"
    is    = measure.journal - calculate.wear
  }
}
`,
	Good: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  measure "bush" {
    title     = "Measure the bore of the bush"
    on        = [part.shaft]
    tools     = [tool.bore_gauge_50]
    accept    = "20.01..20.05 mm"
    otherwise = "Stop. Ask the workshop for another bush."
  }

  calculate "clearance" {
    title     = "Work out the clearance"
    is        = measure.bush - measure.journal
    accept    = "0.02..0.06 mm"
    otherwise = "Stop. Ask the workshop for another bush."
  }

  example "middle of both" {
    readings = { measure.journal = "19.99 mm", measure.bush = "20.03 mm" }
    gives    = { calculate.clearance = "0.04 mm" }
  }
}
`,
	Broken: true,
}
