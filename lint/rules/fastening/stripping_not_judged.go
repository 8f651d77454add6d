package fastening

import (
	"strings"

	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// StrippingNotJudged: a tapped thread that is described by half, so that nobody can tell whether it strips.
var StrippingNotJudged = &rule.Rule{
	Name:     "fastening/stripping-not-judged",
	Severity: diag.Advice,
	Finds:    "A tapped thread that is described by half, so that nobody can tell whether it strips.",
	Why:      "Light alloy strips long before a good bolt is tight.",
	Remedy:   "Give thread_material and thread_length together, in words that name a known material.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name            = "Bracket bolts"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.bracket, part.bed]
  thread_material = "aluminium" # want "no length"
  lubricant       = "dry"
  across_flats    = "13 mm"
  torque          = "24 N·m ± 10 %"
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
  name            = "Bracket bolts"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.bracket, part.bed]
  thread_material = "aluminium"
  thread_length   = "16 mm"
  lubricant       = "dry"
  across_flats    = "13 mm"
  torque          = "24 N·m ± 10 %"
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
	Run: runStrippingNotJudged,
}

func runStrippingNotJudged(p *rule.Pass) {
	tightened(p, func(f *model.Node) {
		if !clamps(f) || f.Has("basis") {
			return
		}
		material, length := f.Has("thread_material"), f.Has("thread_length")
		switch {
		case material && !length:
			p.Report(f.At("thread_material"), "Whether "+rule.Called(f)+" strips cannot be judged: it has no length of thread.",
				rule.Remedy("Give thread_length: how much full thread is engaged."))
		case length && !material:
			p.Report(f.At("thread_length"), "Whether "+rule.Called(f)+" strips cannot be judged: it does not say what the thread is cut in.",
				rule.Remedy("Give thread_material."))
		case material:
			if _, problem := joint.MaterialOf(f.Plain("thread_material")); problem != nil {
				p.Report(f.At("thread_material"), "Whether "+rule.Called(f)+" strips cannot be judged: "+lower(problem.Message), rule.Remedy(problem.Remedy))
			}
		}
	})
}

// lower begins a sentence in the middle of another.
func lower(s string) string {
	if s == "" || s[0] < 'A' || s[0] > 'Z' {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}
