package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MoreThanKit reads the fits for which no piece was left.
var MoreThanKit = &rule.Rule{
	Name:     "access/more-than-kit",
	Severity: diag.Error,
	Finds:    "More pieces of a part fitted than the kit holds.",
	Why:      "A builder comes to this step and the tray is empty.",
	Remedy:   "Correct the part's quantity, or the quantity of one of the steps.",
	Bad: `
part "axle" {
  name = "Axle"
}

part "ring" {
  name     = "Spacer ring"
  quantity = 3
  sits_on  = part.axle
}

procedure "rings" {
  title = "Fit the spacer rings"

  fit "left" {
    title    = "Slide two rings on the left end"
    part     = part.ring
    quantity = 2
  }

  fit "right" {
    title    = "Slide two rings on the right end"
    part     = part.ring
    quantity = 2 # want "More of “Spacer ring” are fitted"
  }
}
`,
	Good: `
part "axle" {
  name = "Axle"
}

part "ring" {
  name     = "Spacer ring"
  quantity = 4
  sits_on  = part.axle
}

procedure "rings" {
  title = "Fit the spacer rings"

  fit "left" {
    title    = "Slide two rings on the left end"
    part     = part.ring
    quantity = 2
  }

  fit "right" {
    title    = "Slide two rings on the right end"
    part     = part.ring
    quantity = 2
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.MoreThanKit) {
			message := "More of " + rule.CalledObject(b.Objects[0]) + " are fitted by now than the kit holds."
			if left := b.Causes; len(left) > 0 && left[0].Attr == "when" {
				message = rule.CalledObject(b.Objects[0]) + " " + rule.Is(b.Objects[0]) + " fitted here, and the kit does not hold it."
			}
			p.Breach(b, message)
		}
	},
}
