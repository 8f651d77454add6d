package fastening

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// AdapterWithoutLength: an adapter or its wrench that has no length, so that the setting cannot be worked out.
var AdapterWithoutLength = &rule.Rule{
	Name:     "fastening/adapter-without-length",
	Severity: diag.Error,
	Finds:    "An adapter or its wrench that has no length, so that the setting cannot be worked out.",
	Why:      "An adapter makes the lever longer: the wrench clicks late, and the fastener gets more than the number says.",
	Remedy:   "Give the adapter length from drive to fastener, and the wrench length from grip to drive.",
	Source:   "TM 1-1500-204-23-9, para 8-5.",
	Bad: `tool "crowfoot" { # want "no length"
  name  = "Crowfoot, 13 mm"
  kind  = "adapter"
  size  = "13 mm"
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
    tools     = [tool.torque_wrench_100, tool.crowfoot]
  }
}
`,
	Good: `tool "crowfoot" {
  name   = "Crowfoot, 13 mm"
  kind   = "adapter"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "40 mm"
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
  torque       = "26 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.crowfoot]
  }
}
`,
	Run: runAdapterWithoutLength,
}

func runAdapterWithoutLength(p *rule.Pass) {
	said := map[*model.Node]bool{}
	tightenings(p, func(s *model.Step, f *model.Node) {
		tools := tooling.Of(s)
		wrenches := tooling.Wrenches(tools)
		if len(wrenches) == 0 || len(targets(s, f)) == 0 {
			return
		}
		for _, a := range tooling.Adapters(tools) {
			for _, t := range append([]tooling.Tool{a}, wrenches...) {
				if t.Has("length") || t.Damaged || said[t.Node] {
					continue
				}
				said[t.Node] = true
				p.Report(t.Name, rule.Called(t.Node)+" has no length, so the setting for "+rule.Called(f)+" cannot be worked out.",
					rule.Related(a.At, "The adapter is used here."))
			}
		}
	})
}
