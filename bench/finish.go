package bench

import (
	"cmp"
	"slices"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// finish says what only the end can tell. A manual that could not be read whole
// may lack the very step that puts things right, so nothing is said of it.
func (r *run) finish() {
	r.t.End = r.now
	slices.Sort(r.t.Assumed)
	r.t.Assumed = slices.Compact(r.t.Assumed)
	if r.m.Incomplete {
		return
	}
	lost := map[*model.Node]bool{} // what has a breach of its own already
	for i := range r.joints {
		r.finishJoint(id(i), lost)
	}
	for i := range r.bodies {
		r.finishBody(id(i), lost)
	}
	for i := range r.beads.at {
		r.finishSealed(&r.beads.at[i])
	}
	for slot := range r.words.at {
		r.finishWord(id(slot))
	}
	r.finishTorques()
	r.finishGroups(lost)
}

func (r *run) finishJoint(j id, lost map[*model.Node]bool) {
	def, g := &r.joints[j], &r.bolts.at[j]
	switch {
	case r.absent[j] || g.settled || g.maybe:
		return
	case g.grip == started && g.trial, g.grip == tight && g.trial:
		if b := r.onTrial(j); b == none && g.begun >= 0 {
			r.breachAt(TrialNeverUndone, g.begun, "", r.jointObject(j))
		}
	case g.grip == started, g.grip == loose:
		r.neverTight(nil, j, "")
	case g.grip == tight:
		if !g.locked && (len(def.locks) > 0 || def.glue != nil) && g.tightAt >= 0 {
			r.lockMissing(j)
			for _, b := range def.locks {
				lost[r.items[r.bodies[b].item].node] = true
			}
		}
	case g.looseAt >= 0:
		if !g.forGood && r.wholeStack(def, 1) && !r.trialOnly(def) {
			b := r.breachAt(NeverRefitted, g.looseAt, "", r.jointObject(j))
			r.cause(b, g.tightAt, "", "tightened here before")
		}
	case r.wholeStack(def, 2) && r.mine(def.node):
		b := r.entry(NeverTightened, def.node, "", r.jointObject(j))
		b.Place = def.place
		for _, p := range def.pieces {
			lost[r.items[r.bodies[p].item].node] = true
		}
	}
}

// trialOnly says whether all that a joint clamps is on for trial still.
func (r *run) trialOnly(def *joint) bool {
	for _, b := range def.stack {
		if r.pieces.at[b].trial {
			return true
		}
	}
	return false
}

// mine says whether an entry is the manual's own; nobody need use a shared one.
func (r *run) mine(n *model.Node) bool { return !n.Shared }

func (r *run) lockMissing(j id) {
	def, g := &r.joints[j], &r.bolts.at[j]
	device := Object{Node: def.glue, Place: ""}
	if len(def.locks) > 0 {
		device = r.bodyObject(def.locks[0])
	}
	b := r.breachAt(LockMissing, g.tightAt, "", r.jointObject(j), device)
	declared(b, def.node, "locked_by", "locked by this")
	r.cause(b, g.lockedAt, "", "locked here before")
	r.cause(b, g.looseAt, "", "unlocked here")
	r.cause(b, g.needLock, "", "run here")
}

func (r *run) finishBody(i id, lost map[*model.Node]bool) {
	def, p := &r.bodies[i], &r.pieces.at[i]
	it := &r.items[def.item]
	if it.tool {
		if p.on > 0 && p.fitted >= 0 && !p.maybe {
			r.breachAt(ToolLeftOn, p.fitted, "", r.bodyObject(i))
		}
		return
	}
	switch {
	case !r.present[def.item] || p.maybe:
	case p.on > 0 && p.trial:
		r.breachAt(TrialNeverUndone, p.fitted, "", r.bodyObject(i))
		lost[it.node] = true
	case len(def.fastens) > 0 && p.ever || r.isLock(i) && p.ever || p.on > 0 && p.fitted < 0:
	case p.on > 0:
		if !it.graded && it.node.Flag("supplied") && !it.node.Flag("spare") && r.mine(it.node) && !lost[it.node] && r.left(i) > 0 {
			r.neverFitted(i)
			lost[it.node] = !it.each
		}
	case p.taken >= 0 && p.gone == 0 && !p.wasTrial:
		b := r.breachAt(NeverRefitted, p.taken, "", r.bodyObject(i))
		r.cause(b, p.fitted, "", "fitted here before")
		lost[it.node] = true
	case def.base || it.graded && p.ever && !p.wasTrial || it.node.Flag("spare") || lost[it.node] || !r.mine(it.node):
	case !it.node.Flag("supplied") && !r.restedOn(i):
	case p.ever && !p.wasTrial && (it.graded || !it.node.Flag("supplied") || r.left(i) <= 0):
	case !it.each && r.usedElsewhere(it, i):
	default:
		r.neverFitted(i)
		lost[it.node] = !it.each
	}
}

// neverFitted reports a part of the kit that is left over.
func (r *run) neverFitted(i id) {
	p := &r.pieces.at[i]
	n := r.items[r.bodies[i].item].node
	b := r.entry(NeverFitted, n, "", r.bodyObject(i))
	b.Place = r.bodies[i].place
	if p.fitted >= 0 && p.wasTrial {
		r.cause(b, p.fitted, "", "fitted for trial only here")
	} else {
		r.cause(b, p.fitted, "quantity", "not all of them are fitted here")
	}
	r.needed(b, i)
}

// restedOn says whether something is on that sits on a body.
func (r *run) restedOn(i id) bool {
	for _, l := range r.bodies[i].load {
		if r.pieces.at[l].on > 0 {
			return true
		}
	}
	return false
}

// usedElsewhere says whether pieces of the same heap were fitted at other
// places.
func (r *run) usedElsewhere(it *item, i id) bool {
	for _, c := range it.bodies {
		if c != i && r.pieces.at[c].ever {
			return true
		}
	}
	return false
}

// needed points at steps that count on a part which is never fitted.
func (r *run) needed(b *Breach, i id) {
	for _, j := range r.bodies[i].clamps {
		r.cause(b, r.bolts.at[j].tightAt, "", "tightened over it here")
	}
	for _, l := range r.bodies[i].load {
		if len(b.Causes) < 4 {
			r.cause(b, r.pieces.at[l].fitted, "", "fitted onto it here")
		}
	}
}

func (r *run) finishSealed(d *bead) {
	s := r.ops[d.slot].seal
	if d.closed >= 0 || len(s.closedBy) == 0 && len(s.bodies) < 2 || r.acts[d.act].maybe {
		return
	}
	for _, b := range s.bodies { // a part that is never fitted has its own breach
		if _, ok := next(r.moves[b], -1, puts); !ok && !r.bodies[b].base {
			return
		}
	}
	b := r.breachAt(NeverClosed, d.act, "closed_by", r.slotObject(d.slot))
	if len(s.closedBy) > 0 && r.actOf[s.closedBy[0]] < 0 {
		leftOut(b, r.ops[s.closedBy[0]].step)
	}
}

func (r *run) finishWord(slot id) {
	w := &r.words.at[slot]
	if w.lid != none && !w.told {
		r.unheld(slot, nil)
	}
	o := &r.ops[slot]
	if w.act >= 0 && !w.maybe && o.has(kind.Sets) {
		for _, j := range o.locksWith {
			if g := &r.bolts.at[j]; g.tightAt < w.act && !g.settled && !r.absent[j] && !r.keptElsewhere(o, j, w.act) {
				b := r.breachAt(NeverTightened, w.act, "locks_with", r.jointObject(j))
				r.cause(b, g.tightAt, "", "tightened here, before it was set")
				return
			}
		}
	}
	if w.stale >= 0 && !w.maybe {
		b := r.breachAt(SettingDisturbed, w.act, "locks_with", r.slotObject(slot), r.jointObject(o.locksWith[0]))
		r.cause(b, w.stale, "", "tightened here, and not read again")
	}
}

// keptElsewhere reports a lock that was tight before the setting and stays so,
// where the same fastening at another place is tightened after it: a spindle is
// set from one end while the nut at the other end holds.
func (r *run) keptElsewhere(o *op, j id, act int32) bool {
	if r.bolts.at[j].grip != tight {
		return false
	}
	return slices.ContainsFunc(o.locksWith, func(k id) bool {
		return r.joints[k].node == r.joints[j].node && r.bolts.at[k].tightAt > act
	})
}

// finishTorques asks that somebody looks again at every critical torque: a hold
// that checks it, or a later reading or inspection of the fastening that a hold
// checks.
func (r *run) finishTorques() {
	for act := range r.acts {
		o := &r.ops[r.acts[act].slot]
		if !o.critical || o.step.Kind.Judges {
			continue
		}
		for i := range o.effects {
			for _, t := range o.effects[i].at {
				if t.sort != aFastening || r.absent[t.id] || r.bolts.at[t.id].trial || r.lookedAt(r.acts[act].slot, t.id, int32(act)) {
					continue
				}
				b := r.breachAt(TorqueUnchecked, int32(act), "critical", r.jointObject(t.id))
				b.Place = o.place
			}
		}
	}
}

func (r *run) lookedAt(slot, j id, act int32) bool {
	if r.words.at[slot].held >= 0 {
		return true
	}
	for _, s := range r.joints[j].guards {
		if w := &r.words.at[s]; w.act > act && w.told {
			return true // looked at and not held, which is said
		}
	}
	for _, s := range r.joints[j].checked {
		if w := &r.words.at[s]; w.act > act && w.held >= w.act {
			return true
		}
	}
	return false
}

// finishGroups asks that one group stands on the bench. Two things that stand
// there by themselves must have been joined, unless one is the builder's own.
func (r *run) finishGroups(lost map[*model.Node]bool) {
	find := r.groupsNow()
	size := map[id]int{}
	for i := range r.bodies {
		if r.pieces.at[i].on > 0 {
			size[find(id(i))]++
		}
	}
	var leaders []id
	main := none
	for i := range r.bodies {
		def := &r.bodies[i]
		it := &r.items[def.item]
		if !def.base || it.tool || !r.present[def.item] || it.node.Is(entry.Tool) || size[find(id(i))] == 0 {
			continue
		}
		g := find(id(i))
		dup := false
		for _, l := range leaders {
			dup = dup || find(l) == g
		}
		if dup {
			continue
		}
		leaders = append(leaders, id(i))
		if main == none || size[g] > size[find(main)] {
			main = id(i)
		}
	}
	// Which of equals is the machine must not hang on the order of files: the one
	// that something is fitted to first.
	begun := r.begun(find)
	slices.SortStableFunc(leaders, func(a, b id) int { return cmp.Compare(begun[find(a)], begun[find(b)]) })
	for _, l := range slices.Backward(leaders) {
		if size[find(l)] == size[find(main)] {
			main = l
		}
	}
	var apart []id
	for _, l := range leaders {
		if find(l) == find(main) {
			continue
		}
		if own := r.ofTheKit(l, find); own != none && !lost[r.items[r.bodies[own].item].node] {
			apart = append(apart, own)
		}
	}
	if len(apart) == 0 || len(lost) > 0 {
		return
	}
	b := r.entry(NeverJoins, r.items[r.bodies[apart[0]].item].node, "", r.bodyObjects(apart[:min(len(apart), 8)])...)
	declared(b, r.items[r.bodies[main].item].node, "", "the rest stands on this")
}

// ofTheKit is what the kit has in a group: its leader, or what stands on a leader
// that is the builder's own. A group that is all the builder's own may stand by
// itself.
func (r *run) ofTheKit(leader id, find func(id) id) id {
	if r.items[r.bodies[leader].item].node.Flag("supplied") {
		return leader
	}
	for i := range r.bodies {
		it := &r.items[r.bodies[i].item]
		if r.pieces.at[i].on > 0 && !it.tool && it.node.Flag("supplied") && find(id(i)) == find(leader) {
			return id(i)
		}
	}
	return none
}

// begun is when something was first fitted in each group that is there now.
func (r *run) begun(find func(id) id) map[id]int32 {
	first := map[id]int32{}
	for i := range r.bodies {
		at := r.pieces.at[i].fitted
		if old, ok := first[find(id(i))]; at >= 0 && (!ok || at < old) {
			first[find(id(i))] = at
		}
	}
	return first
}

// groupsNow finds what is joined to what from the seats alone, exactly.
func (r *run) groupsNow() func(id) id {
	up := make([]id, len(r.bodies))
	for i := range up {
		up[i] = id(i)
	}
	find := func(i id) id {
		for up[i] != i {
			up[i] = up[up[i]]
			i = up[i]
		}
		return i
	}
	for i := range r.bodies {
		if p := &r.pieces.at[i]; p.on == 0 && !p.meant {
			continue
		}
		for _, seat := range r.bodies[i].seats {
			if r.present[r.bodies[seat].item] {
				up[find(id(i))] = find(seat)
			}
		}
	}
	return find
}
