package calc

import "fmt"

// Env gives the values that variables have now.
type Env interface {
	// Value is nil as long as v is not known.
	Value(v *Var) Value
}

// Readings is an Env by Var.Key.
type Readings map[string]Value

// Value is the reading of v.
func (r Readings) Value(v *Var) Value { return r[v.Key()] }

// Eval is the exact value of e. What a variable does not decide is not asked
// for: `a || b` is true once a is, and the branch not taken may divide by zero.
//
// The unit of a sum, and of anything times or over a plain number, is that of
// the left operand that has one. The unit of another product is that of the
// table that fits it exactly (N·m / mm is kN), else the first of the left
// operand's system, or of the right one's where that has none.
//
// Values are exact; decimals only say how many to show. A sum shows the more
// decimals of the two. Anything times or over a plain number shows its own, and
// at least two digits where it shrinks more than tenfold. Another product shows
// as many significant digits as the less precise of the two has, at least three.
//
// The problem is a division by zero, a variable with no value (Problem.Unknown)
// or of another type, a number too large to be worked out, or a function's own.
func Eval(e Expr, env Env) (Value, *Problem) {
	switch e := e.(type) {
	case *Const:
		return e.Value, nil
	case *Var:
		return evalVar(e, env)
	case *Unary:
		x, p := Eval(e.X, env)
		if p != nil {
			return nil, p
		}
		if e.Op == Not {
			return !x.(Truth), nil
		}
		q := x.(Quantity)
		return q.negated(), nil
	case *Binary:
		return evalBinary(e, env)
	case *Cond:
		c, p := Eval(e.If, env)
		if p != nil {
			return nil, p
		}
		if c.(Truth) {
			return Eval(e.Then, env)
		}
		return Eval(e.Else, env)
	case *Call:
		return evalCall(e, env)
	case *Between:
		return evalBetween(e, env)
	case *List:
		var list Numbers
		for _, x := range e.Items {
			v, p := Eval(x, env)
			if p != nil {
				return nil, p
			}
			list = append(list, v.(Quantity))
		}
		return list, nil
	}
	panic("calc: unknown node")
}

func evalVar(v *Var, env Env) (Value, *Problem) {
	val := env.Value(v)
	if val == nil {
		return nil, &Problem{Rule: RuleUnknown, Span: v.At, Unknown: v,
			Message: v.title() + " is not known yet.",
			Reason:  "What rests on it cannot be worked out.",
			Remedy:  "Take the reading first."}
	}
	if t := val.Type(); !v.Of.Fits(t) {
		return nil, &Problem{Rule: RuleWrongType, Span: v.At,
			Message: fmt.Sprintf("%s is %s, and must be %s.", v.title(), t, v.Of),
			Reason:  "It cannot be used as it stands.",
			Remedy:  "Give " + v.Of.String() + "."}
	}
	return val, nil
}

func evalBinary(e *Binary, env Env) (Value, *Problem) {
	x, p := Eval(e.X, env)
	if p != nil {
		return nil, p
	}
	if a, ok := x.(Truth); ok && (e.Op == And && !bool(a) || e.Op == Or && bool(a)) {
		return a, nil
	}
	y, p := Eval(e.Y, env)
	if p != nil {
		return nil, p
	}
	switch x := x.(type) {
	case Truth:
		return Truth(truths(e.Op, bool(x), bool(y.(Truth)))), nil
	case Word:
		return Truth((x == y.(Word)) == (e.Op == Equal)), nil
	}
	q, r := x.(Quantity), y.(Quantity)
	switch e.Op {
	case Add, Sub:
		if q, p = sum(e.Op, q, r); p != nil {
			p.Span = e.At
			return nil, p
		}
	case Mul, Div:
		if e.Op == Div && r.Base().Sign() == 0 {
			return nil, divisionByZero(e)
		}
		q = multiply(q, r, e.Op, e.Of.Dim)
	default:
		return Truth(ordered(e.Op, q.Cmp(r))), nil
	}
	if tooBig(q.num) {
		return nil, outOfReach(e.At)
	}
	return q, nil
}

// sum fails only where a variable holds more than its type says: a torque and
// an energy that are both typed as a force times a length.
func sum(op Op, x, y Quantity) (Quantity, *Problem) {
	add := Quantity.Add
	if op == Sub {
		add = Quantity.Sub
	}
	q, err := add(x, y)
	if err != nil {
		p := *err.(*Problem)
		return q, &p
	}
	return q, nil
}

func truths(op Op, a, b bool) bool {
	switch op {
	case And, Or:
		return b // a did not decide
	case Equal:
		return a == b
	}
	return a != b
}

func ordered(op Op, cmp int) bool {
	switch op {
	case Less:
		return cmp < 0
	case LessEqual:
		return cmp <= 0
	case Greater:
		return cmp > 0
	case GreaterEqual:
		return cmp >= 0
	case Equal:
		return cmp == 0
	}
	return cmp != 0
}

func evalCall(e *Call, env Env) (Value, *Problem) {
	if e.Body != nil {
		v, p := Eval(e.Body, env)
		if p != nil && p.Unknown == nil && p.Span == (Span{}) {
			q := *p
			q.Span = e.At
			p = &q
		}
		return v, p
	}
	var args []Value
	for _, a := range e.Args {
		v, p := Eval(a, env)
		if p != nil {
			return nil, p
		}
		if list, ok := v.(Numbers); ok {
			for _, q := range list {
				args = append(args, q)
			}
			continue
		}
		args = append(args, v)
	}
	if len(args) == 0 {
		return nil, e.Function.arguments("The list is empty.", e.At)
	}
	v, p := e.Function.Exact(args)
	if p != nil {
		p.Span = e.At
		return nil, p
	}
	if q, ok := v.(Quantity); ok && tooBig(q.num) {
		return nil, outOfReach(e.At)
	}
	return v, nil
}

func evalBetween(e *Between, env Env) (Value, *Problem) {
	var l Limits
	for _, part := range []struct {
		from Expr
		to   **Quantity
	}{{e.Low, &l.Low}, {e.High, &l.High}, {e.Target, &l.Target}} {
		if part.from == nil {
			continue
		}
		v, p := Eval(part.from, env)
		if p != nil {
			return nil, p
		}
		q := v.(Quantity)
		*part.to = &q
	}
	return l, nil
}

func divisionByZero(e *Binary) *Problem {
	return &Problem{Rule: RuleDivisionByZero, Span: e.At,
		Message: "The divisor " + Formula(e.Y) + " is zero.",
		Reason:  "Nothing can be divided by zero, so there is no result.",
		Remedy:  "Ask first whether it is zero: `x == 0 ? … : …`."}
}

func outOfReach(at Span) *Problem {
	return &Problem{Rule: RuleOutOfReach, Span: at,
		Message: "The result has too many digits to be worked out exactly.",
		Reason:  "No quantity of the trade needs so many.",
		Remedy:  "Round in between, or use fewer multiplications."}
}
