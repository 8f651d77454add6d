package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TextNotIndented is reported while the manual is read.
var TextNotIndented = &rule.Rule{
	Name:     "form/text-not-indented",
	Severity: diag.Doubt,
	Finds:    "A text of several lines that stands further out than the line that opens it.",
	Why:      "Such a text hides a closing mark that was forgotten.",
	Remedy:   "Indent the text by two more blanks than the line that opens it; they are taken off again.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    text  = <<-EOT
Lay a hand on the wall and one on the bench.
    EOT
  # want@-3 "further out"
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
