package fn

import (
	"math/big"

	"fettle/calc"
)

var roundDown = &calc.Function{
	Name:     "round_down",
	Args:     stepArgs,
	Doc:      "The greatest multiple of the step that is not above the value, in the value's unit.",
	Examples: []calc.Example{{Call: `round_down("5.465625 lb·ft", "0.1 lb·ft")`, Gives: "5.4 lb·ft", Source: "a hardware table's torque of 1/4-20 grade 2 at 75 % of proof; read in a reproduction"}},
	Source:   "by its meaning",
	Result:   firstDim,
	// On the page: as round, but the quotient rounded towards less.
	Exact: toStep(calc.RoundDownTo),
	Range: func(args []calc.Interval) calc.Interval {
		return widen(args, big.NewRat(-1, 1), new(big.Rat))
	},
}
