package fit

import (
	"errors"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// NotDecided says of which choices nothing could be proved.
var NotDecided = &rule.Rule{
	Name:     "fit/not-decided",
	Severity: diag.Advice,
	Finds:    "A choice of which it cannot be proved that every likely reading is served.",
	Why:      "A builder may stand before a reading that no pack fits, and nobody knows.",
	Remedy:   "State the limits as a limit, and keep the kit small enough to try every pack.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
  size "0.10 mm" { in_kit = 1 }
  size "0.20 mm" { in_kit = 1 }
}

procedure "shim" {
  title = "Shim the shaft"

  measure "play" {
    title  = "Measure the play of the bearing"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.04..0.10 mm"
  }

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.34 mm"
  }

  choose "pack" {
    title  = "Choose the shim"
    from   = part.shim
    gap    = measure.float
    leaves = within(measure.play, "0.05 mm") # want "cannot be proved"
  }

  fit "pack" {
    title = "Slide the shim on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float = "0.18 mm", measure.play = "0.07 mm" }
    gives    = { choose.pack.result = "0.08 mm" }
  }
}
`,
	Good: `
part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
  size "0.10 mm" { in_kit = 1 }
  size "0.20 mm" { in_kit = 1 }
}

procedure "shim" {
  title = "Shim the shaft"

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.34 mm"
  }

  choose "pack" {
    title  = "Choose the shim"
    from   = part.shim
    gap    = measure.float
    leaves = "0.04..0.14 mm"
  }

  fit "pack" {
    title = "Slide the shim on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float = "0.21 mm" }
    gives    = { choose.pack.result = "0.11 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		said := map[*model.Step]bool{}
		report := func(s *model.Step, why string) {
			if !said[s] {
				said[s] = true
				p.Report(where(s), "It cannot be proved that a pack fits every time at "+rule.Called(s.Node)+": "+why+".")
			}
		}
		eachChoice(p, func(s *model.Step, place string) {
			_, err := p.Plan().Cover(s, place)
			switch {
			case errors.Is(err, values.ErrOpenLimits):
				report(s, "its limits rest on a reading or an option")
			case errors.Is(err, calc.ErrTooManyPacks):
				report(s, "the kit allows too many different packs to compare")
			}
		})
		for _, part := range p.Plan().Graded() {
			for _, h := range p.Plan().Heaps(part) {
				if h.Err == nil && h.Proof.Verdict == calc.HeapUndecided {
					report(h.Covers[len(h.Covers)-1].Step, h.Proof.Reason)
				}
			}
		}
	},
}
