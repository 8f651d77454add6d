package fn

import "fettle/calc"

var shrinkFitTemperature = &calc.Function{
	Name: "shrink_fit_temperature",
	Args: []calc.Arg{
		{Name: "growth", Of: aLength, Doc: "interference and clearance together: how much the diameter must change; below zero to shrink the inner part"},
		expansionArg,
		{Name: "diameter", Of: aLength, Doc: "diameter of the fit"},
		{Name: "from", Of: calc.NumberOf(calc.Temperature), Optional: true, Doc: "temperature of the part before; with it the result is a temperature"},
	},
	Doc: "How much hotter a part must be for a shrink fit, ΔT = growth ÷ (α × d), or, with the temperature it starts from, how hot. " +
		"The part cools on its way: go above it as the maker allows, and mind what heat does to hardened parts, seals and hands.",
	Source: "ΔT = δ ÷ (α d), an engineering reference table; read in a reproduction",
	Examples: []calc.Example{
		{Call: `shrink_fit_temperature("0.109 mm", "11.5 ppm/K", "50 mm")`, Gives: "189.6 K", Source: "0.059 mm interference of H7/s6 at 50 mm and 0.05 mm clearance; computed from read inputs"},
		{Call: `shrink_fit_temperature("-0.015 in", "6.47 ppm/°F", "12.363 in")`, Gives: "-187.5 °F", Source: "a published trunnion problem; computed from read inputs"},
	},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		d := b.div(b.div(args[0], args[2]), args[1])
		if len(args) == 4 {
			d = b.add(args[3], d)
		}
		return b.done(d)
	},
	Shows: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		d := b.div(args[0], b.mul(args[1], args[2]))
		if len(args) == 4 {
			d = b.add(args[3], d)
		}
		return b.done(d)
	},
}
