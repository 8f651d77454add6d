package form

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ExpressionTooLong is reported while the manual is read.
var ExpressionTooLong = &rule.Rule{
	Name:     "form/expression-too-long",
	Severity: diag.Error,
	Finds:    "A formula of more than 500 operators and steps.",
	Why:      "Nobody can check a formula of this length.",
	Remedy:   "Name parts of it with calculate steps.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "1 h"` + strings.Repeat(` + "1 s"`, 600) + ` # want "more than 500 operators"
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
