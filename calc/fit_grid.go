package calc

import "math/big"

// fitNumber is an integer on the solver's grid. Two kinds exist, so that a kit
// with sizes of ordinary fineness is worked out in machine words, and one with
// sizes of any fineness is worked out too.
type fitNumber[T any] interface {
	plus(T) T
	minus(T) T
	half() T // of an even number
	cmp(T) int
	big() *big.Int
}

// fitSmall is a machine word. newFitEngine uses it only where nothing overflows.
type fitSmall int64

func (a fitSmall) plus(b fitSmall) fitSmall  { return a + b }
func (a fitSmall) minus(b fitSmall) fitSmall { return a - b }
func (a fitSmall) half() fitSmall            { return a >> 1 }
func (a fitSmall) big() *big.Int             { return big.NewInt(int64(a)) }
func (a fitSmall) cmp(b fitSmall) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// A position beyond every end and midpoint behaves like any other beyond them,
// so positions are cut at fitFar, which is odd. Sums stay below fitRoom, and
// twice a position fits a word.
const (
	fitRoom = 1 << 59
	fitFar  = 1<<61 - 1
)

func toFitSmall(v *big.Int) fitSmall {
	if v.IsInt64() {
		return min(max(fitSmall(v.Int64()), -fitFar), fitFar)
	}
	return fitSmall(v.Sign() * fitFar)
}

// fitLarge has no bounds. Its value is never changed.
type fitLarge struct{ v *big.Int }

func (a fitLarge) plus(b fitLarge) fitLarge  { return fitLarge{new(big.Int).Add(a.v, b.v)} }
func (a fitLarge) minus(b fitLarge) fitLarge { return fitLarge{new(big.Int).Sub(a.v, b.v)} }
func (a fitLarge) half() fitLarge            { return fitLarge{new(big.Int).Rsh(a.v, 1)} }
func (a fitLarge) big() *big.Int             { return a.v }
func (a fitLarge) cmp(b fitLarge) int        { return a.v.Cmp(b.v) }

func toFitLarge(v *big.Int) fitLarge { return fitLarge{v} }

// fitScale is the number of grid steps in one unit: four times the least common
// denominator of all sizes and of the distances that are not open.
func fitScale(sizes []FitSize, above, below *big.Rat) *big.Int {
	d := big.NewInt(1)
	var g, q big.Int
	widen := func(r *big.Rat) {
		if r == nil || q.Rem(d, r.Denom()).Sign() == 0 {
			return
		}
		g.GCD(nil, nil, d, r.Denom())
		d.Mul(d, q.Quo(r.Denom(), &g))
	}
	for _, s := range sizes {
		widen(s.Low)
		widen(s.Nominal)
		widen(s.High)
	}
	widen(above)
	widen(below)
	return d.Lsh(d, 2)
}

// steps is r on the grid; r must be one of the numbers that made the scale.
func (f *Fit) steps(r *big.Rat) *big.Int {
	n := new(big.Int).Mul(r.Num(), f.scale)
	return n.Quo(n, r.Denom())
}

// position snaps a wanted total to the grid: to an even number where it is a
// whole half step of the common denominator, and to the odd number between two
// of these otherwise.
func (f *Fit) position(want *big.Rat) *big.Int {
	n := new(big.Int).Rsh(f.scale, 1)
	n.Mul(n, want.Num())
	rest := new(big.Int)
	n.DivMod(n, want.Denom(), rest) // towards -∞, since the denominator is positive
	n.Lsh(n, 1)
	if rest.Sign() != 0 {
		n.SetBit(n, 0, 1)
	}
	return n
}

// wanted is the inverse of position, for an even one.
func (f *Fit) wanted(position *big.Int) *big.Rat {
	return new(big.Rat).SetFrac(position, f.scale)
}

// newFitEngine chooses the kind of number: words where the largest sum, with
// the distances added, has room.
func newFitEngine(f *Fit, above, below *big.Rat, nearest bool) fitEngine {
	widest := new(big.Int)
	grow := func(r *big.Rat) *big.Int {
		v := f.steps(r)
		if v.CmpAbs(widest) > 0 {
			widest.Abs(v)
		}
		return v
	}
	for _, s := range f.sizes {
		grow(s.Low)
		grow(s.High)
	}
	sum := new(big.Int).Mul(widest, big.NewInt(int64(f.max)+1))
	widest.SetInt64(0)
	for _, r := range []*big.Rat{above, below} {
		if r != nil {
			grow(r)
		}
	}
	sum.Add(sum, widest)
	if sum.Cmp(big.NewInt(fitRoom)) < 0 {
		return newEngineOf(f, above, below, nearest, toFitSmall)
	}
	return newEngineOf(f, above, below, nearest, toFitLarge)
}
