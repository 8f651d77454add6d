package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// BareNumber is reported while the manual is read.
var BareNumber = &rule.Rule{
	Name:     "units/bare-number",
	Severity: diag.Error,
	Finds:    "A number without a unit where one is needed.",
	Why:      "A builder would have to guess the unit.",
	Remedy:   "Write the unit with the number.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "20" # want "no unit"
  }
}
`,
	Good: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "20 min"
  }
}
`,
	Broken: true,
}
