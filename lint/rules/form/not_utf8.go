package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NotUtf8 is reported while the manual is read.
var NotUtf8 = &rule.Rule{
	Name:     "form/not-utf8",
	Severity: diag.Error,
	Finds:    "Bytes that are not UTF-8 text.",
	Why:      "Characters would be printed wrong, a degree sign or a ± among them.",
	Remedy:   "Save the file as UTF-8.",
	Bad:      "procedure \"rest\" {\n  title = \"Let the casting rest\"\n\n  wait \"settle\" {\n    title = \"Wait until the casting is as warm as the room \xb1\" # want \"UTF-8\"\n    for   = \"2 h\"\n  }\n}\n",
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
