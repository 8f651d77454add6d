package bench

import (
	"fettle/lang/kind"
)

// startJoint starts all pieces of a joint by hand.
func (r *run) startJoint(o *op, e *effect, j id) {
	r.reach(o, e.attr, target{aFastening, j})
	def, g := &r.joints[j], r.bolts.at[j]
	switch {
	case g.grip == off || g.fresh && len(def.pieces) == 0:
	case sameStep(o, g.byStep):
		return
	case g.trial && !o.trial && !r.comesOut(j):
		b := r.breachAt(TrialNeverUndone, g.begun, e.attr, r.jointObject(j))
		r.here(b, o, "started for good here, over the trial")
	case !r.maybe && !g.maybe && !r.fittedAsPart(j):
		b := r.breach(FittedTwice, o, e.attr, r.jointObject(j))
		r.cause(b, g.begun, "", "fitted here already")
	}
	r.checkPieces(o, e.attr, j)
	forTrial := o.trial || r.onTrial(j) != none
	if !forTrial {
		forTrial = r.checkTop(o, e.attr, j)
	}
	for _, p := range def.pieces {
		r.screwIn(o, e.attr, j, p)
	}
	n := r.bolts.edit(j)
	n.grip, n.begun, n.byStep, n.maybe, n.fresh, n.locked, n.settled = started, r.act, o.step, r.maybe, false, false, false
	n.trial = forTrial
	if !o.trial {
		r.carriedOn(o, e.attr, j)
	}
}

// checkPieces asks that the kit holds a piece for each of the fasteners.
func (r *run) checkPieces(o *op, attr string, j id) {
	def := &r.joints[j]
	need, held := count(def.node.Whole("quantity", def.place, 1)), int32(0)
	for _, b := range def.pieces {
		it := &r.items[r.bodies[b].item]
		if it.graded || !it.node.Flag("supplied") {
			return
		}
		if it.each {
			held += r.bodies[b].quantity
		} else {
			held += it.count / int32(len(r.jointsOf(def.node, "")))
		}
	}
	if len(def.pieces) == 0 || held >= need || !r.once(MoreThanKit, none, j) {
		return
	}
	b := r.breach(MoreThanKit, o, attr, r.bodyObject(def.pieces[0]))
	declared(b, r.items[r.bodies[def.pieces[0]].item].node, "quantity", "so many are in the kit")
	declared(b, def.node, "quantity", "and so many are asked for")
}

// checkTop asks that what lies under the heads is on before they are started. A
// slotted shim is slid in afterwards. forTrial says that a trial fit was meant
// to be on by now.
func (r *run) checkTop(o *op, attr string, j id) (forTrial bool) {
	stack := r.joints[j].stack
	if len(stack) < 2 || r.maybe || r.branch != nil {
		return false
	}
	bottom := stack[len(stack)-1]
	missing, late := stack[0], int32(-1)
	for _, b := range stack {
		e, ok := next(r.moves[b], r.act, anything)
		if !ok || r.together(b, bottom) {
			continue
		}
		switch {
		case takes(e.verb) && r.pieces.at[b].on == 0:
			return true // said where it is to come off
		case puts(e.verb) && r.ops[r.acts[e.act].slot].trial:
			missing, late, forTrial = b, e.act, true
		case b == missing && puts(e.verb) && late < 0:
			late = e.act
		}
	}
	def, p := &r.bodies[missing], &r.pieces.at[missing]
	if late < 0 || !r.present[def.item] || r.items[def.item].graded || p.maybe || p.on > 0 {
		return forTrial
	}
	b := r.breach(SeatNotOn, o, attr, r.jointObject(j), r.bodyObject(missing))
	r.cause(b, late, "", "fitted only here")
	declared(b, r.joints[j].node, "stack", "lies under its heads")
	r.assume(missing)
	return forTrial
}

// fittedAsPart says whether a joint was started by fitting one of its pieces.
func (r *run) fittedAsPart(j id) bool {
	g := &r.bolts.at[j]
	if g.begun < 0 || g.grip != started {
		return false
	}
	for _, e := range r.ops[r.acts[g.begun].slot].effects {
		if e.verb == kind.Joins {
			return true
		}
	}
	return false
}

// screwIn puts a piece of a joint where it goes.
func (r *run) screwIn(o *op, attr string, j, b id) {
	def, it, p := &r.bodies[b], &r.items[r.bodies[b].item], &r.pieces.at[b]
	if p.on > 0 || !r.present[def.item] {
		return
	}
	if it.useOnce && p.spent > 0 && r.left(b) <= 0 && !r.maybe {
		br := r.breach(SpentUsedAgain, o, attr, r.bodyObject(b), r.jointObject(j))
		r.cause(br, p.taken, "", "spent here")
		declared(br, it.node, "use_once", "used once only")
	}
	q := r.pieces.edit(b)
	q.on, q.ever, q.fitted, q.byStep, q.meant = max(1, def.quantity), true, r.act, o.step, false
	for _, seat := range def.seats {
		if r.present[r.bodies[seat].item] {
			r.join(b, seat)
		}
	}
}

