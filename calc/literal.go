package calc

import (
	"math/big"
)

// Context is what is known of the place where a quantity stands.
type Context struct {
	Want         Dim    // the dimension that the place takes, when HasWant
	HasWant      bool   //
	Difference   bool   // °C is a difference here: a resolution, an accuracy, a growth
	Gallon       string // "US" or "UK": whose gallon, pint and fluid ounce; "" when nobody has said
	AllowPlain   bool   // a number without a unit will do, whatever is wanted
	AllowPercent bool   // a percentage will do, whatever is wanted: an accuracy
}

// Form is the way in which a literal was written.
type Form uint8

// Forms of literal.
const (
	NoForm        Form = iota // the zero Literal, which holds nothing
	ValueForm                 // 24 N·m
	RangeForm                 // 0.08..0.14 mm
	PlusMinusForm             // 24 ± 2 N·m, 24 N·m ± 10 %
	UnequalForm               // 24 +2/-0 N·m
	AtLeastForm               // ≥ 5 mm
	AtMostForm                // ≤ 5 mm
	DeviationForm             // ± 0.02 mm, an accuracy
)

// Literal is a quantity or limits as an author wrote them.
//
//	form       Nominal   Low, High              Upper, Lower
//	Value      value     nil                    nil
//	Range      nil       the ends               nil
//	PlusMinus  value     value ∓ deviation      deviation as written, nil
//	Unequal    value     value + each deviation both deviations, signed
//	AtLeast    nil       the end, nil           nil
//	AtMost     nil       nil, the end           nil
//	Deviation  the size  nil                    nil
//
// Low and High are themselves allowed.
type Literal struct {
	Form         Form
	Nominal      *Quantity
	Low, High    *Quantity
	Upper, Lower *Quantity
}

// Valid reports whether the literal holds anything.
func (l Literal) Valid() bool { return l.Form != NoForm }

// IsLimits reports limits, as opposed to a single value.
func (l Literal) IsLimits() bool { return l.Low != nil || l.High != nil }

// Limits are the limits, with the nominal value as target. Of a single value both ends are open.
func (l Literal) Limits() Limits {
	if !l.IsLimits() {
		return Limits{}
	}
	return Limits{Low: l.Low, High: l.High, Target: l.Nominal}
}

// Any is one of the quantities of a valid literal: the nominal one, or an end.
func (l Literal) Any() Quantity {
	switch {
	case l.Nominal != nil:
		return *l.Nominal
	case l.Low != nil:
		return *l.Low
	}
	return *l.High
}

// Dim is the dimension of a valid literal.
func (l Literal) Dim() Dim { return l.Any().Dim() }

// String writes the literal as the dialect reads it: "0.08..0.14 mm". Reading it
// again in the same context gives an equal literal.
func (l Literal) String() string {
	switch l.Form {
	case ValueForm:
		return l.Nominal.String()
	case RangeForm:
		if l.Low.Unit == l.High.Unit {
			return withUnit(l.Low.Value()+".."+l.High.Value(), *l.High)
		}
		return l.Low.String() + ".." + l.High.String()
	case PlusMinusForm:
		return l.around("± " + l.Upper.Value())
	case UnequalForm:
		return l.around(signed(*l.Upper, "+") + "/" + signed(*l.Lower, "-"))
	case AtLeastForm:
		return "≥ " + l.Low.String()
	case AtMostForm:
		return "≤ " + l.High.String()
	case DeviationForm:
		return "± " + l.Nominal.String()
	}
	return ""
}

// around writes the nominal value with its deviations, the unit once where it is one.
func (l Literal) around(deviations string) string {
	if l.Upper.Unit == l.Nominal.Unit.Difference() {
		return withUnit(l.Nominal.Value()+" "+deviations, *l.Nominal)
	}
	return l.Nominal.String() + " " + withUnit(deviations, *l.Upper)
}

// signed writes a deviation; zero takes the given sign.
func signed(q Quantity, zero string) string {
	switch q.Sign() {
	case -1:
		return q.Value()
	case 0:
		return zero + q.Value()
	}
	return "+" + q.Value()
}

// spread works out Low and High of a nominal value and its deviations.
func (l *Literal) spread(lower, upper Quantity) {
	low, high := l.offset(lower), l.offset(upper)
	if low.Cmp(high) > 0 {
		low, high = high, low
	}
	low.Decimals = finer(low.Decimals, high.Decimals)
	high.Decimals = low.Decimals
	l.Low, l.High = &low, &high
}

// offset is the nominal value plus a deviation, which may be in percent of it.
func (l *Literal) offset(deviation Quantity) Quantity {
	n := *l.Nominal
	if deviation.Unit == percent && n.Unit != percent {
		share := new(big.Rat).Mul(deviation.num, percent.Factor)
		share.Mul(share, new(big.Rat).Abs(n.num))
		v := share.Add(share, n.num)
		d := n.Decimals
		if d != Exact { // as many more as the percentage needs, within reason
			e, exact := exactDecimals(v)
			if d = max(d, e); !exact || e > n.Decimals+3 {
				d = n.Decimals + 3
			}
		}
		return NewQuantity(v, n.Unit, d)
	}
	return n.plus(deviation.in(n.Unit.Difference()), n.Unit)
}

var percent = MustUnit("%")

// ParseLiteral reads a quantity, limits, or a plain number, as an author writes
// them. Spans and edits of the problems count bytes of s. Where the meaning is
// certain in spite of a problem (a decimal comma, a hyphen between two numbers),
// the literal is valid all the same, so that later checks can go on.
func ParseLiteral(s string, ctx Context) (Literal, []Problem) {
	p := literalParser{s: s, ctx: ctx}
	l := p.literal()
	if p.lost {
		l = Literal{}
	}
	if len(p.problems) > 0 {
		settleEdits(p.problems, p.lost)
	}
	return l, p.problems
}
