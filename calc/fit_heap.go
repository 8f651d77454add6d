package calc

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"
)

// Several places that draw on one heap of pieces, in the order of work. Each
// place takes its best pick from what the places before it have left.
//
// Four ways lead to a verdict, tried in this order:
//
//  1. Ample: if the most that any pick takes of a size, added up over the
//     places, is in the kit, no place notices the others.
//  2. Trial: all places are given readings from the same part of their ranges,
//     which is how a heap runs short in practice.
//  3. Search: place by place, every different pick is taken from every different
//     remaining stock; stocks already proved, or ample from there on, are not
//     searched again. Exact, where it ends within its limit of work.
//  4. Starving: if, for every reading, packs without a size in common would
//     together survive the loss of as many pieces as all earlier places may
//     take, none of them can starve this one.

// FitPlace is one place that draws on the heap: its own problem, and the range
// of its readings, both ends included. Sizes and stock are those of the heap.
type FitPlace struct {
	Problem   FitProblem
	Low, High *big.Rat
}

// HeapVerdict is the outcome of a heap's proof.
type HeapVerdict uint8

// Outcomes.
const (
	HeapServes    HeapVerdict = iota // every combination of readings is served
	HeapRunsShort                    // a combination is not, though each reading alone would be
	HeapUndecided                    // the work limit was reached
)

// HeapProof is what was found about a heap. Readings that even the full kit
// does not serve stop the work at their place, are found by Fit.Coverage, and
// are left out here.
type HeapProof struct {
	Verdict  HeapVerdict
	Shortage *HeapShortage // an example, when the heap runs short
	Reason   string        // when undecided
	OwnGaps  []int         // places with readings that even the full kit does not serve
	Ample    bool          // no pick can be changed by other places

	// Sizes that no place ever picks, whatever is left; nil also when not known.
	NeverUsed []int
}

// HeapShortage is a combination of readings that ends at a place without a pack.
type HeapShortage struct {
	Place    int        // index of the place that no pack fits any more
	Readings []*big.Rat // of the places up to that one, included
	Picks    []Pack     // of the places before it
	Left     []int      // pieces left when it is reached, parallel to the sizes
}

// heapWorkLimit bounds the trial, the search and the starving argument each, in
// steps of the table: some tenths of a second.
const heapWorkLimit = 10_000_000

var errHeapWork = errors.New("heap work limit")

// HeapCoverage decides whether every combination of readings of the places, in
// order, can be served from one kit. Errors are those of NewFit and Coverage,
// with the place that they concern as a *FitPlaceError.
func HeapCoverage(places []FitPlace) (HeapProof, error) {
	h, proof, err := newHeap(places)
	if err != nil || len(places) == 0 {
		return proof, err
	}
	short, ample, err := h.ample(0, h.stock)
	if ample {
		proof.Ample, proof.NeverUsed = true, h.neverUsed()
		return proof, nil
	}
	for _, try := range []func() (*HeapShortage, error){
		func() (*HeapShortage, error) { return short, err },
		h.trial,
		func() (*HeapShortage, error) { return h.search(0, h.stock) },
	} {
		h.budget = heapWorkLimit
		if short, err = try(); short != nil {
			proof.Verdict, proof.Shortage = HeapRunsShort, short
			return proof, nil
		}
	}
	if err == nil {
		proof.NeverUsed = h.neverUsed()
		return proof, nil
	}
	h.budget = heapWorkLimit
	if !h.cannotStarve() {
		proof.Verdict = HeapUndecided
		proof.Reason = fmt.Sprintf("the %d places can leave the kit in more ways than can be tried", len(places))
	}
	return proof, nil
}

// FitPlaceError says which place an error concerns.
type FitPlaceError struct {
	Place int
	Err   error
}

func (e *FitPlaceError) Error() string { return fmt.Sprintf("place %d: %v", e.Place+1, e.Err) }

func (e *FitPlaceError) Unwrap() error { return e.Err }

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

// key names a place and a stock. More pieces than the place, or the places from
// it on, may ask for make no difference.
func (h *heap) key(place int, stock []int, most int) string {
	var b strings.Builder
	fmt.Fprint(&b, place)
	for _, s := range stock {
		fmt.Fprint(&b, " ", min(s, most))
	}
	return b.String()
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
	key := h.key(h.class[place], stock, h.fits[place].max)
	if c := h.covers[key]; c != nil {
		return c, nil
	}
	c := &heapCover{most: make([]int, len(stock))}
	seen := map[string]bool{}
	add := func(r fitRun) {
		for i, n := range r.counts {
			c.most[i] = max(c.most[i], n)
			h.used[i] = h.used[i] || n > 0
		}
		if k := fmt.Sprint(r.counts); !seen[k] {
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
func (h *heap) trial() (*HeapShortage, error) {
	most := 0
	for _, runs := range h.served {
		if len(runs) == 0 {
			return nil, nil
		}
		most = max(most, len(runs))
	}
	path := make([]fitRun, len(h.fits))
	for t := 0; t < most && h.budget > 0; t++ {
		for i, runs := range h.served {
			path[i] = runs[t*len(runs)/most]
		}
		if s := h.replay(path); s != nil {
			return s, nil
		}
	}
	return nil, nil
}

// search tries every different pick of every place, from the given one on.
func (h *heap) search(place int, stock []int) (*HeapShortage, error) {
	if place == len(h.fits) {
		return nil, nil
	}
	key := h.key(place, stock, h.asks(place, len(h.fits)))
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

// cannotStarve reports that no place can be starved by those before it.
func (h *heap) cannotStarve() bool {
	for i := range h.fits {
		if slices.Contains(h.class[i+1:], h.class[i]) {
			continue // a later place like this one can lose more
		}
		for _, run := range h.served[i] {
			if !h.survives(i, h.stock, run, h.asks(0, i)) {
				return false
			}
		}
	}
	return true
}

// survives reports whether every reading of the run has a pack left after any
// loss of so many pieces. Breaking a pack costs the pieces of one of its sizes
// that are not needed, and one more; a pack without its sizes must be broken
// at further cost.
func (h *heap) survives(place int, stock []int, run fitRun, loss int) bool {
	cost := -1 // of a pack of no pieces, which cannot be broken
	rest := slices.Clone(stock)
	for i, n := range run.counts {
		if n > 0 {
			if spare := stock[i] - n + 1; cost < 0 || spare < cost {
				cost = spare
			}
			rest[i] = 0
		}
	}
	if cost < 0 || cost > loss {
		return true
	}
	engine := h.fits[place].engine.withStock(rest)
	runs, err := engine.sweep(run.from, run.to)
	if err != nil || h.spend(engine.spent()) != nil {
		return false
	}
	for _, r := range runs {
		if r.counts == nil || !h.survives(place, rest, r, loss-cost) {
			return false
		}
	}
	return true
}
