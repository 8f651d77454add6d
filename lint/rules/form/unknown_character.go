package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownCharacter is reported while the manual is read.
var UnknownCharacter = &rule.Rule{
	Name:     "form/unknown-character",
	Severity: diag.Error,
	Finds:    "A character that means nothing outside quotes, or the wrong sort of quote.",
	Why:      "What it stands for cannot be told.",
	Remedy:   "Use straight quotes, and put quantities and text between them.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = “Wait until the casting is as warm as the room” # want "curly quote"
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
