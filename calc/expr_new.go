package calc

import (
	"fmt"
	"strings"
)

// maxExponent bounds the exponents of a dimension, far above any in use.
const maxExponent = 16

// NewConst is a value under a label; "" prints the value itself.
func NewConst(v Value, label string, at Span) *Const { return &Const{v, label, at} }

// NewUnary negates a number (Neg) or a truth (Not).
func NewUnary(op Op, x Expr, at Span) (Expr, *Problem) {
	t := x.Type()
	switch {
	case op == Not && t.Shape != TruthShape:
		return nil, notTruth(t, x.Span())
	case op == Neg && t.Shape != NumberShape:
		return nil, notNumber("negated", t, x.Span())
	case op == Neg && t.Dim.IsPoint():
		return nil, pointProblem("A temperature cannot be negated.", at)
	}
	return &Unary{op, x, at}, nil
}

// NewBinary joins two operands.
//
//   - −        equal dimensions; a temperature takes a difference on either side
//     of +, and two temperatures subtract to a difference
//     × ÷        any numbers but temperatures
//     < ≤ > ≥    equal dimensions
//     = ≠        equal dimensions, two words or two truths
//     and or     two truths
func NewBinary(op Op, x, y Expr, at Span) (Expr, *Problem) {
	b := &Binary{Op: op, X: x, Y: y, At: at}
	var p *Problem
	switch op {
	case Add, Sub:
		b.Of, p = sumType(b)
	case Mul, Div:
		b.Of, p = productType(b)
	case And, Or:
		b.Of = TruthType
		for _, e := range []Expr{x, y} {
			if p == nil && e.Type().Shape != TruthShape {
				p = notTruth(e.Type(), e.Span())
			}
		}
	default:
		b.Of = TruthType
		p = checkComparison(b)
	}
	if p != nil {
		return nil, p
	}
	return b, nil
}

// NewCond is then where cond holds, otherwise els; both of one type.
func NewCond(cond, then, els Expr, at Span) (Expr, *Problem) {
	if cond.Type().Shape != TruthShape {
		return nil, notTruth(cond.Type(), cond.Span())
	}
	t, u := then.Type(), els.Type()
	if t.Shape != u.Shape {
		return nil, &Problem{Rule: RuleWrongType, Span: els.Span(),
			Message: fmt.Sprintf("One branch gives %s and the other %s.", t, u),
			Reason:  "What uses the result must know what it gets.",
			Remedy:  "Make both branches give the same."}
	}
	if !t.Dim.Fits(u.Dim) {
		return nil, misfit("One branch gives %s and the other %s.", t.Dim, u.Dim, els)
	}
	return &Cond{cond, then, els, at}, nil
}

// NewList is several numbers of one dimension, at least one.
func NewList(items []Expr, at Span) (Expr, *Problem) {
	if len(items) == 0 {
		return nil, &Problem{Rule: RuleArguments, Span: at, Message: "The list is empty.",
			Reason: "There is nothing to work with.", Remedy: "Give at least one value."}
	}
	first := items[0].Type()
	for _, e := range items {
		t := e.Type()
		if t.Shape != NumberShape {
			return nil, notNumber("listed", t, e.Span())
		}
		if !first.Dim.Fits(t.Dim) {
			return nil, misfit("A list cannot hold %s and %s.", first.Dim, t.Dim, e)
		}
	}
	return &List{items, ListOf(first.Dim), at}, nil
}

// NewCall is f at work on args.
func NewCall(f *Function, args []Expr, at Span) (Expr, *Problem) {
	if p := f.check(args, at); p != nil {
		return nil, p
	}
	c := &Call{Function: f, Args: args, At: at}
	if f.Body != nil {
		body, p := f.Body(args)
		if p != nil {
			p.Span = at
			return nil, p
		}
		c.Body = body
	}
	if c.Body != nil {
		c.Of = c.Body.Type()
		return c, nil
	}
	types := make([]Type, len(args))
	for i, a := range args {
		types[i] = a.Type()
	}
	c.Of = f.Result(types)
	return c, nil
}

func sumType(b *Binary) (Type, *Problem) {
	verb := "added"
	if b.Op == Sub {
		verb = "subtracted"
	}
	for _, e := range []Expr{b.X, b.Y} {
		if t := e.Type(); t.Shape != NumberShape {
			return Type{}, notNumber(verb, t, e.Span())
		}
	}
	d, e := b.X.Type().Dim, b.Y.Type().Dim
	point, other := d.IsPoint(), e.IsPoint()
	switch {
	case point && other && b.Op == Sub:
		return NumberOf(TemperatureDiff), nil
	case point && other:
		return Type{}, pointProblem("Two temperatures cannot be added.", b.At)
	case point && TemperatureDiff.Fits(e):
		return NumberOf(d), nil
	case other && TemperatureDiff.Fits(d) && b.Op == Add:
		return NumberOf(e), nil
	case !d.Fits(e):
		format := "%s and %s cannot be added."
		if b.Op == Sub {
			format = "%[2]s cannot be subtracted from %[1]s."
		}
		return Type{}, misfit(format, d, e, plainer(b.X, b.Y))
	}
	return NumberOf(kinder(d, e)), nil
}

