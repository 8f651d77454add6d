package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnreadableQuantity is reported while the manual is read.
var UnreadableQuantity = &rule.Rule{
	Name:     "units/unreadable-quantity",
	Severity: diag.Error,
	Finds:    "A text that should be a quantity and is not.",
	Why:      "The builder would be told no number.",
	Remedy:   "Write a number and its unit, such as 24 N·m, 0.08..0.14 mm or max 0.05 mm.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "about 20 mm" # want "how far off"
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
