package order

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ProcedureTwice is reported while the manual is read.
var ProcedureTwice = &rule.Rule{
	Name:     "order/procedure-twice",
	Severity: diag.Error,
	Finds:    "A procedure that stands in the manual's order twice.",
	Why:      "A procedure is done once; what it fits is on when it comes up again.",
	Remedy:   "Take one of them out, or write a second procedure.",
	Broken:   true,
	Bad: `
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest, procedure.rest] # want "twice"
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
`,
	Good: `
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
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
}
