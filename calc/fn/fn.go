package fn

import (
	"math/big"
	"slices"
	"strings"

	"fettle/calc"
)

// All lists the functions by name.
func All() []*calc.Function { return slices.Clone(all) }

// Lookup finds a function by name.
func Lookup(name string) (*calc.Function, bool) {
	i, ok := slices.BinarySearchFunc(all, name, func(f *calc.Function, name string) int {
		return strings.Compare(f.Name, name)
	})
	if !ok {
		return nil, false
	}
	return all[i], true
}

var all = []*calc.Function{
	absolute,
	appliedTorque,
	cosine,
	largest,
	mean,
	smallest,
	preload,
	round,
	roundDown,
	roundUp,
	shrinkFitTemperature,
	sineOf,
	spread,
	sum,
	tangentOf,
	thermalGrowth,
	torqueForPreload,
	within,
	wrenchSetting,
}

// body builds arithmetic and keeps the first problem.
type body struct{ problem *calc.Problem }

func (b *body) op(op calc.Op, x, y calc.Expr) calc.Expr {
	if b.problem != nil {
		return x
	}
	e, p := calc.NewBinary(op, x, y, calc.Span{})
	if p != nil {
		b.problem = p
		return x
	}
	return e
}

func (b *body) add(x, y calc.Expr) calc.Expr { return b.op(calc.Add, x, y) }
func (b *body) sub(x, y calc.Expr) calc.Expr { return b.op(calc.Sub, x, y) }
func (b *body) mul(x, y calc.Expr) calc.Expr { return b.op(calc.Mul, x, y) }
func (b *body) div(x, y calc.Expr) calc.Expr { return b.op(calc.Div, x, y) }

func (b *body) call(f *calc.Function, args ...calc.Expr) calc.Expr {
	if b.problem != nil {
		return args[0]
	}
	e, p := calc.NewCall(f, args, calc.Span{})
	if p != nil {
		b.problem = p
		return args[0]
	}
	return e
}

// done gives e, or the first problem.
func (b *body) done(e calc.Expr) (calc.Expr, *calc.Problem) {
	if b.problem != nil {
		return nil, b.problem
	}
	return e, nil
}

func whole(n int64) calc.Expr {
	return calc.NewConst(calc.PlainNumber(big.NewRat(n, 1)), "", calc.Span{})
}

// flat lays out the lists among args; ok is false where one is not written out.
func flat(args []calc.Expr) (items []calc.Expr, ok bool) {
	for _, a := range args {
		if a.Type().Shape != calc.ListShape {
			items = append(items, a)
			continue
		}
		l, written := a.(*calc.List)
		if !written {
			return nil, false
		}
		items = append(items, l.Items...)
	}
	return items, true
}

// Types of arguments and results.
var (
	anyNumber = calc.NumberOf(calc.Plain) // with Arg.Any
	plain     = calc.NumberOf(calc.Plain)
	aLength   = calc.NumberOf(calc.Length)
	aTorque   = calc.NumberOf(calc.Torque)
	anAngle   = calc.NumberOf(calc.Angle)
)

// numbers is the argument of a function of one or more numbers.
func numbers() []calc.Arg {
	return []calc.Arg{{Name: "values", Of: anyNumber, Any: true, Variadic: true,
		Doc: "one or more numbers of one dimension, or a reading at every place"}}
}

// firstDim is the result type of a function that gives one of its numbers.
func firstDim(args []calc.Type) calc.Type { return calc.NumberOf(args[0].Dim) }

func quantities(args []calc.Value) []calc.Quantity {
	list := make([]calc.Quantity, len(args))
	for i, v := range args {
		list[i] = v.(calc.Quantity)
	}
	return list
}

// refused is a problem of a call; Eval and NewCall say where it stands.
func refused(message, reason, remedy string) *calc.Problem {
	return &calc.Problem{Rule: calc.RuleArguments, Message: message, Reason: reason, Remedy: remedy}
}

// noTemperature refuses a function of temperatures, which have no size of their own.
func noTemperature(args []calc.Expr, message string) *calc.Problem {
	if !args[0].Type().Dim.IsPoint() {
		return nil
	}
	return &calc.Problem{Rule: calc.RuleTemperature, Message: message,
		Reason: "A temperature has a zero of its own: 20 °C and 20 °C do not make 40 °C.",
		Remedy: "Subtract two temperatures first, and use the difference."}
}

// checked passes on what arithmetic of quantities gives.
func checked(q calc.Quantity, err error) (calc.Value, *calc.Problem) {
	if err != nil {
		p := *err.(*calc.Problem)
		return nil, &p
	}
	return q, nil
}
