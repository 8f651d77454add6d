package bench

import (
	"time"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// State is the bench at one moment of the work. Asking changes nothing; Do,
// Undo and Finish carry the work on.
type State struct {
	r *run
}

// Placed is a part or tool that is on.
type Placed struct {
	Object Object
	Seats  []Object // what it sits on
	Pieces int
	Trial  bool
	Act    int // the act that fitted it; -1: in place from the start
}

// Fastened is a fastening that is not off.
type Fastened struct {
	Object Object
	Grip   Grip
	Locked bool
	Trial  bool
	Act    int // the act that brought it there; -1: from the start
}

// Grip is how a fastening holds.
type Grip string

// Grips.
const (
	Started Grip = "started by hand"
	Tight   Grip = "tight"
	Loose   Grip = "loosened"
)

// Sealed is a seal that has been laid.
type Sealed struct {
	Step   Object
	Supply *model.Node
	Closed bool
	Parted bool
	Known  bool          // whether the supply says how long it cures
	Cured  time.Duration // since the start of the work
}

// Covering is something out of reach.
type Covering struct{ Object, By Object }

// Before replays the trace up to an act and gives the bench just before it;
// len(t.Acts) gives the end.
func (t *Trace) Before(act int) *State {
	r := newIndex(t.Manual).newRun(t.Choice, nil)
	for i := range r.acts[:min(max(act, 0), len(r.acts))] {
		r.perform(int32(i))
	}
	return &State{r}
}

// After gives the bench when only the steps are done that done says, in the
// manual's order.
func After(m *model.Manual, c Choice, done func(s *model.Step, place string) bool) *State {
	x := newIndex(m)
	r := x.newRun(c, func(slot id) bool { return done(x.ops[slot].step, x.ops[slot].place) })
	for i := range r.acts {
		r.perform(int32(i))
	}
	return &State{r}
}

// Find is the act of a step at a place, or -1 where the choice leaves it out.
func (t *Trace) Find(s *model.Step, place string) int {
	for i := range t.Acts {
		if a := &t.Acts[i]; a.Step == s && (a.Place == place || place == "") {
			return i
		}
	}
	return -1
}

// Time is how long the work has taken so far.
func (s *State) Time() time.Duration { return s.r.now }

// Breaches are those that came up on the way here.
func (s *State) Breaches() []Breach { return s.r.t.Breaches }

// On lists the parts and tools that are on, in source order.
func (s *State) On() []Placed {
	var all []Placed
	for i := range s.r.pieces.at {
		if p := &s.r.pieces.at[i]; p.on > 0 {
			all = append(all, Placed{s.r.bodyObject(id(i)), s.r.bodyObjects(s.r.bodies[i].seats), int(p.on), p.trial, int(p.fitted)})
		}
	}
	return all
}

// Fastenings lists the fastenings that are not off, in source order.
func (s *State) Fastenings() []Fastened {
	var all []Fastened
	for i := range s.r.bolts.at {
		g := &s.r.bolts.at[i]
		if g.grip == off || s.r.absent[i] {
			continue
		}
		f := Fastened{Object: s.r.jointObject(id(i)), Locked: g.locked, Trial: g.trial}
		switch g.grip {
		case started:
			f.Grip, f.Act = Started, int(g.begun)
		case tight:
			f.Grip, f.Act = Tight, int(g.tightAt)
		case loose:
			f.Grip, f.Act = Loose, int(g.looseAt)
		}
		all = append(all, f)
	}
	return all
}

// Seals lists the seals that have been laid, in the order of the work.
func (s *State) Seals() []Sealed {
	var all []Sealed
	for i := range s.r.beads.at {
		d := &s.r.beads.at[i]
		e := Sealed{Step: s.r.slotObject(d.slot), Supply: d.supply, Closed: d.closed >= 0, Parted: d.parted >= 0}
		e.Cured, e.Known = s.r.cured(d)
		all = append(all, e)
	}
	return all
}

// Liquids lists what liquid stands in.
func (s *State) Liquids() []Object {
	var all []Object
	for i := range s.r.ponds.at {
		if p := &s.r.ponds.at[i]; !p.out {
			all = append(all, s.r.bodyObject(p.body))
		}
	}
	return all
}

// Marks lists the marks that have been made and not wiped off.
func (s *State) Marks() []Object {
	var all []Object
	for slot := range s.r.ops {
		if w := &s.r.words.at[slot]; w.act >= 0 && w.wiped < 0 && s.r.ops[slot].has(kind.MakesMark) {
			all = append(all, s.r.slotObject(id(slot)))
		}
	}
	return all
}

// Covered lists what cannot be reached now, and what covers it.
func (s *State) Covered() []Covering {
	var all []Covering
	add := func(t target) {
		if l := s.r.lidOn(t); l != none {
			all = append(all, Covering{s.r.object(t), s.r.bodyObject(l)})
		}
	}
	for i := range s.r.bodies {
		b := &s.r.bodies[i]
		if len(b.lids) > 0 {
			add(target{aBody, id(i)})
		}
		for f := range id(len(s.r.items[b.item].names)) {
			if at := b.first + 1 + f; len(s.r.skins[at].lids) > 0 {
				add(target{aSurface, at})
			}
		}
	}
	for i := range s.r.joints {
		add(target{aFastening, id(i)})
	}
	return all
}

// InTheWay lists what covers the things that a step touches at a place.
func (s *State) InTheWay(step *model.Step, place string) []Covering {
	var all []Covering
	for _, slot := range s.r.slotsOf(step, place) {
		for _, t := range s.r.ops[slot].objects() {
			if l := s.r.lidOn(t); l != none {
				all = append(all, Covering{s.r.object(t), s.r.bodyObject(l)})
			}
		}
	}
	return all
}

// Reach plans what comes off so that the objects can be reached.
func (s *State) Reach(objects ...Object) *Teardown { return s.plan(false, objects) }

// TakeOff plans what comes off so that the objects are off themselves.
func (s *State) TakeOff(objects ...Object) *Teardown { return s.plan(true, objects) }

func (s *State) plan(off bool, objects []Object) *Teardown {
	var goals []goal
	for _, o := range objects {
		ref := o.Ref()
		for _, t := range s.r.resolve(nil, &ref, "") {
			goals = append(goals, goal{t, off})
		}
	}
	return s.r.teardown(goals)
}

// Redo plans what comes off so that a step can be done again at a place.
func (s *State) Redo(step *model.Step, place string) *Teardown {
	var goals []goal
	for _, slot := range s.r.slotsOf(step, place) {
		if s.r.actOf[slot] >= 0 {
			goals = append(goals, s.r.goals(slot)...)
		}
	}
	return s.r.teardown(goals)
}

// Undo does what a teardown plans.
func (s *State) Undo(t *Teardown) {
	if len(s.r.acts) > 0 {
		s.r.act = int32(len(s.r.acts) - 1)
	}
	for _, m := range t.Moves {
		ref := m.Object.Ref()
		for _, at := range s.r.resolve(nil, &ref, "") {
			switch {
			case at.sort == aFastening:
				s.r.undoJoint(&op{details: noDetails}, at.id)
			case s.r.pieces.at[at.id].on > 0:
				with, across := s.r.loaded(&s.r.state, at.id)
				with = append(with, across...)
				s.r.partSeals(with)
				q := s.r.pieces.edit(at.id)
				if s.r.items[s.r.bodies[at.id].item].useOnce {
					q.spent += min(q.on, max(q.least, 1))
				}
				q.on, q.trial, q.least = 0, false, 0
				s.r.split(with)
			}
		}
	}
}

// Do does a step at a place, as the next act, and gives what goes wrong.
func (s *State) Do(step *model.Step, place string) []Breach {
	r := s.r
	before := len(r.t.Breaches)
	for _, slot := range r.slotsOf(step, place) {
		act := int32(len(r.acts))
		r.acts = append(r.acts, planned{slot: slot})
		r.actOf[slot] = act
		r.perform(act)
	}
	return r.t.Breaches[before:]
}

// Finish says what only the end of the work can tell.
func (s *State) Finish() []Breach {
	before := len(s.r.t.Breaches)
	s.r.finish()
	return s.r.t.Breaches[before:]
}

// Unreached lists the steps that none of the traces does, in printed order:
// steps of otherwise blocks are left out.
func Unreached(m *model.Manual, traces []*Trace) []*model.Step {
	done := map[*model.Step]bool{}
	for _, t := range traces {
		for i := range t.Acts {
			done[t.Acts[i].Step] = true
		}
	}
	var all []*model.Step
	m.EachStep(func(s *model.Step) {
		if s.Branch == nil && !done[s] {
			all = append(all, s)
		}
	})
	return all
}
