package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownBlock is reported while the manual is read.
var UnknownBlock = &rule.Rule{
	Name:     "form/unknown-block",
	Severity: diag.Error,
	Finds:    "A kind of block that does not exist, or that cannot stand where it stands.",
	Why:      "What stands in it is not read.",
	Remedy:   "Correct the name, or move the block to where it belongs.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wiat "settle" { # want "no kind of step called"
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
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
