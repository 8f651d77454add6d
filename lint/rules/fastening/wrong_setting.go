package fastening

import (
	"math/big"
	"regexp"
	"slices"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// WrongSetting: a setting of the wrench, written in words or as the torque of the step, that is not what the adapter asks for.
var WrongSetting = &rule.Rule{
	Name:     "fastening/wrong-setting",
	Severity: diag.Error,
	Finds:    "A setting of the wrench, written in words or as the torque of the step, that is not what the adapter asks for.",
	Why:      "An adapter makes the lever longer: the same setting gives the fastener more.",
	Remedy:   "Take the setting out: it is worked out from the lengths of wrench and adapter, and printed.",
	Source:   "TM 1-1500-204-23-9, para 8-5: S = T L / (L + A).",
	Bad: `tool "crowfoot" {
  name   = "Crowfoot, 13 mm"
  kind   = "adapter"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "70 mm"
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
    text      = "Set the wrench to 24 N·m, and pull in one slow sweep." # want "24 N·m"
  }
}
`,
	Good: `tool "crowfoot" {
  name   = "Crowfoot, 13 mm"
  kind   = "adapter"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "70 mm"
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
    text      = "Pull in one slow sweep."
  }
}
`,
	Run: runWrongSetting,
}

func runWrongSetting(p *rule.Pass) {
	tightenings(p, func(s *model.Step, f *model.Node) {
		tools := tooling.Of(s)
		wrenches, adapters := tooling.Wrenches(tools), tooling.Adapters(tools)
		if len(wrenches) == 0 || len(adapters) == 0 {
			return
		}
		right := needed(f, append(stages(s, f), targets(s, f)...), wrenches[0], adapters[0])
		if len(right) == 0 {
			return
		}
		last := right[len(right)-1].Rounded().String()
		if s.Has("to") {
			setsTo(p, s, f, wrenches[0], adapters[0])
		}
		for _, attr := range [...]string{"title", "text"} {
			for _, sentence := range prose.Sentences(s.Text(attr)) {
				if !prose.Has(sentence.Text, "set", "setting", "dial", "adjust") {
					continue
				}
				for _, m := range torques.FindAllStringIndex(sentence.Text, -1) {
					q, ok := torqueIn(sentence.Text[m[0]:m[1]])
					if !ok || slices.ContainsFunc(right, func(r calc.Quantity) bool { return near(q, r, wrenches[0]) }) {
						continue
					}
					p.Report(sentence.Span(m[0], m[1]), "The wrench is not set to "+sentence.Text[m[0]:m[1]]+" through "+rule.Called(adapters[0].Node)+", but to "+last+".",
						rule.Related(targets(s, f)[0].span(f, s), "The torque stands here."), rule.Related(adapters[0].At, "The adapter is named here."))
				}
			}
		}
	})
}

// needed are the settings of the wrench for torques through an adapter; none
// where a length is missing.
func needed(f *model.Node, torques []setting, wrench, adapter tooling.Tool) []calc.Quantity {
	var all []calc.Quantity
	for _, t := range torques {
		for _, torque := range t.aims() {
			s, ok := tooling.Setting(withDrag(f, torque), wrench, adapter)
			if !ok {
				return nil
			}
			all = append(all, s)
		}
	}
	return all
}

// setsTo reports a torque of the step that is the wrench's setting for the
// fastening's torque.
func setsTo(p *rule.Pass, s *model.Step, f *model.Node, wrench, adapter tooling.Tool) {
	own, of := settings(s.Node, "to"), settings(f, "torque")
	if len(own) != 1 || len(of) != 1 {
		return
	}
	for _, right := range needed(f, of, wrench, adapter) {
		if !near(own[0].least(), right, wrench) || own[0].least().Cmp(of[0].least()) == 0 {
			continue
		}
		p.Report(s.At("to"), own[0].String()+" is the setting of the wrench for "+rule.Called(f)+", and to takes the torque at the fastener.",
			rule.Reason("Through the adapter the wrench would be set lower once more, and the fastener left loose."),
			rule.Remedy("Take to out; the setting is worked out from the torque of the fastening, "+of[0].String()+"."),
			rule.Related(f.At("torque"), "The torque stands here."))
		return
	}
}

// near reports two settings that are the same on the scale of a wrench.
func near(a, b calc.Quantity, wrench tooling.Tool) bool {
	apart := new(big.Rat).Sub(a.Base(), b.Base())
	apart.Abs(apart)
	step := new(big.Rat).Mul(b.Base(), big.NewRat(1, 100))
	if r := wrench.Quantity("resolution", ""); r != nil && calc.Torque.Fits(r.Dim()) && r.Base().Cmp(step) > 0 {
		step = r.Base()
	}
	return apart.Cmp(step) <= 0
}

var torques = regexp.MustCompile(`\d+(?:\.\d+)? ?(?:N·m|Nm|N m|kN·m|lbf?·ft|lbf?·in|ft·lbf?|in·lbf?|lb ft|lb in|ft lb|in lb)\b`)

func torqueIn(text string) (calc.Quantity, bool) {
	lit, _ := calc.ParseLiteral(text, calc.Context{Want: calc.Torque, HasWant: true})
	if !lit.Valid() || lit.Nominal == nil {
		return calc.Quantity{}, false
	}
	return *lit.Nominal, true
}
