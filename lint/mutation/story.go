package mutation

import (
	"slices"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// story is the sound manual as it is told: what each step does to what, in the
// order of the work, places and options taken together. It is all that classes
// know of the bench.
type story struct {
	m     *model.Manual
	steps []*model.Step // those outside otherwise blocks, in working order
	at    map[*model.Node]int
}

func tell(m *model.Manual) story {
	st := story{m: m, at: map[*model.Node]int{}}
	for _, p := range m.Procedures[:m.Ordered] {
		for _, s := range p.Steps {
			st.at[s.Node] = len(st.steps)
			st.steps = append(st.steps, s)
		}
	}
	return st
}

// Does lists what a step does a verb to; a pack is the part that it is of.
func Does(s *model.Step, verb kind.Verb) []*model.Node {
	var all []*model.Node
	for _, e := range s.Kind.Does {
		if e.Verb != verb {
			continue
		}
		for _, r := range s.AllRefs(e.Attr) {
			switch {
			case r.To == nil:
			case r.To.Step != nil && r.To.Ref("from") != nil:
				all = append(all, r.To.Ref("from"))
			default:
				all = append(all, r.To)
			}
		}
	}
	return all
}

// Is reports whether a step does a verb to something it names.
func Is(s *model.Step, verb kind.Verb) bool {
	for _, e := range s.Kind.Does {
		if e.Verb == verb && s.Has(e.Attr) {
			return true
		}
	}
	return false
}

// Doing lists the steps that do a verb, of which to one thing if it is given.
func (st *story) Doing(verb kind.Verb, to ...*model.Node) []*model.Step {
	var all []*model.Step
	for _, s := range st.steps {
		if Is(s, verb) && (len(to) == 0 || slices.ContainsFunc(Does(s, verb), func(n *model.Node) bool { return slices.Contains(to, n) })) {
			all = append(all, s)
		}
	}
	return all
}

// Pos is a step's place in the work.
func (st *story) Pos(s *model.Step) int { return st.at[s.Node] }

// Next is the step behind s in its procedure, or nil; Previous the one before.
func Next(s *model.Step) *model.Step { return beside(s, 1) }

// Previous is the step before s in its procedure, or nil.
func Previous(s *model.Step) *model.Step { return beside(s, -1) }

func beside(s *model.Step, by int) *model.Step {
	if s.Branch != nil {
		return nil
	}
	if i := s.Index + by; i >= 0 && i < len(s.Procedure.Steps) {
		return s.Procedure.Steps[i]
	}
	return nil
}

// Between lists the steps behind a and before b in the work.
func (st *story) Between(a, b *model.Step) []*model.Step {
	if st.Pos(b) <= st.Pos(a) {
		return nil
	}
	return st.steps[st.Pos(a)+1 : st.Pos(b)]
}

// After lists the steps behind a.
func (st *story) After(a *model.Step) []*model.Step { return st.steps[st.Pos(a)+1:] }

// On reports whether a part is on when the work reaches a place.
func (st *story) On(part *model.Node, pos int) bool {
	on := !part.Has("sits_on") || part.Whole("in_place", "", 0) > 0
	for _, s := range st.steps[:pos] {
		switch {
		case slices.Contains(Does(s, kind.Joins), part):
			on = true
		case slices.Contains(Does(s, kind.Takes), part):
			on = false
		}
		for _, f := range Does(s, kind.Starts) {
			on = on || names(f, "fasteners", part)
		}
		for _, f := range Does(s, kind.Opens) {
			on = on && !names(f, "fasteners", part)
		}
	}
	return on
}

// Root is what a part stands on in the end, when the work reaches a place.
func (st *story) Root(part *model.Node, pos int) *model.Node {
	for range 40 {
		seat := part.Ref("sits_on")
		if seat == nil || seat.Def.Name != "part" || !st.On(part, pos) {
			break
		}
		part = seat
	}
	return part
}

// names reports whether an attribute of n names a node.
func names(n *model.Node, attr string, to *model.Node) bool {
	return slices.ContainsFunc(n.AllRefs(attr), func(r model.Ref) bool { return r.To == to })
}

// toolsThat lists the tools of a step for which ok holds.
func toolsThat(s *model.Step, ok func(*model.Node) bool) []*model.Node {
	var all []*model.Node
	for _, r := range s.AllRefs("tools") {
		if r.To != nil && ok(r.To) {
			all = append(all, r.To)
		}
	}
	return all
}

// constant reports whether a value is the same in every place.
func constant(n *model.Node, attr string) bool {
	a := n.Attr(attr)
	if a == nil {
		return false
	}
	_, byPlace := a.Value.(model.ByPlace)
	return !byPlace
}

// options reports whether the step, or its procedure, hangs on an option or reading.
func optional(s *model.Step) bool { return s.Has("when") || s.Procedure.Has("when") }
