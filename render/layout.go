package render

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
)

// layOut decides which steps are printed once and which place by place, before
// anything refers to one.
//
// Neighbouring steps at the same places are a group, done place by place. A step
// on its own visits all places in order: it is printed once, with a box for each
// place, unless what it says differs from place to place.
func (l *lowering) layOut() {
	l.cards = map[*model.Step][]string{}
	l.numbers = map[*model.Node]string{}
	for i, p := range l.m.Procedures {
		l.numbers[p] = strconv.Itoa(i + 1)
		if p.Places() != nil {
			for _, s := range p.Steps {
				l.placed(s, p.Places())
			}
			continue
		}
		for i := 0; i < len(p.Steps); {
			j := run(p.Steps, i)
			for _, s := range p.Steps[i:j] {
				if j-i > 1 && s.Places != nil || s.Places != nil && differs(s) {
					l.placed(s, s.Places.Names("names"))
				}
			}
			i = j
		}
	}
}

func (l *lowering) placed(s *model.Step, places []string) {
	if only := s.Names("only"); only != nil {
		places = only
	}
	l.cards[s] = places
	for _, b := range s.Blocks {
		for _, inner := range b.Steps {
			l.placed(inner, places)
		}
	}
}

// run is the end of the run of neighbouring steps at the same places.
func run(steps []*model.Step, i int) int {
	j := i + 1
	for j < len(steps) && steps[i].Places != nil && steps[j].Places == steps[i].Places {
		j++
	}
	return j
}

// differs reports that a step says something else at each place.
func differs(s *model.Step) bool {
	if s.Kind.Yields == kind.Pack || s.Kind.Yields == kind.Number {
		return true
	}
	return anyNode(s.Node, func(n *model.Node) bool {
		for i := range n.Attrs {
			if byPlace(n.Attrs[i].Value) {
				return true
			}
			refs, _ := n.Attrs[i].Value.(model.Refs)
			for _, r := range refs {
				if n.Attrs[i].Def.Role == schema.Subject && r.To != nil && anyValueByPlace(r.To) {
					return true
				}
			}
		}
		return false
	})
}

func anyValueByPlace(n *model.Node) bool {
	for _, a := range n.ByRole(schema.Value) {
		if byPlace(a.Value) {
			return true
		}
	}
	return false
}

// anyNode asks of a node, and of all that is nested in it.
func anyNode(n *model.Node, ask func(*model.Node) bool) bool {
	if ask(n) {
		return true
	}
	for _, b := range n.Blocks {
		if anyNode(b, ask) {
			return true
		}
	}
	for _, s := range n.Steps {
		if anyNode(s.Node, ask) {
			return true
		}
	}
	return false
}

// byPlace reports a value that depends on the place where the work stands.
func byPlace(v model.Value) bool {
	switch v := v.(type) {
	case model.ByPlace:
		return true
	case *model.Text:
		for _, f := range v.Values {
			if byPlace(f) {
				return true
			}
		}
	case *model.Formula:
		if v == nil {
			return false
		}
		here := false
		calc.Walk(v.Expr, func(e calc.Expr) bool {
			if x, ok := e.(*calc.Var); ok && (x.Name == "place" || x.Place == model.Here) {
				here = true
			}
			return !here
		})
		return here
	}
	return false
}

// at is the place by which a step is printed, seen from a place of the work.
func (l *lowering) at(s *model.Step, place string) string {
	cards := l.cards[s]
	for _, c := range cards {
		if c == place {
			return place
		}
	}
	if len(cards) > 0 {
		return cards[0]
	}
	return ""
}

// ref points to a step or procedure, as seen from a place of the work.
func (l *lowering) ref(n *model.Node, place string) Ref {
	r := Ref{Address: n.Address, Title: n.Title()}
	switch {
	case n.Step != nil:
		r.Number = n.Step.Number
		r.Place = l.at(n.Step, place)
		r.Title = l.line(n.Text("title"), &scope{l, r.Place}).Plain()
	default:
		r.Number = l.numbers[n]
		for _, p := range n.Places() {
			if p == place || r.Place == "" {
				r.Place = p
			}
		}
	}
	r.ID = anchor(n.Address, r.Place)
	return r
}

// anchor is a name to jump to: the address, and the place in letters, digits
// and dashes.
func anchor(address, place string) string {
	id := strings.TrimPrefix(address, "procedure.")
	if place == "" {
		return id
	}
	var b strings.Builder
	b.WriteString(id + "--")
	for _, r := range place {
		switch {
		case r == ' ':
			b.WriteByte('-')
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			b.WriteRune(r)
		default:
			fmt.Fprintf(&b, "_%x", r)
		}
	}
	return b.String()
}
