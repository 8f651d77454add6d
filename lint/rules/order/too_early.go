package order

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TooEarly reads the steps that began before their time.
var TooEarly = &rule.Rule{
	Name:     "order/too-early",
	Severity: diag.Error,
	Finds:    "Less time between two steps than `not_before` asks for.",
	Why:      "What should have dried, settled or grown cold has not.",
	Remedy:   "Wait longer, or put other work in between.",
	Bad: `
part "frame" {
  name  = "Frame"
  faces = ["top"]
}

part "plate" {
  name    = "Plate"
  sits_on = part.frame
}

procedure "plate" {
  title = "Grease the frame and set the plate on"

  coat "top" {
    title    = "Rub the top of the frame with grease"
    on       = [part.frame.face.top]
    supplies = [supply.grease]
    takes    = "10 min"
  }

  wait "soak" {
    title = "Let the grease soak in"
    for   = "30 min"
  }

  fit "plate" {
    title      = "Set the plate on the frame"
    part       = part.plate
    after      = [coat.top]
    not_before = "2 h" # want "begins 30 min after “Rub the top of the frame with grease”"
  }
}
`,
	Good: `
part "frame" {
  name  = "Frame"
  faces = ["top"]
}

part "plate" {
  name    = "Plate"
  sits_on = part.frame
}

procedure "plate" {
  title = "Grease the frame and set the plate on"

  coat "top" {
    title    = "Rub the top of the frame with grease"
    on       = [part.frame.face.top]
    supplies = [supply.grease]
    takes    = "10 min"
  }

  wait "soak" {
    title = "Let the grease soak in"
    for   = "2 h"
  }

  fit "plate" {
    title      = "Set the plate on the frame"
    part       = part.plate
    after      = [coat.top]
    not_before = "2 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.TooEarly) {
			p.Breach(b, "This begins "+rule.Lasting(b.Got)+" after "+rule.CalledObject(b.Objects[0])+"; at least "+rule.Lasting(b.Want)+" are asked for.")
		}
	},
}
