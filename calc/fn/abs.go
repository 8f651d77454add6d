package fn

import "fettle/calc"

var absolute = &calc.Function{
	Name:     "abs",
	Args:     []calc.Arg{{Name: "value", Of: anyNumber, Any: true, Doc: "a number, not a temperature"}},
	Phrase:   "size of",
	Doc:      "The value without its sign, in its own unit.",
	Source:   "by its meaning",
	Examples: []calc.Example{{Call: `abs("-0.003 in")`, Gives: "0.003 in", Source: "TM 5-3895-369-14 p. 5-409: a change of -0.003 in is subtracted as 0.003 in; read in the document"}},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		return nil, noTemperature(args, "A temperature has no size of its own.")
	},
	Result: firstDim,
	// On the page: the value, negated if it is below zero.
	Exact: func(args []calc.Value) (calc.Value, *calc.Problem) {
		q := args[0].(calc.Quantity)
		if q.Sign() >= 0 {
			return q, nil
		}
		return checked(q.Neg())
	},
	Range: func(args []calc.Interval) calc.Interval { return args[0].Abs() },
}
