package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// AgreedOnNothing: is reported when silences are settled.
var AgreedOnNothing = &rule.Rule{
	Name:     "form/agreed-on-nothing",
	Severity: diag.Advice,
	Finds:    "A comment that agrees on a finding where nothing is found.",
	Why:      "It would hide the fault when it comes back.",
	Remedy:   "Take the comment out.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    # agreed units/decimal-comma: the drawing says so
    # want@-1 "silences nothing"
    for = "2.5 h"
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
