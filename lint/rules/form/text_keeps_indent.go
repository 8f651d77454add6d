package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TextKeepsIndent is reported while the manual is read.
var TextKeepsIndent = &rule.Rule{
	Name:     "form/text-keeps-indent",
	Severity: diag.Doubt,
	Finds:    "A text opened by << instead of <<-.",
	Why:      "After << the indentation stays in the text, and indented text prints as a program.",
	Remedy:   "Write <<- instead.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    text  = <<EOT
      Lay a hand on the wall and one on the bench.
    EOT
  # want@-3 "stays in the text"
  }
}
`,
	Good: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    text  = <<-EOT
      Lay a hand on the wall and one on the bench.
    EOT
  }
}
`,
	Broken: true,
}
