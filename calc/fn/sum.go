package fn

import "fettle/calc"

var sum = &calc.Function{
	Name:     "sum",
	Args:     numbers(),
	Phrase:   "sum of",
	Doc:      "The values added up, in the unit of the first. Temperatures cannot be added.",
	Source:   "by its meaning",
	Examples: []calc.Example{{Call: `sum("0.020 in", "0.008 in")`, Gives: "0.028 in", Source: "TM 10-3930-660-34 para 16-21: shim and preload together are the average reading; read in the document"}},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		if p := noTemperature(args, "Temperatures cannot be added."); p != nil {
			return nil, p
		}
		items, ok := flat(args)
		if !ok {
			return nil, nil
		}
		var b body
		return b.done(b.sum(items))
	},
	Result: firstDim,
	// On the page, for a list that is not written out: a chain of "+".
	Exact: func(args []calc.Value) (calc.Value, *calc.Problem) {
		list := quantities(args)
		t := list[0]
		for _, q := range list[1:] {
			var err error
			if t, err = t.Add(q); err != nil {
				return checked(t, err)
			}
		}
		return t, nil
	},
}

func (b *body) sum(items []calc.Expr) calc.Expr {
	e := items[0]
	for _, x := range items[1:] {
		e = b.add(e, x)
	}
	return e
}
