package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// Covered reads what the bench could not reach.
var Covered = &rule.Rule{
	Name:     "access/covered",
	Severity: diag.Error,
	Finds:    "Work on something that a part or tool covers at that moment.",
	Why:      "A builder cannot get at it without taking apart what was just put together.",
	Remedy:   "Do the work before it is covered, or take off first what covers it.",
	Bad: `
part "body" {
  name     = "Pump body"
  features = ["bore"]
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
  covers  = [part.body.feature.bore]
}

procedure "close" {
  title = "Close the pump"

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore] # want "“Pump cover” covers it"
    criterion = "The bore shows no score."
    otherwise = "Ask the workshop for another body."
  }
}
`,
	Good: `
part "body" {
  name     = "Pump body"
  features = ["bore"]
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
  covers  = [part.body.feature.bore]
}

procedure "close" {
  title = "Close the pump"

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    otherwise = "Ask the workshop for another body."
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.Covered) {
			p.Breach(b, "Nobody can reach "+rule.CalledObject(b.Objects[0])+" here: "+rule.CalledObject(b.Objects[1])+" covers it.",
				wayOut(b, "Do this before %s, or take "+rule.CalledObject(b.Objects[1])+" off first."))
		}
	},
}
