package bench

import (
	"fettle/lang/kind"
	"fettle/lang/model"
)

// planned is one act to come.
type planned struct {
	slot  id
	maybe bool
}

// event is an act that does something to a body or a joint.
type event struct {
	act  int32
	verb kind.Verb
}

// plan is the order of the work under one choice.
type plan struct {
	acts    []planned
	actOf   []int32      // by slot; -1 where the choice leaves it out
	present []bool       // items
	absent  []bool       // joints
	moves   [][]event    // by body: fitted, taken off
	grips   [][]event    // by joint
	moved   []moved      // procedures that stand before one they come after
	flowing []int32      // acts that fill or drain
	guided  map[id]int32 // by slot of a mark: the last act that goes by it
}

// moved is a procedure that was done later than the manual's order has it.
type moved struct{ procedure, after *model.Node }

// plan works out the order of the work; keep, where it is given, says which acts
// are in it.
func (x *index) plan(c Choice, keep func(id) bool) *plan {
	p := &plan{actOf: make([]int32, len(x.ops)), present: make([]bool, len(x.items)), absent: make([]bool, len(x.joints))}
	for i := range p.actOf {
		p.actOf[i] = -1
	}
	for i, it := range x.items {
		p.present[i] = c.holds(x.m, it.node.Formula("when", ""), "") != no
	}
	for i, j := range x.joints {
		p.absent[i] = c.holds(x.m, j.node.Formula("when", j.place), j.place) == no
	}
	p.acts = make([]planned, 0, len(x.ops))
	for _, proc := range p.procedures(x.m) {
		x.procedure(p, c, proc)
	}
	if keep != nil {
		p.keep(keep)
	}
	x.foresee(p)
	return p
}

// procedure adds the acts of one procedure: place by place where it is at
// places; else neighbouring steps with the same places go place by place.
func (x *index) procedure(p *plan, c Choice, proc *model.Node) {
	whole := c.holds(x.m, proc.Formula("when", ""), "")
	if whole == no {
		return
	}
	steps := proc.Steps
	if len(steps) > 0 && steps[0].PerPlace {
		for i, place := range x.placesOf(steps[0].Places) {
			for _, s := range steps {
				x.schedule(p, c, s, i, place, whole)
			}
		}
		return
	}
	for from := 0; from < len(steps); {
		to := from + 1
		for to < len(steps) && steps[from].Places != nil && steps[to].Places == steps[from].Places {
			to++
		}
		for i, place := range x.placesOf(steps[from].Places) {
			for _, s := range steps[from:to] {
				x.schedule(p, c, s, i, place, whole)
			}
		}
		from = to
	}
}

func (x *index) schedule(p *plan, c Choice, s *model.Step, i int, place string, whole answer) {
	if place != "" && s.Has("only") {
		here := false
		for _, n := range s.Names("only") {
			here = here || n == place
		}
		if !here {
			return
		}
	}
	slot := x.first[s] + id(i)
	done := yes
	if f := x.ops[slot].when; f != nil {
		done = c.holds(x.m, f, place)
	}
	if done == no {
		return
	}
	p.actOf[slot] = int32(len(p.acts))
	p.acts = append(p.acts, planned{slot, done == maybe || whole == maybe})
}

// keep leaves out the acts that are not wanted.
func (p *plan) keep(want func(id) bool) {
	kept := p.acts[:0]
	for _, a := range p.acts {
		p.actOf[a.slot] = -1
		if want(a.slot) {
			p.actOf[a.slot] = int32(len(kept))
			kept = append(kept, a)
		}
	}
	p.acts = kept
}

// foresee notes for every body and joint which acts will do something to it.
// It lets the bench tell a step that comes too late from one that never comes.
func (x *index) foresee(p *plan) {
	p.moves, p.grips = make([][]event, len(x.bodies)), make([][]event, len(x.joints))
	p.guided = map[id]int32{}
	for act, pl := range p.acts {
		o := &x.ops[pl.slot]
		for _, g := range o.marks {
			if g.at.sort == aSlot {
				p.guided[g.at.id] = int32(act)
			}
		}
		if len(o.through) > 0 {
			p.flowing = append(p.flowing, int32(act))
		}
		for _, e := range o.effects {
			ev := event{int32(act), e.verb}
			for _, t := range e.at {
				switch {
				case t.sort == aFastening && handles(e.verb):
					p.grips[t.id] = append(p.grips[t.id], ev)
				case t.sort == aBody && (puts(e.verb) || takes(e.verb)):
					p.moves[t.id] = append(p.moves[t.id], ev)
				}
			}
		}
	}
}

func puts(v kind.Verb) bool  { return v == kind.Joins || v == kind.PutsOn }
func takes(v kind.Verb) bool { return v == kind.Takes || v == kind.PutsAway }

func handles(v kind.Verb) bool {
	switch v {
	case kind.Starts, kind.Tightens, kind.Slackens, kind.Opens, kind.Locks:
		return true
	}
	return false
}

// next is the first event after act that one of the verbs brings, or none.
func next(events []event, act int32, verb func(kind.Verb) bool) (event, bool) {
	for _, e := range events {
		if e.act > act && verb(e.verb) {
			return e, true
		}
	}
	return event{act: -1}, false
}

func is(v kind.Verb) func(kind.Verb) bool { return func(w kind.Verb) bool { return v == w } }

func anything(kind.Verb) bool { return true }

// procedures is the order in which they are really done: the manual's, with
// those that it leaves out put where their `after` says, and those that stand
// too early put behind what they come after, so that one slip in the order
// gives one breach.
func (p *plan) procedures(m *model.Manual) []*model.Node {
	order := append([]*model.Node{}, m.Procedures...)
	if m.Ordered > 0 && m.Ordered < len(order) {
		left := order[m.Ordered:]
		order = append([]*model.Node{}, order[:m.Ordered]...)
		for _, n := range left {
			order = insert(order, n)
		}
	}
	known := map[*model.Node]bool{}
	for _, n := range order {
		known[n] = true
	}
	var out []*model.Node
	state := map[*model.Node]uint8{} // 1: on the way, 2: done
	ring := false
	var visit func(n *model.Node)
	visit = func(n *model.Node) {
		switch state[n] {
		case 1:
			ring = true
			return
		case 2:
			return
		}
		state[n] = 1
		for _, r := range n.Refs("after", "") {
			if r.To == nil || !known[r.To] {
				continue
			}
			if state[r.To] == 0 {
				p.moved = append(p.moved, moved{n, r.To})
			}
			visit(r.To)
		}
		state[n] = 2
		out = append(out, n)
	}
	for _, n := range order {
		visit(n)
	}
	if ring { // a rule of its own says so
		p.moved = nil
		return order
	}
	return out
}

// insert puts a procedure that the order leaves out behind the last of what it
// comes after, or else before the first that comes after it.
func insert(order []*model.Node, n *model.Node) []*model.Node {
	at := -1
	for i, o := range order {
		for _, r := range n.Refs("after", "") {
			if r.To == o {
				at = i + 1
			}
		}
	}
	for i, o := range order {
		for _, r := range o.Refs("after", "") {
			if at < 0 && r.To == n {
				at = i
			}
		}
	}
	if at < 0 {
		at = len(order)
	}
	order = append(order, nil)
	copy(order[at+1:], order[at:])
	order[at] = n
	return order
}
