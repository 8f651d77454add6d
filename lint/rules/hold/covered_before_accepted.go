package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// CoveredBeforeAccepted reads what was covered before anybody accepted it.
var CoveredBeforeAccepted = &rule.Rule{
	Name:     "hold/covered-before-accepted",
	Severity: diag.Error,
	Finds:    "Something critical that is covered before it is accepted.",
	Why:      "Nobody can look at it any more, so it is taken on trust or everything comes off again.",
	Remedy:   "Accept it, and stop for the hold, before the part that covers it goes on.",
	Bad: bore + `
procedure "close" {
  title = "Close the pump"

  fit "cover" { # want "before “Look down the bore” accepts it"
    title = "Put the cover on the body"
    part  = part.cover
  }

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    critical  = true
    otherwise = "Ask the workshop for another body."
  }

  hold "bore" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.bore]
    release = "second person"
  }
}
`,
	Good: bore + `
procedure "close" {
  title = "Close the pump"

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    critical  = true
    otherwise = "Ask the workshop for another body."
  }

  hold "bore" {
    title   = "Stop before the bore is covered"
    checks  = [inspect.bore]
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
		for _, b := range p.Breaches(bench.CoveredUnaccepted) {
			p.Breach(b, "This covers "+rule.CalledObject(b.Objects[1])+" before "+rule.CalledObject(b.Objects[0])+" accepts it.")
		}
	},
}
