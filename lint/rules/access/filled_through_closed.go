package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// FilledThroughClosed reads the fills and drains through what was closed.
var FilledThroughClosed = &rule.Rule{
	Name:     "access/filled-through-closed",
	Severity: diag.Error,
	Finds:    "A liquid that goes in or out through an opening that is closed.",
	Why:      "Nothing flows, or it runs over the bench.",
	Remedy:   "Open it first, or fill before it is closed.",
	Bad: `
part "tank" {
  name  = "Oil tank"
  ports = ["filler"]
}

part "cap" {
  name    = "Filler cap"
  sits_on = part.tank
  covers  = [part.tank.port.filler]
}

procedure "fill" {
  title = "Fill the tank"

  fit "cap" {
    title = "Screw the filler cap on"
    part  = part.cap
  }

  fill "oil" {
    title    = "Pour the oil in"
    on       = [part.tank]
    through  = part.tank.port.filler # want "“Filler cap” closes it"
    supplies = [supply.engine_oil]
    tools    = [tool.funnel]
    amount   = "2 L"
  }
}
`,
	Good: `
part "tank" {
  name  = "Oil tank"
  ports = ["filler"]
}

part "cap" {
  name    = "Filler cap"
  sits_on = part.tank
  covers  = [part.tank.port.filler]
}

procedure "fill" {
  title = "Fill the tank"

  fill "oil" {
    title    = "Pour the oil in"
    on       = [part.tank]
    through  = part.tank.port.filler
    supplies = [supply.engine_oil]
    tools    = [tool.funnel]
    amount   = "2 L"
  }

  fit "cap" {
    title = "Screw the filler cap on"
    part  = part.cap
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.FilledClosed) {
			closed := " is closed"
			if len(b.Objects) > 1 && b.Objects[1].Node != nil && b.Objects[1] != b.Objects[0] {
				closed = ": " + rule.CalledObject(b.Objects[1]) + " closes it"
			}
			p.Breach(b, "Nothing flows through "+rule.CalledObject(b.Objects[0])+closed+".")
		}
	},
}
