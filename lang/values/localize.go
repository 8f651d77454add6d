package values

import (
	"fettle/calc"
	"fettle/lang/model"
)

// localize gives e with every place that means "here" named. Parts without one
// are shared with e.
func localize(e calc.Expr, place string) calc.Expr {
	switch e := e.(type) {
	case *calc.Var:
		if e.Place == model.Here {
			v := *e
			v.Place = place
			return &v
		}
	case *calc.Unary:
		if x := localize(e.X, place); x != e.X {
			return must(calc.NewUnary(e.Op, x, e.At))
		}
	case *calc.Binary:
		x, y := localize(e.X, place), localize(e.Y, place)
		if x != e.X || y != e.Y {
			return must(calc.NewBinary(e.Op, x, y, e.At))
		}
	case *calc.Cond:
		c, x, y := localize(e.If, place), localize(e.Then, place), localize(e.Else, place)
		if c != e.If || x != e.Then || y != e.Else {
			return must(calc.NewCond(c, x, y, e.At))
		}
	case *calc.Call:
		if args, moved := localizeAll(e.Args, place); moved {
			return must(calc.NewCall(e.Function, args, e.At))
		}
	case *calc.List:
		if items, moved := localizeAll(e.Items, place); moved {
			return must(calc.NewList(items, e.At))
		}
	}
	return e
}

func localizeAll(list []calc.Expr, place string) (out []calc.Expr, moved bool) {
	out = make([]calc.Expr, len(list))
	for i, e := range list {
		out[i] = localize(e, place)
		moved = moved || out[i] != e
	}
	return out, moved
}

// must: a tree that was sound stays sound when its places are named.
func must(e calc.Expr, p *calc.Problem) calc.Expr {
	if p != nil {
		panic("internal error: " + p.Message)
	}
	return e
}
