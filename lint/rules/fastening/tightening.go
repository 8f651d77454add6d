package fastening

import (
	"fettle/bench"
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// tightenings calls visit for every step that tightens a fastening, those of
// otherwise blocks included.
func tightenings(p *rule.Pass, visit func(s *model.Step, f *model.Node)) {
	for _, s := range p.Steps() {
		for _, r := range tooling.Done(s, kind.Tightens) {
			if r.To != nil {
				visit(s, r.To)
			}
		}
	}
}

// tightened calls visit for every fastening of the manual that a step tightens,
// in the order of the entries.
func tightened(p *rule.Pass, visit func(f *model.Node)) {
	used := map[*model.Node]bool{}
	tightenings(p, func(_ *model.Step, f *model.Node) { used[f] = true })
	for _, f := range p.Entries {
		if f.Def == entry.Fastening && used[f] {
			visit(f)
		}
	}
}

// setting is a torque as an author gives it. Of a value with a tolerance Low and
// High are its ends; of a range there is no Nominal, since any torque in it will do.
type setting struct {
	formula            *model.Formula
	Low, Nominal, High calc.Quantity
}

// settings are the torques of an attribute: one, one for each place, or the
// stages of a list in order.
func settings(n *model.Node, attr string) []setting {
	a := n.Attr(attr)
	if a == nil {
		return nil
	}
	var all []setting
	var read func(v model.Value)
	read = func(v model.Value) {
		switch v := v.(type) {
		case *model.Formula:
			if s, ok := settingOf(v); ok {
				all = append(all, s)
			}
		case model.List:
			for _, item := range v {
				read(item)
			}
		case model.ByPlace:
			for _, p := range v {
				read(p.Value)
			}
		}
	}
	read(a.Value)
	return all
}

func settingOf(f *model.Formula) (setting, bool) {
	l, ok := f.Limits()
	if !ok || l.Low == nil || l.High == nil {
		if f.Literal != nil && f.Literal.Nominal != nil {
			q := *f.Literal.Nominal
			return setting{f, q, q, q}, calc.Torque.Fits(q.Dim())
		}
		return setting{}, false
	}
	s := setting{formula: f, Low: *l.Low, High: *l.High}
	if !calc.Torque.Fits(s.Low.Dim()) {
		return setting{}, false
	}
	if f.Literal == nil || f.Literal.Form != calc.RangeForm {
		if l.Target != nil {
			s.Nominal = *l.Target
		}
	}
	return s, true
}

// aims are the torques that a wrench is set to: the value, or both ends of a range.
func (s setting) aims() []calc.Quantity {
	if s.Nominal.Valid() {
		return []calc.Quantity{s.Nominal}
	}
	return []calc.Quantity{s.Low, s.High}
}

// least and most are the lowest and highest torque that is aimed at.
func (s setting) least() calc.Quantity { return s.aims()[0] }
func (s setting) most() calc.Quantity  { return s.aims()[len(s.aims())-1] }

// String is the torque as the author wrote it.
func (s setting) String() string {
	if s.formula.Literal != nil {
		return s.formula.Literal.String()
	}
	if s.Nominal.Valid() {
		return s.Nominal.String()
	}
	return calc.Style{}.Limits(&s.Low, &s.High).First
}

// text is the torque as it stands in the source of n.
func (s setting) text(n *model.Node) string {
	at := s.formula.Expr.Span()
	return n.File.Span(int(at.Start), int(at.End)).Text()
}

// targets are the torques of one tightening: `to`, or those of the fastening.
func targets(s *model.Step, f *model.Node) []setting {
	if s.Has("to") {
		return settings(s.Node, "to")
	}
	return settings(f, "torque")
}

// stages are the torques on the way, none where the step has a torque of its own.
func stages(s *model.Step, f *model.Node) []setting {
	if s.Has("to") {
		return nil
	}
	return settings(f, "stages")
}

// clamps reports a fastening that clamps; the others are not screened.
func clamps(f *model.Node) bool { return f.Word("does") == "clamp" }

// eachTorque calls visit for every torque that a manual gives: those of its
// fastenings, at the fastening, and those of steps that differ, at the step.
func eachTorque(p *rule.Pass, visit func(f, at *model.Node, attr string, t setting)) {
	used := map[*model.Node]bool{}
	tightenings(p, func(s *model.Step, f *model.Node) {
		used[f] = true
		if s.Has("to") {
			for _, t := range settings(s.Node, "to") {
				visit(f, s.Node, "to", t)
			}
		}
	})
	for _, f := range p.Entries {
		if f.Def != entry.Fastening || f.Shared && !used[f] {
			continue
		}
		for _, t := range settings(f, "torque") {
			visit(f, f, "torque", t)
		}
	}
}

// wrongTorque reports a fastening whose torque is judged wrong for its bolt, so
// that what follows from the number is said there.
func wrongTorque(p *rule.Pass, f *model.Node) bool {
	c, _ := newScreen().of(f)
	if c == nil {
		return false
	}
	band := p.Band("proof_band")
	for _, t := range settings(f, "torque") {
		if share, _ := c.highest(t, band); share != nil || c.lowest(t, band) != nil && !f.Has("angle") && !soft(f) {
			return true
		}
	}
	return false
}

// consequences are the steps that tighten a fastening to a wrong torque.
func consequences(p *rule.Pass, f *model.Node) []func(*diag.Finding) {
	var all []func(*diag.Finding)
	tightenings(p, func(s *model.Step, g *model.Node) {
		if g == f && len(all) < 4 && !s.Has("to") {
			all = append(all, rule.Related(s.Name, "Tightened to it here."))
		}
	})
	return all
}

// is is the verb that goes with what a fastening is called.
func is(f *model.Node) string { return rule.Is(bench.Object{Node: f}) }
