package form

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TextTooLong is reported while the manual is read.
var TextTooLong = &rule.Rule{
	Name:     "form/text-too-long",
	Severity: diag.Error,
	Finds:    "A text of more than 500 lines.",
	Why:      "No builder reads so long a text beside the machine.",
	Remedy:   "Divide the step, or move the text to a document that a media block names.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    text  = <<-EOT
` + strings.Repeat("      Wait.\n", 501) + `
    EOT
  # want@-3 "more than 500 lines"
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