// onTrial is a body of the joint's stack that is on for trial, or none.
func (r *run) onTrial(j id) id {
	for _, b := range r.joints[j].stack {
		if p := &r.pieces.at[b]; p.on > 0 && p.trial {
			return b
		}
	}
	return none
}

// carriedOn reports a trial fit that work for good rests on and that is never
// undone; from there on it counts as fitted for good.
func (r *run) carriedOn(o *op, attr string, j id) {
	for b := r.onTrial(j); b != none; b = r.onTrial(j) {
		if _, again := next(r.moves[b], r.act, anything); again || r.branch != nil {
			return // undone later, or in the way later
		}
		br := r.breach(TrialAsFinal, o, attr, r.bodyObject(b))
		r.cause(br, r.pieces.at[b].fitted, "trial", "fitted for trial here")
		r.pieces.edit(b).trial = false
		r.bolts.edit(j).trial = false
	}
}

// comesOut says whether a joint is taken out before it is started again.
func (r *run) comesOut(j id) bool {
	e, ok := next(r.grips[j], r.act, func(v kind.Verb) bool { return v == kind.Opens || v == kind.Starts })
	return ok && e.verb == kind.Opens
}

// tightenJoint tightens a joint.
func (r *run) tightenJoint(o *op, e *effect, j id) {
	r.reach(o, e.attr, target{aFastening, j})
	g := r.bolts.at[j]
	if !sameStep(o, g.byStep) {
		r.checkFound(o, e.attr, j)
	}
	g = r.bolts.at[j]
	if !g.trial {
		r.carriedOn(o, e.attr, j)
		r.checkStack(o, e.attr, j)
		r.checkLubricant(o, e.attr, j)
	}
	n := r.bolts.edit(j)
	n.locked = n.locked || n.glued && n.grip != tight // loosening opens a lock; what was locked too early stays so
	if n.locked && n.grip != tight {
		n.lockedAt = r.act
	}
	n.grip, n.tightAt, n.byStep, n.maybe, n.fresh = tight, r.act, o.step, r.maybe, false
	if n.need >= 0 && !n.settled {
		b := r.breachAt(RunLoose, n.need, "", r.jointObject(j))
		r.here(b, o, "tightened only here")
		r.bolts.edit(j).need = -1
	}
	if g.grip != tight {
		r.clampSeals(o, j)
	}
	r.disturbSettings(j)
}

// checkFound asks that the joint is as the step says it finds it.
func (r *run) checkFound(o *op, attr string, j id) {
	g, def := r.bolts.at[j], &r.joints[j]
	early := g.locked && g.grip != tight // which has been said
	tolerant := r.maybe || g.maybe || early
	switch {
	case g.grip == off:
		if tolerant {
			break
		}
		b := r.breach(NotStarted, o, attr, r.jointObject(j))
		if e, ok := next(r.grips[j], r.act, is(kind.Starts)); ok && r.branch == nil {
			r.cause(b, e.act, "", "started only here")
		}
		for _, p := range def.pieces {
			r.screwIn(o, attr, j, p)
		}
		r.owe(j, kind.Starts)
		n := r.bolts.edit(j)
		n.begun, n.grip, n.trial = r.act, started, r.onTrial(j) != none
	case g.grip == tight && o.from == "tight":
	case g.grip == tight && g.fresh && o.from != "loosened":
	case o.from == "tight" && g.grip == started && !tolerant && !r.tightensLater(j) && r.branch == nil:
		r.neverTight(o, j, "taken as tight here")
		r.bolts.edit(j).grip = tight
	case o.from == "tight" && !tolerant:
		b := r.breach(NotAsFound, o, "from", r.jointObject(j))
		r.cause(b, max(g.begun, g.looseAt), "", map[grip]string{started: "only started by hand here", loose: "loosened here"}[g.grip])
		r.bolts.edit(j).grip = tight
	case o.from == "loosened" && g.grip != loose && !tolerant:
		b := r.breach(NotAsFound, o, "from", r.jointObject(j))
		r.cause(b, max(g.tightAt, g.begun), "", map[grip]string{started: "only started by hand here", tight: "tightened here, and not loosened since"}[g.grip])
		r.bolts.edit(j).grip = loose
		r.owe(j, kind.Slackens)
	case g.grip == tight && o.from == "" && !tolerant:
		b := r.breach(TightenedTwice, o, attr, r.jointObject(j))
		r.cause(b, g.tightAt, "", "tightened here already")
		if e, ok := next(r.grips[j], r.act, is(kind.Slackens)); ok {
			if _, more := next(r.grips[j], e.act, is(kind.Tightens)); !more {
				r.owe(j, kind.Slackens)
			}
		}
	}
}

