package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnclosedString is reported while the manual is read.
var UnclosedString = &rule.Rule{
	Name:     "form/unclosed-string",
	Severity: diag.Error,
	Finds:    "A text in quotes that does not end on its line.",
	Why:      "What follows would be read as part of the text.",
	Remedy:   "Close the text on the same line; for more lines write <<-EOT, the lines, and EOT on a line of its own.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room
    for   = "2 h"
    # want@-2 "not closed"
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
