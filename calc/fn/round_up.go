package fn

import (
	"math/big"

	"fettle/calc"
)

var roundUp = &calc.Function{
	Name:     "round_up",
	Args:     stepArgs,
	Doc:      "The least multiple of the step that is not below the value, in the value's unit.",
	Examples: []calc.Example{{Call: `round_up("1311.75 lbf", "1 lbf")`, Gives: "1312 lbf", Source: "a hardware table's clamp load of 1/4-20 grade 2 at 75 % of proof; read in a reproduction"}},
	Source:   "by its meaning",
	Result:   firstDim,
	// On the page: as round, but the quotient rounded towards more.
	Exact: toStep(calc.RoundUpTo),
	Range: func(args []calc.Interval) calc.Interval {
		return widen(args, new(big.Rat), big.NewRat(1, 1))
	},
}
