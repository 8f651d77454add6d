package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnclosedBracket is reported while the manual is read.
var UnclosedBracket = &rule.Rule{
	Name:     "form/unclosed-bracket",
	Severity: diag.Error,
	Finds:    "A list, map, function or pair of brackets that is not closed, or whose members are not separated.",
	Why:      "What follows would be read as part of this value.",
	Remedy:   "Close it, and separate its members by commas.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25 tool.straight_edge] # want "comma"
    accept    = "19.98..20.00 mm"
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
