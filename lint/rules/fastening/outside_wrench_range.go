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
	scales := scales{share: p.Band("wrench_range"), known: map[*model.Node]scale{}}
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
				if w, problem := scales.miss(wrenches, adapters, torque); problem != "" {
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

// scales remembers the part of each wrench's scale in which it is trusted.
type scales struct {
	share calc.Limits
	known map[*model.Node]scale
}

type scale struct {
	low, high calc.Quantity
	stated    bool
}

func (s *scales) of(w tooling.Tool) scale {
	k, ok := s.known[w.Node]
	if ok {
		return k
	}
	if r, ok := w.Range(); ok && calc.Torque.Fits(r.Low.Dim()) {
		k = scale{low: r.Low, high: r.High, stated: true}
		if s.share.Low != nil {
			if l := part(r.High, *s.share.Low); l.Cmp(k.low) > 0 {
				k.low = l
			}
		}
		if s.share.High != nil {
			if h := part(r.High, *s.share.High); h.Cmp(k.high) < 0 {
				k.high = h
			}
		}
	}
	s.known[w.Node] = k
	return k
}

// miss gives, where no wrench of a step works at a torque, the wrench that comes
// nearest and what is wrong with it.
func (s *scales) miss(wrenches, adapters []tooling.Tool, torque calc.Quantity) (at tooling.Tool, problem string) {
	for _, w := range wrenches {
		k := s.of(w)
		if !k.stated {
			return w, ""
		}
		setting, through := torque, ""
		if len(adapters) > 0 {
			set, ok := tooling.Setting(torque, w, adapters[0])
			if !ok {
				return w, ""
			}
			setting, through = set, " through "+rule.Called(adapters[0].Node)
		}
		switch {
		case setting.Cmp(k.high) > 0:
			at, problem = w, "is set to "+show(setting, k.high)+through+", beyond its "+show(k.high, k.high)
		case setting.Cmp(k.low) >= 0:
			return w, ""
		case problem == "":
			at, problem = w, "is set to "+show(setting, k.high)+through+", below the "+show(k.low, k.high)+" from which it is trusted"
		}
	}
	return at, problem
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
