package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RemovedNotOn reads what was to come off and was not on.
var RemovedNotOn = &rule.Rule{
	Name:     "access/removed-not-on",
	Severity: diag.Error,
	Finds:    "A part or tool that is taken off when it is not on.",
	Why:      "A builder looks for something to take off and doubts every step before.",
	Remedy:   "Take the step out, or fit the part before it.",
	Bad: `
part "bed" {
  name = "Bed plate"
}

part "stop" {
  name    = "Travel stop"
  sits_on = part.bed
}

procedure "stop" {
  title = "Set the travel stop"

  remove "stop" {
    title = "Lift the stop off"
    part  = part.stop # want "“Travel stop” cannot come off here: it is not on"
  }

  fit "stop" {
    title = "Set the stop on the bed"
    part  = part.stop
  }
}
`,
	Good: `
part "bed" {
  name = "Bed plate"
}

part "stop" {
  name     = "Travel stop"
  in_place = 1
  sits_on  = part.bed
}

procedure "stop" {
  title = "Set the travel stop"

  remove "stop" {
    title = "Lift the stop off"
    part  = part.stop
  }

  fit "stop" {
    title = "Set the stop on the bed"
    part  = part.stop
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.NotOn) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" cannot come off here: it is not on.")
		}
	},
}
