package bench

import "fettle/lang/kind"

// fit joins a part or tool to what it sits on.
func (r *run) fit(o *op, slot, b id, attr string) {
	def, it := &r.bodies[b], &r.items[r.bodies[b].item]
	p := r.pieces.edit(b)
	if p.owed == r.act && r.branch == nil {
		return
	}
	if p.meant { // missed before, and taken as on since
		p.meant, p.on, p.ever, p.fitted, p.byStep, p.trial = false, max(1, def.quantity), true, r.act, o.step, o.trial
		if o.quantity > 0 {
			p.on = o.quantity
		}
		return
	}
	if !r.present[def.item] {
		br := r.breach(MoreThanKit, o, attr, r.bodyObject(b))
		declared(br, it.node, "when", "not in the kit under this choice")
	}
	add := r.draw(o, b, attr)
	if p = r.pieces.edit(b); p.on == 0 {
		r.checkSeats(o, b, attr)
	}
	for _, seat := range def.seats {
		if r.present[r.bodies[seat].item] {
			r.reach(o, attr, target{aBody, seat})
		}
	}
	r.reachFit(o, attr, b)
	first := r.pieces.at[b].on == 0
	p = r.pieces.edit(b)
	p.on += add
	p.ever, p.fitted, p.byStep, p.maybe, p.through = true, r.act, o.step, r.maybe, false
	p.trial = o.trial
	if o.quantity == 0 && it.useOnce {
		p.least = 1
	} else {
		p.least += add
	}
	for _, seat := range def.seats {
		if r.present[r.bodies[seat].item] {
			r.join(b, seat)
		}
	}
	if !o.trial {
		r.restsOnTrial(o, attr, def.seats)
		r.checkStackBelow(o, b, attr)
	}
	for _, j := range def.fastens { // a screw that is fitted as a part is started by hand
		if g := &r.bolts.at[j]; g.grip == off && !r.absent[j] {
			g = r.bolts.edit(j)
			g.grip, g.begun, g.trial, g.byStep, g.maybe = started, r.act, o.trial, o.step, r.maybe
		}
	}
	for _, j := range def.locks { // a pin that is put through a tight nut locks it
		if g := &r.bolts.at[j]; g.grip == tight && !g.locked {
			g = r.bolts.edit(j)
			g.locked, g.lockedAt = true, r.act
		}
	}
	if first && !it.tool {
		r.lift(o, b)
	}
	r.coverAccepted(o, b)
	r.squeezeLeft(o, b)
	r.refit(o, b)
}

// reachFit asks that a part can be put where it goes: nothing that would cover
// it is there already.
func (r *run) reachFit(o *op, attr string, b id) {
	for _, l := range r.bodies[b].lids {
		if !r.covers(l) || !r.meets(l, b) {
			continue
		}
		r.inTheWay(o, attr, target{aBody, b}, l)
	}
}

// meets says whether a body is joined to a seat of another.
func (r *run) meets(l, b id) bool {
	for _, seat := range r.bodies[b].seats {
		if r.together(l, seat) {
			return true
		}
	}
	return false
}

// draw takes pieces out of the kit and says how many.
func (r *run) draw(o *op, b id, attr string) int32 {
	def, it, p := &r.bodies[b], &r.items[r.bodies[b].item], &r.pieces.at[b]
	left := r.left(b)
	switch {
	case p.on > 0 && p.trial && !o.trial:
		br := r.breachAt(TrialNeverUndone, p.fitted, "", r.bodyObject(b))
		r.here(br, o, "fitted for good here, over the trial")
		return 0
	case p.on > 0 && (it.graded || left <= 0):
		switch {
		case r.sameStep(o, p.byStep) || r.maybe || p.maybe:
		case it.tool:
			r.toolTaken(o, attr, b, b)
		default:
			br := r.breach(FittedTwice, o, attr, r.bodyObject(b))
			r.cause(br, p.fitted, "", "fitted here already")
			r.oweBody(b, takes)
		}
		return 0
	case it.graded:
		return 1
	case left <= 0:
		switch spent := r.spent(b); {
		case r.maybe || p.maybe:
		case it.tool:
			r.toolTaken(o, attr, b, r.elsewhere(b))
		case spent > 0:
			br := r.breach(SpentUsedAgain, o, attr, r.bodyObject(b))
			r.cause(br, p.taken, "", "spent here")
			declared(br, it.node, "use_once", "used once only")
		case r.present[def.item] && it.node.Flag("supplied"):
			br := r.breach(MoreThanKit, o, attr, r.bodyObject(b))
			r.cause(br, r.pieces.at[r.elsewhere(b)].fitted, "", "the last one is used here")
			declared(br, it.node, "quantity", "so many are in the kit")
		}
		return 1
	}
	want := o.quantity
	if want == 0 {
		want = min(max(1, def.quantity-p.on), left)
	}
	if want > left {
		if r.present[def.item] && !r.maybe && it.node.Flag("supplied") {
			br := r.breach(MoreThanKit, o, "quantity", r.bodyObject(b))
			declared(br, it.node, "quantity", "so many are in the kit")
			r.cause(br, p.fitted, "", "some are used here")
		}
		want = max(1, left)
	}
	return want
}

