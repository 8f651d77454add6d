package calc

import (
	"math/big"
	"slices"
	"strings"
)

// Domain tells what each variable may turn out to be.
type Domain interface {
	Possible(v *Var) Possible
}

// Possible is what a variable may turn out to be. The zero Possible is anything
// of the variable's type.
type Possible struct {
	Low, High *Quantity // a number's ends; nil is unbounded
	Words     []string  // the words a Word may be; nil is any
	Is        Expr      // what it equals, if it is worked out: the dependence is kept

	// Work gives the exact value from readings where Is and the ends only
	// promise something, as for a chosen pack; Rests lists what Work reads.
	// Without Work the exact value is that of Is.
	Work  func(Env) (Value, *Problem)
	Rests []Expr
}

// Free reports a variable that is read or set, not worked out from others.
func (p Possible) Free() bool { return p.Is == nil && p.Work == nil }

// Range is everything that an expression may come to. It may hold more than is
// possible, never less: a finding needs a Witness besides.
type Range struct {
	Number     Interval // of a number, in base units; of limits, from the lowest to the highest
	Yes, No    bool     // a truth may hold, may fail
	Words      []string // the words it may be, sorted; nil is any
	ZeroDivide []Span   // divisions whose divisor may be zero, in the order they are met
}

// RangeOf is everything that e may come to. Exact for expressions that are
// linear in independent readings.
func RangeOf(e Expr, d Domain) Range {
	r := &ranger{domain: d, vars: map[string]reach{}, opaque: map[string]int{}}
	x := r.eval(e)
	return Range{Number: x.in, Yes: x.yes, No: x.no, Words: x.words, ZeroDivide: r.zero}
}

// reach is what a subexpression may come to. A number lies inside in and equals form.
type reach struct {
	in      Interval
	form    affine
	yes, no bool
	words   []string
	list    []reach
}

type ranger struct {
	domain  Domain
	symbols []Interval
	vars    map[string]reach
	opaque  map[string]int // symbols of results that are not linear, by how they came about
	inside  int            // depth in formulas of other variables
	zero    []Span
}

func (r *ranger) eval(e Expr) reach {
	switch e := e.(type) {
	case *Const:
		return r.constant(e.Value)
	case *Var:
		return r.variable(e)
	case *Unary:
		x := r.eval(e.X)
		if e.Op == Not {
			return reach{yes: x.no, no: x.yes}
		}
		return r.linear(x.form.scale(minusOne), x.in.Neg())
	case *Binary:
		return r.binary(e)
	case *Cond:
		return r.cond(e)
	case *Call:
		return r.call(e)
	case *Between:
		low, high := Interval{}, Interval{}
		if e.Low != nil {
			low = r.eval(e.Low).in
		}
		if e.High != nil {
			high = r.eval(e.High).in
		}
		return reach{in: Interval{low.Lo, high.Hi}}
	case *List:
		var l reach
		for _, x := range e.Items {
			l.list = append(l.list, r.eval(x))
		}
		return l
	}
	panic("calc: unknown node")
}

var minusOne = big.NewRat(-1, 1)

func (r *ranger) constant(v Value) reach {
	switch v := v.(type) {
	case Quantity:
		return exactly(v.Base())
	case Limits:
		return reach{in: ends(v.Low, v.High)}
	case Truth:
		return reach{yes: bool(v), no: !bool(v)}
	case Word:
		return reach{words: []string{string(v)}}
	case Numbers:
		var l reach
		for _, q := range v {
			l.list = append(l.list, exactly(q.Base()))
		}
		return l
	}
	panic("calc: unknown value")
}

func exactly(b *big.Rat) reach { return reach{in: PointInterval(b), form: constant(b)} }

func ends(low, high *Quantity) Interval {
	var i Interval
	if low != nil {
		i.Lo = low.Base()
	}
	if high != nil {
		i.Hi = high.Base()
	}
	return i
}

// linear is a number that equals form; in may say more than form does.
func (r *ranger) linear(form affine, in Interval) reach {
	in = form.interval(r.symbols).Meet(in)
	if form.tooBig() {
		return r.fresh(in)
	}
	return reach{in: in, form: form}
}

// fresh is a number of which only the range is known.
func (r *ranger) fresh(in Interval) reach {
	if in.IsPoint() {
		return exactly(in.Lo)
	}
	r.symbols = append(r.symbols, in)
	return reach{in: in, form: affine{new(big.Rat), []summand{{len(r.symbols) - 1, big.NewRat(1, 1)}}}}
}

// named is fresh, and the same number each time it comes about in the same way.
func (r *ranger) named(in Interval, op string, operands ...reach) reach {
	parts := []string{op}
	for _, x := range operands {
		parts = append(parts, x.form.key())
	}
	key := strings.Join(parts, " ")
	if s, ok := r.opaque[key]; ok {
		return reach{in: r.symbols[s].Meet(in), form: affine{new(big.Rat), []summand{{s, big.NewRat(1, 1)}}}}
	}
	x := r.fresh(in)
	if len(x.form.terms) > 0 {
		r.opaque[key] = x.form.terms[0].symbol
	}
	return x
}

func (r *ranger) variable(v *Var) reach {
	key := v.Key()
	if x, ok := r.vars[key]; ok {
		return x
	}
	p := r.domain.Possible(v)
	var x reach
	switch v.Of.Shape {
	case TruthShape:
		x = reach{yes: true, no: true}
	case WordShape:
		x = reach{words: slices.Sorted(slices.Values(p.Words))}
	case NumberShape:
		x = r.fresh(ends(p.Low, p.High))
	}
	r.vars[key] = x // ends a ring of formulas
	if p.Is != nil {
		r.inside++
		y := r.eval(p.Is)
		r.inside--
		if v.Of.Shape == NumberShape {
			y.in = y.in.Meet(x.in)
		}
		x = y
		r.vars[key] = x
	}
	return x
}

