package schedule

import (
	"fmt"
	"slices"

	"fettle/bench"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// work is what the planner knows of the acts; an act is its place in the manual's order.
type work struct {
	m        *model.Manual
	choice   bench.Choice
	acts     []Act
	proc     []*model.Node // of each act
	spans    []span        // of procedures, in order
	wait     []bool
	hold     []bool
	helps    []int // helpers beside the builder
	together []int // the first act of the piece of work that must not be cut by a night
	bench    *bench.State
	base     map[string]bool // breaches of the manual as it is
	checks   int             // how many orders the bench may still be asked about
	slow     bool            // too large to ask about
	actOf    map[slot]int
}

type slot struct {
	step  *model.Step
	place string
}

// span is the acts of one procedure, first and one past the last.
type span struct {
	proc     *model.Node
	from, to int
}

const (
	maxChecks = 300
	maxActs   = 5000
)

func newWork(m *model.Manual, c bench.Choice) *work {
	t := bench.Run(m, c)
	w := &work{m: m, choice: c, actOf: map[slot]int{}, base: map[string]bool{}, checks: maxChecks, slow: len(t.Acts) > maxActs,
		bench: bench.After(m, c, func(*model.Step, string) bool { return false })}
	for i, a := range t.Acts {
		act := Act{Step: a.Step, Place: a.Place, People: max(1, a.Step.Whole("people", a.Place, 1)), turn: i,
			Wait: does(a.Step, kind.Waits)}
		act.Assumed = !a.Step.Has("takes") && !act.Wait && !does(a.Step, kind.Stops)
		act.End = a.End - a.Start // its length
		w.acts = append(w.acts, act)
		w.proc = append(w.proc, a.Step.Procedure)
		w.wait = append(w.wait, act.Wait)
		w.hold = append(w.hold, does(a.Step, kind.Stops))
		w.helps = append(w.helps, helpers(a.Step, a.Place))
		w.actOf[slot{a.Step, a.Place}] = i
		if n := len(w.spans); n > 0 && w.spans[n-1].proc == a.Step.Procedure {
			w.spans[n-1].to = i + 1
		} else {
			w.spans = append(w.spans, span{a.Step.Procedure, i, i + 1})
		}
	}
	if !w.slow {
		for _, b := range w.breaches(w.inTurn()) {
			w.base[keyOf(b)] = true
		}
	}
	w.pieces()
	return w
}

func keyOf(b bench.Breach) string { return fmt.Sprint(b.What, b.Place, b.Objects) }

func does(s *model.Step, v kind.Verb) bool {
	return slices.ContainsFunc(s.Kind.Does, func(e kind.Effect) bool { return e.Verb == v && s.Has(e.Attr) })
}

// helpers is how many are needed beside the builder: hands, somebody who holds
// the part, or who releases the hold.
func helpers(s *model.Step, place string) int {
	n := s.Whole("people", place, 1) - 1
	for _, r := range s.Refs("held_by", place) {
		if r.Word != "" {
			n = max(n, 1)
		}
	}
	if does(s, kind.Stops) && s.Plain("release") != "builder" {
		n = max(n, 1)
	}
	return n
}

func (w *work) inTurn() []int {
	order := make([]int, len(w.acts))
	for i := range order {
		order[i] = i
	}
	return order
}

// act is the act of a step at a place, or -1.
func (w *work) act(s *model.Step, place string) int {
	if i, ok := w.actOf[slot{s, place}]; ok {
		return i
	}
	if i, ok := w.actOf[slot{s, ""}]; ok {
		return i
	}
	return -1
}

// refs are the acts that an attribute of an act names.
func (w *work) refs(i int, attr string) (all []int) {
	a := &w.acts[i]
	for _, r := range a.Step.Refs(attr, a.Place) {
		if r.To == nil || r.To.Step == nil {
			continue
		}
		place := a.Place
		if r.Place != "" {
			place = r.Place
		}
		if j := w.act(r.To.Step, place); j >= 0 {
			all = append(all, j)
		}
	}
	return all
}

// pieces finds the work that a night must not cut: from the cleaning of faces to
// the seal that is closed and tight, and from a step to one that must follow
// within a time.
func (w *work) pieces() {
	w.together = make([]int, len(w.acts))
	for i := range w.together {
		w.together[i] = i
	}
	tie := func(from, to int) {
		if from < 0 || to <= from || w.proc[from] != w.proc[to] {
			return
		}
		for i := from; i <= to; i++ {
			w.together[i] = min(w.together[i], w.together[from])
		}
	}
	for i := range w.acts {
		s := w.acts[i].Step
		if s.Has("within") {
			for _, j := range w.refs(i, "after") {
				tie(j, i)
			}
		}
		if !does(s, kind.Seals) {
			continue
		}
		end := i
		for _, j := range w.refs(i, "closed_by") {
			end = max(end, j)
		}
		tie(w.cleaned(i), i)
		tie(i, w.clamped(i, end))
	}
}

// cleaned is the last act before a seal that cleans one of its faces, or -1.
func (w *work) cleaned(seal int) int {
	faces := append(w.acts[seal].Step.Refs("on", w.acts[seal].Place), w.acts[seal].Step.Refs("between", w.acts[seal].Place)...)
	for i := seal - 1; i >= 0 && w.proc[i] == w.proc[seal]; i-- {
		if !does(w.acts[i].Step, kind.Cleans) {
			continue
		}
		for _, r := range w.acts[i].Step.Refs("on", w.acts[i].Place) {
			if slices.ContainsFunc(faces, func(f model.Ref) bool { return f.To == r.To }) {
				return i
			}
		}
	}
	return -1
}

// clamped is the last act that tightens what a seal joins, where its supply says
// in which time that must be done.
func (w *work) clamped(seal, closed int) int {
	a := &w.acts[seal]
	timed := slices.ContainsFunc(a.Step.Refs("supplies", a.Place), func(r model.Ref) bool { return r.To != nil && r.To.Has("tighten_within") })
	end := closed
	if !timed {
		return end
	}
	joined := append(a.Step.Refs("on", a.Place), a.Step.Refs("between", a.Place)...)
	for i := closed + 1; i < len(w.acts) && w.proc[i] == w.proc[seal] && !w.wait[i]; i++ {
		if !does(w.acts[i].Step, kind.Tightens) {
			continue
		}
		for _, f := range w.acts[i].Step.Refs("fastening", w.acts[i].Place) {
			if f.To == nil || !f.To.Is(entry.Fastening) {
				continue
			}
			for _, s := range f.To.Refs("stack", w.acts[i].Place) {
				if slices.ContainsFunc(joined, func(j model.Ref) bool { return j.To == s.To }) {
					end = i
				}
			}
		}
	}
	return end
}

// accepts reports that the bench finds nothing in an order that it does not find
// in the manual's own.
func (w *work) accepts(order []int) bool {
	if w.slow || w.checks == 0 {
		return false
	}
	w.checks--
	return !slices.ContainsFunc(w.breaches(order), func(b bench.Breach) bool { return !w.base[keyOf(b)] })
}

// breaches is what the bench finds in an order.
func (w *work) breaches(order []int) []bench.Breach {
	steps := make([]bench.Act, len(order))
	for i, a := range order {
		steps[i] = bench.Act{Step: w.acts[a].Step, Place: w.acts[a].Place}
	}
	s := bench.After(w.m, w.choice, func(*model.Step, string) bool { return false })
	return append(s.DoAll(steps), s.Finish()...)
}
