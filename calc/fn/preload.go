package fn

import "fettle/calc"

var preload = &calc.Function{
	Name: "preload",
	Args: []calc.Arg{
		{Name: "torque", Of: aTorque, Doc: "the torque that reaches the bolt, without a locknut's drag"},
		nutFactorArg,
		{Name: "diameter", Of: aLength, Doc: "the thread's nominal diameter"},
	},
	Doc:    "The pull that a torque leaves in a bolt, by the short form F = T ÷ (K × d). A screen: the nut factor of a real joint varies by a quarter either way.",
	Source: "Shigley, Mechanical Engineering Design, 9th ed., Eq. (8-27)",
	Examples: []calc.Example{
		{Call: `preload("3750 lb·in", 0.2, "0.75 in")`, Gives: "25000 lbf", Source: "Shigley 9th ed. Example 8-3(b) turned round; from memory and recomputed"},
		{Call: `preload("72.7 lb·in", 0.30, "0.190 in")`, Gives: "1275 lbf", Source: "Mechanical Fastening, Joining, and Assembly, p. 85, turned round; read in the document"},
	},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.div(args[0], b.mul(args[1], args[2])))
	},
	Shows: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.div(args[0], b.mul(args[1], args[2])))
	},
}

var nutFactorArg = calc.Arg{Name: "nut_factor", Of: plain,
	Doc: "K, a plain number: the thread's and head's friction in one; 0.20 for plain dry steel"}
