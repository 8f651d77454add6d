package values

import (
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// LimitTwice compares limits that go by one name, and what judges one thing.
var LimitTwice = &rule.Rule{
	Name:     "values/limit-twice",
	Severity: diag.Error,
	Finds:    "One limit that is written twice, with different numbers.",
	Why:      "Two builders who read two pages build to two limits, and one of them is wrong.",
	Remedy:   "Keep one `limit` with the number of the drawing, and name it wherever it is judged by.",
	Bad: `
limit "float" {
  name  = "Axial float of the shaft"
  range = "0.08..0.14 mm"
  basis = "Drawing BK-040"
}

limit "shaft_float" {
  name  = "Axial float of the shaft"
  range = "0.08..0.16 mm" # want "0.08 to 0.14 mm"
  basis = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

procedure "float" {
  title = "Measure the float"

  measure "cold" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    accept    = limit.float
    otherwise = "Stop. Ask the workshop."
  }

  measure "again" {
    title     = "Measure the float again"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    accept    = limit.shaft_float
    otherwise = "Stop. Ask the workshop."
  }
}
`,
	Good: `
limit "float" {
  name  = "Axial float of the shaft"
  range = "0.08..0.14 mm"
  basis = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

procedure "float" {
  title = "Measure the float"

  measure "cold" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    accept    = limit.float
    otherwise = "Stop. Ask the workshop."
  }

  measure "again" {
    title     = "Measure the float again"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    accept    = limit.float
    otherwise = "Stop. Ask the workshop."
  }
}
`,
	Run: func(p *rule.Pass) {
		byName(p)
		byThing(p)
	},
}

// byName compares the limits that are called the same.
func byName(p *rule.Pass) {
	first := map[string]*model.Node{}
	for _, n := range p.Of(entry.Limit.Name) {
		name := strings.ToLower(strings.Join(strings.Fields(n.Plain("name")), " "))
		old := first[name]
		if old == nil {
			first[name] = n
			continue
		}
		a, okA := old.Limits("range", "")
		b, okB := n.Limits("range", "")
		if okA && okB && !sameLimits(a, b) {
			p.Report(n.At("range"), rule.Called(n)+" is also given as "+shown(a)+".",
				rule.Related(old.At("range"), "The first stands here."))
		}
	}
}

// verdict is limits written out beside a step, or named by it.
type verdict struct {
	step   *model.Step
	attr   string
	limits calc.Limits
	typed  bool // written out, not named
}

// byThing compares what judges one reading of one thing: limits that share one
// end and differ in the other were meant to be the same.
func byThing(p *rule.Pass) {
	groups := map[string][]verdict{}
	var order []string
	for _, attr := range []string{"accept", "leaves", "makes"} {
		for _, n := range p.Having(attr) {
			if n.Step == nil {
				continue
			}
			f := n.Formula(attr, "")
			l, ok := f.Limits()
			if !ok || l.Low == nil || l.High == nil || byPlace(n, attr) {
				continue
			}
			key := thing(n.Step, attr)
			if key == "" {
				continue
			}
			if len(groups[key]) == 0 {
				order = append(order, key)
			}
			groups[key] = append(groups[key], verdict{n.Step, attr, l, f.Literal != nil})
		}
	}
	for _, key := range order {
		all := groups[key]
		for i, v := range all {
			for _, old := range all[:i] {
				if !v.typed && !old.typed || v.step == old.step || !slip(old.limits, v.limits) {
					continue
				}
				a, b := old, v
				if !b.typed {
					a, b = v, old
				}
				p.Report(b.step.At(b.attr), "This limit is "+shown(b.limits)+" here and "+shown(a.limits)+" in "+rule.Called(a.step.Node)+".",
					rule.Related(a.step.At(a.attr), "The other stands here."))
				break
			}
		}
	}
}

// thing names what is judged: what the step touches with which instruments, or,
// of a choice, what is touched by the reading of its gap.
func thing(s *model.Step, attr string) string {
	if attr != "accept" {
		for _, name := range []string{"gap", "base"} {
			f := s.Formula(name, "")
			if f == nil || len(f.Refs) != 1 || f.Refs[0].To == nil || f.Refs[0].To.Step == nil {
				continue
			}
			s = f.Refs[0].To.Step
		}
	}
	var key []string
	for _, name := range []string{"on", "tools"} {
		for _, r := range s.AllRefs(name) {
			key = append(key, r.Address())
		}
		key = append(key, "|")
	}
	if len(key) <= 3 {
		return ""
	}
	return strings.Join(key, " ")
}

func sameLimits(a, b calc.Limits) bool { return sameEnd(a.Low, b.Low) && sameEnd(a.High, b.High) }

func sameEnd(a, b *calc.Quantity) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Dim().Fits(b.Dim()) && a.Cmp(*b) == 0
}

// slip reports limits that share one end, which is not zero, and differ in the
// other by less than they are wide.
func slip(a, b calc.Limits) bool {
	if !a.Type().Dim.Fits(b.Type().Dim) {
		return false
	}
	low, high := sameEnd(a.Low, b.Low), sameEnd(a.High, b.High)
	if low == high {
		return false
	}
	if low {
		return a.Low.Sign() != 0 && !farther(*a.High, *b.High, *a.Low)
	}
	return a.High.Sign() != 0 && !farther(*a.Low, *b.Low, *a.High)
}

// farther reports that b is at least twice as far from end as a, or the other way round.
func farther(a, b, end calc.Quantity) bool {
	x, err1 := a.Sub(end)
	y, err2 := b.Sub(end)
	if err1 != nil || err2 != nil || x.Sign() == 0 || y.Sign() == 0 {
		return true
	}
	ratio, err := x.Div(y)
	if err != nil {
		return true
	}
	f, _ := ratio.Num().Float64()
	return f >= 2 || f <= 0.5
}

// shown prints limits; a single value alone.
func shown(l calc.Limits) string {
	if l.Low != nil && l.High != nil && l.Low.Cmp(*l.High) == 0 {
		return l.Low.String()
	}
	return calc.Style{}.Limits(l.Low, l.High).First
}
