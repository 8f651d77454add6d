package rework

import (
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Need is a supply to have at hand for what is done again.
type Need struct {
	Supply *model.Node
	For    []Act // in order
}

// Needs are the supplies of what is done again, in the order of their first use.
func (p *Plan) Needs() []Need {
	var all []Need
	for _, a := range p.Again {
		for _, name := range [...]string{"supplies", "by"} {
			for _, r := range a.Step.Refs(name, a.Place) {
				if r.To == nil || !r.To.Is(entry.Supply) {
					continue
				}
				i := slices.IndexFunc(all, func(n Need) bool { return n.Supply == r.To })
				if i < 0 {
					i, all = len(all), append(all, Need{Supply: r.To})
				}
				if f := all[i].For; len(f) == 0 || f[len(f)-1] != a {
					all[i].For = append(all[i].For, a)
				}
			}
		}
	}
	return all
}

// steps are the numbers of the steps that a supply is for, each once.
func (n *Need) steps() []string {
	var all []string
	for _, a := range n.For {
		if !slices.Contains(all, a.Step.Number) {
			all = append(all, a.Step.Number)
		}
	}
	return all
}

// ahead are the values as they are known before the rework begins: what is read
// again is not.
func (p *Plan) ahead() *values.Env {
	g := p.Given
	g.Readings = map[string][]calc.Quantity{}
	for key, read := range p.Given.Readings { // into a map
		g.Readings[key] = read
	}
	for _, a := range p.Again {
		if a.Step.Kind.Yields == kind.Reading {
			for _, key := range keys(a.Step, a.Place) {
				delete(g.Readings, values.Key(a.Step, key))
			}
		}
	}
	return values.NewPlan(p.Manual).With(g)
}

// titles says what steps are called, with the values that are known.
type titles struct {
	env   *values.Env
	style calc.Style
	now   *model.Manual
}

func (p *Plan) titles() titles { return titles{p.ahead(), style(p.Manual), p.Manual} }

// of is a step's title, with its place where that is not in it.
func (t titles) of(s *model.Step, place string) string {
	text := s.Text("title")
	if text == nil || t.now.Find(s.Address) != s.Node { // of another revision, whose values are not at hand
		said := strings.ReplaceAll(s.Title(), "«…»", "…")
		if place != "" {
			said += " (" + place + ")"
		}
		return said
	}
	said := t.env.Fill(text, place, t.style)
	if place != "" && said == t.env.Fill(text, "", t.style) {
		said += " (" + place + ")"
	}
	return said
}

// group is steps of which the same is said, at several places.
type group struct {
	step   *model.Step
	places []string
	why    string
}

// grouped puts items together that differ in nothing but the place.
func grouped(items []Item) []group {
	var all []group
	for _, i := range items {
		if n := len(all); n > 0 && all[n-1].step == i.Step && all[n-1].why == i.Why && !strings.Contains(i.Step.Title(), "«…»") {
			all[n-1].places = append(all[n-1].places, i.Place)
			continue
		}
		all = append(all, group{i.Step, []string{i.Place}, i.Why})
	}
	return all
}

// group is the title of a step, with the places that are meant where these are
// not all that it has.
func (t titles) group(g group) string {
	if len(g.places) == 1 {
		return t.of(g.step, g.places[0])
	}
	said := t.of(g.step, "")
	if len(g.places) < len(values.Keys(g.step)) {
		said += " (" + strings.Join(g.places, ", ") + ")"
	}
	return said
}
