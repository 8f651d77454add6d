package calc

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"sync"
)

// Selective fit: which pieces of a graded part bring a measured gap, or a
// measured base, inside its limit. The picks, and what this file promises of
// them, are those of the dialect's page, section "Selective fit, exactly".
//
// # The algorithm
//
// It is plain enough to be written again in another language, with integers only.
//
//  1. Both forms become one. With want = reading - target for a pack that fills
//     a gap, want = target - reading for one that builds up, a pack is accepted
//     when want - below <= its thinnest total and its thickest total <= want +
//     above, where above and below are the distances from the target to the two
//     ends of the limit (exchanged for a pack that builds up). The pack is as
//     near to the target as its nominal total is to want.
//  2. Numbers become integers: sizes and distances times four times their common
//     denominator. Ends of served ranges are then multiples of four, midpoints
//     between two totals are even, and an odd position stands for every reading
//     strictly between its even neighbours, of which none is special. Any want
//     snaps to such a position and keeps its order among them (fit_grid.go).
//  3. A table over the sizes, thinnest first, and the number of pieces keeps for
//     each total the packs that can still be the pick: of two packs with equal
//     pieces and equal total, one goes when the other comes before it in the
//     tie rule and its band of totals lies inside. What is added later is the
//     same for both, so the order between them stays (fit_table.go).
//  4. The pick at a position: for each number of pieces from the fewest, the
//     nearest accepted total on either side. With Nearest, all numbers of pieces
//     form one list (fit_pick.go).
//  5. Coverage: between two neighbouring ends of served ranges the accepted
//     packs stay the same, and picks change at midpoints only (fit_coverage.go).

// FitSize is one size of a graded part: every piece of it is between Low and
// High thick, and Nominal is what it is reckoned as. All three are in the unit
// of the problem. Nil Low or High mean Nominal; nil Nominal means their middle.
type FitSize struct {
	Label              string
	Low, High, Nominal *big.Rat
	Stock              int // pieces that the kit holds
}

// FitProblem is one selective fit. Every number is in one unit, the caller's.
type FitProblem struct {
	Sizes                []FitSize
	MinPieces, MaxPieces int
	BuildUp              bool     // result = reading + total, not reading - total
	Low, High            *big.Rat // limit of the result; nil for an open end
	Target               *big.Rat // nil for the middle, or for the only end
	Nearest              bool     // nearness before the number of pieces
}

// Pack is a number of pieces of each size, and what they give.
type Pack struct {
	Counts                        []int // parallel to FitProblem.Sizes
	Pieces                        int
	Total, TotalLow, TotalHigh    *big.Rat // nominal, thinnest, thickest
	Result, ResultLow, ResultHigh *big.Rat // at the reading asked for; nil where there is none
}

// Different is the number of different sizes in the pack.
func (p Pack) Different() int {
	n := 0
	for _, c := range p.Counts {
		if c > 0 {
			n++
		}
	}
	return n
}

// What can be wrong with a fit.
var (
	// ErrNoPack says that no allowed pack brings the result inside its limit.
	ErrNoPack = errors.New("no pack fits")
	// ErrTooManyPacks says that the kit allows more packs than can be compared.
	ErrTooManyPacks = errors.New("the kit allows too many different packs to compare")
	// ErrNoLimit says that neither a limit nor a target is given.
	ErrNoLimit = errors.New("the result has no limit and no target")
	// ErrEmptyLimit says that the limit's low end is above its high end.
	ErrEmptyLimit = errors.New("the limit of the result is empty")
	// ErrEmptyRange says that the range of readings is empty or not given.
	ErrEmptyRange = errors.New("the range of readings is empty")
)

// PieceLimitError says that no number of pieces is allowed and in the kit.
type PieceLimitError struct{ Min, Max, Held int }

func (e *PieceLimitError) Error() string {
	if e.Min > e.Max || e.Max < 0 {
		return fmt.Sprintf("no number of pieces is in %d..%d", e.Min, e.Max)
	}
	return fmt.Sprintf("at least %d pieces are needed and the kit holds %d", e.Min, e.Held)
}

// FitSizeError says that a size has no thickness, a band that does not hold its
// nominal thickness, or fewer than no pieces.
type FitSizeError struct {
	Size   int // index in FitProblem.Sizes
	Reason string
}

func (e *FitSizeError) Error() string { return fmt.Sprintf("size %d: %s", e.Size+1, e.Reason) }

// Fit answers questions about one FitProblem. It is safe for use by several
// goroutines at once, and keeps what it has worked out.
type Fit struct {
	sizes   []FitSize // complete: no nil thickness
	low     *big.Rat  // limit of the result, nil for an open end
	high    *big.Rat
	target  *big.Rat
	buildUp bool
	min     int
	max     int // pieces, at most what the kit holds
	scale   *big.Int

	mu     sync.Mutex
	engine fitEngine
}

