package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ChecksLeftOut reads the holds that check what an option leaves out.
var ChecksLeftOut = &rule.Rule{
	Name:     "hold/checks-left-out",
	Severity: diag.Error,
	Finds:    "A hold that checks a step which an option leaves out.",
	Why:      "With that option the builder asks for a release, and there is nothing to release.",
	Remedy:   "Give the hold the same when, or let it check something that is always done.",
	Bad: `
option "seal" {
  name    = "Seal"
  choices = ["lip", "packing"]
}

part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "close" {
  title = "Close the pump"

  inspect "lip" {
    title     = "Look at the lip of the seal"
    on        = [part.cover]
    when      = option.seal == "lip"
    criterion = "The lip is whole and points inwards."
    otherwise = "Ask the workshop for another cover."
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  hold "cover" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.lip] # want "“Look at the lip of the seal”, which is left out"
    release = "second person"
  }
}
`,
	Good: `
option "seal" {
  name    = "Seal"
  choices = ["lip", "packing"]
}

part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "close" {
  title = "Close the pump"

  inspect "lip" {
    title     = "Look at the lip of the seal"
    on        = [part.cover]
    when      = option.seal == "lip"
    criterion = "The lip is whole and points inwards."
    otherwise = "Ask the workshop for another cover."
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  hold "cover" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.lip]
    when    = option.seal == "lip"
    release = "second person"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.HoldChecksAbsent) {
			p.Breach(b, "This hold checks "+rule.CalledObject(b.Objects[0])+", which is left out.")
		}
	},
}
