package order

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// FittedBeforeSeat reads the parts that went on before what they sit on.
var FittedBeforeSeat = &rule.Rule{
	Name:     "order/fitted-before-seat",
	Severity: diag.Error,
	Finds:    "A part that is fitted before something it sits on or lies on.",
	Why:      "It has to come off again for what belongs under it, or the part underneath is left out.",
	Remedy:   "Fit first what belongs underneath.",
	Bad: `
part "axle" {
  name = "Axle"
}

part "inner_ring" {
  name    = "Spacer ring"
  sits_on = part.axle
}

part "wheel" {
  name    = "Wheel"
  sits_on = [part.inner_ring, part.axle]
}

procedure "wheel" {
  title = "Fit the wheel"

  fit "wheel" {
    title = "Slide the wheel on up to the ring"
    part  = part.wheel # want "before “Spacer ring”, which belongs under it"
  }

  fit "ring" {
    title = "Slide the ring on the axle"
    part  = part.inner_ring
  }
}
`,
	Good: `
part "axle" {
  name = "Axle"
}

part "inner_ring" {
  name    = "Spacer ring"
  sits_on = part.axle
}

part "wheel" {
  name    = "Wheel"
  sits_on = [part.inner_ring, part.axle]
}

procedure "wheel" {
  title = "Fit the wheel"

  fit "ring" {
    title = "Slide the ring on the axle"
    part  = part.inner_ring
  }

  fit "wheel" {
    title = "Slide the wheel on up to the ring"
    part  = part.wheel
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.SeatNotOn) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" fitted here before "+rule.CalledAll(b.Objects[1:])+", which belongs under it.")
		}
	},
}
