package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WrongDimension is reported while the manual is read.
var WrongDimension = &rule.Rule{
	Name:     "units/wrong-dimension",
	Severity: diag.Error,
	Finds:    "A quantity of another sort than the place takes: a torque in mm.",
	Why:      "The number would be used for something that it does not measure.",
	Remedy:   "Check what the value is, and its unit.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "20 mm" # want "a time is wanted"
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
