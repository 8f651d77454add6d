package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ChecksLater reads the holds that check what is not done yet.
var ChecksLater = &rule.Rule{
	Name:     "hold/checks-later",
	Severity: diag.Error,
	Finds:    "A hold that checks a step which is done only later.",
	Why:      "Whoever releases it has nothing to look at yet.",
	Remedy:   "Put the hold behind what it checks.",
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

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  hold "seat" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.seat] # want "“Feel round the joint of the cover” is done only later"
    release = "second person"
  }

  inspect "seat" {
    title     = "Feel round the joint of the cover"
    on        = [part.cover]
    criterion = "The cover sits flat all round."
    otherwise = "Take the cover off, and look for a chip under it."
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

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  inspect "seat" {
    title     = "Feel round the joint of the cover"
    on        = [part.cover]
    criterion = "The cover sits flat all round."
    otherwise = "Take the cover off, and look for a chip under it."
  }

  hold "seat" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.seat]
    release = "second person"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.HoldChecksLater) {
			p.Breach(b, "This hold checks something that is not there yet: "+rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" done only later.")
		}
	},
}