// toolTaken reports a tool that is still on somewhere when it is needed here:
// left on, where nothing takes it off later.
func (r *run) toolTaken(o *op, attr string, b, on id) {
	if _, ok := next(r.moves[on], r.act, takes); (!ok || on != b && !r.comesOff(on)) && r.branch == nil {
		br := r.breachAt(ToolLeftOn, r.pieces.at[on].fitted, "", r.bodyObject(on))
		r.here(br, o, "needed again here")
		if on != b {
			r.lay(on)
		}
		return
	}
	where := r.bodyObject(on)
	if on == b {
		where = r.seatObject(b)
	}
	br := r.breach(ToolElsewhere, o, attr, r.bodyObject(b), where)
	r.cause(br, r.pieces.at[on].fitted, "", "put on here, and still on")
}

// left is how many pieces of a body's item the kit still holds.
func (r *run) left(b id) int32 {
	it := &r.items[r.bodies[b].item]
	if it.each {
		p := &r.pieces.at[b]
		return r.bodies[b].quantity - p.on - p.spent - p.gone
	}
	left := it.count
	for _, c := range it.bodies {
		p := &r.pieces.at[c]
		left -= p.on + p.spent + p.gone
	}
	return left
}

func (r *run) spent(b id) int32 {
	n := r.pieces.at[b].spent
	if it := &r.items[r.bodies[b].item]; !it.each {
		n = 0
		for _, c := range it.bodies {
			n += r.pieces.at[c].spent
		}
	}
	return n
}

// elsewhere is the body of the same item that has pieces on, or b.
func (r *run) elsewhere(b id) id {
	for _, c := range r.items[r.bodies[b].item].bodies {
		if r.pieces.at[c].on > 0 {
			return c
		}
	}
	return b
}