func (r *ranger) binary(e *Binary) reach {
	x := r.eval(e.X)
	switch {
	case e.Op == And && !x.yes, e.Op == Or && !x.no:
		return x
	}
	y := r.eval(e.Y)
	switch e.Op {
	case And:
		return reach{yes: x.yes && y.yes, no: x.no || y.no}
	case Or:
		return reach{yes: x.yes || y.yes, no: x.no && y.no}
	case Add:
		return r.linear(x.form.add(y.form), x.in.Add(y.in))
	case Sub:
		return r.difference(x, y)
	case Mul:
		return r.product(x, y)
	case Div:
		return r.quotient(e, x, y)
	}
	switch e.X.Type().Shape {
	case NumberShape:
		return compare(e.Op, r.difference(x, y).in)
	case WordShape:
		same := overlap(x.words, y.words)
		differ := x.words == nil || y.words == nil || len(x.words)+len(y.words) > 2 || !same
		return equal(e.Op, same, differ)
	}
	return equal(e.Op, x.yes && y.yes || x.no && y.no, x.yes && y.no || x.no && y.yes)
}

func (r *ranger) difference(x, y reach) reach {
	return r.linear(x.form.add(y.form.scale(minusOne)), x.in.Add(y.in.Neg()))
}

func (r *ranger) product(x, y reach) reach {
	switch {
	case y.in.IsPoint():
		return r.linear(x.form.scale(y.in.Lo), x.in.Mul(y.in))
	case x.in.IsPoint():
		return r.linear(y.form.scale(x.in.Lo), x.in.Mul(y.in))
	}
	in := x.in.Mul(y.in)
	if x.form.key() == y.form.key() {
		a := x.in.Abs()
		in = a.Mul(a)
	}
	return r.named(in, "*", x, y)
}

func (r *ranger) quotient(e *Binary, x, y reach) reach {
	if y.in.Contains(new(big.Rat)) {
		if r.inside == 0 {
			r.zero = append(r.zero, e.At)
		}
		if y.in.IsPoint() {
			return r.fresh(Interval{})
		}
	}
	inverse := y.in.Inverse()
	switch {
	case y.in.IsPoint():
		return r.linear(x.form.scale(inverse.Lo), x.in.Mul(inverse))
	case x.form.key() == y.form.key():
		return exactly(big.NewRat(1, 1))
	}
	return r.named(x.in.Mul(inverse), "/", x, y)
}

func (r *ranger) cond(e *Cond) reach {
	c := r.eval(e.If)
	switch {
	case !c.no:
		return r.eval(e.Then)
	case !c.yes:
		return r.eval(e.Else)
	}
	x, y := r.eval(e.Then), r.eval(e.Else)
	switch e.Then.Type().Shape {
	case NumberShape:
		if x.form.key() == y.form.key() {
			return reach{in: x.in.Hull(y.in), form: x.form}
		}
		return r.fresh(x.in.Hull(y.in))
	case LimitsShape:
		return reach{in: x.in.Hull(y.in)}
	case WordShape:
		if x.words == nil || y.words == nil {
			return reach{}
		}
		words := append(slices.Clone(x.words), y.words...)
		slices.Sort(words)
		return reach{words: slices.Compact(words)}
	case ListShape:
		return reach{} // of unknown length
	}
	return reach{yes: x.yes || y.yes, no: x.no || y.no}
}

func (r *ranger) call(e *Call) reach {
	if e.Body != nil {
		before := len(r.zero)
		x := r.eval(e.Body)
		if len(r.zero) > before { // a body's division stands at the call
			r.zero = append(r.zero[:before], e.At)
		}
		return x
	}
	var in []Interval
	var operands []reach
	for _, a := range e.Args {
		x := r.eval(a)
		if a.Type().Shape != ListShape {
			x.list = []reach{x}
		}
		if len(x.list) == 0 && e.Of.Shape == NumberShape {
			return r.fresh(Interval{})
		}
		for _, y := range x.list {
			in = append(in, y.in)
			operands = append(operands, y)
		}
	}
	var out Interval
	if e.Function.Range != nil {
		out = e.Function.Range(in)
	}
	if e.Of.Shape != NumberShape {
		return reach{in: out, yes: true, no: true}
	}
	return r.named(out, e.Function.Name, operands...)
}

// compare judges x - y against zero.
func compare(op Op, d Interval) reach {
	low, high := sign(d.Lo, -1), sign(d.Hi, 1)
	switch op {
	case Less:
		return reach{yes: low < 0, no: high >= 0}
	case LessEqual:
		return reach{yes: low <= 0, no: high > 0}
	case Greater:
		return reach{yes: high > 0, no: low <= 0}
	case GreaterEqual:
		return reach{yes: high >= 0, no: low < 0}
	}
	return equal(op, low <= 0 && high >= 0, low != 0 || high != 0)
}

func equal(op Op, same, differ bool) reach {
	if op == NotEqual {
		return reach{yes: differ, no: same}
	}
	return reach{yes: same, no: differ}
}

// overlap reports whether one word may be both; nil is any word.
func overlap(a, b []string) bool {
	if a == nil || b == nil {
		return true
	}
	return slices.ContainsFunc(a, func(w string) bool { return slices.Contains(b, w) })
}
