package fn

import (
	"math/big"

	"fettle/calc"
)

var cosine = &calc.Function{
	Name:   "cos",
	Args:   trigArgs,
	Doc:    "The cosine of an angle, a plain number correctly rounded to the decimals asked for.",
	Source: "by its meaning",
	Examples: []calc.Example{
		{Call: `cos("36°", 30)`, Gives: "0.809016994374947424102293417183", Source: "half the golden ratio, Euclid XIII; digits OEIS A019863, from memory"},
		{Call: `cos("60°", 4)`, Gives: "0.5000", Source: "by its meaning"},
	},
	Result: func([]calc.Type) calc.Type { return plain },
	Exact: trig(func(deg *big.Rat, decimals int) (*big.Rat, *calc.Problem) {
		r, ok := cosineAt(deg, decimals)
		if !ok {
			return nil, unsure()
		}
		return r, nil
	}),
	Range: func(args []calc.Interval) calc.Interval {
		if m := monotone(args, 0, 180, minusOneToOne, cosineAt); m != minusOneToOne {
			return m
		}
		return monotone(args, -180, 0, minusOneToOne, cosineAt)
	},
}

// cosineAt is the sine a quarter turn on.
func cosineAt(deg *big.Rat, decimals int) (*big.Rat, bool) {
	return sine(new(big.Rat).Add(deg, ninety), decimals)
}
