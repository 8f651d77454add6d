package order

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ProcedureLeftOut compares the manual's order with its procedures.
var ProcedureLeftOut = &rule.Rule{
	Name:     "order/procedure-left-out",
	Severity: diag.Error,
	Finds:    "A procedure that the manual's order does not name.",
	Why:      "It is not printed where it is needed, so a builder never does it.",
	Remedy:   "Name it in `order`, at the place where it is done.",
	Bad: `
manual "casting" {
  title    = "Casting: rest and size"
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

procedure "cool" { # want "stands in no order"
  title = "Let the core cool"

  wait "settle" {
    title = "Wait until the core is as warm as the room"
    for   = "1 h"
  }
}
`,
	Good: `
manual "casting" {
  title    = "Casting: rest and size"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest, procedure.cool]
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}

procedure "cool" {
  title = "Let the core cool"

  wait "settle" {
    title = "Wait until the core is as warm as the room"
    for   = "1 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		if !p.Has("order") {
			return // said already
		}
		for _, n := range p.Procedures[p.Ordered:] {
			p.Report(n.Name, "The procedure "+rule.Called(n)+" stands in no order.",
				rule.Remedy("Add procedure."+n.ID+" to the manual's order, at the place where it is done."),
				rule.Related(p.At("order"), "The order stands here."))
		}
	},
}
