package fn

import (
	"math/big"

	"fettle/calc"
)

var round = &calc.Function{
	Name: "round",
	Args: stepArgs,
	Doc:  "The multiple of the step that is nearest to the value, in the value's unit. Halfway between two it is the even multiple.",
	Examples: []calc.Example{
		{Call: `round(6.9749515, 0.01)`, Gives: "6.97", Source: "NIST SP 811 (2008) B.7.1; read in a reproduction"},
		{Call: `round("190.5 mm", "1 mm")`, Gives: "190 mm", Source: "NIST PS 20-20 Table 3, 7.5 in; read in a reproduction"},
		{Call: `round("63.5 mm", "1 mm")`, Gives: "64 mm", Source: "NIST PS 20-20 Table 3, 2.5 in; read in a reproduction"},
	},
	Source: "NIST SP 811 (2008) B.7.1, rule 3 for the tie",
	Result: firstDim,
	// On the page: both counted in the value's unit (for a temperature the step
	// in the difference of it), the quotient rounded half to even, times the
	// step. It is shown with the decimals of the step, all that it has where it
	// is in the value's unit.
	Exact: toStep(calc.RoundTo),
	Range: func(args []calc.Interval) calc.Interval {
		return widen(args, big.NewRat(-1, 2), big.NewRat(1, 2))
	},
}

var stepArgs = []calc.Arg{
	{Name: "value", Of: anyNumber, Any: true, Doc: "the number to round"},
	{Name: "step", Of: anyNumber, Same: true, Doc: "what to round to a multiple of, above zero; for a temperature a difference"},
}

func toStep(round func(q, step calc.Quantity) (calc.Quantity, error)) func([]calc.Value) (calc.Value, *calc.Problem) {
	return func(args []calc.Value) (calc.Value, *calc.Problem) {
		step := args[1].(calc.Quantity)
		if step.Sign() <= 0 {
			return nil, refused("The step to round to is not above zero.", "There is nothing to round to.", "Give a step such as 0.05 mm.")
		}
		return checked(round(args[0].(calc.Quantity), step))
	}
}

// widen moves the ends of the value out by shares of the largest step.
func widen(args []calc.Interval, low, high *big.Rat) calc.Interval {
	step := args[1].Abs()
	reach := func(share *big.Rat) calc.Interval {
		return step.Mul(calc.PointInterval(share)).Hull(calc.PointInterval(new(big.Rat)))
	}
	return args[0].Add(reach(low).Hull(reach(high)))
}
