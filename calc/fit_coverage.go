package calc

import (
	"math/big"
	"slices"
)

// FitInterval is a set of readings without a hole. An open end does not belong to it.
type FitInterval struct {
	Low, High         *big.Rat
	LowOpen, HighOpen bool
}

// Contains reports whether the reading belongs to the interval.
func (v FitInterval) Contains(reading *big.Rat) bool {
	l, h := reading.Cmp(v.Low), reading.Cmp(v.High)
	return (l > 0 || l == 0 && !v.LowOpen) && (h < 0 || h == 0 && !v.HighOpen)
}

// String gives the interval in the notation of ISO 80000-2: [a, b], ]a, b[ and
// mixed; it is for tests and debugging.
func (v FitInterval) String() string {
	l, r := "[", "]"
	if v.LowOpen {
		l = "]"
	}
	if v.HighOpen {
		r = "["
	}
	return l + v.Low.RatString() + ", " + v.High.RatString() + r
}

// FitGap is a set of readings that no allowed pack serves, and one of them,
// written with as few decimals as it allows.
type FitGap struct {
	FitInterval
	Sample *big.Rat
}

// FitRegion is a set of readings with one pick. The pack has no result, since
// that differs from reading to reading.
type FitRegion struct {
	FitInterval
	Pack *Pack // nil in a gap; shared by regions with the same pick
}

// FitHull is the smallest closed interval that holds all values of something.
type FitHull struct{ Low, High *big.Rat }

func (h *FitHull) add(low, high *big.Rat) {
	if h.Low == nil || low.Cmp(h.Low) < 0 {
		h.Low = low
	}
	if h.High == nil || high.Cmp(h.High) > 0 {
		h.High = high
	}
}

// cut narrows the hull to low..high, where these are not open.
func (h *FitHull) cut(low, high *big.Rat) {
	if low != nil && low.Cmp(h.Low) > 0 {
		h.Low = low
	}
	if high != nil && high.Cmp(h.High) < 0 {
		h.High = high
	}
}

// FitCover is what the kit does for all readings of a range.
type FitCover struct {
	Regions   []FitRegion   // in order, without overlap; together they are the range
	Served    []FitInterval // in order; the union of closed intervals within the range
	Gaps      []FitGap      // in order; what Served leaves of the range
	NeverUsed []int         // sizes in no pick over the range, at no single reading

	// Over the served readings; nil Low and High, and no pieces, where there are none.
	Total, TotalBand     FitHull // nominal; over the whole bands of the sizes
	Result, ResultBand   FitHull
	MinPieces, MaxPieces int
}

