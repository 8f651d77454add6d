package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NumberWithExponent is reported while the manual is read.
var NumberWithExponent = &rule.Rule{
	Name:     "form/number-with-exponent",
	Severity: diag.Error,
	Finds:    "A number written with an exponent.",
	Why:      "A builder does not read exponents, and a mistyped one is wrong a thousandfold.",
	Remedy:   "Write the number out, or choose another unit.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = 7.2e3 * "1 s" # want "exponent"
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
