package calc

import (
	"math/big"
	"strconv"
)

// Encoder writes expressions for the builder's page, as compact JSON, and
// collects the units that they use. The zero Encoder is ready.
//
// Every node is an array whose first item names it. A number is counted in a
// unit, which is an index into the table of units, of which the first is that of
// plain numbers:
//
//	["q", "n/d", unit, decimals]     a quantity; "n" where d is 1; decimals -1 is exact
//	["t", true]  ["w", "coil"]       a truth, a word
//	["lim", low, high, target]       limits; null for an end or target not given
//	["l", x, …]                      a list
//	["v", "a.measure.b"]             a variable, by Var.Key
//	["neg", x]  ["not", x]
//	["+", x, y]  ["-", x, y]         y is first counted in x's unit. Of a temperature and
//	                                 a difference, the latter is counted in the
//	                                 difference of the former's unit, and the sum is a
//	                                 temperature; of two, the result is in the
//	                                 difference of x's unit
//	["*k", x, k]  ["/k", x, k]       times, over a plain number: in x's unit
//	["k*", k, x]                     the same as ["*k", x, k]
//	["*u", x, y, [units]]            another product, ["/u", …] another quotient: in
//	                                 the first of the units whose factor is exactly
//	                                 that of x's unit times (over) y's; else in the
//	                                 first of the system of x's unit, or of y's
//	                                 where x's is neither; else the first
//	["<", x, y]  <=  >  >=           comparisons of exact base values
//	["==", x, y]  ["!=", x, y]       also of words and truths
//	["&&", x, y]  ["||", x, y]       y only where x does not decide
//	["?", c, x, y]
//	["min", x, …]                    a function without a body, its lists laid out
//	                                 flat; package fn says of each how it works
//
// A unit is [name, plural, factor, offset, system, difference]: base value =
// value × factor + offset, both "n/d", offset null for none; system is 0
// (neither), 1 (metric), 2 (inch); difference is the unit for a difference of
// two values: the unit itself, but for a temperature.
//
// Decimals follow the same rules as Eval's. With E for exact, all else whole:
//
//	x counted in another unit   d + s, at least 0 and at most max(12, d), where s is
//	                            the least whole number with 10^-s ≤ (x's factor ÷ the
//	                            other's), not below -12 nor above 12; E stays E
//	+ −                         the greater of the two, E lowest
//	*k /k                       E where both are E; where x alone is E, shown(result,
//	                            digits(k)); else x's, raised to shown(result, 2) where
//	                            0 < 10 |result| < |x|, all counted in x's unit
//	*u /u                       E where both are E; else shown(result, the lower of
//	                            digits(x), digits(y), E the highest, but at least 3)
//	digits(q)                   E for E, else the greater of 1 and d + 1 + m(q)
//	shown(r, n)                 E for E, else n - 1 - m(r), between 0 and 12
//	m(r)                        the power of ten of r's first digit, 0 for zero
//
// A quantity is shown as Quantity.String does. PageScript evaluates all this.
type Encoder struct {
	units []*Unit
	index map[*Unit]int
}

// Unit is the index of u in the table.
func (c *Encoder) Unit(u *Unit) int {
	if i, ok := c.index[u]; ok {
		return i
	}
	if c.index == nil {
		c.index = map[*Unit]int{}
		c.Unit(One)
		return c.Unit(u)
	}
	i := len(c.units)
	c.units = append(c.units, u)
	c.index[u] = i
	c.Unit(u.Difference())
	return i
}

// AppendUnits appends the table of all units met so far.
func (c *Encoder) AppendUnits(b []byte) []byte {
	c.Unit(One)
	b = append(b, '[')
	for i, u := range c.units {
		if i > 0 {
			b = append(b, ',')
		}
		b = append(b, '[')
		b = appendText(b, u.Name)
		b = append(b, ',')
		b = appendText(b, u.Plural)
		b = append(b, ',')
		b = appendRat(b, u.Factor)
		b = append(b, ',')
		if u.Offset == nil {
			b = append(b, "null"...)
		} else {
			b = appendRat(b, u.Offset)
		}
		b = append(b, ',')
		b = strconv.AppendInt(b, int64(u.System), 10)
		b = append(b, ',')
		b = strconv.AppendInt(b, int64(c.Unit(u.Difference())), 10)
		b = append(b, ']')
	}
	return append(b, ']')
}

