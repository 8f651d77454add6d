package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ChainedComparison is reported while the manual is read.
var ChainedComparison = &rule.Rule{
	Name:     "form/chained-comparison",
	Severity: diag.Error,
	Finds:    "Two comparisons in a row, such as a < b < c.",
	Why:      "The condition does not say what it seems to say.",
	Remedy:   "Write each comparison on its own and join them by &&, or use within(value, limit).",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98 mm" < measure.journal < "20.00 mm" # want "row"
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
