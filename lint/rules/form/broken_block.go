package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// BrokenBlock is reported while the manual is read.
var BrokenBlock = &rule.Rule{
	Name:     "form/broken-block",
	Severity: diag.Error,
	Finds:    "A block whose first line cannot be read.",
	Why:      "A block that cannot be read is left out of the manual.",
	Remedy:   "Begin a block with its kind, its label in quotes and {, all on one line.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle", { # want "must stand here"
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