func productType(b *Binary) (Type, *Problem) {
	verb := "multiplied"
	if b.Op == Div {
		verb = "divided"
	}
	for _, e := range []Expr{b.X, b.Y} {
		t := e.Type()
		if t.Shape != NumberShape {
			return Type{}, notNumber(verb, t, e.Span())
		}
		if t.Dim.IsPoint() {
			return Type{}, pointProblem("A temperature cannot be "+verb+".", e.Span())
		}
	}
	d := b.X.Type().Dim.Mul(b.Y.Type().Dim)
	if b.Op == Div {
		d = b.X.Type().Dim.Div(b.Y.Type().Dim)
	}
	for _, n := range d.exp {
		if n > maxExponent || n < -maxExponent {
			return Type{}, &Problem{Rule: RuleWrongDimension, Span: b.At,
				Message: fmt.Sprintf("The result would be %s.", d),
				Reason:  "No quantity of the trade has such a dimension.",
				Remedy:  "Look for a factor that is multiplied once too often."}
		}
	}
	return NumberOf(d), nil
}

func checkComparison(b *Binary) *Problem {
	t, u := b.X.Type(), b.Y.Type()
	if t.Shape != u.Shape || t.Shape != NumberShape && b.Op != Equal && b.Op != NotEqual {
		for _, e := range []Expr{b.X, b.Y} {
			s := e.Type().Shape
			if s == NumberShape || s == WordShape && t.Shape == u.Shape {
				continue
			}
			if s == TruthShape {
				return &Problem{Rule: RuleNotNumber, Span: e.Span(),
					Message: "A comparison cannot be compared again.",
					Reason:  "`a < b < c` asks whether a yes or no is less than c.",
					Remedy:  "Write two comparisons joined by &&."}
			}
			return notNumber("compared", e.Type(), e.Span())
		}
		return notNumber("ordered", t, b.X.Span())
	}
	switch t.Shape {
	case LimitsShape, ListShape:
		return notNumber("compared", t, b.X.Span())
	case NumberShape:
		if !t.Dim.Fits(u.Dim) {
			return misfit("%s and %s cannot be compared.", t.Dim, u.Dim, plainer(b.X, b.Y))
		}
	}
	return nil
}

// kinder is the dimension, of two that fit, that says more.
func kinder(d, e Dim) Dim {
	if d.Kind == NoKind {
		return e
	}
	return d
}

// plainer is the operand to blame: the plain number, else the right one.
func plainer(x, y Expr) Expr {
	if x.Type().Dim == Plain {
		return x
	}
	return y
}

// misfit explains two dimensions that do not go together. Format takes both.
func misfit(format string, d, e Dim, at Expr) *Problem {
	p := &Problem{Rule: RuleWrongDimension, Span: at.Span(), Message: sentence(fmt.Sprintf(format, d, e)),
		Reason: "The two measure different things, so the result means nothing.",
		Remedy: "Check which values belong here."}
	noKind := func(d Dim) Dim { return d.kind(NoKind) }
	switch {
	case d == Plain || e == Plain:
		p.Rule = RuleBareNumber
		p.Reason = "A number without its unit can be read in any unit."
		other := d
		if d == Plain {
			other = e
		}
		p.Remedy = "Write the unit with the number: " + withExample(other, at) + "."
	case noKind(d) != noKind(e):
	case d.IsPoint() || e.IsPoint():
		t := pointProblem(p.Message, p.Span)
		return t
	case d.Kind == TorqueKind || e.Kind == TorqueKind:
		p.Rule = RuleEnergyTorque
		p.Reason = "Both are a force times a length, yet a torque turns and an energy is spent."
		p.Remedy = "Write N·m for a torque and J for an energy."
	}
	return p
}

// withExample is the number at hand, or another, with a unit of dimension d.
func withExample(d Dim, at Expr) string {
	text := example(d)
	if c, ok := at.(*Const); ok {
		l, _ := ParseLiteral(text, Context{Want: d, HasWant: true})
		if q, ok := c.Value.(Quantity); ok && l.Valid() {
			text = NewQuantity(q.num, l.Any().Unit, q.Decimals).String()
		}
	}
	return `"` + text + `"`
}

func pointProblem(message string, at Span) *Problem {
	return &Problem{Rule: RuleTemperature, Span: at, Message: message,
		Reason: "20 °C is a mark on a scale, and 20 K a distance on it: 20 °C twice is not 40 °C of heating.",
		Remedy: "Subtract two temperatures to get a difference, or write the difference in K."}
}

func notTruth(t Type, at Span) *Problem {
	return &Problem{Rule: RuleWrongType, Span: at,
		Message: fmt.Sprintf("A condition is needed here, and this is %s.", t),
		Reason:  "Only a yes or no can decide.",
		Remedy:  "Compare the value with something, using <, <=, >, >=, == or !=."}
}

func notNumber(verb string, t Type, at Span) *Problem {
	p := &Problem{Rule: RuleNotNumber, Span: at,
		Message: sentence(fmt.Sprintf("%s cannot be %s.", t, verb)),
		Reason:  "Only numbers can be reckoned with.",
		Remedy:  "Give a quantity, or a value that is measured or worked out."}
	switch t.Shape {
	case LimitsShape:
		p.Remedy = "Say which part of the limits is meant: .low, .high, .target or .width."
	case ListShape:
		p.Message = sentence(fmt.Sprintf("these are the values at several places, and cannot be %s as one.", verb))
		p.Remedy = "Say which place is meant in brackets, or take the mean, min or max of all."
	case WordShape:
		p.Remedy = "A word can only be compared, with == or !=."
	}
	return p
}

// sentence starts with a capital letter.
func sentence(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
