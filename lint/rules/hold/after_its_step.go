package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// AfterItsStep reads the holds that stood behind what they guard.
var AfterItsStep = &rule.Rule{
	Name:     "hold/after-its-step",
	Severity: diag.Error,
	Finds:    "A hold that stands after the step that it guards.",
	Why:      "The step is done by the time anybody is asked.",
	Remedy:   "Put the hold before that step.",
	Bad: `
part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "close" {
  title = "Close the pump"

  inspect "seat" {
    title     = "Feel round the edge of the cover"
    on        = [part.cover]
    criterion = "The edge has no burr."
    otherwise = "Dress the edge with a file."
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  hold "cover" {
    title   = "Stop before the cover goes on"
    checks  = [inspect.seat]
    before  = fit.cover # want "“Put the cover on the body” is done already"
    release = "second person"
  }
}
`,
	Good: `
part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "close" {
  title = "Close the pump"

  inspect "seat" {
    title     = "Feel round the edge of the cover"
    on        = [part.cover]
    criterion = "The edge has no burr."
    otherwise = "Dress the edge with a file."
  }

  hold "cover" {
    title   = "Stop before the cover goes on"
    checks  = [inspect.seat]
    before  = fit.cover
    release = "second person"
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.HoldAfterItsStep) {
			p.Breach(b, "This hold comes too late: "+rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" done already.")
		}
	},
}
