package bench

import (
	"time"

	"fettle/lang/kind"
)

// clean makes faces clean, wipes what wipes off, and takes squeeze-out away.
func (r *run) clean(o *op) {
	for _, t := range o.on {
		switch t.sort {
		case aFastening:
			g := r.bolts.edit(t.id)
			g.oiled, g.glued, g.wet = false, g.glued && g.grip == tight, nil
			continue
		case aSurface, aBody:
			first, n := r.surfaces(t)
			for s := first; s < first+n; s++ {
				if r.sealedIn(s) {
					continue
				}
				f := r.films.edit(s)
				f.clean, f.since, f.cleaned = true, r.end, r.act
			}
		default:
			continue
		}
		r.wipe(t)
		for _, slot := range r.bodies[r.owner(t)].seals {
			if i := r.words.at[slot].bead; i != none && r.beads.at[i].closed >= 0 {
				r.beads.edit(i).squeeze = false
			}
		}
	}
}

// sealedIn says whether a surface lies in a closed seal, out of reach of any rag.
func (r *run) sealedIn(s id) bool {
	for _, slot := range r.bodies[r.skins[s].body].seals {
		i := r.words.at[slot].bead
		if i == none || r.beads.at[i].closed < 0 || r.beads.at[i].parted >= 0 {
			continue
		}
		if !r.whole(s) && hasTarget(r.ops[slot].seal.faces, target{aSurface, s}) {
			return true
		}
	}
	return false
}

// surfaces are those that a target covers: one, or the whole of a body with all
// that is named on it.
func (r *run) surfaces(t target) (first, n id) {
	if t.sort == aSurface {
		return t.id, 1
	}
	b := &r.bodies[t.id]
	return b.first, id(len(r.items[b.item].names)) + 1
}

// dirty notes that a surface is no longer clean. What is put on a whole part
// says nothing of its faces.
func (r *run) dirty(t target) {
	s := t.id
	switch t.sort {
	case aBody:
		s = r.bodies[t.id].first
	case aFastening, aSlot:
		return
	}
	f := r.films.edit(s)
	f.clean, f.dirtied = false, r.act
}

// wet puts a supply on faces and threads.
func (r *run) wet(o *op) {
	for _, t := range o.on {
		r.dirty(t)
		if t.sort == aFastening {
			r.wetJoint(o, t.id)
			continue
		}
		if b := r.owner(t); b != none {
			for _, j := range r.bodies[b].fastens {
				r.wetJoint(o, j)
			}
		}
	}
}

// wetJoint puts the supplies of a step on a thread.
func (r *run) wetJoint(o *op, j id) {
	def := &r.joints[j]
	for _, s := range o.supplies {
		g := r.bolts.edit(j)
		g.oiled = g.oiled || s == def.wet
		if s == def.glue {
			g.glued = true
		}
		if g.wet == nil || s == def.wet || g.wet != def.wet {
			g.wet, g.wetAt = s, r.act
		}
	}
}

// seal lays a bead: its faces must be clean, and its clocks run.
func (r *run) seal(o *op, slot id) {
	s := o.seal
	late := r.checkClean(o, s)
	r.checkKeepClear(o, s)
	for _, t := range s.faces {
		r.dirty(t)
		if t.sort == aFastening {
			r.wetJoint(o, t.id)
		}
	}
	for _, b := range s.bodies { // a new bead makes good a broken one
		for _, old := range r.bodies[b].seals {
			if i := r.words.at[old].bead; i != none && r.beads.at[i].parted >= 0 {
				r.beads.edit(i).renewed = true
			}
		}
	}
	d := bead{slot: slot, act: r.act, start: r.start, end: r.end, closed: -1, parted: -1, supply: s.supply}
	d.late = late // its clock starts when the author meant it to, after the cleaning
	i := r.beads.add(d)
	r.words.edit(slot).bead = i
	gone := len(s.closedBy) > 0
	var last int32 = -1
	for _, c := range s.closedBy {
		act := r.actOf[c]
		gone = gone && act < r.act
		last = max(last, act)
	}
	if gone && r.branch == nil {
		b := r.breach(NeverClosed, o, "closed_by", r.slotObject(slot))
		if last >= 0 {
			r.cause(b, last, "", "closed here already")
		} else {
			leftOut(b, r.ops[s.closedBy[0]].step)
		}
		r.beads.edit(i).closed, r.beads.edit(i).closedAt, r.beads.edit(i).late = r.act, r.end, true
	}
	r.open = append(r.open[:len(r.open):len(r.open)], i)
}

