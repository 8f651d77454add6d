package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RepeatedAttribute is reported while the manual is read.
var RepeatedAttribute = &rule.Rule{
	Name:     "form/repeated-attribute",
	Severity: diag.Error,
	Finds:    "An attribute that is set twice in one block.",
	Why:      "Which of the two holds cannot be told.",
	Remedy:   "Keep one. An attribute that takes one thing takes a list too.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    for   = "3 h" # want "second time"
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
