package fn

import "fettle/calc"

var largest = &calc.Function{
	Name:     "max",
	Args:     numbers(),
	Phrase:   "largest of",
	Doc:      "The largest of the values, in its own unit. Of equal ones the first.",
	Source:   "by its meaning",
	Examples: []calc.Example{{Call: `max("1.500 in", "1.502 in")`, Gives: "1.502 in", Source: "NAVEDTRA 14276 p. 3-44, the largest hole of the basic hole example; read in the document"}},
	Result:   firstDim,
	// On the page: the first value that none exceeds, by exact base value.
	Exact: func(args []calc.Value) (calc.Value, *calc.Problem) {
		return pick(quantities(args), 1), nil
	},
	Range: func(args []calc.Interval) calc.Interval {
		// The largest is no less than the greatest of the low ends; -max(-x) is min.
		return leastOf(negatives(args)).Neg()
	},
}

// pick is the first of the largest (sign 1) or the smallest (sign -1).
func pick(list []calc.Quantity, sign int) calc.Quantity {
	best := list[0]
	for _, q := range list[1:] {
		if q.Cmp(best)*sign > 0 {
			best = q
		}
	}
	return best
}
