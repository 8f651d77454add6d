package bench

// restsOnTrial reports parts that are on for a trial, are never taken off again,
// and carry work for good; from there on they count as fitted for good.
func (r *run) restsOnTrial(o *op, attr string, below []id) {
	for _, b := range below {
		p := &r.pieces.at[b]
		if p.on == 0 || !p.trial || p.maybe || r.maybe || r.branch != nil || r.comesOff(b) {
			continue
		}
		if _, again := next(r.moves[b], r.act, puts); again {
			continue // in the way later, or fitted over
		}
		br := r.breach(TrialAsFinal, o, attr, r.bodyObject(b))
		r.cause(br, p.fitted, "trial", "fitted for trial here")
		r.pieces.edit(b).trial = false
	}
}

// checkSeats asks that all a part sits on is one group. A seat that is still in
// the tray makes a sub-assembly; two seats in two groups do so only where
// neither goes anywhere any more.
func (r *run) checkSeats(o *op, b id, attr string) {
	def := &r.bodies[b]
	main := none
	for _, seat := range def.seats {
		if r.counts(seat) && (main == none || r.firmer(seat, main)) {
			main = seat
		}
	}
	if main == none {
		return
	}
	for _, seat := range def.seats {
		if seat == main || !r.counts(seat) || r.together(seat, main) {
			continue
		}
		root := r.root(seat)
		if r.bodies[root].base {
			continue // b bridges two things that stand on the bench
		}
		e, ok := next(r.moves[root], r.act, puts)
		if !ok || r.pieces.at[root].maybe || o.trial && has(o.without, root) {
			continue // never fitted at all, which is said at the end
		}
		br := r.breach(SeatNotOn, o, attr, r.bodyObject(b), r.bodyObject(root))
		r.cause(br, e.act, "", "fitted only here")
		r.declareSeat(br, b)
		r.assume(root)
		r.join(root, main)
	}
}

// counts says whether a seat is in the kit, and on or still to come.
func (r *run) counts(seat id) bool {
	if !r.present[r.bodies[seat].item] {
		return false
	}
	if r.bodies[seat].base || r.pieces.at[seat].on > 0 || r.pieces.at[seat].meant {
		return true
	}
	_, ok := next(r.moves[seat], r.act, puts)
	return ok
}

// firmer says whether a stands on more than b does: on the bench, or in the
// larger group.
func (r *run) firmer(a, b id) bool {
	x, y := r.bodies[r.root(a)].base, r.bodies[r.root(b)].base
	if x != y {
		return x
	}
	return r.sizes.at[r.pieces.at[a].group] > r.sizes.at[r.pieces.at[b].group]
}

// root is the body at the bottom of what b stands on.
func (r *run) root(b id) id {
	for range 1000 {
		if r.pieces.at[b].on == 0 && !r.pieces.at[b].meant {
			return b
		}
		down := none
		for _, seat := range r.bodies[b].seats {
			if r.together(seat, b) {
				down = seat
				break
			}
		}
		if down == none {
			return b
		}
		b = down
	}
	return b
}

func (r *run) declareSeat(br *Breach, b id) {
	declared(br, r.items[r.bodies[b].item].node, "sits_on", "said here to sit on it")
}

// assume takes a body as on, because the author meant it to be by now.
func (r *run) assume(b id) {
	r.pieces.edit(b).meant = true
	for _, seat := range r.bodies[b].seats {
		if r.present[r.bodies[seat].item] {
			r.join(b, seat)
		}
	}
}

// checkStackBelow asks that what lies between a part and the bottom of its
// stack is in already.
func (r *run) checkStackBelow(o *op, b id, attr string) {
	for _, j := range r.bodies[b].clamps {
		if r.absent[j] || r.bolts.at[j].trial {
			continue
		}
		stack := r.joints[j].stack
		for i, q := range stack {
			if q == b {
				stack = stack[i+1:]
				break
			}
		}
		for i, q := range stack {
			if !r.present[r.bodies[q].item] || r.together(q, b) || has(o.without, q) || common(r.bodies[q].seats, stack[i+1:]) == 0 && !r.onOneSpindle(q, b, r.joints[j].stack) {
				continue
			}
			e, ok := next(r.moves[q], r.act, puts)
			if !ok || r.pieces.at[q].maybe || r.items[r.bodies[q].item].graded && !hasTarget(r.bodies[b].covers, target{aBody, q}) {
				continue // a slotted shim is slid in afterwards
			}
			br := r.breach(SeatNotOn, o, attr, r.bodyObject(b), r.bodyObject(q))
			r.cause(br, e.act, "", "fitted only here")
			declared(br, r.joints[j].node, "stack", "lies under it in this stack")
			r.assume(q)
		}
	}
}

// onOneSpindle says whether two bodies of a stack are threaded onto one thing
// that passes through it, as washer and wheel onto an axle.
func (r *run) onOneSpindle(a, b id, stack []id) bool {
	for _, seat := range r.bodies[a].seats {
		if has(r.bodies[b].seats, seat) && !has(stack, seat) {
			return true
		}
	}
	return false
}
