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
	return Range{Number: r.bounds(x), Yes: x.yes, No: x.no, Words: x.words, ZeroDivide: r.zero}
}

// reach is what a subexpression may come to. A number equals form, and lies
// inside in where tight says that in tells more than form. Limits lie inside in.
type reach struct {
	form    affine
	in      Interval
	tight   bool
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
		return r.scale(x, minusOne)
	case *Binary:
		return r.binary(e)
	case *Cond:
		return r.cond(e)
	case *Call:
		return r.call(e)
	case *Between:
		low, high := Interval{}, Interval{}
		if e.Low != nil {
			low = r.bounds(r.eval(e.Low))
		}
		if e.High != nil {
			high = r.bounds(r.eval(e.High))
		}
		return limitsReach(Interval{low.Lo, high.Hi})
	case *List:
		var l reach
		for _, x := range e.Items {
			l.list = append(l.list, r.eval(x))
		}
		return l
	}
	panic("calc: unknown node")
}

var minusOne, plusOne = big.NewRat(-1, 1), big.NewRat(1, 1)

func (r *ranger) constant(v Value) reach {
	switch v := v.(type) {
	case Quantity:
		return exactly(v.Base())
	case Limits:
		return limitsReach(ends(v.Low, v.High))
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

func exactly(b *big.Rat) reach { return reach{form: constant(b)} }

func limitsReach(in Interval) reach { return reach{in: in, tight: true} }

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

// bounds is the range of a number or of limits; of anything else every number.
func (r *ranger) bounds(x reach) Interval {
	if x.tight || x.form.c == nil {
		return x.in
	}
	return x.form.interval(r.symbols)
}

// add is the sum of two numbers.
func (r *ranger) add(x, y reach) reach {
	sum := reach{form: x.form.add(y.form)}
	if x.tight || y.tight {
		sum.in, sum.tight = r.bounds(x).Add(r.bounds(y)), true
	}
	return r.linear(sum)
}

// scale is k times a number.
func (r *ranger) scale(x reach, k *big.Rat) reach {
	s := reach{form: x.form.scale(k), tight: x.tight}
	if x.tight {
		s.in = x.in.Mul(PointInterval(k))
	}
	return r.linear(s)
}

// linear keeps the better of what the form tells and what in does.
func (r *ranger) linear(x reach) reach {
	if x.tight {
		x.in = x.form.interval(r.symbols).Meet(x.in)
	}
	if x.form.tooBig() {
		return r.fresh(r.bounds(x))
	}
	return x
}

// point is the one value that x may have, nil when it may have several.
func (r *ranger) point(x reach) *big.Rat {
	switch {
	case len(x.form.terms) == 0:
		return x.form.c
	case x.tight && x.in.IsPoint():
		return x.in.Lo
	}
	return nil
}

// fresh is a number of which only the range is known.
func (r *ranger) fresh(in Interval) reach {
	if in.IsPoint() {
		return exactly(in.Lo)
	}
	r.symbols = append(r.symbols, in)
	return r.symbol(len(r.symbols) - 1)
}

func (r *ranger) symbol(n int) reach {
	return reach{form: affine{new(big.Rat), []summand{{n, plusOne}}}}
}

// named is fresh, and the same number each time it comes about in the same way.
func (r *ranger) named(in Interval, op string, operands ...reach) reach {
	parts := []string{op}
	for _, x := range operands {
		parts = append(parts, x.form.key())
	}
	key := strings.Join(parts, " ")
	if s, ok := r.opaque[key]; ok {
		r.symbols[s] = r.symbols[s].Meet(in)
		return r.symbol(s)
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
		if v.Of.Shape == NumberShape && (p.Low != nil || p.High != nil) {
			y.in, y.tight = r.bounds(y).Meet(ends(p.Low, p.High)), true
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
		return r.add(x, y)
	case Sub:
		return r.add(x, r.scale(y, minusOne))
	case Mul:
		return r.product(x, y)
	case Div:
		return r.quotient(e, x, y)
	}
	switch e.X.Type().Shape {
	case NumberShape:
		return compare(e.Op, r.bounds(r.add(x, r.scale(y, minusOne))))
	case WordShape:
		same := overlap(x.words, y.words)
		differ := x.words == nil || y.words == nil || len(x.words)+len(y.words) > 2 || !same
		return equal(e.Op, same, differ)
	}
	return equal(e.Op, x.yes && y.yes || x.no && y.no, x.yes && y.no || x.no && y.yes)
}

func (r *ranger) product(x, y reach) reach {
	if k := r.point(y); k != nil {
		return r.scale(x, k)
	}
	if k := r.point(x); k != nil {
		return r.scale(y, k)
	}
	in := r.bounds(x).Mul(r.bounds(y))
	if x.form.key() == y.form.key() {
		a := r.bounds(x).Abs()
		in = a.Mul(a)
	}
	return r.named(in, "*", x, y)
}

func (r *ranger) quotient(e *Binary, x, y reach) reach {
	divisor := r.bounds(y)
	if divisor.Contains(new(big.Rat)) {
		if r.inside == 0 {
			r.zero = append(r.zero, e.At)
		}
		if divisor.IsPoint() {
			return r.fresh(Interval{})
		}
	}
	if k := r.point(y); k != nil {
		return r.scale(x, inverse(k))
	}
	if x.form.key() == y.form.key() {
		return exactly(plusOne)
	}
	return r.named(r.bounds(x).Mul(divisor.Inverse()), "/", x, y)
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
			return reach{form: x.form}
		}
		return r.fresh(r.bounds(x).Hull(r.bounds(y)))
	case LimitsShape:
		return limitsReach(x.in.Hull(y.in))
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
		for i := before; i < len(r.zero); i++ {
			if r.zero[i] == (Span{}) { // the body's own division stands at the call
				r.zero[i] = e.At
			}
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
			in = append(in, r.bounds(y))
			operands = append(operands, y)
		}
	}
	var out Interval
	if e.Function.Range != nil {
		out = e.Function.Range(in)
	}
	if e.Of.Shape != NumberShape {
		return reach{in: out, tight: true, yes: true, no: true}
	}
	return r.named(out, e.Function.Name, operands...)
}
