package fn

import "fettle/calc"

var wrenchSetting = &calc.Function{
	Name: "wrench_setting",
	Args: append([]calc.Arg{
		{Name: "torque", Of: aTorque, Doc: "the torque that the fastening is to get"},
	}, leverArgs...),
	Doc:    "What to set on a torque wrench that works through an adapter: T × L ÷ (L + A × cos of the angle), in the torque's unit.",
	Source: "TM 1-1500-204-23-9 para 8-5 and 8-17; NAVEDTRA 14008",
	Examples: []calc.Example{
		{Call: `wrench_setting("300 lb·in", "10 in", "4 in")`, Gives: "214 lb·in", Source: "TM 1-1500-204-23-9 para 8-5, Fig 8-16; read in the document"},
		{Call: `wrench_setting("40 lb·ft", "12 in", "4 in")`, Gives: "30 lb·ft", Source: "TM 9-2350-261-20-1 p. 2-29; read in the document"},
		{Call: `wrench_setting("300 lb·in", "10 in", "4 in", "90°")`, Gives: "300 lb·in", Source: "NAVEDTRA 14008: at a right angle no change; read in the document"},
		{Call: `wrench_setting("30 lb·ft", "12 in", "4 in", "180°")`, Gives: "45 lb·ft", Source: "NAVEDTRA 14008: reversed, the adapter's length is subtracted; computed from the rule"},
	},
	// T ÷ (1 + A cos ÷ L) is the same and uses each value once.
	Body: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.div(args[0], b.leverage(args[1:])))
	},
	Shows: func(args []calc.Expr) (calc.Expr, *calc.Problem) {
		var b body
		return b.done(b.div(b.mul(args[0], args[1]), b.reach(args[1:])))
	},
}

// leverArgs are the lengths that make a lever of a wrench and its adapter.
var leverArgs = []calc.Arg{
	{Name: "wrench_length", Of: aLength, Doc: "from the middle of the grip to the drive"},
	{Name: "adapter_length", Of: aLength, Doc: "from the drive to the fastening"},
	{Name: "angle", Of: anAngle, Optional: true, Doc: "between adapter and wrench: 0° straight on (the default), 90° across, 180° back along the wrench"},
}

// cosDecimals is how exactly the cosine of an adapter's angle is taken.
const cosDecimals = 30

// leverage is the arm of the fastening over that of the wrench, 1 + A cos ÷ L.
func (b *body) leverage(lever []calc.Expr) calc.Expr {
	return b.add(whole(1), b.div(b.arm(lever), lever[0]))
}

// reach is the whole arm, L + A cos.
func (b *body) reach(lever []calc.Expr) calc.Expr { return b.add(lever[0], b.arm(lever)) }

// arm is the adapter's length along the wrench, A cos.
func (b *body) arm(lever []calc.Expr) calc.Expr {
	if len(lever) < 3 {
		return lever[1]
	}
	return b.mul(lever[1], b.call(cosine, lever[2], whole(cosDecimals)))
}
