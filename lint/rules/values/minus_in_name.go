package values

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MinusInName is reported while the manual is read.
var MinusInName = &rule.Rule{
	Name:     "values/minus-in-name",
	Severity: diag.Error,
	Finds:    "Two names joined by a minus sign that was meant as a subtraction.",
	Why:      "A hyphen without spaces belongs to the name, so nothing is subtracted.",
	Remedy:   "Put spaces round the minus.",
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
    is        = measure.bush-measure.journal # want "read as one name"
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
