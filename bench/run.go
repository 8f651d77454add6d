package bench

import (
	"time"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// Bench is a manual made ready to be executed, for any number of choices and by
// several goroutines at the same time.
type Bench struct{ x *index }

// New makes a manual ready. That costs more than one execution.
func New(m *model.Manual) *Bench { return &Bench{newIndex(m)} }

// Run executes the manual for one choice of options. It never fails: what goes
// wrong stands in the trace. A manual that could not be read whole gives the
// trace of what could be read, without what only the end can tell.
func (b *Bench) Run(c Choice) *Trace { return b.x.run(c) }

// Run is New and Run for a single choice.
func Run(m *model.Manual, c Choice) *Trace { return New(m).Run(c) }

// RunAll executes the manual for every choice of Choices, with the bound of the
// house rules.
func RunAll(m *model.Manual) []*Trace {
	b := New(m)
	var all []*Trace
	for _, c := range Choices(m, b.x.house.bound) {
		all = append(all, b.Run(c))
	}
	return all
}

// run is one execution.
type run struct {
	*index
	*plan
	state
	t      *Trace
	act    int32 // the act that is being done
	maybe  bool  // it is done under a reading only
	branch *model.Node
	since  int32        // act of the last run that is not by hand, or -1
	driven []string     // kinds of run that there have been
	open   []id         // seals that still want something
	bare   []int32      // acts whose time was assumed, in order
	told   map[key]bool // what has been said about a slot

	unheldBy map[int32]int // by act that covered something unheld: the breach
	start    time.Duration // of the act
	end      time.Duration
}

type key struct {
	what What
	slot id
	at   id
}

func (x *index) run(c Choice) *Trace {
	r := x.newRun(c, nil)
	for i := range r.acts {
		r.perform(int32(i))
	}
	r.finish()
	return r.t
}

func (x *index) newRun(c Choice, keep func(id) bool) *run {
	p := x.plan(c, keep)
	r := &run{index: x, plan: p, state: newState(x, p), since: -1, told: map[key]bool{}, unheldBy: map[int32]int{}}
	r.t = &Trace{Manual: x.m, Choice: c, Acts: make([]Act, 0, len(p.acts))}
	for _, m := range p.moved {
		b := r.entry(OutOfOrder, m.procedure, "after", Object{Node: m.after})
		b.Causes = append(b.Causes, Cause{Act: -1, Node: m.after, Words: "stands later in the order"})
	}
	return r
}

// perform does one act of the plan.
func (r *run) perform(act int32) {
	pl := r.acts[act]
	o := &r.ops[pl.slot]
	r.act, r.maybe, r.start = act, pl.maybe, r.now
	r.t.Acts = append(r.t.Acts, Act{Step: o.step, Place: o.place, Maybe: pl.maybe, Start: r.now})
	r.do(o, pl.slot)
	r.t.Acts[act].End = r.now
	for _, b := range o.step.Blocks {
		if b.Def == kind.Otherwise {
			r.otherwise(o, pl.slot, b)
		}
	}
}

// do does a step: first what it asks, then what it does.
func (r *run) do(o *op, slot id) {
	r.start = r.now
	r.end = r.now + r.length(o)
	r.checkOrder(o)
	r.checkValues(o, slot)
	r.checkMarks(o)
	r.checkTools(o)
	if o.irreversible && r.branch == nil {
		r.checkIrreversible(o, slot)
	}
	for i := range o.effects {
		r.effect(o, slot, &o.effects[i])
	}
	r.now = r.end
	w := r.words.edit(slot)
	w.act, w.maybe, w.disturbed = r.act, r.maybe, -1
	r.closeSeals(o, slot)
}

func (r *run) effect(o *op, slot id, e *effect) {
	switch e.verb {
	case kind.Touches:
		r.reachAll(o, e)
	case kind.Cleans:
		r.reachAll(o, e)
		r.clean(o)
	case kind.Wets:
		r.reachAll(o, e)
		r.wet(o)
	case kind.Seals:
		for _, t := range e.at {
			if !hasTarget(o.seal.keepClear, t) { // else it should not be sealed at all
				r.reach(o, e.attr, t)
			}
		}
		r.seal(o, slot)
	case kind.Joins:
		r.inSeatOrder(e.at, func(b id) { r.fit(o, slot, b, e.attr) })
	case kind.PutsOn:
		for _, t := range e.at {
			r.fit(o, slot, t.id, e.attr)
		}
	case kind.Takes, kind.PutsAway:
		for _, t := range e.at {
			if r.branch != nil || r.pieces.at[t.id].owed != r.act {
				r.take(o, t.id, e.attr)
			}
		}
	case kind.Starts:
		r.eachJoint(o, e, r.startJoint)
	case kind.Tightens:
		r.eachJoint(o, e, r.tightenJoint)
	case kind.Slackens:
		r.eachJoint(o, e, r.slackenJoint)
	case kind.Opens:
		r.eachJoint(o, e, r.openJoint)
	case kind.Locks:
		r.eachJoint(o, e, r.lockJoint)
	case kind.MakesMark:
		r.reachAll(o, e)
		r.words.edit(slot).wiped = -1
	case kind.Reads, kind.Accepts:
		r.reachAll(o, e)
		r.readAgain(o)
	case kind.Sets:
		r.reachAll(o, e)
		r.readAgain(o)
		r.disturbSetting(o, slot)
	case kind.Heats:
		r.reachAll(o, e)
	case kind.Fills:
		r.reachAll(o, e)
		r.fill(o)
	case kind.Drains:
		r.reachAll(o, e)
		r.drain(o)
	case kind.Lifts:
		for _, t := range e.at {
			if b := r.owner(t); b != none {
				r.lift(o, b)
			}
		}
	case kind.Stops:
		r.stop(o, slot)
	case kind.Drives:
		r.drive(o, slot)
	}
	if r.branch == nil {
		r.checkHeat(o, e)
	}
}

// eachJoint does something to the joints that an effect names and the choice
// has, unless an earlier breach has taken it as done.
func (r *run) eachJoint(o *op, e *effect, do func(*op, *effect, id)) {
	for _, t := range e.at {
		if t.sort == aFastening && !r.absent[t.id] && (r.branch != nil || r.bolts.at[t.id].owed != r.act) {
			do(o, e, t.id)
		}
	}
}

// owe takes the next act that does something to a joint as done by now, where
// it is of the verb that the author put too late.
func (r *run) owe(j id, verb kind.Verb) {
	if e, ok := next(r.grips[j], r.act, anything); ok && e.verb == verb && r.branch == nil {
		r.bolts.edit(j).owed = e.act
	}
}

// oweBody is owe for a part or tool.
func (r *run) oweBody(b id, verb func(kind.Verb) bool) {
	if e, ok := next(r.moves[b], r.act, anything); ok && verb(e.verb) && r.branch == nil {
		r.pieces.edit(b).owed = e.act
	}
}

// inSeatOrder visits bodies that one step fits, seats before what sits on them.
func (r *run) inSeatOrder(at []target, do func(id)) {
	if len(at) == 1 {
		do(at[0].id)
		return
	}
	done := make([]bool, len(at))
	for left := len(at); left > 0; {
		moved := false
		for i, t := range at {
			if done[i] || t.sort != aBody {
				continue
			}
			waits := false
			for j, u := range at {
				waits = waits || !done[j] && i != j && has(r.index.bodies[t.id].seats, u.id)
			}
			if !waits {
				do(t.id)
				done[i], moved = true, true
				left--
			}
		}
		if !moved { // a ring of seats
			for i, t := range at {
				if !done[i] && t.sort == aBody {
					do(t.id)
				}
			}
			return
		}
	}
}

// breach enters a breach of the step that is being done.
func (r *run) breach(w What, o *op, attr string, objects ...Object) *Breach {
	act := int(r.act)
	if r.branch != nil {
		act = -1
	}
	r.t.Breaches = append(r.t.Breaches, Breach{What: w, Act: act, Step: o.step, Node: o.step.Node, Attr: attr, Place: o.place, Objects: objects})
	return &r.t.Breaches[len(r.t.Breaches)-1]
}

// breachAt enters a breach of an earlier or later act.
func (r *run) breachAt(w What, act int32, attr string, objects ...Object) *Breach {
	o := &r.ops[r.acts[act].slot]
	r.t.Breaches = append(r.t.Breaches, Breach{What: w, Act: int(act), Step: o.step, Node: o.step.Node, Attr: attr, Place: o.place, Objects: objects})
	return &r.t.Breaches[len(r.t.Breaches)-1]
}

// entry enters a breach of something that is no step.
func (r *run) entry(w What, n *model.Node, attr string, objects ...Object) *Breach {
	r.t.Breaches = append(r.t.Breaches, Breach{What: w, Act: -1, Node: n, Attr: attr, Objects: objects})
	return &r.t.Breaches[len(r.t.Breaches)-1]
}

// cause adds an act that takes part; a negative act adds nothing.
func (r *run) cause(b *Breach, act int32, attr, words string) {
	if act < 0 || int(act) >= len(r.acts) {
		return
	}
	o := &r.ops[r.acts[act].slot]
	b.Causes = append(b.Causes, Cause{Act: int(act), Node: o.step.Node, Attr: attr, Place: o.place, Words: words})
}

// here adds the step that is being done as a cause.
func (r *run) here(b *Breach, o *op, words string) {
	act := int(r.act)
	if r.branch != nil {
		act = -1
	}
	b.Causes = append(b.Causes, Cause{Act: act, Node: o.step.Node, Place: o.place, Words: words})
}

// declared adds an entry as a cause.
func declared(b *Breach, n *model.Node, attr, words string) {
	b.Causes = append(b.Causes, Cause{Act: -1, Node: n, Attr: attr, Words: words})
}

// sameStep says whether the state last changed in this step, at another place:
// a thing that is not at places is then done once for all of them.
func sameStep(o *op, last *model.Step) bool { return last == o.step }
