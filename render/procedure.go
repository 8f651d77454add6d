package render

import (
	"strings"

	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
)

// procedures are a procedure at each of its places, or once.
func (l *lowering) procedures(p *model.Node) []Procedure {
	places := p.Places()
	if places == nil {
		places = []string{""}
	}
	all := make([]Procedure, len(places))
	for i, place := range places {
		all[i] = l.procedure(p, &scope{l, place})
	}
	return all
}

func (l *lowering) procedure(p *model.Node, sc *scope) Procedure {
	out := Procedure{Ref: l.ref(p, sc.place)}
	out.Title = l.line(p.Text("title"), sc).Plain()
	if out.When, out.Left = l.condition(p, sc); out.Left != "" {
		return out
	}
	out.Intro = l.prose(p.Text("intro"), sc)
	if q := p.Quantity("conditions", sc.place); q != nil {
		out.Conditions = l.quantity(*q)
	}
	for _, r := range p.Refs("after", sc.place) {
		if r.To != nil {
			out.After = append(out.After, l.ref(r.To, sc.place))
		}
	}
	if p.Places() != nil {
		out.add("", l.steps(l.doneAt(p.Steps, sc.place), sc))
	} else {
		for i := 0; i < len(p.Steps); {
			j := run(p.Steps, i)
			l.run(&out, p.Steps[i:j], sc)
			i = j
		}
	}
	out.gather()
	for _, e := range p.Blocks {
		if e.Is(entry.Example) && e.Flag("shown") {
			out.Examples = append(out.Examples, l.example(e))
		}
	}
	return out
}

// run prints a run of neighbouring steps at the same places.
func (l *lowering) run(out *Procedure, steps []*model.Step, sc *scope) {
	cards := l.cards[steps[0]]
	switch {
	case len(steps) > 1:
		for _, place := range steps[0].Places.Names("names") {
			if done := l.doneAt(steps, place); done != nil {
				out.add(place, l.steps(done, &scope{l, place}))
			}
		}
	case cards != nil:
		for _, place := range cards {
			out.add(place, l.steps(steps, &scope{l, place}))
		}
	default:
		out.add("", l.steps(steps, sc))
	}
}

// doneAt are the steps that are done at a place.
func (l *lowering) doneAt(steps []*model.Step, place string) []*model.Step {
	var done []*model.Step
	for _, s := range steps {
		if contains(l.cards[s], place) {
			done = append(done, s)
		}
	}
	return done
}

// add puts steps into the group that is open where it is at the same place.
func (p *Procedure) add(place string, steps []Step) {
	if k := len(p.Groups) - 1; k >= 0 && p.Groups[k].Place == place && place == "" {
		p.Groups[k].Steps = append(p.Groups[k].Steps, steps...)
		return
	}
	p.Groups = append(p.Groups, Group{place, steps})
}

func (l *lowering) steps(steps []*model.Step, sc *scope) []Step {
	all := make([]Step, len(steps))
	for i, s := range steps {
		all[i] = l.step(s, sc)
	}
	return all
}

// example is a worked example: what is read, and what comes of it.
func (l *lowering) example(e *model.Node) Example {
	out := Example{Title: e.ID}
	for _, a := range e.ByRole(schema.Expected) {
		out.Given = append(out.Given, l.pairs(a)...)
	}
	for _, a := range e.ByRole(schema.Value) {
		out.Gives = append(out.Gives, l.pairs(a)...)
	}
	return out
}

func (l *lowering) pairs(a *model.Attr) []Pair {
	t, ok := a.Value.(*model.Table)
	if !ok {
		return nil
	}
	var all []Pair
	for _, p := range t.Pairs {
		if p.Key.To == nil || p.Key.To.Step == nil {
			continue
		}
		pair := Pair{Step: l.ref(p.Key.To, p.Key.Place), Name: p.Key.Name}
		switch v := p.Value.(type) {
		case *model.Formula:
			if set := l.one(v, &scope{lowering: l}); set != nil {
				pair.Value = set.String()
			}
		case model.Exact:
			pair.Value = string(v)
		}
		if p.Key.Place != "" && pair.Step.Place == "" {
			pair.Name = strings.TrimSpace(pair.Name + " " + p.Key.Place)
		}
		all = append(all, pair)
	}
	return all
}

func contains(all []string, s string) bool {
	for _, a := range all {
		if a == s {
			return true
		}
	}
	return false
}

// gather lists what all steps use, each thing once, so that it can be laid out
// before the procedure starts.
func (p *Procedure) gather() {
	seen := map[string]bool{}
	add := func(list *[]Item, items []Item) {
		for _, it := range items {
			if !seen[it.Address] {
				seen[it.Address] = true
				*list = append(*list, it)
			}
		}
	}
	for _, g := range p.Groups {
		for _, s := range g.Steps {
			add(&p.Tools, s.Tools)
			add(&p.Supplies, s.Supplies)
			add(&p.Protection, s.Protection)
		}
	}
}
