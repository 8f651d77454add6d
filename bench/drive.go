package bench

import (
	"slices"
	"time"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// byHand is the run that asks nothing.
const byHand = "hand"

// drive runs the machine. By hand it asks nothing; else all that moves together
// with what the step names must be fit to run, and the first run of its kind
// must be held.
func (r *run) drive(o *op, slot id) {
	if o.by == byHand || r.branch != nil {
		return
	}
	groups := map[id]bool{}
	for _, t := range o.on {
		if b := r.owner(t); b != none {
			groups[r.pieces.at[b].group] = true
		}
	}
	r.driveTrials(o, groups)
	r.driveJoints(groups)
	r.driveSeals(o, groups)
	r.driveTools(o, groups)
	first := true
	for _, by := range r.driven {
		first = first && by != o.by
	}
	if first {
		r.driven = append(r.driven, o.by)
		if ok, void := r.guarding(o, slot); !ok {
			r.notHeld(r.breach(RunUnheld, o, ""), slot, void)
		}
	}
	r.since = r.act
}

// driveTrials asks that nothing is on for trial.
func (r *run) driveTrials(o *op, groups map[id]bool) {
	for i := range r.pieces.at {
		p := &r.pieces.at[i]
		if p.on == 0 || !p.trial || !groups[p.group] {
			continue
		}
		if !r.comesOff(id(i)) {
			b := r.breachAt(TrialNeverUndone, p.fitted, "", r.bodyObject(id(i)))
			r.here(b, o, "run here")
			r.pieces.edit(id(i)).trial = false
		} else if r.once(TrialAsFinal, p.fitted, id(i)) {
			b := r.breach(TrialAsFinal, o, "", r.bodyObject(id(i)))
			r.cause(b, p.fitted, "trial", "fitted for trial here")
		}
	}
}

// driveJoints notes every joint of the machine that is not tight or not locked.
// It is a breach of the run where that is put right later, and of the joint
// where it never is.
func (r *run) driveJoints(groups map[id]bool) {
	for i := range r.joints {
		j, def, g := id(i), &r.joints[i], &r.bolts.at[i]
		if def.moves || g.trial || g.settled || g.maybe || r.absent[i] || !r.inGroups(def, groups) {
			continue
		}
		if g.grip != tight && g.need < 0 {
			if g.grip != off || r.wholeStack(def, 2) && r.tightensLater(j) {
				r.bolts.edit(j).need = r.act
			}
		}
		if g.grip == tight && !g.locked && g.needLock < 0 && (len(def.locks) > 0 || def.glue != nil) {
			r.bolts.edit(j).needLock = r.act
		}
	}
}

func (r *run) inGroups(def *joint, groups map[id]bool) bool {
	for _, b := range def.stack {
		if groups[r.pieces.at[b].group] {
			return true
		}
	}
	for _, b := range def.pieces {
		if r.pieces.at[b].on > 0 && groups[r.pieces.at[b].group] {
			return true
		}
	}
	return false
}

// wholeStack says whether a joint has so many things to clamp, and all are on.
func (r *run) wholeStack(def *joint, least int) bool {
	for _, b := range def.stack {
		if r.present[r.bodies[b].item] && !r.together(b, def.stack[0]) {
			return false
		}
	}
	return len(def.stack) >= least
}

func (r *run) tightensLater(j id) bool {
	e, ok := next(r.grips[j], r.act, func(v kind.Verb) bool { return v == kind.Tightens || v == kind.Slackens || v == kind.Opens })
	return ok && e.verb == kind.Tightens
}

// curing is something laid on that has not cured yet.
type curing struct {
	slot        id
	act         int32
	from, until time.Duration
	supply      *model.Node
}

// driveSeals asks that every seal of the machine has cured, and every coat that
// cures in a joint of it.
func (r *run) driveSeals(o *op, groups map[id]bool) {
	var raw []curing
	for i := range r.beads.at {
		d := &r.beads.at[i]
		if !r.sealsIn(groups, d) {
			continue
		}
		if d.squeeze {
			r.squeezed(o, id(i), "run here")
		}
		if until, ok := r.cured(d); ok && d.parted < 0 && r.start < until {
			from := d.closedAt
			if d.closed < 0 {
				from = d.end
			}
			raw = append(raw, curing{d.slot, d.act, from, until, d.supply})
		}
	}
	for _, slot := range r.coats {
		if c, ok := r.coating(slot, groups); ok {
			raw = append(raw, c)
		}
	}
	raw = slices.DeleteFunc(raw, func(c curing) bool {
		return r.told[key{WaitsForLater, c.slot, none}] || !r.once(RunUncured, c.slot, c.act)
	})
	if len(raw) == 0 {
		return
	}
	var objects []Object
	for _, c := range raw {
		objects = append(objects, r.slotObject(c.slot))
	}
	first := raw[0]
	var b *Breach
	if wait := r.meantFor(first); wait >= 0 {
		b = r.breachAt(WaitTooShort, wait, r.waitAttr(wait), objects...)
		r.here(b, o, "run here")
	} else {
		b = r.breach(RunUncured, o, "", objects...)
	}
	b.Want, b.Got = quantity(first.until-first.from), quantity(r.start-first.from)
	for _, c := range raw {
		r.cause(b, c.act, "", "laid here")
		declared(b, c.supply, "cure", "takes this long to cure")
	}
}

// sealsIn says whether a seal lies in one of the groups.
func (r *run) sealsIn(groups map[id]bool, d *bead) bool {
	s := r.ops[d.slot].seal
	if len(s.bodies) > 0 {
		return groups[r.pieces.at[s.bodies[0]].group]
	}
	for _, j := range s.clamps { // sealant on a thread
		if r.bolts.at[j].grip == tight && r.inGroups(&r.joints[j], groups) {
			return true
		}
	}
	return false
}

// coating is a coat that cures in a tight joint of the groups: threadlocker, or
// sealant on a thread. Its clock starts when it is laid on.
func (r *run) coating(slot id, groups map[id]bool) (curing, bool) {
	w, o := &r.words.at[slot], &r.ops[slot]
	if w.act < 0 || w.maybe {
		return curing{}, false
	}
	c := curing{slot: slot, act: w.act, from: r.t.Acts[w.act].End}
	for _, s := range o.supplies {
		if t, ok := r.cure(s, o.step.Procedure); ok && c.from+t > c.until {
			c.until, c.supply = c.from+t, s
		}
	}
	if c.supply == nil || r.start >= c.until {
		return curing{}, false
	}
	for _, t := range o.on {
		if t.sort != aFastening {
			continue
		}
		g := &r.bolts.at[t.id]
		if g.grip == tight && g.tightAt > w.act && g.looseAt < w.act && r.inGroups(&r.joints[t.id], groups) {
			return c, true
		}
	}
	return curing{}, false
}

// meantFor is a wait since the seal that was meant for its cure or for another
// one's: the last that names what cures, or one that lasts a good part of it.
func (r *run) meantFor(c curing) int32 {
	for act := r.act - 1; act > c.act; act-- {
		o := &r.ops[r.acts[act].slot]
		if !o.has(kind.Waits) {
			continue
		}
		for _, s := range o.until {
			if r.ops[s].seal != nil || r.ops[s].has(kind.Wets) {
				return act
			}
		}
		if o.wait > 0 && o.wait*20 >= c.until-r.t.Acts[c.act].End {
			return act
		}
	}
	return -1
}

func (r *run) waitAttr(act int32) string {
	if o := &r.ops[r.acts[act].slot]; len(o.until) > 0 {
		return "until"
	}
	return "for"
}

// driveTools asks that no tool which holds the machine still is on.
func (r *run) driveTools(o *op, groups map[id]bool) {
	for _, it := range r.holders {
		for _, b := range r.items[it].bodies {
			p := &r.pieces.at[b]
			if p.on == 0 || !groups[p.group] {
				continue
			}
			br := r.breachAt(ToolLeftOn, p.fitted, "", r.bodyObject(b))
			r.here(br, o, "run here with the tool on")
			if !r.comesOff(b) {
				r.lay(b)
			}
		}
	}
}
