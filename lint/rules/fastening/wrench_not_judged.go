package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// WrenchNotJudged: a torque wrench that does not state its range.
var WrenchNotJudged = &rule.Rule{
	Name:     "fastening/wrench-not-judged",
	Severity: diag.Advice,
	Finds:    "A torque wrench that does not state its range.",
	Why:      "Whether it can be set to the torque, and be trusted there, cannot be told.",
	Remedy:   "Give the wrench range, such as \"20..100 N·m\".",
	Bad: `tool "wrench" { # want "no range"
  name  = "Torque wrench"
  kind  = "torque wrench"
  drive = "3/8 in"
}

part "bed" {
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
    tools     = [tool.wrench, tool.socket_13]
  }
}
`,
	Good: `tool "wrench" {
  name  = "Torque wrench"
  kind  = "torque wrench"
  drive = "3/8 in"
  range = "10..50 N·m"
}

part "bed" {
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
    tools     = [tool.wrench, tool.socket_13]
  }
}
`,
	Run: runWrenchNotJudged,
}

func runWrenchNotJudged(p *rule.Pass) {
	said := map[*model.Node]bool{}
	tightenings(p, func(s *model.Step, _ *model.Node) {
		for _, w := range tooling.Wrenches(tooling.Of(s)) {
			if _, ok := w.Range(); ok || said[w.Node] || w.Damaged {
				continue
			}
			said[w.Node] = true
			p.Report(w.Name, rule.Called(w.Node)+" states no range to judge its torques by.", rule.Related(w.At, "It is used here."))
		}
	})
}
