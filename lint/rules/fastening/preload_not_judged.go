package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// PreloadNotJudged: a clamp whose preload cannot be judged, because its thread, its class or what is on its threads is not known.
var PreloadNotJudged = &rule.Rule{
	Name:     "fastening/preload-not-judged",
	Severity: diag.Advice,
	Finds:    "A clamp whose preload cannot be judged, because its thread, its class or what is on its threads is not known.",
	Why:      "Nobody but the author knows whether the torque suits the bolt.",
	Remedy:   "Give thread, bolt_class or proof, and lubricant; or say in basis where the torque comes from.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" { # want "bolt_class"
  name         = "Bracket bolts"
  thread       = "M8x1.25"
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
  name         = "Bracket bolts"
  thread       = "M8x1.25"
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
	Run: runPreloadNotJudged,
}

func runPreloadNotJudged(p *rule.Pass) {
	known := newScreen()
	tightened(p, func(f *model.Node) {
		if !f.Has("torque") {
			return
		}
		_, m := known.of(f)
		if m == nil || f.Has("basis") && !m.unread {
			return
		}
		p.Report(f.At(m.attr), "The preload of "+rule.Called(f)+" cannot be judged: it "+m.message+".", rule.Remedy(m.remedy))
	})
}
