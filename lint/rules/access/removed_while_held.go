package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RemovedWhileHeld reads the parts that were still held when they came off.
var RemovedWhileHeld = &rule.Rule{
	Name:     "access/removed-while-held",
	Severity: diag.Error,
	Finds:    "A part that comes off before the circlip, pin or part that holds it.",
	Why:      "A builder pulls against what holds it, and something breaks or flies off.",
	Remedy:   "Take off first what holds it.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

part "pulley" {
  name    = "Pulley"
  sits_on = part.shaft
  held_by = part.pin
}

part "pin" {
  name    = "Split pin"
  sits_on = part.shaft
}

procedure "try" {
  title = "Try the pulley"

  fit "pulley" {
    title = "Slide the pulley on the shaft"
    part  = part.pulley
  }

  fit "pin" {
    title = "Push the split pin through the shaft"
    part  = part.pin
  }

  remove "pulley" {
    title    = "Slide the pulley off"
    part     = part.pulley # want "“Split pin” still holds it"
    for_good = true
  }
}
`,
	Good: `
part "shaft" {
  name = "Shaft"
}

part "pulley" {
  name    = "Pulley"
  sits_on = part.shaft
  held_by = part.pin
}

part "pin" {
  name    = "Split pin"
  sits_on = part.shaft
}

procedure "try" {
  title = "Try the pulley"

  fit "pulley" {
    title = "Slide the pulley on the shaft"
    part  = part.pulley
  }

  fit "pin" {
    title = "Push the split pin through the shaft"
    part  = part.pin
  }

  remove "pin" {
    title    = "Pull the split pin out"
    part     = part.pin
    for_good = true
  }

  remove "pulley" {
    title    = "Slide the pulley off"
    part     = part.pulley
    for_good = true
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.RemovedHeld) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" cannot come off here: "+rule.CalledObject(b.Objects[1])+" still holds it.",
				rule.Remedy("Take "+rule.CalledObject(b.Objects[1])+" off first."))
		}
	},
}
