package fn

import (
	"math/big"

	"fettle/calc"
)

var tangentOf = &calc.Function{
	Name:   "tan",
	Args:   trigArgs,
	Doc:    "The tangent of an angle, a plain number correctly rounded to the decimals asked for. There is none at 90° and every half turn from it.",
	Source: "by its meaning",
	Examples: []calc.Example{
		{Call: `tan("15°", 30)`, Gives: "0.267949192431122706472553658494", Source: "2 - √3; digits OEIS A019913, from memory"},
		{Call: `tan("1.6067°", 4)`, Gives: "0.0280", Source: "Shigley 9th ed. Example 8-3: lead of 3/4-16 over its mean circumference; from memory"},
	},
	Result: func([]calc.Type) calc.Type { return plain },
	Exact: trig(func(deg *big.Rat, decimals int) (*big.Rat, *calc.Problem) {
		r, pole, ok := tangent(deg, decimals)
		switch {
		case pole:
			p := refused("The tangent of a right angle has no end.", "There is no such number.", "Ask first whether the angle is 90°.")
			p.Rule = calc.RuleDivisionByZero
			return nil, p
		case !ok:
			return nil, unsure()
		}
		return r, nil
	}),
	Range: func(args []calc.Interval) calc.Interval {
		return monotone(args, -89, 89, calc.Interval{}, func(deg *big.Rat, decimals int) (*big.Rat, bool) {
			r, _, ok := tangent(deg, decimals)
			return r, ok
		})
	},
}