// checkClean asks that every face of a seal is clean, and says so once. late
// says that they are cleaned only afterwards.
func (r *run) checkClean(o *op, s *sealing) (late bool) {
	var never, since []target
	for _, t := range s.faces {
		if t.sort != aBody && t.sort != aSurface || hasTarget(never, t) || hasTarget(since, t) {
			continue
		}
		if hasTarget(s.keepClear, t) || r.usedLater(t) >= 0 {
			continue // nothing should be laid there at all
		}
		switch ok, cleaned, _ := r.isClean(t); {
		case ok || r.maybe || r.branch != nil && cleaned < 0:
		case cleaned < 0:
			never = append(never, t)
		default:
			since = append(since, t)
		}
	}
	dirty := append(never, since...)
	if len(dirty) == 0 {
		return false
	}
	after := r.cleanedLater(dirty[0])
	var objects []Object
	for _, t := range dirty {
		objects = append(objects, r.object(t))
	}
	if len(never) > 0 {
		b := r.breach(NotCleaned, o, r.faceAttr(o, never[0]), objects...)
		r.cause(b, after, "", "cleaned only here")
		return after >= 0
	}
	_, cleaned, dirtied := r.isClean(dirty[0])
	b := r.breach(Dirtied, o, r.faceAttr(o, dirty[0]), objects...)
	r.cause(b, cleaned, "", "cleaned here")
	if dirtied > cleaned {
		r.cause(b, dirtied, "", "made dirty again here")
		return after >= 0
	}
	b.Want = quantity(r.house.cleanFor)
	b.Got = quantity(r.start - r.t.Acts[cleaned].End)
	r.cause(b, r.longest(cleaned, r.act), "", "the longest time in between")
	return after >= 0
}

// isClean says whether a face is clean now, and when it was last cleaned and
// made dirty. A part of the kit that names no faces comes clean.
func (r *run) isClean(t target) (ok bool, cleaned, dirtied int32) {
	first, n := r.surfaces(t)
	ok = t.sort == aBody && n == 1
	cleaned, dirtied = -1, -1
	for s := first; s < first+n; s++ {
		f := &r.films.at[s]
		ok = ok || f.clean && r.start-f.since <= r.house.cleanFor+slack
		cleaned, dirtied = max(cleaned, f.cleaned), max(dirtied, f.dirtied)
	}
	return ok, cleaned, dirtied
}

// cleanedLater is a later act that cleans a face, or -1.
func (r *run) cleanedLater(t target) int32 {
	for act := r.act + 1; int(act) < len(r.acts); act++ {
		if o := &r.ops[r.acts[act].slot]; o.has(kind.Cleans) && hasTarget(o.on, t) {
			return act
		}
	}
	return -1
}

func hasTarget(ts []target, t target) bool {
	for _, u := range ts {
		if u == t {
			return true
		}
	}
	return false
}

// faceAttr is the attribute of a seal that names a face.
func (r *run) faceAttr(o *op, t target) string {
	if hasTarget(o.seal.beads, t) {
		return "on"
	}
	return "between"
}

// longest is the act between two that takes the most time.
func (r *run) longest(from, to int32) int32 {
	best, most := from, time.Duration(-1)
	for i := from + 1; i < to && int(i) < len(r.t.Acts); i++ {
		if a := &r.t.Acts[i]; a.End-a.Start > most {
			best, most = i, a.End-a.Start
		}
	}
	return best
}

// checkKeepClear asks that a bead spares marks and ports that are needed later.
func (r *run) checkKeepClear(o *op, s *sealing) {
	for _, t := range s.faces {
		if hasTarget(s.keepClear, t) {
			b := r.breach(SealOver, o, r.faceAttr(o, t), r.object(t))
			r.here(b, o, "to be kept clear by the same step")
			continue
		}
		if act := r.usedLater(t); act >= 0 {
			b := r.breach(SealOver, o, r.faceAttr(o, t), r.object(t))
			r.cause(b, act, "through", "needed open here")
		}
	}
	for _, t := range s.beads {
		b := r.owner(t)
		if b == none {
			continue
		}
		for _, slot := range r.bodies[b].marked {
			m := target{aSlot, slot}
			if !hasTarget(r.ops[slot].on, t) || hasTarget(s.keepClear, m) || r.words.at[slot].act < 0 {
				continue
			}
			if act := r.lastGuide(m); act > r.act {
				br := r.breach(SealOver, o, "on", r.slotObject(slot))
				r.cause(br, r.words.at[slot].act, "", "marked here")
				r.cause(br, act, "", "gone by here")
			}
		}
	}
}

// usedLater is a later act that fills or drains through a surface, or -1.
func (r *run) usedLater(t target) int32 {
	if t.sort != aSurface || r.branch != nil {
		return -1
	}
	for _, act := range r.flowing {
		if act > r.act && hasTarget(r.ops[r.acts[act].slot].through, t) {
			return act
		}
	}
	return -1
}

// lastGuide is the last act that goes by a mark, or -1.
func (r *run) lastGuide(m target) int32 {
	if act, ok := r.guided[m.id]; ok {
		return act
	}
	return -1
}
