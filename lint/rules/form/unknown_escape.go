package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownEscape is reported while the manual is read.
var UnknownEscape = &rule.Rule{
	Name:     "form/unknown-escape",
	Severity: diag.Error,
	Finds:    "A backslash before a character that needs none.",
	Why:      "The character that was meant is unknown.",
	Remedy:   "Write two backslashes for one, \\\" for a quote, and $${ for a literal ${.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the \hall" # want "backslash"
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
