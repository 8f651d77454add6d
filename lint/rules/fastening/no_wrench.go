package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// NoWrench: a step that tightens to a torque and names no tool that shows one.
var NoWrench = &rule.Rule{
	Name:     "fastening/no-wrench",
	Severity: diag.Error,
	Finds:    "A step that tightens to a torque and names no tool that shows one.",
	Why:      "The builder tightens by feel, and feel is wrong by half either way.",
	Remedy:   "Name the torque wrench, and its socket, in tools.",
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
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.spanner_13] # want "nothing that shows a torque"
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
	Run: runNoWrench,
}

func runNoWrench(p *rule.Pass) {
	tightenings(p, func(s *model.Step, f *model.Node) {
		t := targets(s, f)
		if len(t) == 0 || len(tooling.Wrenches(tooling.Of(s))) > 0 {
			return
		}
		p.Report(s.At("tools"), rule.Called(f)+" "+is(f)+" tightened to "+t[0].String()+" with nothing that shows a torque.",
			rule.Related(t[0].span(f, s), "The torque stands here."))
	})
}

// span is where a torque stands.
func (t setting) span(f *model.Node, s *model.Step) source.Span {
	at := t.formula.Expr.Span()
	file := f.File
	if s != nil && s.Has("to") {
		file = s.File
	}
	return file.Span(int(at.Start), int(at.End))
}
