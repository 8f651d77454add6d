package values

import (
	"sync"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// Plan is what all builds of a manual have in common. It is safe for use by
// several goroutines.
type Plan struct {
	*model.Manual
	draws map[*model.Node][]draw // by graded part, in the order of work

	mu         sync.Mutex
	selections map[target]*Selection
	fits       map[string]*calc.Fit // by problem

	coverMu sync.Mutex
	ranges  *Ranges // of the covers
	covers  map[target]answer
	covered map[string]covered // by problem and range

	heapMu sync.Mutex
	heaps  map[*model.Node][]Heap
	proofs map[string]proven // by problems and ranges
}

// target is a step at a place; "" for a step that is at no place.
type target struct {
	step  *model.Step
	place string
}

// draw is a choice that takes pieces out of the kit, and when they come back.
type draw struct {
	target
	at, back int // places in the order of work; back is 0 for pieces that stay
}

// NewPlan reads the order in which choices draw on the kit.
func NewPlan(m *model.Manual) *Plan {
	p := &Plan{Manual: m, draws: map[*model.Node][]draw{},
		selections: map[target]*Selection{}, fits: map[string]*calc.Fit{},
		covers: map[target]answer{}, covered: map[string]covered{},
		heaps: map[*model.Node][]Heap{}, proofs: map[string]proven{}}
	n := 0
	Work(m, func(s *model.Step, place string) {
		n++
		if s.Kind.Yields == kind.Pack {
			if part := s.Ref("from"); part != nil {
				p.draws[part] = append(p.draws[part], draw{target{s, place}, n, 0})
			}
			return
		}
		if len(p.draws) > 0 {
			p.returned(s, place, n)
		}
	})
	return p
}

// returned puts the pieces that s takes off back into the kit.
func (p *Plan) returned(s *model.Step, place string, n int) {
	for _, e := range s.Kind.Does {
		if e.Verb != kind.Takes {
			continue
		}
		for _, r := range s.Refs(e.Attr, place) {
			if r.To == nil {
				continue
			}
			part := r.To
			if r.To.Step != nil {
				part = r.To.Ref("from")
			}
			all := p.draws[part]
			for i := range all {
				d := &all[i]
				if d.back == 0 && (r.To == part || r.To.Step == d.step) && (d.place == place || d.place == "" || place == "") {
					d.back = n
				}
			}
		}
	}
}

// Work calls visit for every step at every place, in the order of the work: a
// procedure with places is done place by place, and so are neighbouring steps
// with the same places. Steps of otherwise blocks are left out.
func Work(m *model.Manual, visit func(s *model.Step, place string)) {
	for _, p := range m.Procedures {
		steps := p.Steps
		for len(steps) > 0 {
			n := 1
			for n < len(steps) && steps[n].Places == steps[0].Places {
				n++
			}
			for _, place := range placesOf(steps[0].Places) {
				for _, s := range steps[:n] {
					if atPlace(s, place) {
						visit(s, place)
					}
				}
			}
			steps = steps[n:]
		}
	}
}

var nowhere = []string{""}

func placesOf(places *model.Node) []string {
	if places == nil {
		return nowhere
	}
	return places.Names("names")
}

// atPlace reports whether the step is done at the place.
func atPlace(s *model.Step, place string) bool {
	if place == "" || !s.Has("only") {
		return true
	}
	for _, name := range s.Names("only") {
		if name == place {
			return true
		}
	}
	return false
}

// Places are the places at which the step is done, [""] where it has none.
func Places(s *model.Step) []string {
	var at []string
	for _, place := range placesOf(s.Places) {
		if atPlace(s, place) {
			at = append(at, place)
		}
	}
	return at
}

// Keys are what may stand in brackets after the step's key: its places, the
// spots of which each reading counts, or [""].
func Keys(s *model.Step) []string {
	if s.Places == nil && s.Word("take") == "each" {
		if spots := s.Names("spots"); len(spots) > 0 {
			return spots
		}
	}
	return Places(s)
}
