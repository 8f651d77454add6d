package form

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NestedTooDeep is reported while the manual is read.
var NestedTooDeep = &rule.Rule{
	Name:     "form/nested-too-deep",
	Severity: diag.Error,
	Finds:    "Brackets nested more than 200 deep.",
	Why:      "Nothing readable nests so deeply; such a file is broken or made to do harm.",
	Remedy:   "Look for brackets that are opened and not closed.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = ` + strings.Repeat("(", 201) + `"2 h"` + strings.Repeat(")", 201) + ` # want "More than 200 brackets"
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