// NewFit checks the problem and prepares to solve it. Errors: *FitSizeError,
// *PieceLimitError, ErrNoLimit, ErrEmptyLimit.
func NewFit(p FitProblem) (*Fit, error) {
	sizes, held, err := completeSizes(p.Sizes)
	if err != nil {
		return nil, err
	}
	if p.MinPieces < 0 || p.MinPieces > p.MaxPieces || p.MinPieces > held {
		return nil, &PieceLimitError{p.MinPieces, p.MaxPieces, held}
	}
	target := p.Target
	switch {
	case p.Low != nil && p.High != nil && p.Low.Cmp(p.High) > 0:
		return nil, ErrEmptyLimit
	case target != nil:
	case p.Low != nil && p.High != nil:
		target = middle(p.Low, p.High)
	case p.Low != nil:
		target = p.Low
	case p.High != nil:
		target = p.High
	default:
		return nil, ErrNoLimit
	}
	f := &Fit{
		sizes: sizes, low: p.Low, high: p.High, target: target, buildUp: p.BuildUp,
		min: p.MinPieces, max: min(p.MaxPieces, held),
	}

	// A pack that fills a gap is limited from above by the low end of the result.
	above, below := distance(p.Low, target), distance(target, p.High)
	if p.BuildUp {
		above, below = below, above
	}
	f.scale = fitScale(sizes, above, below)
	f.engine = newFitEngine(f, above, below, p.Nearest)
	return f, nil
}

// completeSizes fills in the thicknesses left out, and counts the pieces held.
func completeSizes(given []FitSize) (sizes []FitSize, held int, err error) {
	sizes = slices.Clone(given)
	for i := range sizes {
		s := &sizes[i]
		if s.Nominal == nil && s.Low != nil && s.High != nil {
			s.Nominal = middle(s.Low, s.High)
		}
		if s.Nominal == nil {
			return nil, 0, &FitSizeError{i, "it has no thickness"}
		}
		if s.Low == nil {
			s.Low = s.Nominal
		}
		if s.High == nil {
			s.High = s.Nominal
		}
		if s.Low.Cmp(s.Nominal) > 0 || s.Nominal.Cmp(s.High) > 0 {
			return nil, 0, &FitSizeError{i, "its nominal thickness is outside its band"}
		}
		if s.Stock < 0 {
			return nil, 0, &FitSizeError{i, "the kit cannot hold fewer than no pieces"}
		}
		held += s.Stock
		if held < 0 {
			return nil, 0, &FitSizeError{i, "the kit holds too many pieces to count"}
		}
	}
	return sizes, held, nil
}

// Solve picks the pack for a reading: of all accepted packs the one with the
// fewest pieces, then the result nearest the target, then the fewest different
// sizes, then the thicker pieces first, compared in order, and of equally thick
// sizes the one listed first. With Nearest, nearness comes before the number of
// pieces. Errors: ErrNoPack, ErrTooManyPacks.
func (f *Fit) Solve(reading *big.Rat) (Pack, error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	counts, err := f.engine.solve(f.position(f.want(reading)))
	if err != nil {
		return Pack{}, err
	}
	if counts == nil {
		return Pack{}, ErrNoPack
	}
	return f.packAt(counts, reading), nil
}

// Neighbours gives, for a reading that no pack fits, the allowed packs whose
// totals come nearest to what was wanted: the next thinner one (or equal, when
// only its band is at fault) and the next thicker one. Either may be nil.
func (f *Fit) Neighbours(reading *big.Rat) (thinner, thicker *Pack, err error) {
	f.mu.Lock()
	defer f.mu.Unlock()
	lower, upper, err := f.engine.around(f.position(f.want(reading)))
	if err != nil {
		return nil, nil, err
	}
	if lower != nil {
		p := f.packAt(lower, reading)
		thinner = &p
	}
	if upper != nil {
		p := f.packAt(upper, reading)
		thicker = &p
	}
	return thinner, thicker, nil
}

// Target is the result aimed at.
func (f *Fit) Target() *big.Rat { return new(big.Rat).Set(f.target) }

// want is the nominal total that would give the target.
func (f *Fit) want(reading *big.Rat) *big.Rat {
	if f.buildUp {
		return new(big.Rat).Sub(f.target, reading)
	}
	return new(big.Rat).Sub(reading, f.target)
}

// reading is the inverse of want.
func (f *Fit) reading(want *big.Rat) *big.Rat {
	if f.buildUp {
		return new(big.Rat).Sub(f.target, want)
	}
	return new(big.Rat).Add(f.target, want)
}

// result is what a total gives at a reading.
func (f *Fit) result(reading, total *big.Rat) *big.Rat {
	if f.buildUp {
		return new(big.Rat).Add(reading, total)
	}
	return new(big.Rat).Sub(reading, total)
}

// pack totals the counts.
func (f *Fit) pack(counts []int) Pack {
	p := Pack{Counts: counts, Total: new(big.Rat), TotalLow: new(big.Rat), TotalHigh: new(big.Rat)}
	var n, t big.Rat
	for i, c := range counts {
		if c == 0 {
			continue
		}
		p.Pieces += c
		n.SetInt64(int64(c))
		s := &f.sizes[i]
		p.Total.Add(p.Total, t.Mul(&n, s.Nominal))
		p.TotalLow.Add(p.TotalLow, t.Mul(&n, s.Low))
		p.TotalHigh.Add(p.TotalHigh, t.Mul(&n, s.High))
	}
	return p
}

func (f *Fit) packAt(counts []int, reading *big.Rat) Pack {
	p := f.pack(counts)
	p.Result = f.result(reading, p.Total)
	p.ResultLow, p.ResultHigh = f.result(reading, p.TotalHigh), f.result(reading, p.TotalLow)
	if f.buildUp {
		p.ResultLow, p.ResultHigh = p.ResultHigh, p.ResultLow
	}
	return p
}

func middle(a, b *big.Rat) *big.Rat {
	m := new(big.Rat).Add(a, b)
	return m.Mul(m, big.NewRat(1, 2))
}

// distance is b - a, or nil when an end is open.
func distance(a, b *big.Rat) *big.Rat {
	if a == nil || b == nil {
		return nil
	}
	return new(big.Rat).Sub(b, a)
}
