package calc

import (
	"math/big"
	"slices"
	"sort"
)

// fitSpan is a run of positions with one pick, both ends included; pack is nil
// in a gap.
type fitSpan[T any] struct {
	from, to T
	pack     *fitState[T]
}

// sweep gives the pick at every position in from..to, as runs in order. Each
// list of packs is asked only about what the lists before it left unserved.
func (e *fitEngineOf[T]) sweep(from, to *big.Int) ([]fitRun, error) {
	var served []fitSpan[T]
	left := []fitSpan[T]{{from: e.number(from), to: e.number(to)}}
	err := e.levels(func(level []fitState[T]) bool {
		var still []fitSpan[T]
		for _, gap := range left {
			for _, s := range e.sweepLevel(level, gap.from, gap.to) {
				if s.pack != nil {
					served = append(served, s)
				} else {
					still = append(still, s)
				}
			}
		}
		left = still
		return len(left) > 0
	})
	if err != nil {
		return nil, err
	}
	spans := append(served, left...)
	slices.SortFunc(spans, func(a, b fitSpan[T]) int { return a.from.cmp(b.from) })

	var runs []fitRun
	counts := map[int32][]int{} // looked up only
	for _, s := range joinSpans(spans) {
		run := fitRun{from: s.from.big(), to: s.to.big()}
		if s.pack != nil {
			c := counts[s.pack.pack]
			if c == nil {
				c = e.counts(s.pack.pack, e.sizes)
				counts[s.pack.pack] = c
			}
			run.counts, run.pack = c, s.pack.pack
		}
		runs = append(runs, run)
	}
	runs[0].from, runs[len(runs)-1].to = from, to // as asked, where the number was cut
	return runs, nil
}

// joinSpans joins neighbours with the same pick.
func joinSpans[T any](spans []fitSpan[T]) []fitSpan[T] {
	out := spans[:0]
	for _, s := range spans {
		if n := len(out); n > 0 && samePack(out[n-1].pack, s.pack) {
			out[n-1].to = s.to
			continue
		}
		out = append(out, s)
	}
	return out
}

func samePack[T any](a, b *fitState[T]) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.pack == b.pack
}

// sweepLevel is sweep for one list of packs. Between two neighbouring positions
// at which some pack begins or ceases to be accepted, the accepted packs stay
// the same.
func (e *fitEngineOf[T]) sweepLevel(level []fitState[T], from, to T) []fitSpan[T] {
	cuts := []T{from}
	first, last := 0, len(level)
	if e.below != nil {
		first = sort.Search(last, func(i int) bool { return level[i].nominal.cmp(from.minus(*e.below)) >= 0 })
	}
	if e.above != nil {
		last = sort.Search(last, func(i int) bool { return level[i].nominal.cmp(to.plus(*e.above)) > 0 })
	}
	for i := first; i < last; i++ {
		s := &level[i]
		e.work++
		if e.above != nil {
			if begins := s.high.minus(*e.above); begins.cmp(from) > 0 && begins.cmp(to) <= 0 {
				cuts = append(cuts, begins)
			}
		}
		if e.below != nil {
			if after := s.low.plus(*e.below).plus(e.one); after.cmp(from) > 0 && after.cmp(to) <= 0 {
				cuts = append(cuts, after)
			}
		}
	}
	slices.SortFunc(cuts, T.cmp)
	cuts = slices.CompactFunc(cuts, func(a, b T) bool { return a.cmp(b) == 0 })

	var out []fitSpan[T]
	for i, u := range cuts {
		v := to
		if i+1 < len(cuts) {
			v = cuts[i+1].minus(e.one)
		}
		p := e.pick(level, u)
		if p == nil {
			out = append(out, fitSpan[T]{u, v, nil})
			continue
		}
		out = e.split(out, level, u, v, p, e.pick(level, v))
	}
	return joinSpans(out)
}

// split gives the picks in u..v, where p is the pick at u, q that at v, and the
// accepted packs are the same all along. Then the picks go from total to next
// total, and change in the middle between two.
func (e *fitEngineOf[T]) split(out []fitSpan[T], level []fitState[T], u, v T, p, q *fitState[T]) []fitSpan[T] {
	if p.pack == q.pack {
		return append(out, fitSpan[T]{u, v, p})
	}
	m := p.nominal.plus(q.nominal).half()
	r := e.pick(level, m)
	if r.pack != p.pack && r.pack != q.pack { // one between them
		out = e.split(out, level, u, m, p, r)
		if m.cmp(v) < 0 {
			next := m.plus(e.one)
			out = e.split(out, level, next, v, e.pick(level, next), q)
		}
		return out
	}
	if u.cmp(m) < 0 {
		out = append(out, fitSpan[T]{u, m.minus(e.one), p})
	}
	out = append(out, fitSpan[T]{m, m, r})
	if m.cmp(v) < 0 {
		out = append(out, fitSpan[T]{m.plus(e.one), v, q})
	}
	return out
}

// reach is the lowest and the highest position that any pack serves; nil where
// there is none, or no end.
func (e *fitEngineOf[T]) reach() (from, to *big.Int, err error) {
	var lo, hi *T
	for k := e.min; k <= e.max; k++ {
		level, err := e.level(k)
		if err != nil {
			return nil, nil, err
		}
		for _, s := range level {
			if e.above == nil || e.below == nil {
				continue
			}
			begins, ends := s.high.minus(*e.above), s.low.plus(*e.below)
			if begins.cmp(ends) > 0 {
				continue
			}
			if lo == nil || begins.cmp(*lo) < 0 {
				lo = &begins
			}
			if hi == nil || ends.cmp(*hi) > 0 {
				hi = &ends
			}
		}
	}
	if lo == nil {
		return nil, nil, nil
	}
	return (*lo).big(), (*hi).big(), nil
}
