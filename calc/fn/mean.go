package fn

import (
	"math/big"

	"fettle/calc"
)

var mean = &calc.Function{
	Name:   "mean",
	Args:   numbers(),
	Phrase: "mean of",
	Doc:    "The sum of the values over their number, exact, in the unit of the first and shown with its decimals.",
	Source: "by its meaning",
	Examples: []calc.Example{
		{Call: `mean("0.029 in", "0.027 in")`, Gives: "0.028 in", Source: "TM 10-3930-660-34 para 16-21, p. 16-137; read in the document"},
		{Call: `mean(10000001, 10000003, 10000002)`, Gives: "10000002", Source: "NIST Statistical Reference Datasets, NumAcc1, certified mean; from memory"},
	},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		items, ok := flat(args)
		if !ok || args[0].Type().Dim.IsPoint() {
			return nil, nil
		}
		var b body
		return b.done(b.div(b.sum(items), whole(int64(len(items)))))
	},
	Result: firstDim,
	// Temperatures cannot be added, so theirs is the first one and the mean of
	// the differences from it. On the page: the same; with "+" and "/k" where
	// the list is not of temperatures.
	Exact: func(args []calc.Value) (calc.Value, *calc.Problem) {
		list := quantities(args)
		n := big.NewRat(int64(len(list)), 1)
		num, decimals := new(big.Rat), list[0].Decimals
		for _, q := range list {
			q = q.In(list[0].Unit)
			num.Add(num, q.Num())
			if q.Decimals > decimals {
				decimals = q.Decimals
			}
		}
		return calc.NewQuantity(num.Quo(num, n), list[0].Unit, decimals), nil
	},
	Range: func(args []calc.Interval) calc.Interval {
		s := args[0]
		for _, i := range args[1:] {
			s = s.Add(i)
		}
		return s.Mul(calc.PointInterval(big.NewRat(1, int64(len(args)))))
	},
}
