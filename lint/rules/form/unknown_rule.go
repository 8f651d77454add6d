package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownRule: is reported when silences and severities are settled.
var UnknownRule = &rule.Rule{
	Name:     "form/unknown-rule",
	Severity: diag.Error,
	Finds:    "A silence or a house rule that names a rule that is not there, or one that cannot be changed.",
	Why:      "Nothing is silenced or changed.",
	Remedy:   "Write the rule's name as the finding gives it.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    # agreed units/comma: the foundry's drawing writes it so
    # want@-1 "no rule"
    for = "2 h"
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
