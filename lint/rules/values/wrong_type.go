package values

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WrongType is reported while the manual is read.
var WrongType = &rule.Rule{
	Name:     "values/wrong-type",
	Severity: diag.Error,
	Finds:    "A formula that asks a question of something that cannot answer it, or gives two sorts of result.",
	Why:      "What uses the result must know what it gets.",
	Remedy:   "Compare the value with something, or make both branches give the same.",
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

  measure "bush" {
    title     = "Measure the bore of the bush"
    on        = [part.shaft]
    tools     = [tool.bore_gauge_50]
    accept    = "20.01..20.05 mm"
    otherwise = "Stop. Ask the workshop for another bush."
  }

  calculate "clearance" {
    title     = "Work out the clearance"
    is        = measure.bush ? measure.bush - measure.journal : "0 mm" # want "condition is needed"
    accept    = "0.02..0.06 mm"
    otherwise = "Stop. Ask the workshop for another bush."
  }

  example "middle of both" {
    readings = { measure.journal = "19.99 mm", measure.bush = "20.03 mm" }
    gives    = { calculate.clearance = "0.04 mm" }
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
