package bench

import (
	"fettle/lang/kind"
)

// stop is a hold: it checks what was accepted before, and lets the work go on.
func (r *run) stop(o *op, slot id) {
	if r.branch != nil {
		return
	}
	if len(o.checks) == 0 && !o.step.Damaged {
		r.breach(HoldChecksNothing, o, "checks")
		r.holdAll()
	}
	late := false
	for _, slots := range o.checks {
		late = r.check(o, slots) || late
	}
	if !late {
		r.checkGuards(o, slot)
	}
	r.holds.add(guardian{slot: slot, act: r.act, void: -1})
}

// holdAll takes everything accepted so far as held, as the author of a hold that
// checks nothing may have meant it.
func (r *run) holdAll() {
	for i := range r.ops {
		if w := &r.words.at[i]; r.ops[i].critical && w.act >= 0 && w.held < w.act {
			r.words.edit(id(i)).held = r.act
		}
	}
}

// check looks at one step that a hold names, at every place that is meant. late
// says that what the step accepted is covered already.
func (r *run) check(o *op, slots []id) (late bool) {
	absent := true
	for _, s := range slots {
		act := r.actOf[s]
		absent = absent && act < 0
		w := r.words.edit(s)
		if act > r.act && w.act < 0 {
			if r.once(HoldChecksLater, s, none) {
				b := r.breach(HoldChecksLater, o, "checks", r.slotObject(s))
				r.cause(b, act, "", "done only here")
			}
			w.told = true // held, as the author meant it
		}
		w = r.words.edit(s)
		w.held = r.act
		if w.lid != none && !w.told {
			r.unheld(s, o)
			late = true
		}
	}
	if absent && r.ops[slots[0]].step.Branch == nil {
		b := r.breach(HoldChecksAbsent, o, "checks", r.slotObject(slots[0]))
		leftOut(b, r.ops[slots[0]].step)
	}
	return late
}

// checkGuards asks that a hold stands before the step that it guards, where that
// step has not been found wanting a hold already.
func (r *run) checkGuards(o *op, slot id) {
	if r.told[key{HoldAfterItsStep, slot, none}] {
		return
	}
	for _, s := range o.before {
		if act := r.actOf[s]; act >= 0 && act < r.act {
			b := r.breach(HoldAfterItsStep, o, "before", r.slotObject(s))
			r.cause(b, act, "", "done here already")
			return
		}
	}
}

// coverAccepted notes what a part covers that is critical and accepted but not
// held yet. Whether that is a breach shows when the part comes off or the hold
// comes.
func (r *run) coverAccepted(o *op, b id) {
	if o.trial || r.branch != nil {
		return
	}
	with, _ := r.loaded(&r.state, b)
	for _, c := range with {
		for _, t := range r.bodies[c].covers {
			switch t.sort {
			case aBody:
				r.coverGuards(r.bodies[t.id].guards, c, t)
				for _, j := range r.bodies[t.id].clamps {
					if def := &r.joints[j]; def.stack[0] == t.id && !has(def.stack, c) {
						r.coverGuards(def.guards, c, target{aFastening, j})
					}
				}
			case aSurface:
				r.coverGuards(r.skins[t.id].guards, c, t)
			case aFastening:
				r.coverGuards(r.joints[t.id].guards, c, t)
			}
		}
	}
}

func (r *run) coverGuards(slots []id, lid id, t target) {
	for _, s := range slots {
		w := &r.words.at[s]
		if w.act < 0 || w.held >= w.act || w.lid != none || w.told || w.maybe || r.maybe {
			continue
		}
		if t.sort == aFastening && !hasTarget(r.ops[s].objects(), t) {
			// What holds the accepted thing: only if it held it then.
			if g := &r.bolts.at[t.id]; g.grip != tight || g.tightAt > w.act {
				continue
			}
		}
		w = r.words.edit(s)
		w.lid = lid
		if w.lidAt < w.act { // the first cover over it is the one that should have waited
			w.lidAt = r.act
		}
	}
}

