package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NoTorque: a step that tightens a fastening for which no torque is given.
var NoTorque = &rule.Rule{
	Name:     "fastening/no-torque",
	Severity: diag.Doubt,
	Finds:    "A step that tightens a fastening for which no torque is given.",
	Why:      "The builder has no number to stop at.",
	Remedy:   "Give the fastening torque, or the step to; where it is tightened by feel, say in basis what to feel.",
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
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" { # want "has no torque"
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
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
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Run: runNoTorque,
}

func runNoTorque(p *rule.Pass) {
	tightenings(p, func(s *model.Step, f *model.Node) {
		if s.Has("to") || f.Has("torque") || f.Has("stages") || f.Has("angle") || f.Has("basis") || f.Damaged || s.Damaged {
			return
		}
		p.Report(s.Name, "This tightens "+rule.Called(f)+", which has no torque.",
			rule.Related(f.Name, "The fastening stands here."))
	})
}
