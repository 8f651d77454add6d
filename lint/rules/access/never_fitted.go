package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NeverFitted reads the parts that were left in the tray at the end.
var NeverFitted = &rule.Rule{
	Name:     "access/never-fitted",
	Severity: diag.Error,
	Finds:    "A part of the kit that no step fits.",
	Why:      "A builder has a part left over and does not know where it belongs.",
	Remedy:   "Fit it, or say spare = true where it need not be used.",
	Bad: `
part "shaft" {
  name     = "Shaft"
  features = ["keyway"]
}

part "key" { # want "Nothing fits “Key”"
  name    = "Key"
  sits_on = part.shaft
}

part "wheel" {
  name    = "Wheel"
  sits_on = part.shaft
  covers  = [part.shaft.feature.keyway, part.key]
}

procedure "wheel" {
  title = "Fit the wheel"

  fit "wheel" {
    title = "Slide the wheel on the shaft"
    part  = part.wheel
  }
}
`,
	Good: `
part "shaft" {
  name     = "Shaft"
  features = ["keyway"]
}

part "key" {
  name    = "Key"
  sits_on = part.shaft
}

part "wheel" {
  name    = "Wheel"
  sits_on = part.shaft
  covers  = [part.shaft.feature.keyway, part.key]
}

procedure "wheel" {
  title = "Fit the wheel"

  fit "key" {
    title = "Lay the key in its way"
    part  = part.key
  }

  fit "wheel" {
    title = "Slide the wheel on the shaft"
    part  = part.wheel
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.NeverFitted) {
			if len(b.Causes) > 0 && b.Causes[0].Attr == "quantity" {
				p.Breach(b, "Not all of "+rule.Called(b.Node)+" that are in the kit are fitted.",
					rule.Remedy("Fit the rest, correct the part's quantity, or say spare = true."))
				continue
			}
			p.Breach(b, "Nothing fits "+rule.Called(b.Node)+", which is in the kit.")
		}
	},
}
