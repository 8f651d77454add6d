package bench

import (
	"fettle/lang/kind"
	"fettle/lang/model"
)

// lidOn gives what covers a target at this moment, or none: something that is
// on, moves together with the target, and has not been worked under already.
func (r *run) lidOn(t target) id {
	switch t.sort {
	case aBody:
		return r.firstLid(r.index.bodies[t.id].lids, t.id)
	case aSurface:
		b := r.skins[t.id].body
		if l := r.firstLid(r.skins[t.id].lids, b); l != none {
			return l
		}
		return r.firstLid(r.index.bodies[b].lids, b)
	case aFastening:
		j := &r.joints[t.id]
		if l := r.lidOfJoint(j, j.lids); l != none || len(j.stack) == 0 {
			return l
		}
		for _, p := range j.pieces { // what covers its bolts covers it
			if b := &r.index.bodies[p]; len(b.fastens) == 1 {
				if l := r.lidOfJoint(j, b.lids); l != none {
					return l
				}
			}
		}
		// What covers the part under the heads covers the heads.
		return r.firstLidBut(r.index.bodies[j.stack[0]].lids, j.stack[0], j)
	}
	return none
}

func (r *run) firstLid(lids []id, b id) id { return r.firstLidBut(lids, b, nil) }

func (r *run) firstLidBut(lids []id, b id, j *joint) id {
	for _, l := range lids {
		if r.covers(l) && r.together(l, b) && (j == nil || !has(j.stack, l) && !has(j.pieces, l)) {
			return l
		}
	}
	return none
}

func (r *run) lidOfJoint(j *joint, lids []id) id {
	for _, l := range lids {
		if !r.covers(l) {
			continue
		}
		if len(j.stack) == 0 {
			return l
		}
		for _, b := range j.stack {
			if r.together(l, b) {
				return l
			}
		}
	}
	return none
}

// covers says whether a body is on and in the way.
func (r *run) covers(b id) bool {
	p := &r.pieces.at[b]
	return (p.on > 0 || p.meant) && !p.through
}

// reachAll asks that everything an effect acts on can be reached.
func (r *run) reachAll(o *op, e *effect) {
	for _, t := range e.at {
		r.reach(o, e.attr, t)
	}
}

// reach asks that a target can be reached.
func (r *run) reach(o *op, attr string, t target) {
	for l := r.lidOn(t); l != none; l = r.lidOn(t) {
		r.inTheWay(o, attr, t, l)
	}
}

// inTheWay reports that l covers t, and sets the bench to what the author
// meant: l is off where it is fitted again later, else it is worked under.
func (r *run) inTheWay(o *op, attr string, t target, l id) {
	p := &r.pieces.at[l]
	cover := r.bodyObject(l)
	switch {
	case p.on == 0: // only taken as on
		r.pieces.edit(l).through = true
		return
	case p.maybe && r.branch == nil: // there under some readings only
	case r.items[r.index.bodies[l].item].tool && r.branch == nil && p.fitted >= 0 && !r.takenLater(l):
		b := r.breachAt(ToolLeftOn, p.fitted, "", cover)
		r.here(b, o, "in the way of this step")
		r.lay(l)
		return
	case p.trial && !r.comesOff(l) && p.fitted >= 0:
		b := r.breachAt(TrialNeverUndone, p.fitted, "", cover)
		r.here(b, o, "in the way of this step")
	case o.critical && o.step.Kind.Judges && p.fitted >= 0 && r.branch == nil && p.fitted < r.act:
		b := r.breachAt(CoveredUnaccepted, p.fitted, "", Object{Node: o.step.Node, Place: o.place}, r.object(t))
		r.here(b, o, "accepted only here")
	default:
		b := r.breach(Covered, o, attr, r.object(t), cover)
		r.cause(b, p.fitted, "", "covered here")
		r.declareCover(b, l, t)
	}
	r.setAside(l)
}

