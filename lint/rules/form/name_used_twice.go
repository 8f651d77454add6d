package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NameUsedTwice is reported while the manual is read.
var NameUsedTwice = &rule.Rule{
	Name:     "form/name-used-twice",
	Severity: diag.Error,
	Finds:    "Two things under one name.",
	Why:      "Nobody can tell which one an address means.",
	Remedy:   "Give one of them another name.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }

  wait "settle" { # want "declared twice"
    title = "Wait again"
    for   = "1 h"
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
