package bench

// fit joins a part or tool to what it sits on.
func (r *run) fit(o *op, slot, b id, attr string) {
	def, it := &r.bodies[b], &r.items[r.bodies[b].item]
	p := r.pieces.edit(b)
	if p.owed == r.act && r.branch == nil {
		return
	}
	if p.meant { // missed before, and taken as on since
		p.meant, p.on, p.ever, p.fitted, p.byStep, p.trial = false, max(1, def.quantity), true, r.act, o.step, o.trial
		p.through = false
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
		case sameStep(o, p.byStep) || r.maybe || p.maybe:
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
