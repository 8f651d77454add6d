package bench

import (
	"fettle/lang/kind"
)

// take takes a part or tool off, with all that it carries.
func (r *run) take(o *op, b id, attr string) {
	def, it := &r.bodies[b], &r.items[r.bodies[b].item]
	p := &r.pieces.at[b]
	if p.on == 0 && p.meant {
		r.pieces.edit(b).on = 1
	}
	if p.on == 0 {
		if def.base || sameStep(o, p.byStep) || r.maybe || p.maybe {
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
	said := len(r.t.Breaches)
	with := r.free(o, b, attr)
	r.oneBreach(said)
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

// oneBreach makes one breach of all since the given one: taking a part off too
// early is one mistake, whatever holds it.
func (r *run) oneBreach(from int) {
	if len(r.t.Breaches) <= from+1 {
		return
	}
	first := &r.t.Breaches[from]
	for _, b := range r.t.Breaches[from+1:] {
		first.Causes = append(first.Causes, b.Causes...)
	}
	r.t.Breaches = r.t.Breaches[:from+1]
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
		r.pieces.edit(l).through = true
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
