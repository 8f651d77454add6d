package fn

import "fettle/calc"

var within = &calc.Function{
	Name: "within",
	Args: []calc.Arg{
		{Name: "centre", Of: anyNumber, Any: true, Doc: "the value to aim for"},
		{Name: "tolerance", Of: anyNumber, Same: true, Doc: "how far off is allowed on either side; for a temperature a difference"},
	},
	Infix:    "±",
	Doc:      "Limits from the centre less the tolerance to the centre plus the tolerance, with the centre as target. For use as accept.",
	Source:   "by its meaning",
	Examples: []calc.Example{{Call: `within("1.496 in", "0.001 in")`, Gives: "1.495..1.497 in", Source: "NAVEDTRA 14276 p. 3-44, the shaft of the basic hole example; read in the document"}},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		if c, ok := args[1].(*calc.Const); ok && c.Value.(calc.Quantity).Sign() < 0 {
			return nil, refused("The tolerance is below zero.", "No value lies within it.", "Write how far off is allowed, without a sign.")
		}
		var b body
		low, high := b.sub(args[0], args[1]), b.add(args[0], args[1])
		return b.done(&calc.Between{Low: low, High: high, Target: args[0]})
	},
}
