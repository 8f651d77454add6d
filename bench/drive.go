package bench

import (
	"time"

	"fettle/lang/kind"
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

// driveSeals asks that every seal of the machine has cured.
func (r *run) driveSeals(o *op, groups map[id]bool) {
	var raw []id
	for i := range r.beads.at {
		d := &r.beads.at[i]
		s := r.ops[d.slot].seal
		if len(s.bodies) == 0 || !groups[r.pieces.at[s.bodies[0]].group] {
			continue
		}
		if d.squeeze {
			r.squeezed(o, id(i), "run here")
		}
		if until, ok := r.cured(d); ok && d.parted < 0 && r.start < until && r.once(RunUncured, d.slot, d.act) {
			raw = append(raw, id(i))
		}
	}
	if len(raw) == 0 {
		return
	}
	var objects []Object
	for _, i := range raw {
		objects = append(objects, r.slotObject(r.beads.at[i].slot))
	}
	d := &r.beads.at[raw[0]]
	until, _ := r.cured(d)
	from := d.closedAt
	if d.closed < 0 {
		from = d.end
	}
	var b *Breach
	if wait := r.meantFor(d, until); wait >= 0 {
		b = r.breachAt(WaitTooShort, wait, r.waitAttr(wait), objects...)
		r.here(b, o, "run here")
	} else {
		b = r.breach(RunUncured, o, "", objects...)
	}
	b.Want, b.Got = quantity(until-from), quantity(r.start-from)
	for _, i := range raw {
		r.cause(b, r.beads.at[i].act, "", "sealed here")
		declared(b, r.beads.at[i].supply, "cure", "takes this long to cure")
	}
}

// meantFor is a wait since the seal that was meant for its cure or for another
// one's: the last that names seals, or one that lasts a good part of the cure.
func (r *run) meantFor(d *bead, until time.Duration) int32 {
	for act := r.act - 1; act > d.act; act-- {
		o := &r.ops[r.acts[act].slot]
		if !o.has(kind.Waits) {
			continue
		}
		for _, s := range o.until {
			if r.ops[s].seal != nil {
				return act
			}
		}
		if o.wait > 0 && o.wait*10 >= until-d.end {
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
