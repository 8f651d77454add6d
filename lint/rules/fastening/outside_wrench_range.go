package fastening

import (
	"math/big"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// OutsideWrenchRange: a torque, a stage or an adapter setting outside the working range of the wrench that the step names.
var OutsideWrenchRange = &rule.Rule{
	Name:     "fastening/outside-wrench-range",
	Severity: diag.Error,
	Finds:    "A torque, a stage or an adapter setting outside the working range of the wrench that the step names.",
	Why:      "Below a fifth of its scale a wrench clicks where it likes; above its scale it cannot be set at all.",
	Remedy:   "Name a wrench whose working range holds the first stage and the last.",
	Source:   "ISO 6789-1 test points 20, 60 and 100 % of full scale; TM 1-1500-204-23-9, table 8-1.",
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
    tools     = [tool.torque_wrench_20, tool.socket_13_quarter] # want "beyond"
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
	Run: runOutsideWrenchRange,
}

func runOutsideWrenchRange(p *rule.Pass) {
	band := p.Band("wrench_range")
	tightenings(p, func(s *model.Step, f *model.Node) {
		tools := tooling.Of(s)
		wrenches := tooling.Wrenches(tools)
		if len(wrenches) == 0 {
			return
		}
		adapters := tooling.Adapters(tools)
		for _, t := range append(stages(s, f), targets(s, f)...) {
			for _, torque := range t.aims() {
				torque = withDrag(f, torque)
				if w, problem := misses(wrenches, adapters, torque, band); problem != "" {
					if wrongTorque(p, f) {
						return // the wrench would do for the right one
					}
					p.Report(w.At, rule.Called(w.Node)+" "+problem+".",
						rule.Related(t.span(f, s), "The torque of "+rule.Called(f)+" stands here."))
					return
				}
			}
		}
	})
}

// withDrag is what the wrench shows for an authored torque of a fastening.
func withDrag(f *model.Node, torque calc.Quantity) calc.Quantity {
	if f.Flag("drag_included") {
		return torque
	}
	l, ok := f.Limits("drag", "")
	if !ok || l.High == nil {
		return torque
	}
	b, p := joint.WrenchTorque(joint.Point(torque), *l.High, joint.DragAdded)
	if p != nil {
		return torque
	}
	return b.High
}

// misses gives, where no wrench of a step works at a torque, the wrench that
// comes nearest and what is wrong with it.
func misses(wrenches, adapters []tooling.Tool, torque calc.Quantity, share calc.Limits) (tooling.Tool, string) {
	var at tooling.Tool
	problem := ""
	for _, w := range wrenches {
		scale, ok := w.Range()
		if !ok || !calc.Torque.Fits(scale.Low.Dim()) {
			return w, ""
		}
		setting, through := torque, ""
		if len(adapters) > 0 {
			s, ok := tooling.Setting(torque, w, adapters[0])
			if !ok {
				return w, ""
			}
			setting, through = s, " through "+rule.Called(adapters[0].Node)
		}
		low, high := working(scale, share)
		shown := show(setting, scale.High) + through
		switch {
		case setting.Cmp(high) > 0:
			at, problem = w, "is set to "+shown+", beyond its "+show(high, scale.High)
		case setting.Cmp(low) < 0 && problem == "":
			at, problem = w, "is set to "+shown+", below the "+show(low, scale.High)+" from which it is trusted"
		case setting.Cmp(low) >= 0:
			return w, ""
		}
	}
	return at, problem
}

// working is the part of a wrench's scale in which it is trusted.
func working(scale joint.Band, share calc.Limits) (low, high calc.Quantity) {
	low, high = scale.Low, scale.High
	if share.Low != nil {
		if l := part(scale.High, *share.Low); l.Cmp(low) > 0 {
			low = l
		}
	}
	if share.High != nil {
		if h := part(scale.High, *share.High); h.Cmp(high) < 0 {
			high = h
		}
	}
	return low, high
}

// part is a share of a quantity, in its unit.
func part(q, share calc.Quantity) calc.Quantity {
	return calc.FromBase(new(big.Rat).Mul(q.Base(), share.Base()), q.Unit, max(q.Decimals, 1))
}

// show prints a torque in its own unit, and in the wrench's where that is another.
func show(q, scale calc.Quantity) string {
	if q.Unit != scale.Unit && q.Unit.UCUM != scale.Unit.UCUM {
		return q.Rounded().String() + " (" + q.In(scale.Unit).Rounded().String() + ")"
	}
	return q.Rounded().String()
}
