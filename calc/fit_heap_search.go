package calc

import (
	"encoding/binary"
	"errors"
	"fmt"
	"slices"
)

// heap is the search over one heap.
type heap struct {
	fits   []*Fit
	ranges []fitRange
	served [][]fitRun // from a full kit
	class  []int      // the first place with an equal problem and range
	stock  []int
	used   []bool
	covers map[string]*heapCover
	proven map[string]bool
	path   []fitRun // of the places before the one searched
	budget int
}

// heapCover is what one place does with one stock.
type heapCover struct {
	picks []fitRun // one run for each different pick
	most  []int    // of each size, the most that a pick takes
	short *fitRun  // readings served from a full kit, and not from this stock
}

func newHeap(places []FitPlace) (*heap, HeapProof, error) {
	var proof HeapProof
	h := &heap{covers: map[string]*heapCover{}, proven: map[string]bool{}, budget: heapWorkLimit}
	keys := map[string]int{}
	for i, p := range places {
		fail := func(err error) (*heap, HeapProof, error) { return nil, proof, &FitPlaceError{i, err} }
		f, err := NewFit(p.Problem)
		if err != nil {
			return fail(err)
		}
		stock := make([]int, len(f.sizes))
		for j, s := range f.sizes {
			stock[j] = s.Stock
		}
		if i == 0 {
			h.stock, h.used = stock, make([]bool, len(stock))
		} else if !slices.Equal(stock, h.stock) {
			return fail(errors.New("the places do not draw on the same sizes"))
		}
		if p.Low == nil || p.High == nil || p.Low.Cmp(p.High) > 0 {
			return fail(ErrEmptyRange)
		}
		span := f.span(p.Low, p.High)
		runs, err := f.engine.sweep(span.from, span.to)
		if err != nil {
			return fail(err)
		}
		all := len(runs)
		runs = slices.DeleteFunc(runs, func(r fitRun) bool { return r.counts == nil })
		if len(runs) < all {
			proof.OwnGaps = append(proof.OwnGaps, i)
		}
		key := fmt.Sprint(p)
		if _, known := keys[key]; !known {
			keys[key] = i
		}
		h.class = append(h.class, keys[key])
		h.fits, h.ranges, h.served = append(h.fits, f), append(h.ranges, span), append(h.served, runs)
	}
	return h, proof, nil
}

func (h *heap) neverUsed() []int {
	var never []int
	for i, u := range h.used {
		if !u {
			never = append(never, i)
		}
	}
	return never
}

// spend takes work off the budget.
func (h *heap) spend(work int) error {
	if h.budget -= work; h.budget < 0 {
		return errHeapWork
	}
	return nil
}

// heapKey names a place and a stock. More pieces than the place, or the places
// from it on, may ask for make no difference.
func heapKey(place int, stock []int, most int) string {
	b := binary.AppendUvarint(make([]byte, 0, 2*len(stock)), uint64(place))
	for _, s := range stock {
		b = binary.AppendUvarint(b, uint64(min(s, most)))
	}
	return string(b)
}

// asks is the most pieces that the places first..last-1 may take.
func (h *heap) asks(first, last int) int {
	n := 0
	for _, f := range h.fits[first:last] {
		n += f.max
	}
	return n
}

// cover works out the picks of a place. Where the pick from a full kit is still
// there it is still the best; only the other readings are worked out again.
func (h *heap) cover(place int, stock []int) (*heapCover, error) {
	key := heapKey(h.class[place], stock, h.fits[place].max)
	if c := h.covers[key]; c != nil {
		return c, h.spend(len(stock))
	}
	c := &heapCover{most: make([]int, len(stock))}
	seen := map[string]bool{}
	add := func(r fitRun) {
		for i, n := range r.counts {
			c.most[i] = max(c.most[i], n)
			h.used[i] = h.used[i] || n > 0
		}
		if k := heapKey(place, r.counts, h.fits[place].max); !seen[k] {
			seen[k] = true
			c.picks = append(c.picks, r)
		}
	}
	engine := h.fits[place].engine.withStock(stock)
	for _, r := range h.served[place] {
		if holds(stock, r.counts) {
			add(r)
			continue
		}
		again, err := engine.sweep(r.from, r.to)
		if err != nil {
			return nil, errHeapWork
		}
		for _, r := range again {
			if r.counts != nil {
				add(r)
			} else if c.short == nil {
				c.short = &r
			}
		}
	}
	h.covers[key] = c
	return c, h.spend(engine.spent() + len(h.served[place]))
}

func holds(stock, counts []int) bool {
	for i, n := range counts {
		if n > stock[i] {
			return false
		}
	}
	return true
}

func without(stock, counts []int) []int {
	left := slices.Clone(stock)
	for i, n := range counts {
		left[i] -= n
	}
	return left
}

