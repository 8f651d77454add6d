package values

import (
	"strings"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// Given is what is known of one build.
type Given struct {
	Options  map[string]string          // choices by the option's label; defaults where not given
	Readings map[string][]calc.Quantity // by key, such as `thrust_end.measure.float["left"]`; several where the step reads several
	Pieces   map[string][]Piece         // pieces that the builder has measured, by the part's label
}

// Piece is the measured thickness of one piece.
type Piece struct {
	Size string // the label of its size
	Is   calc.Quantity
}

// Env is the values of one build. It works each out when it is asked for, once;
// it is for one goroutine.
type Env struct {
	plan   *Plan
	given  Given
	memo   map[target]*result
	byName map[string]known
}

// result is what a step gives at a place.
type result struct {
	value   calc.Value // of a reading or a calculation; nil if not known
	pack    *Pack
	problem *Problem
}

// known is what the name of a variable stands for.
type known struct {
	step  *model.Step
	field string
}

// Problem is what keeps a value from being worked out, or is wrong with it.
type Problem struct {
	Step    *model.Step
	Place   string
	Message string // one sentence
	Reason  string
	Remedy  string
}

func (p *Problem) Error() string { return p.Message }

// New works out one build of a manual.
func New(m *model.Manual, g Given) *Env { return NewPlan(m).With(g) }

// With works out one build.
func (p *Plan) With(g Given) *Env {
	return &Env{plan: p, given: g, memo: map[target]*result{}, byName: map[string]known{}}
}

// Key is the key of a step's reading at a place.
func Key(s *model.Step, place string) string {
	if place == "" {
		return s.Key()
	}
	return s.Key() + `["` + place + `"]`
}

// At is an environment for the expressions of a step or entry that stands at a
// place; "" is no place.
func (e *Env) At(place string) calc.Env { return here{e, place} }

type here struct {
	*Env
	place string
}

// Value is the value of v, or nil where it is not known yet.
func (h here) Value(v *calc.Var) calc.Value {
	if v.Name == "place" {
		return calc.Word(h.place)
	}
	if v.Place == model.Here {
		return h.value(v, h.place)
	}
	return h.value(v, v.Place)
}

// Value is the value of a variable that names its place.
func (e *Env) Value(v *calc.Var) calc.Value { return here{e, ""}.Value(v) }

func (e *Env) value(v *calc.Var, place string) calc.Value {
	if id, ok := strings.CutPrefix(v.Name, "option."); ok {
		if c := e.Option(id); c != "" {
			return calc.Word(c)
		}
		return nil
	}
	k, ok := e.byName[v.Name]
	if !ok {
		k = stepOf(e.plan.Manual, v.Name)
		e.byName[v.Name] = k
	}
	if k.step == nil {
		return nil
	}
	r := e.result(k.step, place)
	if k.step.Kind.Yields != kind.Pack {
		return r.value
	}
	return field(r.pack, k.field)
}

// stepOf takes "close.choose.pack.total" apart.
func stepOf(m *model.Manual, name string) known {
	n := 0
	for i := range len(name) {
		if name[i] == '.' {
			if n++; n == 3 {
				return known{stepAt(m, name[:i]), name[i+1:]}
			}
		}
	}
	return known{stepAt(m, name), ""}
}

func stepAt(m *model.Manual, key string) *model.Step {
	if n := m.Find("procedure." + key); n != nil {
		return n.Step
	}
	return nil
}

func field(p *Pack, name string) calc.Value {
	if p == nil {
		return nil
	}
	switch name {
	case "total":
		return p.Total
	case "result":
		return p.Result
	case "count":
		return count(p.Count)
	}
	return calc.Word(p.String())
}

// Option is the choice of an option: the one given, or its default; "" for an
// option that there is not.
func (e *Env) Option(id string) string {
	if c := e.given.Options[id]; c != "" {
		return c
	}
	return Default(e.plan.Find("option." + id))
}

// Default is what is built when nothing is said about an option.
func Default(option *model.Node) string {
	if option == nil {
		return ""
	}
	if d := option.Plain("default"); d != "" {
		return d
	}
	if names := option.Names("choices"); len(names) > 0 {
		return names[0]
	}
	return ""
}

// Of is what a step gives at a place: its reading or its number; nil where it is
// not known. For a choice use Pack.
func (e *Env) Of(s *model.Step, place string) calc.Value { return e.result(s, place).value }

// Pack is the pack that a step picks at a place; nil where it is not known or
// none fits, which Problem tells apart.
func (e *Env) Pack(s *model.Step, place string) *Pack { return e.result(s, place).pack }

// Problem is what went wrong when the step's value was worked out, or nil. A
// value that is not known yet is no problem.
func (e *Env) Problem(s *model.Step, place string) *Problem { return e.result(s, place).problem }

// Problems are those of all steps, in the order of work.
func (e *Env) Problems() []*Problem {
	var all []*Problem
	Work(e.plan.Manual, func(s *model.Step, place string) {
		if s.Kind.Yields == kind.Nothing || s.Kind.Yields == kind.Mark {
			return
		}
		keys := []string{place}
		if place == "" {
			keys = Keys(s)
		}
		for _, k := range keys {
			if p := e.Problem(s, k); p != nil {
				all = append(all, p)
			}
		}
	})
	return all
}

// Done reports whether a step is done under the options and readings; known is
// false where that rests on a reading that was not given.
func (e *Env) Done(s *model.Step, place string) (done, known bool) {
	for _, n := range []*model.Node{s.Procedure, s.Node} {
		f := n.Formula("when", place)
		if f == nil {
			continue
		}
		v, p := calc.Eval(f.Expr, e.At(place))
		if p != nil {
			return false, false
		}
		if t, ok := v.(calc.Truth); ok && !bool(t) {
			return false, true
		}
	}
	return true, true
}

func (e *Env) result(s *model.Step, place string) *result {
	at := target{s, place}
	if r, ok := e.memo[at]; ok {
		return r // of a circle, which is reported where it is read, nothing is known
	}
	r := &result{}
	e.memo[at] = r
	switch s.Kind.Yields {
	case kind.Reading:
		e.reading(r, s, place)
	case kind.Number:
		if f := s.Formula("is", place); f != nil {
			v, p := calc.Eval(f.Expr, e.At(place))
			if p == nil {
				r.value = v
			} else if p.Unknown == nil {
				r.problem = &Problem{s, place, p.Message, p.Reason, p.Remedy}
			}
		}
	case kind.Pack:
		r.pack, r.problem = e.choose(s, place)
	}
	return r
}