// AppendValue appends a value.
func (c *Encoder) AppendValue(b []byte, v Value) []byte {
	switch v := v.(type) {
	case Quantity:
		b = append(b, `["q",`...)
		b = appendRat(b, v.num)
		b = append(b, ',')
		b = strconv.AppendInt(b, int64(c.Unit(v.Unit)), 10)
		b = append(b, ',')
		b = strconv.AppendInt(b, int64(v.Decimals), 10)
		return append(b, ']')
	case Limits:
		b = append(b, `["lim"`...)
		for _, q := range []*Quantity{v.Low, v.High, v.Target} {
			b = append(b, ',')
			if q == nil {
				b = append(b, "null"...)
			} else {
				b = c.AppendValue(b, *q)
			}
		}
		return append(b, ']')
	case Truth:
		b = append(b, `["t",`...)
		b = strconv.AppendBool(b, bool(v))
		return append(b, ']')
	case Word:
		b = append(b, `["w",`...)
		b = appendText(b, string(v))
		return append(b, ']')
	case Numbers:
		b = append(b, `["l"`...)
		for _, q := range v {
			b = append(b, ',')
			b = c.AppendValue(b, q)
		}
		return append(b, ']')
	}
	panic("calc: unknown value")
}

// AppendExpr appends e.
func (c *Encoder) AppendExpr(b []byte, e Expr) []byte {
	switch e := e.(type) {
	case *Const:
		return c.AppendValue(b, e.Value)
	case *Var:
		b = append(b, `["v",`...)
		b = appendText(b, e.Key())
		return append(b, ']')
	case *Unary:
		return c.node(b, [...]string{Neg: "neg", Not: "not"}[e.Op], e.X)
	case *Binary:
		op, unit := encodedOp(e)
		b = c.node(b, op, e.X, e.Y)
		if unit {
			b = append(b[:len(b)-1], ',', '[')
			for i, u := range unitsOf(e.Of.Dim) {
				if i > 0 {
					b = append(b, ',')
				}
				b = strconv.AppendInt(b, int64(c.Unit(u)), 10)
			}
			b = append(b, ']', ']')
		}
		return b
	case *Cond:
		return c.node(b, "?", e.If, e.Then, e.Else)
	case *Call:
		if e.Body != nil {
			return c.AppendExpr(b, e.Body)
		}
		return c.node(b, e.Function.Name, e.Args...)
	case *Between:
		return c.node(b, "lim", e.Low, e.High, e.Target)
	case *List:
		return c.node(b, "l", e.Items...)
	}
	panic("calc: unknown node")
}

// AppendFormula appends what FormulaWith prints, as parts for the page to put
// values into: the sign before the result, then in order texts and nodes that
// are variables or values. ["()", node] takes brackets where it is below zero.
func (c *Encoder) AppendFormula(b []byte, e Expr) []byte {
	b = append(b, '[')
	b = appendText(b, resultSign(e))
	p := &printer{}
	done := 0
	text := func() {
		if s := p.b.String(); len(s) > done {
			b = appendText(append(b, ','), s[done:])
			done = len(s)
		}
	}
	p.leaf = func(e Expr, bracketed bool) {
		text()
		b = append(b, ',')
		if bracketed {
			b = append(b, `["()",`...)
		}
		b = c.AppendExpr(b, e)
		if bracketed {
			b = append(b, ']')
		}
	}
	p.print(e, 0)
	text()
	return append(b, ']')
}

func (c *Encoder) node(b []byte, name string, items ...Expr) []byte {
	b = append(b, '[')
	b = appendText(b, name)
	for _, e := range items {
		b = append(b, ',')
		if e == nil {
			b = append(b, "null"...)
		} else {
			b = c.AppendExpr(b, e)
		}
	}
	return append(b, ']')
}

// encodedOp names the case of e, so that the page needs no dimensions; unit
// says that the units of the result follow.
func encodedOp(e *Binary) (op string, unit bool) {
	if e.Op != Mul && e.Op != Div {
		return e.Op.String(), false
	}
	plainX, plainY := e.X.Type().Dim == Plain, e.Y.Type().Dim == Plain
	switch {
	case plainY && !plainX:
		return e.Op.String() + "k", false
	case plainX && !plainY && e.Op == Mul:
		return "k*", false
	}
	return e.Op.String() + "u", true
}

func appendRat(b []byte, r *big.Rat) []byte {
	b = append(b, '"')
	b = append(b, r.RatString()...)
	return append(b, '"')
}

// appendText appends s as a JSON string that is also safe inside an HTML script.
func appendText(b []byte, s string) []byte {
	const hex = "0123456789abcdef"
	b = append(b, '"')
	for _, r := range s {
		switch {
		case r < 0x20 || r == '"' || r == '\\' || r == '<' || r == '>' || r == '&' || r == '\u2028' || r == '\u2029':
			b = append(b, '\\', 'u', hex[r>>12&15], hex[r>>8&15], hex[r>>4&15], hex[r&15])
		default:
			b = append(b, string(r)...)
		}
	}
	return append(b, '"')
}
