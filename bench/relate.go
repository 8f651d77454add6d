package bench

import (
	"slices"

	"fettle/lang/entry"
	"fettle/lang/model"
)

// addJoints gives every fastening a joint for each place.
func (x *index) addJoints() {
	n := 0
	for _, e := range x.m.Entries {
		if e.Is(entry.Fastening) {
			n += len(x.placesOf(e.Ref("at_each")))
		}
	}
	x.joints = make([]joint, 0, n)
	for _, n := range x.m.Entries {
		if !n.Is(entry.Fastening) {
			continue
		}
		x.entries[n] = target{aFastening, id(len(x.joints))}
		places := x.placesOf(n.Ref("at_each"))
		x.count[n] = len(places)
		for _, p := range places {
			j := joint{node: n, place: p}
			j.stack = x.bodiesIn(n, "stack", p)
			j.pieces = x.bodiesIn(n, "fasteners", p)
			for _, r := range n.Refs("locked_by", p) {
				switch {
				case r.To == nil:
				case r.To.Is(entry.Supply):
					j.glue = r.To
				default:
					j.locks = append(j.locks, x.bodiesOf(r.To, p)...)
				}
			}
			for _, r := range n.Refs("lubricant", p) {
				if r.To != nil {
					j.wet = r.To
				} else {
					j.dry = true
				}
			}
			switch n.Word("does") {
			case "set screw":
				j.slips = true
			case "gland", "pipe":
				j.slips, j.opens = true, true
			case "plug":
				j.opens = true
			case "adjuster", "lock nut":
				j.moves = true
			}
			x.joints = append(x.joints, j)
		}
	}
}

// bodiesIn are the bodies that an attribute names at a place, each once.
func (x *index) bodiesIn(n *model.Node, attr, place string) []id {
	var all []id
	for _, r := range n.Refs(attr, place) {
		at := place
		if r.Place != "" {
			at = r.Place
		}
		for _, b := range x.bodiesOf(x.itemOf(r.To), at) {
			if !has(all, b) {
				all = append(all, b)
			}
		}
	}
	return all
}

// relate ties bodies and joints to what they sit on, cover, hold and clamp.
func (x *index) relate() {
	for i := range x.joints {
		j := &x.joints[i]
		for _, b := range j.stack {
			x.bodies[b].clamps = append(x.bodies[b].clamps, id(i))
		}
		for _, b := range j.pieces {
			x.bodies[b].fastens = append(x.bodies[b].fastens, id(i))
		}
		for _, b := range j.locks {
			x.bodies[b].locks = append(x.bodies[b].locks, id(i))
		}
	}
	for i := range x.bodies {
		x.relateBody(id(i))
	}
	for i := range x.joints {
		x.joints[i].ready = x.standsReady(&x.joints[i])
	}
}

func (x *index) relateBody(me id) {
	b := &x.bodies[me]
	n := x.items[b.item].node
	b.seats = x.bodiesIn(n, "sits_on", b.place)
	if len(b.seats) == 0 { // a bolt sits where its fastening does
		for _, j := range append(b.fastens[:len(b.fastens):len(b.fastens)], b.locks...) {
			if stack := x.joints[j].stack; len(stack) > 0 && !has(b.seats, stack[0]) {
				b.seats = append(b.seats, stack[0])
			}
		}
	}
	if i := slices.Index(b.seats, me); i >= 0 {
		b.seats = slices.Delete(b.seats, i, i+1)
	}
	for _, s := range b.seats {
		x.bodies[s].load = append(x.bodies[s].load, me)
	}
	b.base = len(b.seats) == 0 && len(b.fastens) == 0 && len(b.locks) == 0
	b.covers = x.targets(n.Refs("covers", b.place), b.place)
	for _, t := range b.covers {
		switch t.sort {
		case aBody:
			if t.id != me {
				x.bodies[t.id].lids = append(x.bodies[t.id].lids, me)
			}
		case aSurface:
			x.skins[t.id].lids = append(x.skins[t.id].lids, me)
		case aFastening:
			x.joints[t.id].lids = append(x.joints[t.id].lids, me)
		}
	}
	b.heldBy = x.targets(n.Refs("held_by", b.place), b.place)
}

// standsReady says whether a joint is tight before the work begins: all that it
// clamps and all that it is made of is in place, or it came assembled on the
// one part that it sits in.
func (x *index) standsReady(j *joint) bool {
	if len(j.pieces) == 0 && len(j.stack) < 2 {
		return true
	}
	for _, b := range j.stack {
		if !x.bodies[b].base && x.bodies[b].inPlace == 0 {
			return false
		}
	}
	for _, b := range j.pieces {
		if x.bodies[b].inPlace == 0 {
			return false
		}
	}
	return true
}

// guard notes, for everything that may be covered or disturbed, which critical
// or held step has accepted it.
func (x *index) guard() {
	held := make([]bool, len(x.ops))
	for i := range x.ops {
		for _, slots := range x.ops[i].checks {
			for _, s := range slots {
				held[s] = true
			}
		}
	}
	for i := range x.ops {
		o, slot := &x.ops[i], id(i)
		if o.step == nil || o.step.Branch != nil {
			continue
		}
		for _, t := range o.objects() {
			if o.critical && o.step.Kind.Judges {
				x.protect(t, slot)
			}
			if held[i] {
				switch b := x.owner(t); {
				case b != none:
					x.bodies[b].checked = append(x.bodies[b].checked, slot)
				case t.sort == aFastening:
					x.joints[t.id].checked = append(x.joints[t.id].checked, slot)
				}
			}
		}
	}
}

// protect enters a critical slot at what it judges, and at the fastenings that
// hold it: those that clamp it onto something.
func (x *index) protect(t target, slot id) {
	b := x.owner(t)
	if t.sort == aFastening {
		x.joints[t.id].guards = append(x.joints[t.id].guards, slot)
	}
	if b == none {
		return
	}
	x.bodies[b].guards = append(x.bodies[b].guards, slot)
	if t.sort == aSurface {
		x.skins[t.id].guards = append(x.skins[t.id].guards, slot)
	}
	for _, j := range x.bodies[b].clamps {
		if x.holdsDown(j, b) && !has(x.joints[j].guards, slot) {
			x.joints[j].guards = append(x.joints[j].guards, slot)
		}
	}
}

// holdsDown says whether a joint clamps b onto something: what lies under it in
// the stack, or what both b and the pieces of the joint sit on, as a hub and its
// nut on an axle.
func (x *index) holdsDown(j, b id) bool {
	def := &x.joints[j]
	if def.stack[len(def.stack)-1] != b {
		return true
	}
	for _, p := range def.pieces {
		if common(x.bodies[p].seats, x.bodies[b].seats) > 0 {
			return true
		}
	}
	return false
}

func has(ids []id, i id) bool {
	for _, j := range ids {
		if i == j {
			return true
		}
	}
	return false
}