// uncover forgets what bodies covered that come off again.
func (r *run) uncover(with []id) {
	if r.branch != nil {
		return
	}
	for _, c := range with {
		for _, t := range r.bodies[c].covers {
			var slots []id
			switch t.sort {
			case aBody:
				slots = r.bodies[t.id].guards
				for _, j := range r.bodies[t.id].clamps {
					r.forget(r.joints[j].guards, c)
				}
			case aSurface:
				slots = r.skins[t.id].guards
			case aFastening:
				slots = r.joints[t.id].guards
			}
			r.forget(slots, c)
		}
	}
}

func (r *run) forget(slots []id, lid id) {
	for _, s := range slots {
		if r.words.at[s].lid == lid {
			r.words.edit(s).lid = none
		}
	}
}

// unheld reports something critical that was covered before its hold; hold is
// the hold that came too late, or nil.
func (r *run) unheld(slot id, hold *op) {
	w := r.words.edit(slot)
	w.told = true
	if i, ok := r.unheldBy[w.lidAt]; ok { // one cover over several: one breach
		b := &r.t.Breaches[i]
		r.cause(b, w.act, "", "accepted here")
		return
	}
	o := &r.ops[slot]
	var what Object
	if objects := o.objects(); len(objects) > 0 {
		what = r.object(objects[0])
	}
	b := r.breachAt(CoveredUnheld, w.lidAt, "", r.slotObject(slot), what)
	r.unheldBy[w.lidAt] = len(r.t.Breaches) - 1
	r.cause(b, w.act, "", "accepted here")
	if hold != nil {
		r.here(b, hold, "held only here")
	}
	r.declareCover(b, w.lid, target{})
}

// disturb notes that something which was accepted has been moved again: holds
// that rest on it stand no more.
func (r *run) disturb(slots []id) { r.disturbBut(slots, none) }

func (r *run) disturbBut(slots []id, but id) {
	for _, s := range slots {
		if s == but || r.words.at[s].act < 0 || r.words.at[s].disturbed >= 0 {
			continue
		}
		r.words.edit(s).disturbed = r.act
		held := r.words.at[s].held
		for i := len(r.holds.at) - 1; i >= 0 && held >= 0 && r.holds.at[i].act >= held; i-- {
			if h := &r.holds.at[i]; h.act == held && h.void < 0 {
				r.holds.edit(id(i)).void = r.act
			}
		}
	}
}

// guarding is the hold that lets a step go on: one that names it, or one of the
// same procedure since the last run. void is one that would, had it not been
// disturbed.
func (r *run) guarding(o *op, slot id) (ok bool, void *guardian) {
	for i := len(r.holds.at) - 1; i >= 0; i-- {
		h := &r.holds.at[i]
		g := &r.ops[h.slot]
		if !has(g.before, slot) && (g.step.Procedure != o.step.Procedure || h.act < r.since || guardsLater(r, g)) {
			continue
		}
		if h.void < 0 {
			return true, nil
		}
		if void == nil {
			void = h
		}
	}
	return false, void
}

// guardsLater says whether a hold is meant for a step that is still to come.
func guardsLater(r *run, g *op) bool {
	for _, s := range g.before {
		if r.actOf[s] > r.act {
			return true
		}
	}
	return false
}

// checkIrreversible asks for a hold that stands before what cannot be undone.
func (r *run) checkIrreversible(o *op, slot id) {
	if ok, void := r.guarding(o, slot); !ok {
		r.notHeld(r.breach(IrreversibleUnheld, o, "irreversible"), slot, void)
	}
}

// notHeld adds the hold that would do, had it not been disturbed, or did it not
// come too late.
func (r *run) notHeld(b *Breach, slot id, void *guardian) {
	if void != nil {
		r.cause(b, void.act, "", "held here")
		r.cause(b, void.void, "", "disturbed here")
		return
	}
	proc := r.ops[slot].step.Procedure
	for i := int(r.act) + 1; i < len(r.acts); i++ {
		h := &r.ops[r.acts[i].slot]
		if h.step.Procedure != proc {
			return
		}
		if h.has(kind.Stops) && has(h.before, slot) {
			r.told[key{HoldAfterItsStep, r.acts[i].slot, none}] = true
			r.cause(b, int32(i), "", "held only here")
			return
		}
	}
}
