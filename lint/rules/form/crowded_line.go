package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// CrowdedLine is reported while the manual is read.
var CrowdedLine = &rule.Rule{
	Name:     "form/crowded-line",
	Severity: diag.Error,
	Finds:    "Two things on one line of which each needs a line of its own.",
	Why:      "What follows on the next lines would be lost.",
	Remedy:   "Give {, each line of the block, and } a line of their own.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"  for = "2 h" # want "must end"
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
