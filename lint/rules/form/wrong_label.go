package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WrongLabel is reported while the manual is read.
var WrongLabel = &rule.Rule{
	Name:     "form/wrong-label",
	Severity: diag.Error,
	Finds:    "A block without the name it needs, with more than one, or with one that cannot be an address.",
	Why:      "Nothing can refer to it, and a later revision cannot find it again.",
	Remedy:   "Give it one name of letters, digits and underscores, a letter first.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle-down" { # want "cannot be a name"
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
