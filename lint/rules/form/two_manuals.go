package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TwoManuals is reported while the manual is read.
var TwoManuals = &rule.Rule{
	Name:     "form/two-manuals",
	Severity: diag.Error,
	Finds:    "A second manual block in one folder.",
	Why:      "Nobody can tell which title, revision and order hold.",
	Remedy:   "Keep one, and move the other with its procedures into a folder of its own.",
	Bad: `manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest]
}

manual "casting_again" { # want "second"
  title    = "Casting: rest again"
  units    = "metric"
  revision = "A"
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