// Coverage works out the picks for all readings in low..high, both included.
// Errors: ErrEmptyRange, ErrTooManyPacks.
func (f *Fit) Coverage(low, high *big.Rat) (FitCover, error) {
	var cover FitCover
	if low == nil || high == nil || low.Cmp(high) > 0 {
		return cover, ErrEmptyRange
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	span := f.span(low, high)
	runs, err := f.engine.sweep(span.from, span.to)
	if err != nil {
		return cover, err
	}
	if f.buildUp { // want falls as the reading grows
		slices.Reverse(runs)
	}
	packs := map[int32]*Pack{} // looked up only
	used := make([]bool, len(f.sizes))
	for _, run := range runs {
		region := FitRegion{FitInterval: f.interval(run, span)}
		if run.counts == nil {
			cover.Gaps = append(cover.Gaps, FitGap{region.FitInterval, region.sample()})
		} else {
			region.Pack = packs[run.pack]
			if region.Pack == nil {
				p := f.pack(run.counts)
				region.Pack = &p
				packs[run.pack] = &p
				for i, c := range run.counts {
					used[i] = used[i] || c > 0
				}
			}
			cover.add(f, region)
		}
		cover.Regions = append(cover.Regions, region)
	}
	for i, u := range used {
		if !u {
			cover.NeverUsed = append(cover.NeverUsed, i)
		}
	}
	return cover, nil
}

// add takes a served region into the union and the hulls.
func (c *FitCover) add(f *Fit, r FitRegion) {
	if n := len(c.Served); n > 0 && len(c.Regions) > 0 && c.Regions[len(c.Regions)-1].Pack != nil {
		c.Served[n-1].High, c.Served[n-1].HighOpen = r.High, r.HighOpen
	} else {
		c.Served = append(c.Served, r.FitInterval)
		if n == 0 {
			c.MinPieces = r.Pack.Pieces
		}
	}
	c.MinPieces, c.MaxPieces = min(c.MinPieces, r.Pack.Pieces), max(c.MaxPieces, r.Pack.Pieces)
	c.Total.add(r.Pack.Total, r.Pack.Total)
	c.TotalBand.add(r.Pack.TotalLow, r.Pack.TotalHigh)
	low, high := f.packAt(r.Pack.Counts, r.Low), f.packAt(r.Pack.Counts, r.High)
	c.Result.add(low.Result, high.Result)
	c.ResultBand.add(low.ResultLow, high.ResultHigh)
}

// Reach is the lowest and the highest reading that the kit can serve; there may
// be gaps between. Nil where there is none, or where the limit is open.
func (f *Fit) Reach() (low, high *big.Rat, err error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	from, to, err := f.engine.reach()
	if err != nil || from == nil {
		return nil, nil, err
	}
	low, high = f.reading(f.wanted(from)), f.reading(f.wanted(to))
	if f.buildUp {
		low, high = high, low
	}
	return low, high, nil
}

// Guarantee bounds the nominal total and the result of any pick for a reading in
// low..high, from this kit or from what others have left of it. It is wider than
// the hulls of Coverage, which hold for the full kit only.
func (f *Fit) Guarantee(low, high *big.Rat) (total, result FitHull, err error) {
	if low == nil || high == nil || low.Cmp(high) > 0 {
		return total, result, ErrEmptyRange
	}
	total.Low, total.High = f.extreme(1), f.extreme(-1)
	result = FitHull{f.result(low, total.High), f.result(high, total.Low)}
	if f.buildUp {
		result = FitHull{f.result(low, total.Low), f.result(high, total.High)}
	}
	result.cut(f.low, f.high)
	// The total is the reading less the result, or the result less the reading.
	if f.buildUp {
		total.cut(distance(high, f.low), distance(low, f.high))
	} else {
		total.cut(distance(f.high, low), distance(f.low, high))
	}
	return total, result, nil
}

// extreme is the thinnest total of any allowed number of pieces for sign 1, and
// the thickest for -1.
func (f *Fit) extreme(sign int) *big.Rat {
	sizes := slices.Clone(f.sizes)
	slices.SortFunc(sizes, func(a, b FitSize) int { return sign * a.Nominal.Cmp(b.Nominal) })
	total, pieces := new(big.Rat), 0
	take := func(n int, s FitSize) {
		t := new(big.Rat).SetInt64(int64(n))
		total.Add(total, t.Mul(t, s.Nominal))
		pieces += n
	}
	for _, s := range sizes {
		n := min(s.Stock, f.max-pieces)
		if s.Nominal.Sign()*sign >= 0 { // no more of these than must be
			n = min(n, max(0, f.min-pieces))
		}
		take(n, s)
	}
	return total
}

// fitRange is a range of readings, and the positions that its ends snap to.
type fitRange struct {
	low, high *big.Rat
	from, to  *big.Int
}

func (f *Fit) span(low, high *big.Rat) fitRange {
	r := fitRange{low: low, high: high, from: f.position(f.want(low)), to: f.position(f.want(high))}
	if f.buildUp {
		r.from, r.to = r.to, r.from
	}
	return r
}

// interval is the readings at the positions of a run within a range.
func (f *Fit) interval(run fitRun, within fitRange) FitInterval {
	var v FitInterval
	one := big.NewInt(1)
	first, last := within.low, within.high
	if f.buildUp {
		first, last = last, first
	}
	low, lowOpen := first, false
	if run.from.Cmp(within.from) > 0 {
		at := new(big.Int).Set(run.from)
		if lowOpen = at.Bit(0) == 1; lowOpen {
			at.Sub(at, one)
		}
		low = f.reading(f.wanted(at))
	}
	high, highOpen := last, false
	if run.to.Cmp(within.to) < 0 {
		at := new(big.Int).Set(run.to)
		if highOpen = at.Bit(0) == 1; highOpen {
			at.Add(at, one)
		}
		high = f.reading(f.wanted(at))
	}
	v = FitInterval{low, high, lowOpen, highOpen}
	if f.buildUp {
		v = FitInterval{high, low, highOpen, lowOpen}
	}
	return v
}

// sample is a reading inside the interval, near its middle, with as few
// decimals as will do.
func (v FitInterval) sample() *big.Rat {
	mid := middle(v.Low, v.High)
	half := big.NewRat(1, 2)
	step := big.NewInt(1)
	for range 20 {
		r := new(big.Rat).Mul(mid, new(big.Rat).SetInt(step))
		r.Add(r, half)
		n := new(big.Int).Div(r.Num(), r.Denom())
		if at := new(big.Rat).SetFrac(n, step); v.Contains(at) {
			return at
		}
		step = new(big.Int).Mul(step, big.NewInt(10))
	}
	return mid
}
