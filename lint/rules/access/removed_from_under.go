package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RemovedFromUnder reads the parts that something lay on when they came off.
var RemovedFromUnder = &rule.Rule{
	Name:     "access/removed-from-under",
	Severity: diag.Error,
	Finds:    "A part that comes off while another part that stays lies on it or over it.",
	Why:      "It cannot be pulled out from under the other, or the other drops.",
	Remedy:   "Take off first what lies over it.",
	Bad: `
part "bed" {
  name = "Lathe bed"
}

part "shim" {
  name    = "Packing plate"
  sits_on = part.bed
}

part "headstock" {
  name    = "Headstock"
  sits_on = [part.shim, part.bed]
}

procedure "set" {
  title = "Set the headstock"

  fit "shim" {
    title = "Lay the packing plate on the bed"
    part  = part.shim
  }

  fit "headstock" {
    title = "Set the headstock on the plate"
    part  = part.headstock
  }

  remove "shim" {
    title    = "Pull the packing plate out"
    part     = part.shim # want "“Headstock” still lies on it"
    for_good = true
  }
}
`,
	Good: `
part "bed" {
  name = "Lathe bed"
}

part "shim" {
  name    = "Packing plate"
  sits_on = part.bed
}

part "headstock" {
  name    = "Headstock"
  sits_on = part.bed
}

procedure "set" {
  title = "Set the headstock"

  fit "shim" {
    title = "Lay the packing plate on the bed"
    part  = part.shim
  }

  fit "headstock" {
    title = "Set the headstock on the bed, against the plate"
    part  = part.headstock
  }

  remove "shim" {
    title    = "Lift the packing plate off"
    part     = part.shim
    for_good = true
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.RemovedUnder) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" cannot come off here: "+rule.CalledObject(b.Objects[1])+" still lies on it.",
				rule.Remedy("Take "+rule.CalledObject(b.Objects[1])+" off first."))
		}
	},
}
