package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownAttribute is reported while the manual is read.
var UnknownAttribute = &rule.Rule{
	Name:     "form/unknown-attribute",
	Severity: diag.Error,
	Finds:    "An attribute that a block of this kind does not have.",
	Why:      "What is written there reaches nobody.",
	Remedy:   "Correct the name, or take the line out.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title  = "Wait until the casting is as warm as the room"
    for    = "2 h"
    unitl  = "the casting is as warm as the room" # want "no attribute"
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
