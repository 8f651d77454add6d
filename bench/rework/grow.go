package rework

import (
	"slices"

	"fettle/bench"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// grow adds what follows from what is wanted until nothing is missing.
func (p *planner) grow() {
	p.ofOldManual()
	for {
		p.tearDown()
		if p.Stuck != nil {
			break
		}
		n := len(p.want)
		for _, m := range p.WayIn {
			p.putBack(m)
			p.void(m)
		}
		for _, r := range p.spent {
			p.fitAgain(r.Object)
		}
		for _, i := range p.wanted() {
			p.follow(i)
		}
		p.holds()
		if len(p.want) > n {
			continue
		}
		missing := p.execute()
		if len(missing) == 0 || !p.repair(missing) {
			p.Refused = missing
			break
		}
	}
	for _, i := range p.wanted() {
		a := p.acts[i]
		p.Again = append(p.Again, Act{a.Step, a.Place, p.want[i], p.asked[i], p.uncured[i]})
	}
	p.renewals()
}

// add wants an act that is on record; another was never done, and is open work.
func (p *planner) add(i int, why string) {
	if i >= 0 && p.want[i] == "" && p.Carried.done(p.acts[i].Step, p.acts[i].Place) {
		p.want[i] = why
	}
}

// lastTaken is the last act on record that took an object off by a verb, or -1.
func (p *planner) lastTaken(o bench.Object, verbs ...kind.Verb) int {
	for i := len(p.acts) - 1; i >= 0; i-- {
		if meets(p.acts[i], o, verbs...) && p.Carried.done(p.acts[i].Step, p.acts[i].Place) {
			return i
		}
	}
	return -1
}

// putBack wants what brings back what a move undoes.
func (p *planner) putBack(m bench.Move) {
	switch {
	case m.Object.Node.Is(entry.Fastening):
		why := "this is undone: " + m.Object.String()
		from := p.lastTaken(m.Object, kind.Opens)
		for i := from + 1; i < len(p.acts); i++ {
			if meets(p.acts[i], m.Object, kind.Starts, kind.Tightens, kind.Slackens, kind.Locks, kind.Cleans, kind.Wets) {
				p.add(i, why)
			}
		}
	default:
		p.fitAgain(m.Object)
	}
	for _, seal := range m.Seals {
		p.sealAgain(p.at[slot{seal.Node.Step, seal.Place}], "its seal is broken")
	}
}

// fitAgain wants what fitted a part last, and what was oiled or heated for that.
func (p *planner) fitAgain(o bench.Object) {
	why := "this comes off: " + o.String()
	from := p.lastTaken(o, kind.Takes, kind.PutsAway)
	last := -1
	for i := from + 1; i < len(p.acts); i++ {
		if meets(p.acts[i], o, kind.Joins, kind.PutsOn) && p.Carried.done(p.acts[i].Step, p.acts[i].Place) {
			p.add(i, why)
			last = i
		}
	}
	for i := from + 1; i < last; i++ {
		if meets(p.acts[i], o, kind.Wets, kind.Heats) {
			p.add(i, why)
		}
	}
}

// sealAgain wants a seal anew, on clean faces.
func (p *planner) sealAgain(i int, why string) {
	p.add(i, why)
	for _, face := range append(objectsOf(p.acts[i], "on"), objectsOf(p.acts[i], "between")...) {
		p.cleanAgain(face, i)
	}
	for j := i + 1; j < len(p.acts); j++ {
		if slices.ContainsFunc(p.acts[j].Step.Refs("until", p.acts[j].Place), func(r model.Ref) bool { return r.To == p.acts[i].Step.Node }) {
			p.add(j, "it must cure")
		}
	}
}

// cleanAgain wants the last cleaning of a face before an act.
func (p *planner) cleanAgain(face bench.Object, before int) bool {
	for i := before - 1; i >= 0; i-- {
		for _, o := range on(p.acts[i], kind.Cleans) {
			if alike(o, face) && (o.Sub == "" || o.Name == face.Name) {
				had := len(p.want)
				p.add(i, "it is sealed again")
				return len(p.want) > had
			}
		}
	}
	return false
}

// void wants again what was judged with something in place that comes off: in
// the procedure that put it there, any judgement on how things stand to one
// another; elsewhere, one on the thing itself; and every proof of the machine
// that it belongs to.
func (p *planner) void(m bench.Move) {
	why := "judged while this was on: " + m.Object.String()
	verbs := []kind.Verb{kind.Joins, kind.PutsOn}
	parts := append([]bench.Object{m.Object}, m.With...)
	if m.Object.Node.Is(entry.Fastening) {
		why = "judged while this was tight: " + m.Object.String()
		verbs = []kind.Verb{kind.Tightens}
		parts = stack(m.Object)
	}
	set := p.lastTaken(m.Object, verbs...)
	if set < 0 {
		return
	}
	machine := parts
	for _, o := range parts {
		machine = append(machine, ground(o)...)
	}
	for j := set + 1; j < len(p.acts); j++ {
		a := p.acts[j]
		if !looks(a.Step) && !does(a.Step, kind.Sets) || p.undone(j) {
			continue
		}
		home := a.Step.Procedure == p.acts[set].Step.Procedure && a.Place == p.acts[set].Place
		on := objectsOf(a, "on")
		proof := does(a.Step, kind.Drives) && a.Step.Word("by") != "hand"
		switch {
		case home && between(a),
			slices.ContainsFunc(on, func(o bench.Object) bool { return o.Sub == "" && alike(o, m.Object) }),
			between(a) && parting(on, append([]bench.Object{m.Object}, m.With...)),
			proof && slices.ContainsFunc(on, func(o bench.Object) bool {
				return slices.ContainsFunc(machine, func(x bench.Object) bool { return alike(x, o) })
			}):
			p.add(j, why)
		}
	}
}

// parting reports that some of the objects come off and others stay.
func parting(on, off []bench.Object) bool {
	in, out := false, false
	for _, o := range on {
		if slices.ContainsFunc(off, func(x bench.Object) bool { return alike(x, o) }) {
			in = true
		} else {
			out = true
		}
	}
	return in && out
}

// undone reports an act of which nothing is left on the engine: what it fitted or
// tightened has been taken off again by a later act on record, or it was done
// while something was on for trial that has been taken off again.
func (p *planner) undone(i int) bool {
	a := p.acts[i]
	left := false
	for _, o := range on(a, kind.Joins, kind.PutsOn) {
		left = left || p.lastTaken(o, kind.Takes, kind.PutsAway) < i
	}
	for _, o := range on(a, kind.Starts, kind.Tightens, kind.Slackens) {
		left = left || p.lastTaken(o, kind.Opens) < i
	}
	if len(on(a, kind.Joins, kind.PutsOn, kind.Starts, kind.Tightens, kind.Slackens)) > 0 {
		return !left
	}
	if does(a.Step, kind.Takes, kind.Opens, kind.PutsAway) {
		return true // it is undone where what it took off is on again
	}
	return looks(a.Step) && len(p.onTrial(i)) > 0
}

// window is a trial fit, from the act that makes it to the one that ends it.
type window struct {
	from, to int
	part     bench.Object
}

// onTrial are the trial fits in which an act is done, and that are over.
func (p *planner) onTrial(w int) []window {
	var all []window
	for i := w - 1; i >= 0; i-- {
		a := p.acts[i]
		if a.Step.Procedure != p.acts[w].Step.Procedure || a.Place != p.acts[w].Place {
			break
		}
		if !a.Step.Flag("trial") {
			continue
		}
		for _, o := range on(a, kind.Joins) {
			for k := i + 1; k < len(p.acts); k++ {
				if !meets(p.acts[k], o, kind.Takes) {
					continue
				}
				if k > w && p.Carried.done(p.acts[k].Step, p.acts[k].Place) {
					all = append(all, window{i, k, o})
				}
				break
			}
		}
	}
	return all
}

// follow wants what rests on an act that is wanted.
func (p *planner) follow(i int) {
	a := p.acts[i]
	p.trial(i)
	if a.Step.Has("within") { // what it follows must be fresh
		for _, r := range a.Step.Refs("after", a.Place) {
			if r.To != nil && r.To.Step != nil {
				p.add(p.actOf(r.To.Step, a.Place), "the next step must follow in time")
			}
		}
	}
	for j := i + 1; j < len(p.acts); j++ {
		b := p.acts[j]
		if does(a.Step, kind.Sets) && does(b.Step, kind.Reads) && overlap(objectsOf(a, "on"), objectsOf(b, "on")) {
			p.add(j, "it reads what is set again at step "+a.Step.Number)
		}
		if does(a.Step, kind.Heats) && slices.ContainsFunc(b.Step.Refs("until", b.Place), func(r model.Ref) bool { return r.To == a.Step.Node }) {
			p.add(j, a.Step.Title()+" is done again")
		}
		if a.Step.Kind.Yields == kind.Nothing || !p.uses(b, a) {
			continue
		}
		switch {
		case does(b.Step, kind.WorksOut, kind.Picks), looks(b.Step):
			p.add(j, "it rests on step "+a.Step.Number)
		case does(b.Step, kind.Joins) && p.differ[i]:
			p.add(j, "the pieces are others")
		}
	}
	for _, n := range p.Manual.Entries {
		if !p.fresh[n] || !meets(a, bench.Object{Node: n, Place: a.Place}, kind.Joins) {
			continue
		}
		for j, b := range p.acts { // what was read of the part that is replaced
			if (looks(b.Step) || does(b.Step, kind.Cleans)) && b.Place == a.Place && slices.ContainsFunc(objectsOf(b, "on"), func(o bench.Object) bool { return o.Node == n }) {
				p.add(j, n.Title()+" is another piece")
			}
		}
	}
}

// uses reports that b works or judges by the value of a.
func (p *planner) uses(b, a bench.Act) bool {
	for _, name := range [...]string{"is", "accept", "gap", "base", "leaves", "makes", "part"} {
		at := b.Step.Attr(name)
		if at == nil {
			continue
		}
		found := false
		model.EachRef(model.AtPlace(at.Value, b.Place), func(r *model.Ref) {
			here := r.Place == "" && (a.Place == b.Place || a.Place == "" || b.Place == "")
			found = found || r.To == a.Step.Node && (here || r.Place == a.Place)
		})
		if found {
			return true
		}
	}
	return false
}

func (p *planner) actOf(s *model.Step, place string) int {
	if i, ok := p.at[slot{s, place}]; ok {
		return i
	}
	if i, ok := p.at[slot{s, ""}]; ok {
		return i
	}
	return -1
}

// trial wants the trial fit again in which an act was done that reads or accepts,
// for it cannot be done without: all that concerns the parts on trial.
func (p *planner) trial(w int) {
	if !looks(p.acts[w].Step) && !does(p.acts[w].Step, kind.Sets) {
		return
	}
	for _, t := range p.onTrial(w) {
		why := "step " + p.acts[w].Step.Number + " is done in the trial fit"
		for k := t.from; k <= t.to; k++ {
			if p.concerns(p.acts[k], t.part) || k < w && does(p.acts[k].Step, kind.Drives) {
				p.add(k, why)
			}
		}
	}
}

// concerns reports that an act handles a part, or a fastening that clamps it.
func (p *planner) concerns(a bench.Act, o bench.Object) bool {
	if meets(a, o, kind.Joins, kind.Takes) {
		return true
	}
	for _, f := range on(a, kind.Starts, kind.Tightens, kind.Slackens, kind.Opens) {
		if slices.ContainsFunc(stack(f), func(x bench.Object) bool { return alike(x, o) }) {
			return true
		}
	}
	return false
}

// holds wants the holds again that checked what is done again.
func (p *planner) holds() {
	for h, a := range p.acts {
		if !does(a.Step, kind.Stops) || p.want[h] != "" {
			continue
		}
		checks := a.Step.Refs("checks", a.Place)
		for _, r := range checks {
			if r.To == nil || r.To.Step == nil {
				continue
			}
			place := a.Place
			if r.Place != "" {
				place = r.Place
			}
			for _, key := range keys(r.To.Step, place) {
				if i := p.actOf(r.To.Step, key); i >= 0 && p.want[i] != "" {
					p.add(h, "it checks step "+r.To.Step.Number)
				}
			}
		}
		if len(checks) > 0 {
			continue
		}
		for i := h - 1; i >= 0 && p.acts[i].Step.Procedure == a.Step.Procedure; i-- {
			if p.want[i] != "" {
				p.add(h, "work before it is done again")
			}
		}
	}
}
