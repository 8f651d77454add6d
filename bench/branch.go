package bench

import (
	"fettle/lang/kind"
	"fettle/lang/model"
)

// otherwise executes a block for when a reading is outside, on a bench that is
// set back afterwards: its steps, and whether the step that it goes on with can
// be reached from there.
func (r *run) otherwise(o *op, slot id, block *model.Node) {
	then := block.Refs("then", "")
	back := len(then) > 0 && then[0].To != nil && then[0].To.Step != nil
	if len(block.Steps) == 0 && !back {
		return
	}
	point, open, wasMaybe := r.begin(), r.open, r.maybe
	r.branch, r.maybe = block, false
	for _, s := range block.Steps {
		for _, inner := range r.slotsOf(s, o.place) {
			r.do(&r.ops[inner], inner)
		}
	}
	from := r.act // where the work goes on
	if back {
		for _, to := range r.slotsFor(then[0], o.place) {
			if to != slot {
				r.goBack(o, block, to)
			}
			if at := r.actOf[to]; at >= 0 {
				from = at - 1
			}
		}
	}
	if len(then) == 0 || then[0].Word != stop {
		r.leftLoose(point.bolts, from)
	}
	r.branch, r.maybe, r.open = nil, wasMaybe, open
	r.back(point)
}

// stop is the word by which a branch ends the work.
const stop = "stop"

// leftLoose reports a fastening that a branch undoes and that nothing tightens
// any more from where the work goes on. One that locks a setting is left to the
// setting.
func (r *run) leftLoose(since mark, from int32) {
	var seen []id
	for _, old := range r.bolts.old[since.changes:] {
		g := &r.bolts.at[old.i]
		if has(seen, old.i) {
			continue
		}
		seen = append(seen, old.i) // the oldest entry is how the branch found it
		if old.was.grip != tight || g.grip != loose || old.was.trial || len(r.joints[old.i].settings) > 0 {
			continue
		}
		if _, ok := next(r.grips[old.i], from, is(kind.Tightens)); ok || g.byStep == nil || g.byStep.Branch != r.branch {
			continue
		}
		r.t.Breaches = append(r.t.Breaches, Breach{What: LeftLoose, Act: -1, Step: g.byStep, Node: g.byStep.Node,
			Place: r.joints[old.i].place, Objects: []Object{r.jointObject(old.i)}})
	}
}

// goBack asks that an earlier step can be done again: what is in its way comes
// off, and what that spends can be renewed from the kit.
func (r *run) goBack(o *op, block *model.Node, to id) {
	dest := &r.ops[to]
	act := r.actOf[to]
	fail := func() *Breach {
		r.t.Breaches = append(r.t.Breaches, Breach{What: BranchCannotBeDone, Act: int(r.act), Step: o.step, Node: block,
			Attr: "then", Place: o.place, Objects: []Object{r.slotObject(to)}})
		return &r.t.Breaches[len(r.t.Breaches)-1]
	}
	if act < 0 {
		if dest.step.Branch == nil && !r.maybe {
			leftOut(fail(), dest.step)
		}
		return
	}
	if act > r.act {
		return
	}
	for a := act + 1; a < r.act; a++ {
		if p := &r.ops[r.acts[a].slot]; p.irreversible {
			r.cause(fail(), a, "irreversible", "cannot be undone")
			return
		}
	}
	td := r.teardown(r.goals(to))
	if td.Stuck != nil {
		b := fail()
		b.Objects = append(b.Objects, td.Stuck.Object)
		if td.Stuck.act >= 0 {
			r.cause(b, td.Stuck.act, "", td.Stuck.Why)
		}
		return
	}
	for _, n := range td.Renew {
		if n.Short && n.body != none {
			b := fail()
			b.Objects = append(b.Objects, n.Object)
			r.cause(b, r.pieces.at[n.body].fitted, "", "spent when it comes off again")
			declared(b, n.Object.Node, "quantity", "the kit holds no other")
			return
		}
	}
}

// goals are what must be so for a step to be done again.
func (r *run) goals(to id) []goal {
	var goals []goal
	dest := &r.ops[to]
	for _, e := range dest.effects {
		switch e.verb {
		case kind.Joins, kind.PutsOn, kind.Starts:
			for _, t := range e.at {
				goals = append(goals, goal{t, true})
			}
		case kind.Takes, kind.PutsAway, kind.Opens, kind.Slackens, kind.Stops, kind.Waits, kind.Drives, kind.WorksOut:
		case kind.Picks:
			goals = append(goals, r.packGoals(to)...)
		case kind.Seals:
			for _, c := range dest.seal.closedBy {
				for _, f := range r.ops[c].effects {
					if f.verb == kind.Joins {
						for _, t := range f.at {
							goals = append(goals, goal{t, true})
						}
					}
				}
			}
			goals = append(goals, inReach(e.at)...)
		default:
			goals = append(goals, inReach(e.at)...)
		}
	}
	return goals
}

func inReach(ts []target) []goal {
	goals := make([]goal, len(ts))
	for i, t := range ts {
		goals[i] = goal{t, false}
	}
	return goals
}

// packGoals are the pieces of a pack, which are picked anew.
func (r *run) packGoals(to id) []goal {
	var goals []goal
	for a := r.actOf[to] + 1; a <= r.act; a++ {
		p := &r.ops[r.acts[a].slot]
		for _, u := range p.uses {
			if !has(u.slots, to) {
				continue
			}
			for _, e := range p.effects {
				if e.verb == kind.Joins && e.attr == u.attr {
					for _, t := range e.at {
						goals = append(goals, goal{t, true})
					}
				}
			}
		}
	}
	return goals
}
