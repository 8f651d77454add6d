package values

import (
	"math/big"
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lint/prose"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// ProseContradicts holds the quantities in a step's words against those that
// the step is set to.
var ProseContradicts = &rule.Rule{
	Name:     "values/prose-contradicts",
	Severity: diag.Doubt,
	Finds:    "A quantity in a step's words that is near a number of the step and differs from it.",
	Why:      "A builder finds two numbers for one thing, and believes the one he reads last.",
	Remedy:   "Put the value into the words as ${…}, so that it is written once.",
	Bad: `
procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    text  = "Leave it for 3 h, away from the door." # want "3 h"
  }
}
`,
	Good: `
procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    text  = "Leave it for 2 h, away from the door."
  }
}
`,
	Run: func(p *rule.Pass) {
		gallon := p.Word("gallon")
		for _, s := range p.Steps() {
			var typed *typed
			for i := range s.Attrs {
				t, ok := s.Attrs[i].Value.(*model.Text)
				if role := s.Attrs[i].Def.Role; !ok || role != schema.Instruction && role != schema.Title || !digits(t) {
					continue
				}
				if typed == nil {
					typed = typedIn(s)
				}
				if len(typed.limits) == 0 {
					break
				}
				adapted := len(tooling.Adapters(tooling.Of(s))) > 0
				for _, sentence := range prose.Sentences(t) {
					for _, q := range prose.Quantities(sentence.Text, gallon) {
						if adapted && q.Dim().Fits(calc.Torque) && prose.Has(sentence.Text, "set", "setting", "dial", "adjust") {
							continue // a setting of the wrench: fastening/wrong-setting knows it
						}
						if q.Dim().Fits(calc.Length) && !q.IsLimits() && !prose.Has(sentence.Text, bounding...) {
							continue // workshops are full of lengths that are no limit
						}
						if other := typed.contradicted(q.Literal, prose.Has(sentence.Text, binding...)); other != nil {
							p.Report(sentence.Span(q.Start, q.End), "The words say "+sentence.Text[q.Start:q.End]+", and the step is set to "+shown(other.Limits)+".",
								rule.Related(other.at, "It is set here."))
						}
					}
				}
			}
		}
	},
}

// binding are the words that say what is accepted, not what is likely.
var binding = []string{"must", "should", "shall", "limit", "at least", "at most", "no more", "no less"}

// bounding are the words that go with a limit.
var bounding = []string{"must", "should", "shall", "between", "reads", "reading", "limit", "at least", "at most", "less than", "more than",
	"not over", "not under", "no more", "no less", "within", "up to", "torque", "set", "adjust"}

func digits(t *model.Text) bool {
	if s, ok := t.Source.Literal(); ok {
		return strings.ContainsAny(s, "0123456789")
	}
	return strings.ContainsAny(t.Plain(), "0123456789")
}

// typed is what a step is set to.
type typed struct {
	limits []setting
	takes  *calc.Quantity // any shorter time may stand in the words
}

// setting is one number or range that a builder must meet.
type setting struct {
	calc.Limits
	at   source.Span
	role schema.Role
}

func typedIn(s *model.Step) *typed {
	t := &typed{takes: s.Quantity("takes", "")}
	for i := range s.Attrs {
		switch a := &s.Attrs[i]; a.Def.Role {
		case schema.Value, schema.Judgement, schema.Expected, schema.Clock, schema.Duration, schema.Method:
			if a.Def.Name != "takes" {
				t.add(s.Node, a)
			}
		}
	}
	for _, e := range s.Kind.Does {
		if e.Verb != kind.Tightens {
			continue
		}
		for _, r := range s.AllRefs(e.Attr) {
			for _, name := range [...]string{"torque", "stages", "angle", "drag"} {
				if r.To != nil && r.To.Has(name) {
					t.add(r.To, r.To.Attr(name))
				}
			}
		}
	}
	if len(t.limits) == 0 {
		return t
	}
	for _, r := range s.AllRefs("supplies") { // the words may well speak of these
		if r.To == nil {
			continue
		}
		for i := range r.To.Attrs {
			t.add(r.To, &r.To.Attrs[i])
		}
	}
	return t
}

// add takes all the numbers of an attribute, whatever the place.
func (t *typed) add(n *model.Node, a *model.Attr) {
	var visit func(v model.Value)
	visit = func(v model.Value) {
		switch v := v.(type) {
		case *model.Formula:
			l, ok := v.Limits()
			if !ok {
				return
			}
			t.limits = append(t.limits, setting{l, n.ValueSpan(a), a.Def.Role})
		case model.List:
			for _, item := range v {
				visit(item)
			}
		case model.ByPlace:
			for _, p := range v {
				visit(p.Value)
			}
		case model.Times:
			for _, time := range v {
				if time.For != nil {
					t.limits = append(t.limits, setting{calc.Limits{Low: time.For, High: time.For}, n.ValueSpan(a), a.Def.Role})
				}
			}
		}
	}
	visit(a.Value)
}

// contradicted is the setting that a quantity in the words was meant to repeat
// and does not, or nil. Words that bind speak of what is accepted.
func (t *typed) contradicted(l calc.Literal, binding bool) *setting {
	ends := endsOf(l)
	if t.takes != nil && len(ends) == 1 && l.Dim().Fits(calc.Time) && ends[0].Cmp(*t.takes) <= 0 {
		return nil
	}
	if binding { // what is likely is wider than what is accepted
		binding = slices.ContainsFunc(t.limits, func(s setting) bool { return s.role == schema.Judgement && s.Type().Dim.Fits(l.Dim()) })
	}
	var near *setting
	for i := range t.limits {
		s := &t.limits[i]
		if !s.Type().Dim.Fits(l.Dim()) || binding && s.role == schema.Expected {
			continue
		}
		if s.agrees(ends) {
			return nil
		}
		if near == nil && s.near(ends) {
			near = s
		}
	}
	return near
}

func endsOf(l calc.Literal) []calc.Quantity {
	var ends []calc.Quantity
	for _, q := range []*calc.Quantity{l.Low, l.Nominal, l.High} {
		if q != nil {
			ends = append(ends, *q)
		}
	}
	return ends
}

// agrees reports that every number of the words is one of the setting or lies
// inside it.
func (s *setting) agrees(ends []calc.Quantity) bool {
	for _, q := range ends {
		if !s.Contain(q) && !same(q, s.Low) && !same(q, s.High) && !same(q, s.Target) {
			return false
		}
	}
	return true
}

// same compares at the decimals that the words give.
func same(q calc.Quantity, r *calc.Quantity) bool {
	if r == nil {
		return false
	}
	at := calc.NewQuantity(r.In(q.Unit).Num(), q.Unit, q.Decimals).Rounded()
	return at.Cmp(q.Rounded()) == 0
}

// near reports a number of the words that lies within half and twice a number of
// the setting: what is said of another thing seldom does.
func (s *setting) near(ends []calc.Quantity) bool {
	for _, q := range ends {
		for _, r := range []*calc.Quantity{s.Low, s.Target, s.High} {
			if r == nil || r.Sign() == 0 || q.Sign() != r.Sign() {
				continue
			}
			ratio := new(big.Rat).Quo(q.In(r.Unit).Num(), r.Num())
			if ratio.Cmp(big.NewRat(1, 2)) >= 0 && ratio.Cmp(big.NewRat(2, 1)) <= 0 {
				return true
			}
		}
	}
	return false
}
