package bench

import (
	"slices"
	"strings"
	"unicode"
)

// fill puts liquid into what the step names, through an opening that must be open.
func (r *run) fill(o *op) {
	for _, t := range o.through {
		r.checkOpening(o, t)
	}
	for _, t := range o.on {
		b := r.owner(t)
		if b == none {
			continue
		}
		for _, i := range r.open { // what came out inside is washed along
			if d := &r.beads.at[i]; d.squeeze && has(r.ops[d.slot].seal.bodies, b) && r.branch == nil {
				r.squeezed(o, i, "filled here")
			}
		}
		p := pond{body: b, act: r.act}
		if len(o.through) > 0 {
			p.through = o.through[0]
		}
		if i := r.pondIn(b); i != none {
			*r.ponds.edit(i) = p
		} else {
			r.ponds.add(p)
		}
	}
}

// drain lets it out.
func (r *run) drain(o *op) {
	for _, t := range o.through {
		r.checkOpening(o, t)
	}
	for i := range r.ponds.at {
		if p := &r.ponds.at[i]; !p.out && r.flowsFrom(o.on, p.body) {
			r.ponds.edit(id(i)).out = true
		}
	}
}

func (r *run) pondIn(b id) id {
	for i := range r.ponds.at {
		if p := &r.ponds.at[i]; p.body == b && !p.out {
			return id(i)
		}
	}
	return none
}

// checkOpening asks that nothing closes an opening: no lid, no tight plug.
func (r *run) checkOpening(o *op, t target) {
	if t.sort == aFastening {
		if g := &r.bolts.at[t.id]; g.grip == tight && !r.maybe && !g.maybe {
			b := r.breach(FilledClosed, o, "through", r.object(t), r.jointObject(t.id))
			r.cause(b, g.tightAt, "", "closed here")
		}
		return
	}
	for l := r.lidOn(t); l != none; l = r.lidOn(t) {
		p := &r.pieces.at[l]
		if !p.maybe {
			b := r.breach(FilledClosed, o, "through", r.object(t), r.bodyObject(l))
			r.cause(b, p.fitted, "", "closed here")
			r.declareCover(b, l, t)
		}
		r.setAside(l)
	}
}

// opensLiquid reports a part or fastening that is undone while liquid stands
// behind it, unless the liquid is let out there next.
func (r *run) opensLiquid(o *op, attr string, t target) {
	if r.maybe {
		return
	}
	for i := range r.ponds.at {
		p := &r.ponds.at[i]
		if p.out || t == p.through || !r.holdsBack(t, p) || r.above(t) || r.drainsThere(t, p) {
			continue
		}
		b := r.breach(OpenedWet, o, attr, r.object(t), r.bodyObject(p.body))
		r.cause(b, p.act, "", "filled here, and not drained")
		r.ponds.edit(id(i)).out = true
	}
}

// aloft are words for openings that lie above the liquid or at its level, and are
// opened with it in: to bleed, to breathe, to look at the level. Common practice,
// no source.
var aloft = []string{"bleed", "vent", "breath", "dipstick", "level", "air"}

// above says whether by their names a thing or the port that it closes lie above
// the liquid. The bench knows no heights.
func (r *run) above(t target) bool {
	high := func(name string) bool {
		for _, word := range words(name) {
			for _, w := range aloft {
				if strings.HasPrefix(word, w) {
					return true
				}
			}
		}
		return false
	}
	if o := r.object(t); o.Node != nil && high(o.Node.Title()) {
		return true
	}
	bodies := []id{t.id}
	if t.sort == aFastening {
		bodies = r.joints[t.id].pieces
	}
	for _, b := range bodies {
		for _, c := range r.bodies[b].covers {
			if c.sort == aSurface && high(r.object(c).Name) {
				return true
			}
		}
	}
	return false
}

func words(name string) []string {
	return strings.FieldsFunc(strings.ToLower(name), func(c rune) bool { return !unicode.IsLetter(c) })
}

// holdsBack says whether a part or fastening closes an opening of what is
// filled, other than the one it was filled through.
func (r *run) holdsBack(t target, p *pond) bool {
	switch t.sort {
	case aBody:
		for _, c := range r.bodies[t.id].covers {
			if c.sort == aSurface && c != p.through && r.skins[c.id].body == p.body && r.isPort(c.id) && r.together(t.id, p.body) {
				return true
			}
		}
		if has(r.bodies[t.id].seats, p.body) && r.together(t.id, p.body) && r.isSump(t.id) {
			return true
		}
		for _, j := range r.bodies[t.id].fastens { // a plug that is a part
			if r.joints[j].opens && has(r.joints[j].stack, p.body) {
				return true
			}
		}
	case aFastening:
		def := &r.joints[t.id]
		if !def.opens || t == p.through {
			return false
		}
		for _, b := range def.pieces { // the plug of the opening it was filled through
			for _, c := range r.bodies[b].covers {
				if c == p.through {
					return false
				}
			}
		}
		return has(def.stack, p.body) || len(def.stack) == 0 && r.screwedInto(def, p.body) || r.below(def, p.body)
	}
	return false
}

// screwedInto says whether a piece of a joint sits in a body.
func (r *run) screwedInto(def *joint, b id) bool {
	for _, piece := range def.pieces {
		if has(r.bodies[piece].seats, b) {
			return true
		}
	}
	return false
}

// isSump says whether a body has a port to drain through: the liquid of what it
// sits on stands in it.
func (r *run) isSump(b id) bool {
	first, n := r.surfaces(target{aBody, b})
	for s := first + 1; s < first+n; s++ {
		if r.isPort(s) && slices.Contains(words(r.object(target{aSurface, s}).Name), "drain") {
			return true
		}
	}
	return false
}

// below says whether a plug closes a port of something that sits directly on
// what is filled: a sump, which the liquid runs down into.
func (r *run) below(def *joint, filled id) bool {
	for _, b := range def.pieces {
		for _, c := range r.bodies[b].covers {
			if c.sort == aSurface && r.isPort(c.id) && has(r.bodies[r.skins[c.id].body].seats, filled) && r.together(r.skins[c.id].body, filled) {
				return true
			}
		}
	}
	return false
}

func (r *run) isPort(s id) bool {
	b := &r.bodies[r.skins[s].body]
	i := s - b.first
	return i > 0 && r.items[b.item].names[i-1].sub == "port"
}

// drainsThere says whether the opening is made to drain the liquid: a later act
// drains it through what t closes.
func (r *run) drainsThere(t target, p *pond) bool {
	for _, act := range r.flowing {
		o := &r.ops[r.acts[act].slot]
		if act <= r.act || !r.flowsFrom(o.on, p.body) {
			continue
		}
		for _, u := range o.through {
			switch {
			case u == t:
				return true
			case t.sort == aBody && hasTarget(r.bodies[t.id].covers, u):
				return true
			case t.sort == aBody && u.sort == aFastening && has(r.joints[u.id].pieces, t.id):
				return true
			case t.sort == aFastening && u.sort == aSurface:
				for _, b := range r.joints[t.id].pieces {
					if hasTarget(r.bodies[b].covers, u) {
						return true
					}
				}
				if has(r.joints[t.id].stack, r.skins[u.id].body) && r.joints[t.id].opens {
					return true
				}
			}
		}
		return false
	}
	return false
}

// flowsFrom says whether a step that drains what ts name lets out the liquid in
// b: they are b, or sit directly on it.
func (r *run) flowsFrom(ts []target, b id) bool {
	for _, t := range ts {
		if c := r.owner(t); c == b || c != none && has(r.bodies[c].seats, b) {
			return true
		}
	}
	return false
}
