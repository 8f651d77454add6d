package fn

import (
	"math/big"

	"fettle/calc"
)

var spread = &calc.Function{
	Name:     "spread",
	Args:     numbers(),
	Phrase:   "spread of",
	Doc:      "The largest of the values less the smallest, in the unit of the largest: how far readings disagree, or the run-out of a turned part. Of temperatures it is a difference.",
	Source:   "by its meaning",
	Examples: []calc.Example{{Call: `spread("0.029 in", "0.027 in")`, Gives: "0.002 in", Source: "the readings of TM 10-3930-660-34 para 16-21; difference computed from read inputs"}},
	Result: func(args []calc.Type) calc.Type {
		if d := args[0].Dim; !d.IsPoint() {
			return calc.NumberOf(d)
		}
		return calc.NumberOf(calc.TemperatureDiff)
	},
	// On the page: ["-", max, min], of temperatures ["-p", max, min].
	Exact: func(args []calc.Value) (calc.Value, *calc.Problem) {
		list := quantities(args)
		return checked(pick(list, 1).Sub(pick(list, -1)))
	},
	Range: func(args []calc.Interval) calc.Interval {
		if len(args) == 1 {
			return calc.PointInterval(new(big.Rat))
		}
		d := leastOf(negatives(args)).Neg().Add(leastOf(args).Neg())
		return d.Meet(calc.Interval{Lo: new(big.Rat)})
	},
}
