package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MissingAttribute is reported while the manual is read.
var MissingAttribute = &rule.Rule{
	Name:     "form/missing-attribute",
	Severity: diag.Error,
	Finds:    "A block without an attribute that every block of its kind has.",
	Why:      "What it should say is missing on every page that is made from it.",
	Remedy:   "Add the attribute.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" { # want "has no"
    for = "2 h"
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
