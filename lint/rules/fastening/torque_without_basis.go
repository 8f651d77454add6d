package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// TorqueWithoutBasis: a torque of a plug, gland, adjuster or the like that does not say where it comes from.
var TorqueWithoutBasis = &rule.Rule{
	Name:     "fastening/torque-without-basis",
	Severity: diag.Advice,
	Finds:    "A torque of a plug, gland, adjuster or the like that does not say where it comes from.",
	Why:      "Only clamps are judged by their preload, so nothing else vouches for this number.",
	Remedy:   "Give basis: the drawing, the standard or the maker that the torque comes from.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" { # want "does not say"
  does         = "set screw"
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
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  does         = "set screw"
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
  basis        = "Drawing BK-012, issue 2"
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
	Run: runTorqueWithoutBasis,
}

func runTorqueWithoutBasis(p *rule.Pass) {
	tightened(p, func(f *model.Node) {
		if clamps(f) || !f.Has("torque") || f.Has("basis") {
			return
		}
		p.Report(f.Name, "The torque of "+rule.Called(f)+" does not say where it comes from.",
			rule.Related(f.At("torque"), "The torque stands here."))
	})
}
