package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TrialAsFinal reads the work for good that rested on a trial fit.
var TrialAsFinal = &rule.Rule{
	Name:     "access/trial-as-final",
	Severity: diag.Error,
	Finds:    "Work for good that rests on something fitted for a trial.",
	Why:      "What was left out for the trial is still missing underneath, and stays missing.",
	Remedy:   "Take the trial fit off and fit it for good before this step, or make this step part of the trial.",
	Bad: `
part "body" {
  name = "Valve body"
}

part "bonnet" {
  name    = "Bonnet"
  sits_on = part.body
}

part "lever" {
  name    = "Lever"
  sits_on = part.bonnet
}

procedure "bonnet" {
  title = "Fit bonnet and lever"

  fit "try_bonnet" {
    title = "Set the bonnet on for a trial"
    part  = part.bonnet
    trial = true
  }

  fit "lever" {
    title = "Slip the lever onto the bonnet"
    part  = part.lever # want "“Bonnet” is on for a trial only"
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

part "lever" {
  name    = "Lever"
  sits_on = part.bonnet
}

procedure "bonnet" {
  title = "Fit bonnet and lever"

  fit "try_bonnet" {
    title = "Set the bonnet on for a trial"
    part  = part.bonnet
    trial = true
  }

  remove "bonnet" {
    title = "Lift the bonnet off"
    part  = part.bonnet
  }

  fit "bonnet" {
    title = "Set the bonnet on for good"
    part  = part.bonnet
  }

  fit "lever" {
    title = "Slip the lever onto the bonnet"
    part  = part.lever
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.TrialAsFinal) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" on for a trial only, and this step builds on it for good.")
		}
	},
}