func (r *run) seatObject(b id) Object {
	if seats := r.bodies[b].seats; len(seats) > 0 {
		return r.bodyObject(seats[0])
	}
	return r.bodyObject(b)
}

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
			if !r.present[r.bodies[q].item] || r.together(q, b) || has(o.without, q) || common(r.bodies[q].seats, stack[i+1:]) == 0 {
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

// take takes a part or tool off, with all that it carries.
func (r *run) take(o *op, b id, attr string) {
	def, it := &r.bodies[b], &r.items[r.bodies[b].item]
	p := &r.pieces.at[b]
	if p.on == 0 && p.meant {
		r.pieces.edit(b).on = 1
	}
	if p.on == 0 {
		if def.base || r.sameStep(o, p.byStep) || r.maybe || p.maybe {
			return
		}
		br := r.breach(NotOn, o, attr, r.bodyObject(b))
		if r.left(b) > 0 { // the piece that was meant to be on
			r.account(r.pieces.edit(b), it, o, 1)
		}
		if p.taken >= 0 {
			r.cause(br, p.taken, "", "taken off here already")
		} else if e, ok := next(r.moves[b], r.act, puts); ok {
			r.cause(br, e.act, "", "fitted only here")
			if q := &r.ops[r.acts[e.act].slot]; q.trial || p.taken >= 0 {
				r.oweBody(b, puts)
			}
		}
		return
	}
	if o.quantity > 0 && o.quantity < p.on {
		q := r.pieces.edit(b)
		q.on -= o.quantity
		r.account(q, it, o, o.quantity)
		return
	}
	for _, j := range def.fastens { // the screw itself: its joint is undone
		if r.bolts.at[j].grip != off {
			r.undoJoint(o, j)
		}
	}
	if !it.tool {
		r.lift(o, b)
	}
	with := r.free(o, b, attr)
	r.opensLiquid(o, attr, target{aBody, b})
	r.partSeals(with)
	for _, c := range with {
		r.disturb(r.bodies[c].checked)
	}
	r.uncover(with)
	q := r.pieces.edit(b)
	on := q.on
	q.meant = false
	q.on, q.taken, q.byStep, q.maybe, q.wasTrial, q.trial, q.through = 0, r.act, o.step, r.maybe, q.trial, false, false
	r.account(q, it, o, min(on, max(q.least, 1)))
	q.least = 0
	r.split(with)
}

// account says what becomes of pieces that come off.
func (r *run) account(p *piece, it *item, o *op, n int32) {
	switch {
	case o.forGood:
		p.gone += n
	case it.useOnce:
		p.spent += n
	}
}

// free asks that nothing holds b any more, and gives all that comes with it.
func (r *run) free(o *op, b id, attr string) []id {
	def := &r.bodies[b]
	for _, h := range def.heldBy {
		switch {
		case h.sort == aBody && r.pieces.at[h.id].on > 0 && r.together(h.id, b):
			if r.pieces.at[h.id].maybe {
				continue
			}
			br := r.breach(RemovedHeld, o, attr, r.bodyObject(b), r.bodyObject(h.id))
			r.cause(br, r.pieces.at[h.id].fitted, "", "fitted here, and still on")
			declared(br, r.items[def.item].node, "held_by", "said here to be held by it")
			r.setAside(h.id)
		case h.sort == aFastening && r.bolts.at[h.id].grip != off && !r.absent[h.id]:
			br := r.breach(RemovedFastened, o, attr, r.bodyObject(b), r.jointObject(h.id))
			r.cause(br, r.bolts.at[h.id].begun, "", "fitted here, and still on")
			r.undoJoint(o, h.id)
		}
	}
	with, _ := r.loaded(&r.state, b)
	for _, c := range with {
		for _, j := range r.bodies[c].clamps {
			if r.spans(j, with, b) {
				g := &r.bolts.at[j]
				if !g.maybe || !r.maybe {
					br := r.breach(RemovedFastened, o, attr, r.bodyObject(b), r.jointObject(j))
					r.cause(br, max(g.begun, g.tightAt), "", "tightened here, and still on")
					r.owe(j, kind.Opens)
				}
				r.undoJoint(o, j)
			}
		}
	}
	for l := r.lidOn(target{aBody, b}); l != none; l = r.lidOn(target{aBody, b}) {
		if has(with, l) {
			break
		}
		r.under(o, b, l, attr)
	}
	with, across := r.loaded(&r.state, b)
	for _, l := range across {
		if len(r.bodies[l].fastens) == 0 && !r.isLock(l) {
			r.under(o, b, l, attr)
		}
		if r.pieces.at[l].on > 0 {
			with = append(with, l)
		}
	}
	return with
}

func (r *run) under(o *op, b, l id, attr string) {
	if p := &r.pieces.at[l]; p.on == 0 { // only taken as on
		r.lay(l)
		return
	} else if !p.maybe {
		br := r.breach(RemovedUnder, o, attr, r.bodyObject(b), r.bodyObject(l))
		r.cause(br, r.pieces.at[l].fitted, "", "fitted here, and still on")
	}
	r.setAside(l)
}

// spans says whether a joint holds something of what comes off to something
// that stays.
func (r *run) spans(j id, with []id, b id) bool {
	g := &r.bolts.at[j]
	if g.grip == off || g.grip != tight && r.joints[j].slips || r.absent[j] {
		return false
	}
	in, out := false, false
	for _, c := range r.joints[j].stack {
		switch {
		case has(with, c):
			in = true
		case r.together(c, b):
			out = true
		}
	}
	return in && out
}

// isLock says whether a body is a device that locks some joint it sits in.
func (r *run) isLock(b id) bool { return len(r.bodies[b].locks) > 0 }

// lay takes a body off without asking anything.
func (r *run) lay(b id) {
	with, across := r.loaded(&r.state, b)
	for _, j := range r.bodies[b].fastens {
		r.release(j)
	}
	p := r.pieces.edit(b)
	p.on, p.meant, p.trial, p.taken = 0, false, false, r.act
	for _, c := range with {
		for _, j := range r.bodies[c].clamps {
			if r.spans(j, with, b) {
				r.release(j)
			}
		}
	}
	with = append(with, across...)
	r.partSeals(with)
	r.split(with)
}
