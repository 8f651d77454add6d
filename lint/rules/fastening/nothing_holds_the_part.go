package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NothingHoldsThePart: a high torque with nothing and nobody holding the part.
var NothingHoldsThePart = &rule.Rule{
	Name:     "fastening/nothing-holds-the-part",
	Severity: diag.Error,
	Finds:    "A high torque with nothing and nobody holding the part.",
	Why:      "The part turns with the nut or tips off the bench, and takes fingers along.",
	Remedy:   "Give the step held_by: a tool, a part or \"second person\". Where the part is meant to turn, write turning = true.",
	Source:   "From 60 N·m on: common practice, no source.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M12x1.75"
  bolt_class   = "8.8"
  quantity     = 1
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "18 mm"
  torque       = "80 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" { # want "nothing holds"
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_18]
  }
}
`,
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M12x1.75"
  bolt_class   = "8.8"
  quantity     = 1
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "18 mm"
  torque       = "80 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    held_by   = tool.vice
    tools     = [tool.torque_wrench_100, tool.socket_18]
  }
}
`,
	Run: runNothingHoldsThePart,
}

func runNothingHoldsThePart(p *rule.Pass) {
	limit := p.Threshold("high_torque")
	tightenings(p, func(s *model.Step, f *model.Node) {
		if s.Has("held_by") || s.Flag("turning") || s.Damaged {
			return
		}
		for _, t := range targets(s, f) {
			if t.most().Cmp(limit) < 0 {
				continue
			}
			if wrongTorque(p, f) {
				return // the right one may need no holding
			}
			p.Report(s.Name, rule.Called(f)+" "+is(f)+" tightened to "+t.String()+", and nothing holds the part.",
				rule.Related(t.span(f, s), "The torque stands here."))
			return
		}
	})
}
