package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// Syntax is reported while the manual is read.
var Syntax = &rule.Rule{
	Name:     "form/syntax",
	Severity: diag.Error,
	Finds:    "Something that is neither an attribute nor a block, or a value that cannot be read.",
	Why:      "What cannot be read is not checked and not printed.",
	Remedy:   "Write name = value, or a block: its kind, its label in quotes and {, its lines, and }.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = # want "A value is missing"
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
