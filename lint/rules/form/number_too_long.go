package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NumberTooLong is reported while the manual is read.
var NumberTooLong = &rule.Rule{
	Name:     "form/number-too-long",
	Severity: diag.Error,
	Finds:    "A number of more than 40 digits.",
	Why:      "No measurement has so many digits.",
	Remedy:   "Round the number to what can be measured.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = 2.00000000000000000000000000000000000000001 * "1 h" # want "40 digits"
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
