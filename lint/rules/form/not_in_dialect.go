package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NotInDialect is reported while the manual is read.
var NotInDialect = &rule.Rule{
	Name:     "form/not-in-dialect",
	Severity: diag.Error,
	Finds:    "Something that HCL can say and a manual cannot.",
	Why:      "A manual states what is; it does not generate itself.",
	Remedy:   "Write it out, or use one of the functions that fettle explain lists.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "25 h" % "24 h" # want "is not used in manuals"
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
