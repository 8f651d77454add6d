package bench

import (
	"fettle/lang/kind"
)

// checkOrder asks that what a step comes after is done, not too long ago and
// not too recently.
func (r *run) checkOrder(o *op) {
	if r.branch != nil {
		return
	}
	for _, slot := range o.until {
		if act := r.actOf[slot]; act > r.act && r.once(WaitsForLater, slot, none) {
			b := r.breach(WaitsForLater, o, "until", r.slotObject(slot))
			r.cause(b, act, "", "done only here")
			break
		}
	}
	last := int32(-1)
	for _, slot := range o.after {
		act := r.actOf[slot]
		if act > r.act {
			b := r.breach(OutOfOrder, o, "after", r.slotObject(slot))
			r.cause(b, act, "", "done only here")
			return
		}
		last = max(last, act)
	}
	for _, p := range o.afterProc {
		for _, s := range p.Steps {
			for _, slot := range r.slotsOf(s, "") {
				act := r.actOf[slot]
				if act > r.act && s.Procedure != o.step.Procedure {
					b := r.breach(OutOfOrder, o, "after", Object{Node: p})
					r.cause(b, act, "", "done only here")
					return
				}
				if act < r.act {
					last = max(last, act)
				}
			}
		}
	}
	if last < 0 || o.within == nil && o.notBefore == nil {
		return
	}
	since := r.start - r.t.Acts[last].End
	if w := o.within; w != nil && since > duration(*w)+slack {
		b := r.breach(TooLate, o, "within", r.slotObject(r.acts[last].slot))
		b.Want, b.Got = *w, quantity(since)
		r.cause(b, last, "", "the clock starts here")
		if l := r.longest(last, r.act); l != last {
			r.cause(b, l, "takes", "the longest step in between")
		}
	}
	if n := o.notBefore; n != nil && since < duration(*n)-slack {
		b := r.breach(TooEarly, o, "not_before", r.slotObject(r.acts[last].slot))
		b.Want, b.Got = *n, quantity(since)
		r.cause(b, last, "", "the clock starts here")
	}
	r.assumed(last+1, r.act-1)
}

// checkValues asks that every value a step rests on has been read.
func (r *run) checkValues(o *op, slot id) {
	for _, u := range o.uses {
		for _, from := range u.slots {
			w := &r.words.at[from]
			src := &r.ops[from]
			switch {
			case from == slot || src.step.Branch != nil && (r.branch != nil || src.step.Branch == o.step.Branch):
			case src.step.Branch != nil:
				if r.once(ReadSometimes, from, slot) {
					b := r.breach(ReadSometimes, o, u.attr, r.slotObject(from))
					declared(b, src.step.Branch, "", "read in this branch only")
				}
			case w.act >= 0 && w.maybe && !r.maybe && u.attr != "when":
				if !r.once(ReadSometimes, from, none) {
					continue
				}
				b := r.breach(ReadSometimes, o, u.attr, r.slotObject(from))
				declared(b, src.step.Node, "when", "read under this condition only")
			case w.act >= 0:
			case r.actOf[from] >= 0:
				if !r.once(UsedBeforeRead, from, none) {
					continue
				}
				b := r.breach(UsedBeforeRead, o, u.attr, r.slotObject(from))
				r.cause(b, r.actOf[from], "", "read only here")
			case r.once(ReadSometimes, from, none):
				b := r.breach(ReadSometimes, o, u.attr, r.slotObject(from))
				leftOut(b, src.step)
			}
		}
	}
}

// disturbSetting notes that a setting is made, so that its lock disturbs it.
func (r *run) disturbSetting(o *op, slot id) {
	w := r.words.edit(slot)
	w.stale = -1
	for _, t := range o.on {
		switch b := r.owner(t); {
		case b != none:
			r.disturbBut(r.bodies[b].checked, slot)
		case t.sort == aFastening:
			r.disturbBut(r.joints[t.id].checked, slot)
		}
	}
}

// disturbSettings makes the settings stale that a joint locks.
func (r *run) disturbSettings(j id) {
	for _, slot := range r.joints[j].settings {
		if r.words.at[slot].act >= 0 && r.words.at[slot].stale < 0 && r.branch == nil {
			r.words.edit(slot).stale = r.act
		}
	}
}

// readAgain makes settings good that are read on the same thing.
func (r *run) readAgain(o *op) {
	for _, t := range o.on {
		var slots []id
		switch b := r.owner(t); {
		case b != none:
			slots = r.bodies[b].settings
		case t.sort == aFastening:
			slots = r.joints[t.id].set
		}
		for _, slot := range slots {
			if r.words.at[slot].stale >= 0 {
				r.words.edit(slot).stale = -1
			}
		}
	}
}

// settle enters a setting at its lock and at what it sets.
func (x *index) settle(o *op, slot id) {
	if len(o.locksWith) == 0 || !o.has(kind.Sets) {
		return
	}
	for _, j := range o.locksWith {
		x.joints[j].settings = append(x.joints[j].settings, slot)
	}
	for _, t := range o.on {
		switch b := x.owner(t); {
		case b != none:
			x.bodies[b].settings = append(x.bodies[b].settings, slot)
		case t.sort == aFastening:
			x.joints[t.id].set = append(x.joints[t.id].set, slot)
		}
	}
}
