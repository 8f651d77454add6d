package rework

import (
	"slices"

	"fettle/bench"
	"fettle/lang/entry"
	"fettle/lang/kind"
)

// goals are what must be off, and what in reach, for the acts to be done.
func (p *planner) goals(acts []int) (off, reach []bench.Object) {
	add := func(to *[]bench.Object, objects ...bench.Object) {
		for _, o := range objects {
			if !slices.Contains(*to, o) {
				*to = append(*to, o)
			}
		}
	}
	for _, i := range acts {
		a := p.acts[i]
		for _, e := range a.Step.Kind.Does {
			objects := objectsOf(a, e.Attr)
			switch e.Verb {
			case kind.Joins, kind.PutsOn, kind.Starts:
				add(&off, objects...)
				add(&off, objectsOf(a, "without")...)
				for _, o := range objects {
					if !p.done(a.Step, a.Place) { // where it goes
						add(&reach, seats(o)...)
					}
				}
			case kind.Tightens, kind.Locks:
				if a.Step.Word("from") == "tight" || !p.started(objects) {
					add(&reach, objects...)
				} else {
					add(&off, objects...)
				}
			case kind.Wets:
				for _, o := range objects {
					if o.Node.Is(entry.Fastening) && p.started([]bench.Object{o}) {
						add(&off, o)
					} else {
						add(&reach, o)
					}
				}
			case kind.Seals:
				for _, r := range a.Step.Refs("closed_by", a.Place) {
					if r.To != nil && r.To.Step != nil {
						add(&off, on(bench.Act{Step: r.To.Step, Place: a.Place}, kind.Joins)...)
					}
				}
				add(&reach, objects...)
			case kind.Sets:
				add(&off, objectsOf(a, "locks_with")...)
				add(&reach, objects...)
			case kind.Cleans, kind.Reads, kind.Accepts, kind.MakesMark, kind.Heats, kind.Fills, kind.Touches, kind.Lifts:
				add(&reach, objects...)
			}
		}
	}
	return off, reach
}

// started reports that the manual starts these fastenings by hand, so that they
// can come out and go in again.
func (p *planner) started(fastenings []bench.Object) bool {
	return slices.ContainsFunc(p.acts, func(a bench.Act) bool {
		return slices.ContainsFunc(fastenings, func(o bench.Object) bool { return meets(a, o, kind.Starts) })
	})
}

// state is the bench as the engine stands.
func (p *planner) state() *bench.State { return p.Bench() }

// tearDown plans the way in to the acts that are wanted, and gives the bench with
// all that off.
func (p *planner) tearDown() *bench.State {
	s := p.state()
	off, reach := p.goals(p.wanted())
	off = append(off, p.off...)
	p.WayIn, p.spent = nil, nil
	for _, plan := range []func() *bench.Teardown{
		func() *bench.Teardown { return s.TakeOff(off...) },
		func() *bench.Teardown { return s.Reach(reach...) },
	} {
		td := plan()
		if td.Stuck != nil {
			p.Stuck = td.Stuck
			return s
		}
		s.Undo(td)
		p.WayIn = append(p.WayIn, td.Moves...)
		p.spent = append(p.spent, td.Renew...)
	}
	return s
}

// wanted are the acts to do, in the order of the work.
func (p *planner) wanted() []int {
	var all []int
	for i := range p.acts {
		if p.want[i] != "" {
			all = append(all, i)
		}
	}
	return all
}
