package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// StrayAttribute is reported while the manual is read.
var StrayAttribute = &rule.Rule{
	Name:     "form/stray-attribute",
	Severity: diag.Error,
	Finds:    "An attribute outside every block.",
	Why:      "Nothing says what it belongs to.",
	Remedy:   "Move it into the block that it describes.",
	Bad: `supplier = "Beck Turbine Workshop" # want "outside every block"

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
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
