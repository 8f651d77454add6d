package schedule

import (
	"slices"
	"time"

	"fettle/lang/model"
)

// worth is the shortest wait that is worth filling with other work.
const worth = 10 * time.Minute

// ahead fills waits: procedures that need not come after what waits are begun
// before it, as long as that brings the finish nearer.
func (w *work) ahead(order []int, o Options) []int {
	best := w.clock(order, o)
	for at := 0; at < len(order); at++ {
		if !w.wait[order[at]] {
			continue
		}
		for {
			now := w.clock(order, o)
			if now.Acts[at].End-now.Acts[at].Start < worth {
				break
			}
			next, moved := w.fill(order, at, best.Finish, o)
			if !moved {
				break
			}
			at += len(next) - len(order) // none: acts only change places
			order, best = next, w.clock(next, o)
			for !w.wait[order[at]] {
				at++
			}
		}
	}
	return order
}

// fill brings one procedure, or the first part of it, before the wait at a place.
func (w *work) fill(order []int, at int, finish time.Duration, o Options) ([]int, bool) {
	for i := at + 1; i < len(order); i++ {
		p := w.proc[order[i]]
		if p == w.proc[order[at]] || slices.ContainsFunc(order[at:i], func(a int) bool { return w.proc[a] == p }) {
			continue // its own procedure, or one looked at already
		}
		part := w.leading(order, i)
		if len(part) == 0 || !w.free(order, at, i) {
			continue
		}
		next := slices.Clone(order[:at])
		next = append(next, part...)
		for _, a := range order[at:] {
			if !slices.Contains(part, a) {
				next = append(next, a)
			}
		}
		if w.clock(next, o).Finish < finish && w.accepts(next) {
			return next, true
		}
	}
	return order, false
}

// leading is the part of the procedure that begins at a place which may be done
// ahead: up to its first wait, that wait included, or its first hold.
func (w *work) leading(order []int, from int) []int {
	var part []int
	for _, a := range order[from:] {
		if w.proc[a] != w.proc[order[from]] {
			continue
		}
		if w.hold[a] {
			break
		}
		if w.wait[a] {
			break
		}
		part = append(part, a)
	}
	return part
}

// free reports that the procedure at one place may be done before what stands at
// an earlier place: it passes no hold, and comes after nothing that is still to do.
func (w *work) free(order []int, at, from int) bool {
	open := map[*model.Node]bool{}
	for _, a := range order[at:] {
		if a == order[from] {
			break
		}
		if w.hold[a] {
			return false
		}
		open[w.proc[a]] = true
	}
	return !w.needs(w.proc[order[from]], open, map[*model.Node]bool{})
}

// needs reports that a procedure comes after one that is open, directly or not.
func (w *work) needs(p *model.Node, open, seen map[*model.Node]bool) bool {
	if seen[p] {
		return false
	}
	seen[p] = true
	for _, r := range p.Refs("after", "") {
		if r.To != nil && (open[r.To] || w.needs(r.To, open, seen)) {
			return true
		}
	}
	for _, s := range p.Steps {
		for _, r := range s.AllRefs("after") {
			if r.To == nil {
				continue
			}
			other := r.To
			if r.To.Step != nil {
				other = r.To.Step.Procedure
			}
			if other != p && (open[other] || w.needs(other, open, seen)) {
				return true
			}
		}
	}
	return false
}

// gather brings procedures forward so that helpers come fewer times, where the
// finish stays.
func (w *work) gather(order []int, o Options) []int {
	best := w.clock(order, o)
	for improved := true; improved; {
		improved = false
		for i := 1; i < len(order) && !improved; i++ {
			p := w.proc[order[i]]
			if p == w.proc[order[i-1]] || slices.ContainsFunc(order[:i], func(a int) bool { return w.proc[a] == p }) || !w.helped(p) {
				continue
			}
			part := w.leading(order, i)
			for at := i - 1; at > 0 && !improved; at-- {
				if w.proc[order[at]] == w.proc[order[at-1]] || !w.free(order, at, i) {
					continue
				}
				next := slices.Clone(order[:at])
				next = append(next, part...)
				for _, a := range order[at:] {
					if !slices.Contains(part, a) {
						next = append(next, a)
					}
				}
				plan := w.clock(next, o)
				if plan.Finish <= best.Finish && len(plan.Helpers) < len(best.Helpers) && w.accepts(next) {
					order, best, improved = next, plan, true
				}
			}
		}
	}
	return order
}

func (w *work) helped(p *model.Node) bool {
	for i := range w.acts {
		if w.proc[i] == p && w.helps[i] > 0 {
			return true
		}
	}
	return false
}
