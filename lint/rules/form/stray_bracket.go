package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// StrayBracket is reported while the manual is read.
var StrayBracket = &rule.Rule{
	Name:     "form/stray-bracket",
	Severity: diag.Error,
	Finds:    "A closing bracket that closes nothing.",
	Why:      "A block ends too early, and what follows is not where it seems to be.",
	Remedy:   "Take the bracket out, or open what it should close.",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}

} # want "closes nothing"
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
