package joint

import (
	"math/big"

	"fettle/calc"
)

// AccuracyRatio is the test accuracy ratio of an instrument on a tolerance: half
// the width of the limits over the accuracy ±a, as a plain number; 4 is the usual
// least (common practice). Limits and accuracy are of one dimension; the
// accuracy of a temperature is a difference.
func AccuracyRatio(limits Band, accuracy calc.Quantity) (calc.Quantity, *calc.Problem) {
	return shareOfWidth(limits, accuracy, "accuracy", two)
}

// ResolutionRatio is the width of the limits over the instrument's resolution, a
// plain number; 10 is the usual least (common practice).
func ResolutionRatio(limits Band, resolution calc.Quantity) (calc.Quantity, *calc.Problem) {
	return shareOfWidth(limits, resolution, "resolution", one)
}

func shareOfWidth(limits Band, q calc.Quantity, what string, times *big.Rat) (calc.Quantity, *calc.Problem) {
	if !limits.Low.Valid() || !limits.High.Valid() || limits.Low.Cmp(limits.High) > 0 {
		return calc.Quantity{}, &calc.Problem{Message: "The limits are not bounded on both sides.",
			Reason: "The instrument cannot be judged against a tolerance.", Remedy: "Give a lowest and a highest value."}
	}
	dim := limits.High.Unit.Difference().Dim
	if p := positive(what, dim, q); p != nil {
		return calc.Quantity{}, p
	}
	return calc.NewQuantity(quo(limits.width(), mul(times, q.Base())), calc.One, 1), nil
}

// ResolutionUncertainty is the standard uncertainty that a resolution r alone
// leaves, r/√12, for a valid r, in its unit, to 30 decimals. Source: JCGM 100:2008 F.2.2.1, from memory.
func ResolutionUncertainty(resolution calc.Quantity) calc.Quantity {
	return calc.NewQuantity(quo(resolution.Num(), root(whole(12))), resolution.Unit, shown(resolution)+2)
}

// Verdict is what a reading with an uncertainty proves.
type Verdict uint8

// Verdicts.
const (
	Undecided Verdict = iota // within the uncertainty of an end
	Accepted                 // inside the limits for certain
	Rejected                 // outside them for certain
)

// Decide judges a reading with expanded uncertainty U: accepted inside Low + U to
// High − U, ends included, and rejected beyond Low − U or High + U. All exact, valid and of one dimension.
// Source: ISO 14253-1:2017 default rule, from memory.
func Decide(reading calc.Quantity, limits Band, uncertainty calc.Quantity) Verdict {
	x, u := reading.Base(), uncertainty.Base()
	low, high := limits.Low.Base(), limits.High.Base()
	switch {
	case x.Cmp(add(low, u)) >= 0 && x.Cmp(sub(high, u)) <= 0:
		return Accepted
	case less(x, sub(low, u)) || less(add(high, u), x):
		return Rejected
	}
	return Undecided
}
