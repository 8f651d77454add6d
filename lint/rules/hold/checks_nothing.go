package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ChecksNothing reads the holds that check nothing.
var ChecksNothing = &rule.Rule{
	Name:     "hold/checks-nothing",
	Severity: diag.Error,
	Finds:    "A hold that checks nothing.",
	Why:      "Whoever releases it signs for nothing in particular.",
	Remedy:   "Name in checks the readings, torques and inspections that must be accepted by then.",
	Bad: bore + `
procedure "close" {
  title = "Close the pump"

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    otherwise = "Ask the workshop for another body."
  }

  hold "bore" { # want "This hold checks nothing"
    title   = "Stop before the bore is covered"
    before  = fit.cover
    release = "second person"
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
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
		for _, b := range p.Breaches(bench.HoldChecksNothing) {
			p.Breach(b, "This hold checks nothing.")
		}
	},
}
