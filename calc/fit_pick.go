package calc

import (
	"cmp"
	"math/big"
	"slices"
	"sort"
)

// fitEngine works on positions. Counts are parallel to the sizes; nil is no pack.
type fitEngine interface {
	solve(at *big.Int) ([]int, error)
	around(at *big.Int) (thinner, thicker []int, err error)
	sweep(from, to *big.Int) ([]fitRun, error)
	reach() (from, to *big.Int, err error)
	withStock(stock []int) fitEngine
	fewest(stock []int) fitEngine // withStock, and the fewest pieces before nearness
	prefersNearest() bool
	spent() int
}

// fitRun is a run of positions, both ends included, with one pick.
type fitRun struct {
	from, to *big.Int
	counts   []int // nil in a gap
	pack     int32 // one number for one pack
}

// fitEngineOf is the engine for one kind of number.
type fitEngineOf[T fitNumber[T]] struct {
	*fitTable[T]
	number       func(*big.Int) T
	zero, one    T
	sizes        int
	max          int // pieces
	asked        int // the most pieces asked for, whatever the stock
	above, below *T  // distances from want to the limit's ends, nil where open
	nearest      bool
}

func newEngineOf[T fitNumber[T]](f *Fit, above, below *big.Rat, nearest bool, number func(*big.Int) T) fitEngine {
	e := &fitEngineOf[T]{number: number, sizes: len(f.sizes), max: f.max, asked: f.max, nearest: nearest}
	e.zero, e.one = number(big.NewInt(0)), number(big.NewInt(1))
	if above != nil {
		v := number(f.steps(above))
		e.above = &v
	}
	if below != nil {
		v := number(f.steps(below))
		e.below = &v
	}
	steps := make([]fitStep[T], len(f.sizes))
	for i, s := range f.sizes {
		one := fitBand[T]{number(f.steps(s.Nominal)), number(f.steps(s.Low)), number(f.steps(s.High))}
		steps[i] = fitStep[T]{size: i, stock: min(s.Stock, f.max), times: []fitBand[T]{{e.zero, e.zero, e.zero}, one}}
	}
	slices.SortFunc(steps, func(a, b fitStep[T]) int {
		return cmp.Or(a.times[1].nominal.cmp(b.times[1].nominal), cmp.Compare(b.size, a.size))
	})
	for i := range steps {
		s := &steps[i]
		if i > 0 {
			s.thickness = steps[i-1].thickness + max(0, s.times[1].nominal.cmp(steps[i-1].times[1].nominal))
		}
		one := s.times[1]
		for c := 1; c < s.stock; c++ {
			b := s.times[c]
			s.times = append(s.times, fitBand[T]{b.nominal.plus(one.nominal), b.low.plus(one.low), b.high.plus(one.high)})
		}
	}
	e.fitTable = newFitTable(steps, e.zero, f.min)
	return e
}

// withStock is the same engine for a kit that holds other, not higher, numbers of pieces.
func (e *fitEngineOf[T]) withStock(stock []int) fitEngine {
	n := *e
	steps := slices.Clone(e.steps)
	held := 0
	for i := range steps {
		steps[i].stock = min(stock[steps[i].size], e.asked)
		held += steps[i].stock
	}
	n.max = min(e.asked, held)
	n.fitTable = newFitTable(steps, e.zero, e.min)
	return &n
}

func (e *fitEngineOf[T]) fewest(stock []int) fitEngine {
	n := e.withStock(stock).(*fitEngineOf[T])
	n.nearest = false
	return n
}

func (e *fitEngineOf[T]) prefersNearest() bool { return e.nearest }

func (e *fitEngineOf[T]) spent() int { return e.work + len(e.packs) }

// levels yields the lists in which to look for a pick, in the order of preference.
func (e *fitEngineOf[T]) levels(yield func([]fitState[T]) bool) error {
	if e.nearest {
		if _, err := e.level(e.max); err != nil {
			return err
		}
		yield(e.front[len(e.steps)])
		return nil
	}
	for k := e.min; k <= e.max; k++ {
		level, err := e.level(k)
		if err != nil {
			return err
		}
		if !yield(level) {
			return nil
		}
	}
	return nil
}

func (e *fitEngineOf[T]) solve(at *big.Int) ([]int, error) {
	p := e.number(at)
	var counts []int
	err := e.levels(func(level []fitState[T]) bool {
		if s := e.pick(level, p); s != nil {
			counts = e.counts(s.pack, e.sizes)
		}
		return counts == nil
	})
	return counts, err
}

// accepts reports whether the whole band of the pack is inside the limit.
func (e *fitEngineOf[T]) accepts(s *fitState[T], p T) bool {
	return (e.above == nil || s.high.cmp(p.plus(*e.above)) <= 0) &&
		(e.below == nil || s.low.cmp(p.minus(*e.below)) >= 0)
}

// pick is the best accepted pack of one list, nil for none: the nearest total
// not below p, or the nearest below it, whichever is nearer or comes first.
func (e *fitEngineOf[T]) pick(level []fitState[T], p T) *fitState[T] {
	at := sort.Search(len(level), func(i int) bool { return level[i].nominal.cmp(p) >= 0 })
	var thicker, thinner *fitState[T]
	for i := at; i < len(level) && thicker == nil; i++ {
		if e.above != nil && level[i].nominal.cmp(p.plus(*e.above)) > 0 {
			break
		}
		if e.accepts(&level[i], p) {
			thicker = &level[i]
		}
	}
	for i := at - 1; i >= 0; i-- {
		if e.below != nil && level[i].nominal.cmp(p.minus(*e.below)) < 0 {
			break
		}
		if thinner != nil && level[i].nominal.cmp(thinner.nominal) != 0 {
			break
		}
		// Of equal totals the first comes first, and is met last.
		if e.accepts(&level[i], p) {
			thinner = &level[i]
		}
	}
	switch {
	case thinner == nil:
		return thicker
	case thicker == nil:
		return thinner
	}
	switch thinner.nominal.plus(thicker.nominal).cmp(p.plus(p)) {
	case -1:
		return thicker
	case 1:
		return thinner
	}
	if e.comesFirst(thicker, thinner) {
		return thicker
	}
	return thinner
}

// comesFirst reports that a precedes b, both equally near.
func (e *fitEngineOf[T]) comesFirst(a, b *fitState[T]) bool {
	return e.order(fitFound[T]{*a, e.packs[a.pack]}, fitFound[T]{*b, e.packs[b.pack]}) < 0
}

// around looks for the nearest totals on either side, whatever the limit.
func (e *fitEngineOf[T]) around(at *big.Int) (thinner, thicker []int, err error) {
	p := e.number(at)
	var below, above *fitState[T]
	for k := e.min; k <= e.max; k++ {
		level, err := e.level(k)
		if err != nil {
			return nil, nil, err
		}
		i := sort.Search(len(level), func(i int) bool { return level[i].nominal.cmp(p) > 0 })
		if i < len(level) && (above == nil || level[i].nominal.cmp(above.nominal) < 0) {
			above = &level[i]
		}
		if i == 0 {
			continue
		}
		total := level[i-1].nominal
		i = sort.Search(i, func(i int) bool { return level[i].nominal.cmp(total) >= 0 })
		if below == nil || total.cmp(below.nominal) > 0 {
			below = &level[i]
		}
	}
	if below != nil {
		thinner = e.counts(below.pack, e.sizes)
	}
	if above != nil {
		thicker = e.counts(above.pack, e.sizes)
	}
	return thinner, thicker, nil
}
