package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ControlCharacter is reported while the manual is read.
var ControlCharacter = &rule.Rule{
	Name:     "form/control-character",
	Severity: diag.Error,
	Finds:    "A character that cannot be seen, printed or typed.",
	Why:      "What cannot be seen cannot be checked by a reader.",
	Remedy:   "Delete it.",
	Bad:      "procedure \"rest\" {\n  title = \"Let the casting rest\"\n\n  wait \"settle\" {\n    title = \"Wait until the casting is as warm\x00 as the room\" # want \"NUL\"\n    for   = \"2 h\"\n  }\n}\n",
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
