package fn

import "fettle/calc"

var appliedTorque = &calc.Function{
	Name: "applied_torque",
	Args: append([]calc.Arg{
		{Name: "setting", Of: aTorque, Doc: "what is set on the wrench"},
	}, leverArgs...),
	Doc:    "What a fastening gets from a torque wrench that works through an adapter: S × (L + A × cos of the angle) ÷ L, in the setting's unit. It is wrench_setting turned round.",
	Source: "TM 9-254 Fig 4-5",
	Examples: []calc.Example{
		{Call: `applied_torque("60 lb·in", "12 in", "2 in")`, Gives: "70 lb·in", Source: "TM 9-254 Fig 4-5; read in the document"},
	},
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.mul(args[0], b.leverage(args[1:])))
	},
	Shows: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.div(b.mul(args[0], b.reach(args[1:])), args[1]))
	},
}
