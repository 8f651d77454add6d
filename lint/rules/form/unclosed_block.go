package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnclosedBlock is reported while the manual is read.
var UnclosedBlock = &rule.Rule{
	Name:     "form/unclosed-block",
	Severity: diag.Error,
	Finds:    "A block without its closing bracket.",
	Why:      "Everything after it would belong to this block.",
	Remedy:   "Write } on a line of its own, under the first letter of the block.",
	Bad: `procedure "rest" { # want "not closed"
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
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
