package bench

import (
	"fettle/lang/kind"
)

// unlock opens the lock of a joint; a device that is used once is spent.
func (r *run) unlock(o *op, j id) {
	if !r.bolts.at[j].locked {
		return
	}
	r.bolts.edit(j).locked = false
	for _, b := range r.joints[j].locks {
		p := &r.pieces.at[b]
		if p.on == 0 || !r.items[r.bodies[b].item].useOnce {
			continue
		}
		q := r.pieces.edit(b)
		q.spent += q.on
		q.on, q.taken, q.byStep = 0, r.act, o.step
		with, _ := r.loaded(&r.state, b)
		if len(with) == 1 { // a tab washer under its nut stays in the ring until that is off
			r.split(with)
		}
	}
}

// lockJoint locks a joint: fits the device, or sets one already on.
func (r *run) lockJoint(o *op, e *effect, j id) {
	r.reach(o, e.attr, target{aFastening, j})
	g, def := r.bolts.at[j], &r.joints[j]
	if g.grip != tight && !r.maybe && !g.maybe && !g.settled {
		ev, later := next(r.grips[j], r.act, is(kind.Tightens))
		later = later && r.branch == nil
		if later {
			b := r.breach(LockedLoose, o, e.attr, r.jointObject(j))
			r.cause(b, ev.act, "", "tightened only here")
		} else if g.grip == off || r.branch != nil {
			b := r.breach(LockedLoose, o, e.attr, r.jointObject(j))
			r.cause(b, g.looseAt, "", "taken out here")
		} else {
			r.neverTight(o, j, "locked here")
		}
		if !later {
			r.bolts.edit(j).grip = tight
		}
	}
	devices := o.byParts
	if len(devices) == 0 && o.byGlue == nil {
		devices = def.locks
	}
	for _, b := range devices {
		if !has(def.stack, b) || r.spent(b) > 0 { // one in the stack lies under the head by now
			r.screwIn(o, e.attr, j, b)
		}
	}
	n := r.bolts.edit(j)
	n.locked, n.lockedAt = true, r.act
	if n.needLock >= 0 {
		b := r.breachAt(RunUnlocked, n.needLock, "", r.jointObject(j))
		r.here(b, o, "locked only here")
		r.bolts.edit(j).needLock = -1
	}
}

// neverTight reports a joint that is started or loosened and never tightened.
func (r *run) neverTight(o *op, j id, words string) {
	g := r.bolts.at[j]
	w, act := NeverTightened, g.begun
	if g.grip == loose {
		w, act = LeftLoose, g.looseAt
	}
	if act < 0 {
		return
	}
	b := r.breachAt(w, act, "", r.jointObject(j))
	if o != nil {
		r.here(b, o, words)
	}
	r.cause(b, g.need, "", "run here")
	n := r.bolts.edit(j)
	n.settled, n.need = true, -1
}

// notTight reports a joint that should be tight by now: never tightened, where
// no later step does so, else nothing to loosen.
func (r *run) notTight(o *op, attr string, j id) {
	g := r.bolts.at[j]
	if g.grip == started && r.branch != nil {
		return // said where it is never tightened
	}
	if g.grip == started && !g.settled && !r.tightensFrom(j, "") {
		b := r.breachAt(NeverTightened, g.begun, "", r.jointObject(j))
		r.here(b, o, "taken as tight here")
		return
	}
	if g.settled {
		return
	}
	b := r.breach(NothingToLoosen, o, attr, r.jointObject(j))
	switch g.grip {
	case loose:
		r.cause(b, g.looseAt, "", "loosened here already")
	case started:
		r.cause(b, g.begun, "", "only started by hand here")
		r.owe(j, kind.Tightens)
	default:
		r.cause(b, g.looseAt, "", "taken out here already")
	}
}

// tightensFrom says whether the next thing done to a joint is to tighten it as
// it is found by hand.
func (r *run) tightensFrom(j id, from string) bool {
	e, ok := next(r.grips[j], r.act, anything)
	return ok && e.verb == kind.Tightens && r.ops[r.acts[e.act].slot].from == from
}
