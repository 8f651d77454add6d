package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TrialNeverUndone reads the trial fits that were on at the end.
var TrialNeverUndone = &rule.Rule{
	Name:     "access/trial-never-undone",
	Severity: diag.Error,
	Finds:    "A trial fit that no step takes off again.",
	Why:      "The machine is handed over with a part that was only tried: no gasket under it, no lock on it.",
	Remedy:   "Take it off with a remove step, then fit it for good.",
	Bad: `
part "body" {
  name = "Valve body"
}

part "bonnet" {
  name    = "Bonnet"
  sits_on = part.body
}

procedure "try" {
  title = "Try the bonnet"

  fit "bonnet" { # want "“Bonnet” is fitted for a trial here and never taken off"
    title = "Set the bonnet on for a trial"
    part  = part.bonnet
    trial = true
  }

  inspect "rock" {
    title     = "Rock the bonnet on its seat"
    on        = [part.bonnet]
    criterion = "It does not rock."
    otherwise = "Dress the seat with a file, and try again."
  }
}
`,
	Good: `
part "body" {
  name = "Valve body"
}

part "bonnet" {
  name    = "Bonnet"
  sits_on = part.body
}

procedure "try" {
  title = "Try the bonnet, then fit it"

  fit "try_bonnet" {
    title = "Set the bonnet on for a trial"
    part  = part.bonnet
    trial = true
  }

  inspect "rock" {
    title     = "Rock the bonnet on its seat"
    on        = [part.bonnet]
    criterion = "It does not rock."
    otherwise = "Dress the seat with a file, and try again."
  }

  remove "bonnet" {
    title = "Lift the bonnet off"
    part  = part.bonnet
  }

  fit "bonnet" {
    title = "Set the bonnet on for good"
    part  = part.bonnet
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.TrialNeverUndone) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" fitted for a trial here and never taken off again.")
		}
	},
}