// setAside takes a body that is in the way as taken off, where the author fits
// it again later, or else as no longer in the way.
func (r *run) setAside(l id) {
	e, ok := next(r.moves[l], r.act, anything)
	again := ok && puts(e.verb)
	for _, j := range r.index.bodies[l].fastens {
		if e, ok := next(r.grips[j], r.act, anything); ok && e.verb == kind.Starts {
			again = true
		}
	}
	if again && r.branch == nil {
		r.lay(l)
	} else {
		r.pieces.edit(l).through = true
	}
}

func (r *run) takenLater(b id) bool {
	_, ok := next(r.moves[b], r.act, takes)
	return ok
}

// declareCover points at where the catalogue says that l covers t.
func (r *run) declareCover(b *Breach, l id, t target) {
	n := r.items[r.index.bodies[l].item].node
	if n.Has("covers") {
		declared(b, n, "covers", "said here to cover it")
	}
}

// leftOut points at why a step is not done under this choice.
func leftOut(b *Breach, s *model.Step) {
	n := s.Node
	if !n.Has("when") && s.Procedure.Has("when") {
		n = s.Procedure
	}
	declared(b, n, "when", "left out under this choice")
}

// comesOff says whether a body is taken off before it is fitted again.
func (r *run) comesOff(b id) bool {
	e, ok := next(r.moves[b], r.act, anything)
	return ok && takes(e.verb)
}

// checkMarks asks that the marks which a step goes by are there and in sight.
func (r *run) checkMarks(o *op) {
	for _, g := range o.marks {
		where := []target{g.at}
		if g.at.sort == aSlot {
			w := &r.words.at[g.at.id]
			made := &r.ops[g.at.id]
			switch {
			case made.step.Branch != nil && r.branch == nil: // made in a branch that leads here
			case w.act < 0:
				if !r.once(MarkNotMade, g.at.id, none) {
					continue
				}
				b := r.breach(MarkNotMade, o, g.attr, r.object(g.at))
				if act := r.actOf[g.at.id]; act > r.act {
					r.cause(b, act, "", "made only here")
				} else {
					leftOut(b, made.step)
				}
				continue
			case w.wiped >= 0:
				if r.once(MarkWiped, g.at.id, w.wiped) {
					b := r.breach(MarkWiped, o, g.attr, r.object(g.at))
					r.cause(b, w.act, "", "made here")
					r.cause(b, w.wiped, "", "wiped off here")
				}
				continue
			}
			where = made.on
		}
		for _, t := range where {
			for l := r.lidOn(t); l != none; l = r.lidOn(t) {
				if !r.pieces.at[l].maybe {
					b := r.breach(MarkCovered, o, g.attr, r.object(g.at), r.bodyObject(l))
					r.cause(b, r.pieces.at[l].fitted, "", "covered here")
					r.declareCover(b, l, t)
				}
				r.setAside(l)
			}
		}
	}
}

// wipe takes pen and paint marks off a surface that is cleaned.
func (r *run) wipe(t target) {
	b := r.owner(t)
	if b == none {
		return
	}
	for _, slot := range r.index.bodies[b].marked {
		o, w := &r.ops[slot], &r.words.at[slot]
		if w.act < 0 || w.wiped >= 0 || o.how != "pen" && o.how != "paint" {
			continue
		}
		for _, u := range o.on {
			if u == t || t.sort == aBody && r.owner(u) == b {
				r.words.edit(slot).wiped = r.act
			}
		}
	}
}

// once says whether this has not been said before.
func (r *run) once(w What, slot, at id) bool {
	k := key{w, slot, at}
	if r.branch != nil {
		return !r.told[k]
	}
	if r.told[k] {
		return false
	}
	r.told[k] = true
	return true
}

// marks enters the slots that mark a body.
func (x *index) mark(o *op, slot id) {
	if !o.has(kind.MakesMark) {
		return
	}
	for _, t := range o.on {
		if b := x.owner(t); b != none && !has(x.bodies[b].marked, slot) {
			x.bodies[b].marked = append(x.bodies[b].marked, slot)
		}
	}
}
