package rework

import (
	"fmt"
	"slices"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// execute does the plan on the bench, from the engine as it stands, and gives
// what the bench does not accept. Parts that are renewed may be used again.
func (p *planner) execute() []bench.Breach {
	before := keysOf(p.state().Finish())
	s := p.tearDown()
	var steps []bench.Act
	for _, i := range p.wanted() {
		steps = append(steps, p.acts[i])
	}
	var out []bench.Breach
	p.uncured = map[int]string{}
	for _, b := range s.DoAll(steps) {
		if !p.expected(b) && !p.cures(b) {
			out = append(out, b)
		}
	}
	for _, b := range s.Finish() {
		if !before[keyOf(b)] && !p.expected(b) {
			out = append(out, b)
		}
	}
	return out
}

func keyOf(b bench.Breach) string { return fmt.Sprint(b.What, b.Place, b.Objects, b.Node) }

func keysOf(list []bench.Breach) map[string]bool {
	all := map[string]bool{}
	for _, b := range list {
		all[keyOf(b)] = true
	}
	return all
}

// expected reports a breach that says no more than that a part must be bought, or
// that the engine has been further than this: a hold that is released again
// stands after what it guards, and branches for when a reading is outside may ask
// for more than the plan.
func (p *planner) expected(b bench.Breach) bool {
	if b.What == bench.HoldAfterItsStep || b.What == bench.BranchCannotBeDone {
		return true
	}
	if b.What == bench.NotStarted && len(b.Objects) > 0 && len(b.Objects[0].Node.AllRefs("fasteners")) == 0 {
		return true // it goes back with its part
	}
	bought := b.What == bench.SpentUsedAgain || b.What == bench.MoreThanKit || b.What == bench.FittedTwice // the second of two that are bought
	if !bought || len(b.Objects) == 0 {
		return false
	}
	o := b.Objects[0]
	for _, r := range p.spent {
		if r.Object.Node == o.Node || slices.ContainsFunc(o.Node.AllRefs("fasteners"), func(f model.Ref) bool { return f.To == r.Object.Node }) ||
			slices.ContainsFunc(o.Node.AllRefs("locked_by"), func(f model.Ref) bool { return f.To == r.Object.Node }) {
			return true
		}
	}
	return p.fresh[o.Node]
}

// cures notes what must cure before an act and for which the manual has no wait
// that is done by now: what was laid on the way to where the engine stands.
func (p *planner) cures(b bench.Breach) bool {
	if b.What != bench.RunUncured || len(b.Objects) == 0 || b.Step == nil {
		return false
	}
	laid := b.Objects[0]
	for i, a := range p.acts {
		if p.Carried.done(a.Step, a.Place) && p.want[i] == "" && waitsFor(a.Step, a.Place, laid.Node) {
			return false // repair wants it
		}
	}
	if i := p.actOf(b.Step, b.Place); i >= 0 {
		if p.uncured[i] != "" {
			p.uncured[i] += ", "
		}
		p.uncured[i] += laid.String()
	}
	return true
}

func waitsFor(s *model.Step, place string, n *model.Node) bool {
	return slices.ContainsFunc(s.Refs("until", place), func(r model.Ref) bool { return r.To == n })
}

// repair wants the steps whose lack the bench has found; false where it knows of none.
func (p *planner) repair(found []bench.Breach) bool {
	n := len(p.want) + len(p.off)
	for _, b := range found {
		at := len(p.acts)
		if b.Step != nil {
			at = p.actOf(b.Step, b.Place)
		}
		if len(b.Objects) == 0 {
			continue
		}
		o := b.Objects[0]
		switch b.What {
		case bench.Covered: // out of reach only once other things are on again
			if len(b.Objects) > 1 && !slices.Contains(p.off, b.Objects[1]) {
				p.off = append(p.off, b.Objects[1])
			}
		case bench.NotCleaned, bench.Dirtied:
			p.cleanAgain(o, at)
		case bench.WrongLubricant:
			p.each(at, o, "its threads must be wet with the right thing", kind.Wets)
		case bench.NotStarted, bench.NotAsFound, bench.NothingToLoosen, bench.TightenedTwice:
			p.each(at, o, "the next step finds it like that", kind.Starts, kind.Slackens, kind.Tightens)
		case bench.LockMissing, bench.RunUnlocked:
			p.each(len(p.acts), o, "it must be locked", kind.Locks, kind.Wets)
		case bench.NeverTightened, bench.LeftLoose, bench.RunLoose:
			p.each(len(p.acts), o, "it must be tight", kind.Tightens, kind.Locks)
		case bench.SealBroken:
			if i := p.actOf(o.Node.Step, o.Place); i >= 0 {
				p.sealAgain(i, "its seal is broken")
			}
		case bench.SqueezeOutLeft:
			p.wipe(o)
		case bench.RunUncured, bench.WaitTooShort:
			for i, a := range p.acts {
				if waitsFor(a.Step, a.Place, o.Node) {
					p.add(i, "it must cure")
				}
			}
		case bench.NeverRefitted, bench.StackNotOn, bench.SeatNotOn:
			for _, x := range b.Objects {
				if x.Node.Step == nil {
					p.fitAgain(x)
				}
			}
		case bench.CoveredUnaccepted, bench.MarkWiped, bench.MarkNotMade, bench.UsedBeforeRead, bench.SettingDisturbed:
			if o.Node.Step != nil {
				p.add(p.actOf(o.Node.Step, o.Place), "a later step rests on it")
			}
		case bench.RunUnheld, bench.IrreversibleUnheld, bench.CoveredUnheld:
			p.holdBefore(at, o)
		}
	}
	return len(p.want)+len(p.off) > n
}

// each wants the acts before another that do something to an object.
func (p *planner) each(before int, o bench.Object, why string, verbs ...kind.Verb) {
	for i := min(before, len(p.acts)) - 1; i >= 0; i-- {
		if meets(p.acts[i], o, verbs...) {
			p.add(i, why)
		}
	}
}

// wipe wants the first cleaning after a seal that touches what it joins.
func (p *planner) wipe(seal bench.Object) {
	i := p.actOf(seal.Node.Step, seal.Place)
	if i < 0 {
		return
	}
	joined := append(objectsOf(p.acts[i], "on"), objectsOf(p.acts[i], "between")...)
	for j := i + 1; j < len(p.acts); j++ {
		if slices.ContainsFunc(joined, func(o bench.Object) bool { return meets(p.acts[j], o, kind.Cleans) }) {
			p.add(j, "the sealant is squeezed out again")
			return
		}
	}
}

// holdBefore wants the holds that guard an act, or check what it covers.
func (p *planner) holdBefore(at int, accepted bench.Object) {
	for h, a := range p.acts {
		if !does(a.Step, kind.Stops) {
			continue
		}
		guards := slices.ContainsFunc(a.Step.Refs("before", a.Place), func(r model.Ref) bool { return at >= 0 && at < len(p.acts) && r.To == p.acts[at].Step.Node })
		checks := slices.ContainsFunc(a.Step.Refs("checks", a.Place), func(r model.Ref) bool { return r.To == accepted.Node })
		if guards || checks {
			p.add(h, "what it guards is done again")
		}
	}
}

// ofOldManual plans off what the new manual does not fit any more, on the bench of
// the manual that it was built to, and carries what is in the way over.
func (p *planner) ofOldManual() {
	gone := p.off
	p.off = nil
	if len(gone) == 0 || p.since == nil {
		return
	}
	old := p.since.model
	s := bench.After(old, Choice(old, p.Given), func(step *model.Step, place string) bool {
		return p.State.Steps[logbook.At{Step: step.Key(), Place: place}].Is(logbook.Done, logbook.Reading, logbook.Release)
	})
	td := s.TakeOff(gone...)
	if td.Stuck != nil {
		p.Stuck = td.Stuck
		return
	}
	for _, m := range td.Moves {
		n := p.find(m.Object)
		switch {
		case n.Node != nil && (n.Node.Is(entry.Fastening) || p.fits(n.Node)):
			p.off = append(p.off, n)
		case !m.Object.Node.Is(entry.Fastening):
			p.Remove = append(p.Remove, m.Object)
		}
	}
}

// find is an object of an old manual in the new one; without a node where it is gone.
func (p *planner) find(o bench.Object) bench.Object {
	if p.Manual.Find(o.Node.Address) == o.Node {
		return o
	}
	if p.since == nil {
		return bench.Object{}
	}
	n := p.since.changes.Pairs.New(o.Node)
	return bench.Object{Node: n, Place: o.Place}
}

// renewals lists what is spent and what is replaced, with numbers.
func (p *planner) renewals() {
	for _, r := range p.spent {
		if p.fresh[r.Object.Node] {
			continue
		}
		i := slices.IndexFunc(p.Renew, func(x Renewal) bool { return x.Object == r.Object })
		if i < 0 {
			p.Renew = append(p.Renew, Renewal{r.Object, r.Count, r.Object.Node.Plain("number"), "spent when it comes off"})
			continue
		}
		p.Renew[i].Count += r.Count
	}
}
