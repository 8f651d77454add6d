package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// AgreedWithoutReason: is reported when silences are settled.
var AgreedWithoutReason = &rule.Rule{
	Name:     "form/agreed-without-reason",
	Severity: diag.Error,
	Finds:    "A comment that agrees on a finding and does not say why.",
	Why:      "The next reader cannot tell whether the reason still holds, so nothing is silenced.",
	Remedy:   "Write the reason after a colon.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    # agreed units/decimal-comma
    # want@-1 "gives no reason"
    for = "2,5 h" # want units/decimal-comma "comma"
  }
}
`,
	Good: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    # agreed units/decimal-comma: the foundry's drawing writes it so
    for = "2,5 h"
  }
}
`,
	Broken: true,
}
