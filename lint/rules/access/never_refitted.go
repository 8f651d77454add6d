package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NeverRefitted reads the parts that came off and were off at the end.
var NeverRefitted = &rule.Rule{
	Name:     "access/never-refitted",
	Severity: diag.Error,
	Finds:    "A part that is taken off and never put back.",
	Why:      "The machine is handed over without it.",
	Remedy:   "Fit it again, or say for_good = true where it is meant to stay off.",
	Bad: `
part "tank" {
  name  = "Oil tank"
  ports = ["filler"]
}

part "cap" {
  name     = "Filler cap"
  in_place = 1
  sits_on  = part.tank
  covers   = [part.tank.port.filler]
}

procedure "fill" {
  title = "Fill the tank"

  remove "cap" { # want "“Filler cap” is taken off here and never put back"
    title = "Screw the filler cap off"
    part  = part.cap
  }

  fill "oil" {
    title    = "Pour the oil in"
    on       = [part.tank]
    through  = part.tank.port.filler
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
  name     = "Filler cap"
  in_place = 1
  sits_on  = part.tank
  covers   = [part.tank.port.filler]
}

procedure "fill" {
  title = "Fill the tank"

  remove "cap" {
    title = "Screw the filler cap off"
    part  = part.cap
  }

  fill "oil" {
    title    = "Pour the oil in"
    on       = [part.tank]
    through  = part.tank.port.filler
    supplies = [supply.engine_oil]
    tools    = [tool.funnel]
    amount   = "2 L"
  }

  fit "cap" {
    title = "Screw the filler cap on again"
    part  = part.cap
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.NeverRefitted) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" taken off here and never put back.")
		}
	},
}
