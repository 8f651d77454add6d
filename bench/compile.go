package bench

import (
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"slices"
)

// compile makes the ops of all steps.
func (x *index) compile() {
	x.m.EachStep(func(s *model.Step) {
		for i, place := range x.placesOf(s.Places) {
			x.ops[x.first[s]+id(i)] = x.op(s, place)
		}
	})
	for i := range x.ops {
		x.mark(&x.ops[i], id(i))
		for _, t := range x.ops[i].heldBy {
			if x.items[t].tool && !has(x.holders, t) {
				x.holders = append(x.holders, t)
			}
		}
		x.settle(&x.ops[i], id(i))
		if o := &x.ops[i]; o.has(kind.Wets) && slices.ContainsFunc(o.supplies, func(s *model.Node) bool { return s.Has("cure") }) && len(joints(o.on)) > 0 {
			x.coats = append(x.coats, id(i))
		}
		if s := x.ops[i].seal; s != nil {
			x.finishSeal(s, id(i))
		}
	}
}

func joints(ts []target) []id {
	var all []id
	for _, t := range ts {
		if t.sort == aFastening {
			all = append(all, t.id)
		}
	}
	return all
}

// slotsFor are the slots that a reference to a step means at a place.
func (x *index) slotsFor(r model.Ref, place string) []id {
	if r.Place != "" {
		place = r.Place
	}
	return x.slotsOf(r.To.Step, place)
}

// effects fills in what the kind does with the attributes that are written.
func (x *index) effects(o *op) {
	does := o.step.Kind.Does
	for i, e := range does {
		a := o.step.Attr(e.Attr)
		if a == nil {
			continue
		}
		f := effect{verb: e.Verb, attr: e.Attr}
		if v, ok := model.AtPlace(a.Value, o.place).(model.Refs); ok {
			f.at = o.on
			if e.Attr != "on" {
				f.at = x.targets(v, o.place)
			}
		}
		if o.effects == nil {
			o.effects = make([]effect, 0, len(does)-i)
		}
		o.effects = append(o.effects, f)
	}
}

func (o *op) has(v kind.Verb) bool {
	for i := range o.effects {
		if o.effects[i].verb == v {
			return true
		}
	}
	return false
}

// objects are what the step touches or is about.
func (o *op) objects() []target {
	all := o.on
	for i := range o.effects {
		if o.effects[i].attr != "on" {
			all = append(all[:len(all):len(all)], o.effects[i].at...)
		}
	}
	return all
}

// uses notes the values that an attribute rests on. Text is left out: a value
// that is not known yet prints as a blank.
func (x *index) uses(o *op, a *model.Attr, v model.Value) {
	take := func(refs []model.Ref, packs bool) {
		for i := range refs {
			r := &refs[i]
			if r.To == nil || r.To.Step == nil {
				continue
			}
			y := r.To.Step.Kind.Yields
			if y == kind.Nothing || y == kind.Mark || packs && y != kind.Pack {
				continue
			}
			o.more().uses = append(o.more().uses, use{x.slotsFor(*r, o.place), a.Def.Name})
		}
	}
	switch v := v.(type) {
	case *model.Formula:
		take(v.Refs, false)
	case model.List:
		for _, item := range v {
			if f, ok := item.(*model.Formula); ok {
				take(f.Refs, false)
			}
		}
	case model.Refs:
		if takesPacks(a.Def) {
			take(v, true)
		}
	}
}

func takesPacks(def *schema.Attr) bool {
	for _, t := range def.To {
		if t == "pack" {
			return true
		}
	}
	return false
}

// finishSeal finds the bodies that a seal joins and the joints that clamp them.
func (x *index) finishSeal(s *sealing, slot id) {
	take := func(b id) {
		if b != none && !has(s.bodies, b) {
			s.bodies = append(s.bodies, b)
		}
	}
	for _, t := range s.faces {
		take(x.owner(t))
		if t.sort == aFastening {
			s.clamps = append(s.clamps, t.id)
		}
	}
	for _, c := range s.closedBy {
		for _, e := range x.ops[c].effects {
			if e.verb == kind.Joins {
				for _, t := range e.at {
					take(t.id)
					if len(s.bodies) == 1 { // only its own face is named: it seals to what it sits on
						for _, seat := range x.bodies[t.id].seats {
							take(seat)
						}
					}
				}
			}
		}
	}
	for _, b := range s.bodies {
		x.bodies[b].seals = append(x.bodies[b].seals, slot)
		for _, j := range x.bodies[b].clamps {
			if n := common(x.joints[j].stack, s.bodies); n >= 2 && !has(s.clamps, j) {
				s.clamps = append(s.clamps, j)
			}
		}
	}
}

func common(a, b []id) int {
	n := 0
	for _, i := range a {
		if has(b, i) {
			n++
		}
	}
	return n
}

// most is how many acts a manual may come to. Places multiply: a page of them
// and a page of steps would make more acts than any machine holds.
const most = 1 << 18

// addPlaces reads the names of all places. Where the manual would come to more
// than the most acts, the bench looks at the first few places of each list only.
func (x *index) addPlaces() {
	n, each := 0, map[*model.Node]int{}
	x.m.EachStep(func(s *model.Step) {
		n++
		each[s.Places]++
	})
	for _, p := range x.m.Of(entry.Places.Name) {
		names := p.Names("names")
		if len(names) == 0 {
			names = nowhere
		}
		x.names[p] = names[:max(1, min(len(names), (most-n)/max(1, each[p])))]
		n += each[p] * len(x.names[p])
	}
}
