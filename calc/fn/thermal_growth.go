package fn

import "fettle/calc"

var thermalGrowth = &calc.Function{
	Name: "thermal_growth",
	Args: []calc.Arg{
		{Name: "length", Of: aLength, Doc: "the length or diameter before"},
		expansionArg,
		{Name: "difference", Of: calc.NumberOf(calc.TemperatureDiff), Doc: "temperature after less temperature before; below zero for cooling"},
	},
	Doc:      "How much longer a part gets, l × α × ΔT, in the unit of the length; below zero when it shrinks.",
	Source:   "NIST Engineering Metrology Toolbox, slide 12, for coefficients and their scatter",
	Examples: []calc.Example{{Call: `thermal_growth("12.363 in", "6.47 ppm/°F", "-188 °F")`, Gives: "-0.01504 in", Source: "a published trunnion problem, 80 °F to -108 °F; inputs read, value computed from them"}},
	// α ΔT is a plain number, so the result keeps the unit of the length.
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.mul(args[0], b.mul(args[1], args[2])))
	},
	Shows: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.mul(b.mul(args[0], args[1]), args[2]))
	},
}

var expansionArg = calc.Arg{Name: "coefficient", Of: calc.NumberOf(calc.Expansion),
	Doc: "linear expansion of the material, in ppm/K or ppm/°F; handbooks differ by a tenth and more"}
