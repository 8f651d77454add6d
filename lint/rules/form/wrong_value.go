package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WrongValue is reported while the manual is read.
var WrongValue = &rule.Rule{
	Name:     "form/wrong-value",
	Severity: diag.Error,
	Finds:    "A value of another sort than the attribute takes.",
	Why:      "It cannot be printed, checked or worked out.",
	Remedy:   "Write the sort of value that the finding names.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title  = "Wait until the casting is as warm as the room"
    for    = "2 h"
    people = "two" # want "whole number"
  }
}
`,
	Good: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
`,
	Broken: true,
}
