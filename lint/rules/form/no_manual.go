package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NoManual is reported while the manual is read.
var NoManual = &rule.Rule{
	Name:     "form/no-manual",
	Severity: diag.Error,
	Finds:    "A folder without a manual block.",
	Why:      "Without it nobody knows the title, the revision or the order of the work.",
	Remedy:   "Write a manual block with title, units, revision and order.",
	Bad: `-- m/rest.proc.hcl --
# want "block stands in this folder"
procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
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