// ample reports whether the places from first on cannot notice each other. A
// place that already runs short of this stock does so too when others have
// taken from it before.
func (h *heap) ample(first int, stock []int) (*HeapShortage, bool, error) {
	sum := make([]int, len(stock))
	for i := first; i < len(h.fits); i++ {
		c, err := h.cover(i, stock)
		if err != nil {
			return nil, false, err
		}
		if c.short != nil {
			path := slices.Clone(h.path[:first])
			for j := first; j < i; j++ {
				if len(h.served[j]) == 0 { // nobody comes past this place
					return nil, false, nil
				}
				path = append(path, h.served[j][0])
			}
			return h.replay(append(path, *c.short)), false, nil
		}
		for j, n := range c.most {
			sum[j] += n
		}
	}
	return nil, holds(stock, sum), nil
}

// replay builds the kit down along a path of readings, and gives the place that
// no pack fits; nil when all are served.
func (h *heap) replay(path []fitRun) *HeapShortage {
	s := &HeapShortage{Left: h.stock}
	for i, run := range path {
		f := h.fits[i]
		reading := f.interval(run, h.ranges[i]).sample()
		s.Place, s.Readings = i, append(s.Readings, reading)
		engine := f.engine.withStock(s.Left)
		counts, err := engine.solve(f.position(f.want(reading)))
		if h.spend(engine.spent()) != nil || err != nil {
			return nil
		}
		if counts == nil {
			return s
		}
		s.Picks = append(s.Picks, f.packAt(counts, reading))
		s.Left = without(s.Left, counts)
	}
	return nil
}

// trial gives all places readings from the same part of their ranges.
func (h *heap) trial() *HeapShortage {
	h.budget = heapWorkLimit
	most := 0
	for _, runs := range h.served {
		if len(runs) == 0 {
			return nil
		}
		most = max(most, len(runs))
	}
	path := make([]fitRun, len(h.fits))
	for t := 0; t < most && h.budget > 0; t++ {
		for i, runs := range h.served {
			path[i] = runs[t*len(runs)/most]
		}
		if s := h.replay(path); s != nil {
			return s
		}
	}
	return nil
}

// searchAll is search of the whole heap, with work as its limit.
func (h *heap) searchAll(work int) (*HeapShortage, error) {
	h.budget = work
	return h.search(0, h.stock)
}

// search tries every different pick of every place, from the given one on.
func (h *heap) search(place int, stock []int) (*HeapShortage, error) {
	if place == len(h.fits) {
		return nil, nil
	}
	key := heapKey(place, stock, h.asks(place, len(h.fits)))
	if h.proven[key] {
		return nil, nil
	}
	short, ample, err := h.ample(place, stock)
	if short != nil || err != nil {
		return short, err
	}
	if !ample {
		c, err := h.cover(place, stock)
		if err != nil {
			return nil, err
		}
		for _, run := range c.picks {
			h.path = append(h.path[:place], run)
			if short, err := h.search(place+1, without(stock, run.counts)); short != nil || err != nil {
				return short, err
			}
		}
	}
	h.proven[key] = true
	return nil, h.spend(1)
}

// cannotStarve reports whether it is certain that no place is starved by those before it.
func (h *heap) cannotStarve() bool {
	h.budget = heapWorkLimit
	loss := 0
	for i, f := range h.fits {
		most := 0 // pieces that this place may take
		for _, run := range h.served[i] {
			pieces, ok := h.survives(i, h.stock, run, loss)
			if !ok {
				return false
			}
			most = max(most, pieces)
		}
		if f.engine.prefersNearest() {
			most = f.max
		}
		loss += most
	}
	return true
}

// survives reports whether every reading of the run has a pack left after any
// loss of so many pieces, and how many pieces such a pack has at most. Breaking
// a pack costs the pieces of one of its sizes that are not needed, and one
// more; a pack without any of its sizes must be broken at further cost.
func (h *heap) survives(place int, stock []int, run fitRun, loss int) (pieces int, ok bool) {
	engine := h.fits[place].engine.fewest(stock)
	runs, err := engine.sweep(run.from, run.to)
	if err != nil || h.spend(engine.spent()) != nil {
		return 0, false
	}
	for _, r := range runs {
		if r.counts == nil {
			return 0, false
		}
		n, cost := 0, loss+1 // a pack of no pieces cannot be broken
		rest := slices.Clone(stock)
		for i, c := range r.counts {
			if c > 0 {
				n += c
				cost = min(cost, stock[i]-c+1)
				rest[i] = 0
			}
		}
		pieces = max(pieces, n)
		if cost <= loss {
			if n, ok = h.survives(place, rest, r, loss-cost); !ok {
				return 0, false
			}
			pieces = max(pieces, n)
		}
	}
	return pieces, true
}
