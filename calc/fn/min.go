package fn

import "fettle/calc"

var smallest = &calc.Function{
	Name:     "min",
	Args:     numbers(),
	Phrase:   "smallest of",
	Doc:      "The smallest of the values, in its own unit. Of equal ones the first.",
	Source:   "by its meaning",
	Examples: []calc.Example{{Call: `min("1.495 in", "1.497 in")`, Gives: "1.495 in", Source: "NAVEDTRA 14276 p. 3-44, the smallest shaft of the basic hole example; read in the document"}},
	Result:   firstDim,
	// On the page: the first value that exceeds none, by exact base value.
	Exact: func(args []calc.Value) (calc.Value, *calc.Problem) {
		return pick(quantities(args), -1), nil
	},
	Range: leastOf,
}

// leastOf holds the smallest of one number from each interval.
func leastOf(args []calc.Interval) calc.Interval {
	m := args[0]
	for _, i := range args[1:] {
		if m.Lo == nil || i.Lo == nil {
			m.Lo = nil
		} else if i.Lo.Cmp(m.Lo) < 0 {
			m.Lo = i.Lo
		}
		if m.Hi == nil || i.Hi != nil && i.Hi.Cmp(m.Hi) < 0 {
			m.Hi = i.Hi
		}
	}
	return m
}

func negatives(args []calc.Interval) []calc.Interval {
	list := make([]calc.Interval, len(args))
	for i, a := range args {
		list[i] = a.Neg()
	}
	return list
}
