package fn

import (
	"math/big"

	"fettle/calc"
)

var sineOf = &calc.Function{
	Name:   "sin",
	Args:   trigArgs,
	Doc:    "The sine of an angle, a plain number correctly rounded to the decimals asked for.",
	Source: "by its meaning",
	Examples: []calc.Example{
		{Call: `sin("1°", 30)`, Gives: "0.017452406437283512819418978516", Source: "OEIS A019810; from memory"},
		{Call: `sin("18°", 30)`, Gives: "0.309016994374947424102293417183", Source: "(√5 - 1) ÷ 4, Euclid XIII.10; digits OEIS A019827, from memory"},
	},
	Result: func([]calc.Type) calc.Type { return plain },
	Exact: trig(func(deg *big.Rat, decimals int) (*big.Rat, *calc.Problem) {
		r, ok := sine(deg, decimals)
		if !ok {
			return nil, unsure()
		}
		return r, nil
	}),
	Range: func(args []calc.Interval) calc.Interval {
		return monotone(args, -90, 90, minusOneToOne, sine)
	},
}
