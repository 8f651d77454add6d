package fn

import "fettle/calc"

var torqueForPreload = &calc.Function{
	Name: "torque_for_preload",
	Args: []calc.Arg{
		{Name: "preload", Of: calc.NumberOf(calc.Force), Doc: "the pull that the bolt is to have"},
		nutFactorArg,
		{Name: "diameter", Of: aLength, Doc: "the thread's nominal diameter"},
	},
	Doc:    "The torque that leaves a preload in a bolt, by the short form T = K × F × d. A screen, as preload is.",
	Source: "Shigley, Mechanical Engineering Design, 9th ed., Eq. (8-27)",
	Examples: []calc.Example{
		{Call: `torque_for_preload("25000 lbf", 0.2, "0.75 in")`, Gives: "3750 lb·in", Source: "Shigley 9th ed. Example 8-3(b); from memory and recomputed"},
		{Call: `torque_for_preload("1275 lbf", 0.30, "0.190 in")`, Gives: "72.7 lb·in", Source: "Mechanical Fastening, Joining, and Assembly, p. 85; read in the document"},
		{Call: `torque_for_preload("1275 lbf", 0.10, "0.190 in")`, Gives: "24.2 lb·in", Source: "the same"},
	},
	Body:  turningForce,
	Shows: turningForce,
}

func turningForce(args []calc.Expr) (calc.Expr, *calc.Problem) {
	var b body
	return b.done(b.mul(b.mul(args[1], args[0]), args[2]))
}
