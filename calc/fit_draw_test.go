package calc

import (
	"math/big"

	"pgregory.net/rapid"
)

// evenly draws one of the values, each as likely as the others.
func evenly(t *rapid.T, label string, values ...int) int {
	return rapid.SampledFrom(values).Draw(t, label)
}

// drawProblem makes a small kit: exact sizes and bands, twins, negative limits,
// open ends, packs of nothing, targets off the middle and off the grid.
func drawProblem(t *rapid.T) FitProblem {
	unit := int64(rapid.SampledFrom([]int{1, 100, 1000, 1270, 3}).Draw(t, "denominator"))
	rat := func(n int) *big.Rat { return big.NewRat(int64(n), unit) }
	p := FitProblem{
		BuildUp: rapid.Bool().Draw(t, "build up"),
		Nearest: rapid.Bool().Draw(t, "nearest"),
	}
	bands := rapid.IntRange(0, 2).Draw(t, "bands")
	for range evenly(t, "sizes", 3, 2, 4, 1, 0) {
		n := evenly(t, "thickness", 5, 3, 1, 2, 4, 6, 7, 8, 9, 10, 11, 12, 0, -1)
		s := FitSize{Nominal: rat(n), Low: rat(n), High: rat(n), Stock: evenly(t, "stock", 2, 1, 3, 3, 0)}
		if bands > 0 {
			s.Low = rat(n - rapid.IntRange(0, bands).Draw(t, "minus"))
			s.High = rat(n + rapid.IntRange(0, bands).Draw(t, "plus"))
		}
		p.Sizes = append(p.Sizes, s)
	}
	p.MinPieces = evenly(t, "min", 1, 0, 0, 1, 2, 3)
	p.MaxPieces = p.MinPieces + evenly(t, "more", 1, 2, 3, 0)
	low := rapid.IntRange(-4, 6).Draw(t, "low")
	p.Low, p.High = rat(low), rat(low+evenly(t, "width", 2, 1, 3, 4, 6, 0))
	switch rapid.IntRange(0, 6).Draw(t, "open") {
	case 0:
		p.Low = nil
	case 1:
		p.High = nil
	}
	switch rapid.IntRange(0, 3).Draw(t, "target") {
	case 0:
		p.Target = rat(low + rapid.IntRange(0, 6).Draw(t, "off"))
	case 1:
		p.Target = big.NewRat(int64(rapid.IntRange(-20, 40).Draw(t, "odd target")), 7*unit)
	}
	return p
}

// drawRange draws readings near those that some pack serves, with ends on and
// between the lines of the grid.
func drawRange(t *rapid.T, p FitProblem) (low, high *big.Rat) {
	unit := big.NewInt(1)
	low = new(big.Rat)
	for _, s := range p.Sizes {
		unit = s.Nominal.Denom()
		n := big.NewRat(int64(evenly(t, "near", 0, 1, 2)), 1)
		low.Add(low, n.Mul(n, s.Nominal))
	}
	if p.BuildUp {
		low.Neg(low)
	}
	if p.Low != nil {
		low.Add(low, p.Low)
	}
	den := new(big.Int).Mul(unit, big.NewInt(int64(evenly(t, "fineness", 1, 3, 7))))
	step := func(n int) *big.Rat { return new(big.Rat).SetFrac(big.NewInt(int64(n)), den) }
	low.Add(low, step(rapid.IntRange(-20, 10).Draw(t, "range low")))
	return low, new(big.Rat).Add(low, step(evenly(t, "range width", 0, 1, 5, 10, 20, 30, 40, 60)))
}
