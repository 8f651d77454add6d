package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// HyphenForRange is reported while the manual is read.
var HyphenForRange = &rule.Rule{
	Name:     "units/hyphen-for-range",
	Severity: diag.Error,
	Finds:    "A hyphen between the two ends of a range.",
	Why:      "A hyphen is a minus sign as well, so that 24-26 has two meanings.",
	Remedy:   "Write .. between the ends.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98-20.00 mm" # want "hyphen"
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