// checkStack asks that all a joint clamps is on.
func (r *run) checkStack(o *op, attr string, j id) {
	def := &r.joints[j]
	if len(def.stack) == 0 {
		return
	}
	main := def.stack[len(def.stack)-1]
	for _, b := range def.stack {
		if r.firmer(b, main) {
			main = b
		}
	}
	var missing, apart []id
	var late []int32
	for _, b := range def.stack {
		if !r.present[r.bodies[b].item] || r.together(b, main) || r.bodies[b].base || has(o.without, b) || r.pieces.at[b].maybe {
			continue
		}
		// What is never fitted, or only taken off, is said at the end.
		if e, ok := next(r.moves[r.root(b)], r.act, puts); ok && r.branch == nil {
			missing, late = append(missing, b), append(late, e.act)
		}
		apart = append(apart, b)
	}
	for _, b := range apart {
		r.assume(b)
		r.join(b, main)
	}
	if len(missing) == 0 || r.maybe {
		return
	}
	br := r.breach(StackNotOn, o, attr, append([]Object{r.jointObject(j)}, r.bodyObjects(missing)...)...)
	for _, act := range late {
		r.cause(br, act, "", "fitted only here")
	}
	declared(br, def.node, "stack", "clamps it")
}

// checkLubricant asks that the thread is wet with what the torque rests on.
func (r *run) checkLubricant(o *op, attr string, j id) {
	def, g := &r.joints[j], &r.bolts.at[j]
	if g.grip == tight || r.maybe || o.from == "tight" || o.from == "loosened" {
		return
	}
	if def.wet != nil && def.wet == def.glue {
		if g.wet == nil {
			return // the lock is missing, and that is said
		}
		r.bolts.edit(j).glued = true
	}
	wrong := def.wet != nil && !g.oiled || def.dry && g.wet != nil && g.wet != def.glue
	if !wrong || r.branch != nil && g.fresh {
		return
	}
	b := r.breach(WrongLubricant, o, attr, r.jointObject(j), Object{Node: g.wet}, Object{Node: def.wet})
	r.cause(b, g.wetAt, "supplies", "coated here")
	declared(b, def.node, "lubricant", "the torque rests on this")
}

// slackenJoint loosens a joint and leaves it on.
func (r *run) slackenJoint(o *op, e *effect, j id) {
	r.reach(o, e.attr, target{aFastening, j})
	g := r.bolts.at[j]
	if sameStep(o, g.byStep) && g.grip != tight {
		return
	}
	if g.grip != tight && !r.maybe && !g.maybe {
		r.notTight(o, e.attr, j)
	}
	r.opensLiquid(o, e.attr, target{aFastening, j})
	r.disturb(r.joints[j].checked)
	r.unlock(o, j)
	n := r.bolts.edit(j)
	n.grip, n.looseAt, n.byStep, n.maybe, n.fresh, n.glued = loose, r.act, o.step, r.maybe, false, false
}

// openJoint takes a joint out.
func (r *run) openJoint(o *op, e *effect, j id) {
	r.reach(o, e.attr, target{aFastening, j})
	g := r.bolts.at[j]
	if g.grip == off {
		if !sameStep(o, g.byStep) && !r.maybe && !g.maybe {
			b := r.breach(NothingToLoosen, o, e.attr, r.jointObject(j))
			r.cause(b, g.looseAt, "", "taken out here already")
		}
		return
	}
	if g.grip == started && !g.settled && !r.maybe && r.branch == nil && r.readSince(j) {
		b := r.breachAt(NeverTightened, g.begun, "", r.jointObject(j))
		r.here(b, o, "taken out here, and read in between")
		r.bolts.edit(j).need = -1
	}
	r.opensLiquid(o, e.attr, target{aFastening, j})
	r.disturb(r.joints[j].checked)
	r.undoJoint(o, j)
}

// readSince says whether a value was read on what a joint holds since it was
// started. Bolts that only hang a part up need not be tightened.
func (r *run) readSince(j id) bool {
	g, stack := &r.bolts.at[j], r.joints[j].stack
	for act := g.begun + 1; g.begun >= 0 && act < r.act; act++ {
		o := &r.ops[r.acts[act].slot]
		if !o.has(kind.Reads) && !o.has(kind.Sets) {
			continue
		}
		for _, t := range o.on {
			if b := r.owner(t); b != none && len(stack) > 0 && r.together(b, stack[0]) {
				return true
			}
		}
	}
	return false
}

// undoJoint takes a joint out without asking anything.
func (r *run) undoJoint(o *op, j id) {
	r.unlock(o, j)
	for _, b := range r.joints[j].pieces {
		if r.pieces.at[b].on == 0 {
			continue
		}
		it := &r.items[r.bodies[b].item]
		with, _ := r.loaded(&r.state, b)
		p := r.pieces.edit(b)
		r.account(p, it, o, p.on)
		p.on, p.taken, p.byStep = 0, r.act, o.step
		r.split(with)
	}
	r.release(j)
	g := r.bolts.edit(j)
	g.byStep, g.maybe, g.forGood = o.step, r.maybe, o.forGood
}

// release leaves a joint off.
func (r *run) release(j id) {
	for _, b := range r.joints[j].pieces {
		if p := r.pieces.edit(b); p.on > 0 {
			p.on = 0
			with, _ := r.loaded(&r.state, b)
			r.split(with)
		}
	}
	g := r.bolts.edit(j)
	g.grip, g.looseAt, g.locked, g.trial, g.fresh, g.oiled, g.glued, g.wet = off, r.act, false, false, false, false, false, nil
}
