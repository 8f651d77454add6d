package values

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WrongArguments is reported while the manual is read.
var WrongArguments = &rule.Rule{
	Name:     "values/wrong-arguments",
	Severity: diag.Error,
	Finds:    "A function with too few, too many or the wrong sort of arguments.",
	Why:      "It cannot be worked out from these.",
	Remedy:   "Write the arguments as fettle explain shows them.",
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
    is        = abs(measure.bush - measure.journal, 2) # want "no more than one argument"
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
    is        = abs(measure.bush - measure.journal)
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
