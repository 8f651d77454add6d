package fastening

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// StagesFall: a stage of tightening that is not above the one before it.
var StagesFall = &rule.Rule{
	Name:     "fastening/stages-fall",
	Severity: diag.Error,
	Finds:    "A stage of tightening that is not above the one before it.",
	Why:      "A wrench set lower than the bolt is tight already clicks and does nothing, so a stage is lost or a number is wrong.",
	Remedy:   "Put the stages in rising order, the torque last.",
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
  stages       = ["22 N·m", "20 N·m", "24 N·m"] # want "not above"
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
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
  stages       = ["20 N·m", "24 N·m"]
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
	Run: runStagesFall,
}

func runStagesFall(p *rule.Pass) {
	for _, f := range p.Having("stages") {
		all := settings(f, "stages")
		for i := 1; i < len(all); i++ {
			if all[i].least().Cmp(all[i-1].most()) > 0 || len(all[i].formula.Refs) > 0 {
				continue
			}
			p.Report(all[i].span(f, nil), "The stage "+all[i].String()+" of "+rule.Called(f)+" is not above the one before it, "+all[i-1].String()+".",
				rule.Related(all[i-1].span(f, nil), "The stage before it stands here."))
			break
		}
	}
}
