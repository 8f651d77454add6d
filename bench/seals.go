package bench

import (
	"slices"
	"time"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// closeSeals closes the open seals that a step closes, and lets go of those
// that want nothing more.
func (r *run) closeSeals(o *op, slot id) {
	if len(r.open) == 0 {
		return
	}
	kept := make([]id, 0, len(r.open))
	for _, i := range r.open {
		d := &r.beads.at[i]
		if d.act == r.act && d.slot == slot {
			kept = append(kept, i)
			continue
		}
		if d.closed < 0 && r.closes(o, slot, d) {
			r.closeSeal(o, i)
		}
		if d = &r.beads.at[i]; d.parted < 0 && (d.closed < 0 || d.squeeze || !d.late && r.unclamped(d)) {
			kept = append(kept, i)
		}
	}
	r.open = kept
}

// closes says whether a step closes a seal: the one it names, or else the first
// fit that brings together what it lies between.
func (r *run) closes(o *op, slot id, d *bead) bool {
	s := r.ops[d.slot].seal
	if len(s.closedBy) > 0 {
		return has(s.closedBy, slot)
	}
	if !o.has(kind.Joins) {
		return false
	}
	if len(s.bodies) > 1 {
		for _, b := range s.bodies[1:] {
			if !r.together(b, s.bodies[0]) {
				return false
			}
		}
		return true
	}
	for _, e := range o.effects {
		for _, t := range e.at {
			if e.verb == kind.Joins && len(s.bodies) == 1 && (t.id == s.bodies[0] || has(r.bodies[t.id].seats, s.bodies[0])) {
				return true
			}
		}
	}
	return false
}

func (r *run) closeSeal(o *op, i id) {
	d := r.beads.edit(i)
	s := r.ops[d.slot].seal
	d.closed, d.closedAt = r.act, r.end
	d.squeeze = len(s.beads) > 0 && s.beads[0].sort != aFastening && !r.maybe
	if w := r.timeOf(d.supply, "assemble_within"); w != nil && !d.late {
		if took := r.end - d.start; took > duration(*w)+slack {
			d.late = true
			b := r.breach(ClosedTooLate, o, "", r.slotObject(d.slot))
			b.Want, b.Got = *w, quantity(took)
			r.cause(b, d.act, "", "the clock starts here")
			declared(b, d.supply, "assemble_within", "this long, and no longer")
			if l := r.longest(d.act, r.act); l != d.act {
				r.cause(b, l, "takes", "the longest step in between")
			}
		}
		r.assumed(d.act, r.act)
	}
}

// timeOf is a time that a supply states, or nil.
func (r *run) timeOf(supply *model.Node, attr string) *calc.Quantity {
	if supply == nil {
		return nil
	}
	return supply.Quantity(attr, "")
}

// unclamped says whether a joint that clamps the seal is still to be tightened.
func (r *run) unclamped(d *bead) bool {
	for _, j := range r.ops[d.slot].seal.clamps {
		if r.bolts.at[j].grip != tight && !r.absent[j] {
			return true
		}
	}
	return false
}

// clampSeals checks the time of every open seal that a joint clamps.
func (r *run) clampSeals(o *op, j id) {
	for _, i := range r.open {
		d := &r.beads.at[i]
		s := r.ops[d.slot].seal
		w := r.timeOf(d.supply, "tighten_within")
		if d.late || d.parted >= 0 || w == nil || !has(s.clamps, j) {
			continue
		}
		r.assumed(d.act, r.act)
		took := r.end - d.start
		if took <= duration(*w)+slack {
			continue
		}
		r.beads.edit(i).late = true
		b := r.breach(ClampedTooLate, o, "", r.slotObject(d.slot), r.jointObject(j))
		b.Want, b.Got = *w, quantity(took)
		r.cause(b, d.act, "", "the clock starts here")
		declared(b, d.supply, "tighten_within", "this long, and no longer")
		if l := r.longest(d.act, r.act); l != d.act {
			r.cause(b, l, "takes", "the longest step in between")
		}
	}
}

// squeezeLeft reports squeeze-out that is still there when something that is
// no part of the joint is fitted.
func (r *run) squeezeLeft(o *op, b id) {
	for _, i := range r.open {
		d := &r.beads.at[i]
		s := r.ops[d.slot].seal
		if !d.squeeze || d.closed == r.act || !r.together(b, s.bodies[0]) || r.inJoint(s, b) || r.branch != nil {
			continue
		}
		r.squeezed(o, i, "fitted here")
	}
}

func (r *run) squeezed(o *op, i id, words string) {
	d := r.beads.edit(i)
	d.squeeze = false
	b := r.breachAt(SqueezeOutLeft, d.closed, "", r.slotObject(d.slot))
	r.here(b, o, words+" before it is cleaned off")
}

// inJoint says whether a body belongs to what a seal joins, or fastens it.
func (r *run) inJoint(s *sealing, b id) bool {
	if has(s.bodies, b) {
		return true
	}
	for _, j := range s.clamps {
		if has(r.joints[j].stack, b) || has(r.joints[j].pieces, b) || has(r.joints[j].locks, b) {
			return true
		}
	}
	return false
}

// partSeals breaks the seals between what comes off and what stays.
func (r *run) partSeals(with []id) {
	for _, c := range with {
		for _, slot := range r.bodies[c].seals {
			i := r.words.at[slot].bead
			if i == none || r.beads.at[i].closed < 0 || r.beads.at[i].parted >= 0 {
				continue
			}
			for _, b := range r.ops[slot].seal.bodies {
				if !has(with, b) && r.together(b, c) {
					d := r.beads.edit(i)
					d.parted, d.squeeze = r.act, false
					break
				}
			}
		}
	}
}

// refit reports a seal that was parted and is put together again as it is.
func (r *run) refit(o *op, b id) {
	if o.trial {
		return
	}
	for _, slot := range r.bodies[b].seals {
		i := r.words.at[slot].bead
		if i == none || r.beads.at[i].parted < 0 || r.beads.at[i].renewed {
			continue
		}
		whole := true
		for _, c := range r.ops[slot].seal.bodies {
			whole = whole && r.together(c, b)
		}
		if !whole || r.sealsAfter(b) {
			continue
		}
		d := r.beads.edit(i)
		d.renewed = true
		br := r.breach(SealBroken, o, "", r.slotObject(slot))
		r.cause(br, d.act, "", "sealed here")
		r.cause(br, d.parted, "", "parted here")
	}
}

// sealsAfter says whether a seal that the present act should close is laid only
// later, which is a breach of its own.
func (r *run) sealsAfter(b id) bool {
	for _, slot := range r.bodies[b].seals {
		if r.branch == nil && r.actOf[slot] > r.act && has(r.ops[slot].seal.closedBy, r.acts[r.act].slot) {
			return true
		}
	}
	return false
}

// cured is when a seal is through, and whether anybody knows.
func (r *run) cured(d *bead) (time.Duration, bool) {
	t, ok := r.cure(d.supply, r.ops[d.slot].step.Procedure)
	from := d.closedAt
	if d.closed < 0 {
		from = d.end
	}
	return from + t, ok
}

// length is how long a step takes from now: what it says, what it waits for, or
// the house's default. A hold by itself takes no time.
func (r *run) length(o *op) time.Duration {
	d := o.takes
	if !o.timed && !o.has(kind.Stops) && !o.has(kind.Waits) {
		d = r.house.takes
		if r.branch == nil {
			r.bare = append(r.bare, r.act)
		}
	}
	if !o.has(kind.Waits) {
		return d
	}
	d = max(d, o.wait)
	worked := o.wait > 0 || o.timed
	for _, slot := range o.until {
		if left, ok := r.remaining(slot); ok {
			d, worked = max(d, left), true
		}
	}
	if !worked && r.branch == nil {
		d = r.house.takes
		r.bare = append(r.bare, r.act)
	}
	return d
}

// remaining is how long what a step laid on has still to cure.
func (r *run) remaining(slot id) (time.Duration, bool) {
	if i := r.words.at[slot].bead; i != none {
		until, ok := r.cured(&r.beads.at[i])
		return max(0, until-r.now), ok
	}
	o, act := &r.ops[slot], r.words.at[slot].act
	if act < 0 || int(act) >= len(r.t.Acts) {
		return 0, false
	}
	for _, s := range o.supplies {
		if t, ok := r.cure(s, o.step.Procedure); ok {
			return max(0, r.t.Acts[act].End+t-r.now), true
		}
	}
	return 0, false
}

// assumed notes that a clock ran over acts that do not say how long they take.
func (r *run) assumed(from, to int32) {
	i, _ := slices.BinarySearch(r.bare, from)
	for ; i < len(r.bare) && r.bare[i] <= to; i++ {
		r.t.Assumed = append(r.t.Assumed, int(r.bare[i]))
	}
}

// checkHeat asks that a seal stands the temperature that a step brings about or
// expects on a part that it lies on.
func (r *run) checkHeat(o *op, e *effect) {
	if e.attr != "on" || len(o.settings) == 0 {
		return
	}
	var b *Breach
	for _, t := range e.at {
		owner := r.owner(t)
		if owner == none {
			continue
		}
		for _, slot := range r.bodies[owner].seals {
			i := r.words.at[slot].bead
			if i == none || r.beads.at[i].parted >= 0 || r.beads.at[i].supply == nil {
				continue
			}
			supply := r.beads.at[i].supply
			attr, bad := outside(o.settings, supply)
			if bad == nil || !r.once(SealTooHot, slot, none) {
				continue
			}
			if b == nil { // one temperature over several seals: one breach
				b = r.breach(SealTooHot, o, attr, r.slotObject(slot), r.object(t))
				b.Got = *bad
				declared(b, supply, "service", "stands no more than this")
			}
			r.cause(b, r.words.at[slot].act, "", "sealed here")
		}
	}
}

// outside is the first temperature that a sealant does not stand, or nil.
func outside(settings []heatSetting, supply *model.Node) (attr string, bad *calc.Quantity) {
	service, ok := supply.Limits("service", "")
	if !ok {
		return "", nil
	}
	for _, h := range settings {
		if q := h.limits.High; q != nil && service.High != nil && q.Cmp(*service.High) > 0 {
			return h.attr, q
		}
		if q := h.limits.Low; q != nil && service.Low != nil && q.Cmp(*service.Low) < 0 {
			return h.attr, q
		}
	}
	return "", nil
}
