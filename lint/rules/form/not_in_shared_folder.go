package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NotInSharedFolder is reported while the manual is read.
var NotInSharedFolder = &rule.Rule{
	Name:     "form/not-in-shared-folder",
	Severity: diag.Error,
	Finds:    "A block in a shared folder that only a manual can hold.",
	Why:      "Several manuals draw on the folder, and each has its own.",
	Remedy:   "Move it into the manual's folder.",
	Bad: `-- parts/parts.proc.hcl --
tool "rule" {
  name = "Steel rule, 300 mm"
  kind = "steel rule"
}

option "rotation" { # want "cannot hold"
  name    = "Direction of rotation"
  choices = ["left", "right"]
}
-- m/rest.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  shares   = ["../parts"]
  order    = [procedure.rest]
}

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
