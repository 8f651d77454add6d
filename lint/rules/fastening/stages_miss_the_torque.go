package fastening

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// StagesMissTheTorque: stages of tightening that do not end at the torque.
var StagesMissTheTorque = &rule.Rule{
	Name:     "fastening/stages-miss-the-torque",
	Severity: diag.Error,
	Finds:    "Stages of tightening that do not end at the torque.",
	Why:      "The builder who follows the stages ends at one number, and the builder who reads the torque at another.",
	Remedy:   "End the stages with the torque itself.",
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
  stages       = ["20 N·m", "22 N·m"] # want "end at 22 N·m"
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
	Run: runStagesMissTheTorque,
}

func runStagesMissTheTorque(p *rule.Pass) {
	for _, f := range p.Having("stages") {
		all, torque := settings(f, "stages"), settings(f, "torque")
		if len(all) == 0 || len(torque) != 1 {
			continue
		}
		last, t := all[len(all)-1], torque[0]
		for i := 1; i < len(all); i++ {
			if all[i].least().Cmp(all[i-1].most()) <= 0 {
				last = setting{} // a fall, which has its own finding
			}
		}
		if last.formula == nil || reaches(last, t) {
			continue
		}
		p.Report(last.span(f, nil), "The stages of "+rule.Called(f)+" end at "+last.String()+", and its torque is "+t.String()+".",
			rule.Related(f.At("torque"), "The torque stands here."))
	}
}

// reaches reports a last stage that is the torque: the same value, or inside a
// torque that is a range.
func reaches(last, torque setting) bool {
	if !torque.Nominal.Valid() {
		return last.least().Cmp(torque.Low) >= 0 && last.most().Cmp(torque.High) <= 0
	}
	return last.Nominal.Valid() && last.Nominal.Cmp(torque.Nominal) == 0
}
