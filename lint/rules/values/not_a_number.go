package values

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NotANumber is reported while the manual is read.
var NotANumber = &rule.Rule{
	Name:     "values/not-a-number",
	Severity: diag.Error,
	Finds:    "Something in a formula that is no number: limits, a list, a word.",
	Why:      "Only numbers can be reckoned with.",
	Remedy:   "Say which part of the limits is meant, or take one value from the list.",
	Bad: `part "shaft" {
  name = "Shaft"
}

limit "journal" {
  name  = "Journal of the shaft"
  range = "19.98..20.00 mm"
  basis = "Drawing BK-040"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = limit.journal
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
    is        = measure.bush - limit.journal # want "Limits"
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
