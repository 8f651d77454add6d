package schedule

import (
	"slices"
	"time"

	"fettle/lang/kind"
)

const day = 24 * time.Hour

// gap is how long a helper may stand idle between two steps before it is better
// to come twice. Common practice, no source.
const gap = 30 * time.Minute

// clock puts an order of acts into time.
func (w *work) clock(order []int, o Options) *Plan {
	p := &Plan{Manual: w.m, Choice: w.choice, Options: o, Acts: make([]Act, len(order))}
	ends := make([]time.Duration, len(w.acts)) // of acts, by turn

	last := map[any]time.Duration{} // end of the last act of each procedure
	lasts := -1
	for n, i := range order {
		a := w.acts[i]
		length := a.End
		a.Start = 0
		if n > 0 {
			a.Start = p.Acts[n-1].End
		}
		if i < lasts {
			for j := n - 1; j >= 0 && p.Acts[j].turn > i; j-- {
				p.Acts[j].Ahead = true
			}
		}
		lasts = max(lasts, i)
		if a.Wait {
			from, ok := last[w.proc[i]]
			if !ok {
				from = a.Start
			}
			a.End = max(a.Start, w.over(p, order[:n], i, from, ends, length))
			a.End = w.daylight(a.End, o)
		} else {
			a.Start = w.begin(p, order, n, a.Start, o)
			a.End = a.Start + length
			p.Work += length
			if a.Assumed {
				p.Assumed++
			}
		}
		ends[i] = a.End
		last[w.proc[i]] = a.End
		p.Acts[n] = a
		w.cures(p, n, ends)
		p.Finish = max(p.Finish, a.End)
	}
	p.Helpers = w.windows(p)
	return p
}

// over is when a wait is over: when what it waits for has cured, or the time that
// it states, counted from the act before it in its procedure.
func (w *work) over(p *Plan, done []int, i int, from time.Duration, ends []time.Duration, length time.Duration) time.Duration {
	s := w.acts[i].Step
	until, known := time.Duration(0), false
	if q := s.Quantity("for", w.acts[i].Place); q != nil {
		until, known = from+duration(q.Base()), true
	}
	for _, j := range w.refs(i, "until") {
		for _, c := range p.Cures {
			if p.Acts[c.Act].turn == j {
				until, known = max(until, c.End), true
			}
		}
	}
	if q := s.Quantity("takes", w.acts[i].Place); q != nil {
		until, known = max(until, from+duration(q.Base())), true
	}
	if !known {
		return from + length
	}
	return until
}

// cures notes what begins to cure with an act: what it lays on, or the seal that
// it closes.
func (w *work) cures(p *Plan, n int, ends []time.Duration) {
	i := p.Acts[n].turn
	if s := p.Acts[n].Step; does(s, kind.Wets) || does(s, kind.Seals) {
		for _, r := range s.Refs("supplies", p.Acts[n].Place) {
			if d, known := w.bench.Cure(r.To, s.Procedure); known {
				p.Cures = append(p.Cures, Cure{n, r.To, p.Acts[n].End, p.Acts[n].End + d})
			}
		}
	}
	for k := range p.Cures {
		c := &p.Cures[k]
		if slices.Contains(w.refs(p.Acts[c.Act].turn, "closed_by"), i) {
			c.Start, c.End = p.Acts[n].End, p.Acts[n].End+c.End-c.Start
		}
	}
}

// begin is when an act can begin: at once, or the next morning where the piece of
// work that it begins does not fit into the day any more.
func (w *work) begin(p *Plan, order []int, n int, t time.Duration, o Options) time.Duration {
	if o.Day == 0 {
		return t
	}
	i := order[n]
	if n > 0 && w.together[i] != i && w.together[order[n-1]] == w.together[i] {
		return t // in the middle of a piece
	}
	length := time.Duration(0)
	for _, j := range order[n:] {
		if w.together[j] != w.together[i] {
			break
		}
		length += w.acts[j].End
	}
	if length > o.Day {
		p.Long = append(p.Long, n)
	}
	if TimeOfDay(t)+length > o.Day && TimeOfDay(t) > 0 {
		return t - TimeOfDay(t) + day
	}
	return t
}

// daylight is the time itself where it lies in the working day, else the next
// morning.
func (w *work) daylight(t time.Duration, o Options) time.Duration {
	if o.Day > 0 && TimeOfDay(t) > o.Day {
		return t - TimeOfDay(t) + day
	}
	return t
}

// windows are the times of helpers; those that lie close together are one.
func (w *work) windows(p *Plan) []Window {
	var all []Window
	for n := range p.Acts {
		a := &p.Acts[n]
		h := w.helps[a.turn]
		if h == 0 {
			continue
		}
		if k := len(all) - 1; k >= 0 && a.Start-all[k].End <= gap {
			all[k].End, all[k].Acts, all[k].People = a.End, append(all[k].Acts, n), max(all[k].People, h)
			continue
		}
		all = append(all, Window{a.Start, a.End, []int{n}, h})
	}
	return all
}
