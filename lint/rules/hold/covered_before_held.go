package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// CoveredBeforeHeld reads what was covered when it was accepted and no hold had checked it.
var CoveredBeforeHeld = &rule.Rule{
	Name:     "hold/covered-before-held",
	Severity: diag.Error,
	Finds:    "Something critical that is covered after it is accepted and before a hold has checked it.",
	Why:      "The one who did the work is the only one who ever saw it.",
	Remedy:   "Put a hold that checks it before the part that covers it goes on.",
	Bad: bore + `
procedure "close" {
  title = "Close the pump"

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    critical  = true
    otherwise = "Ask the workshop for another body."
  }

  fit "cover" { # want "before a hold has checked “Look down the bore”"
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
		for _, b := range p.Breaches(bench.CoveredUnheld) {
			p.Breach(b, "This covers "+rule.CalledObject(b.Objects[1])+" before a hold has checked "+rule.CalledObject(b.Objects[0])+".")
		}
	},
}
