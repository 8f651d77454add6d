package calc

import (
	"math/big"
	"strings"
)

// Style says how quantities are shown to a reader.
type Style struct {
	First  System // shown first, the other in brackets; Neither shows the authored one first
	Gallon string // "US" or "UK": whose measures of volume; "" is US
}

// Shown is one quantity in both systems. Other is empty where there is no partner.
type Shown struct {
	First, Other string
}

// String is both, "0.10 mm (0.0039 in)".
func (s Shown) String() string {
	if s.Other == "" {
		return s.First
	}
	for _, word := range []string{"at least ", "at most ", "± "} { // once will do
		if strings.HasPrefix(s.First, word) {
			return s.First + " (" + strings.TrimPrefix(s.Other, word) + ")"
		}
	}
	return s.First + " (" + s.Other + ")"
}

func (s Style) arrange(authored Quantity, written, converted string) Shown {
	if converted != "" && s.First != Neither && authored.Unit.System != s.First {
		return Shown{converted, written}
	}
	return Shown{written, converted}
}

// Quantity shows one value. The converted one is rounded, half to even, to the
// decimals that the authored ones are worth.
func (s Style) Quantity(q Quantity) Shown {
	partner := PartnerOf(q, s.Gallon)
	if partner == nil {
		return Shown{First: q.String()}
	}
	return s.arrange(q, q.String(), convert(&q, partner).String())
}

// Limits shows limits, either end of which may be open (nil): "0.08 to 0.14 mm
// (0.0032 to 0.0055 in)". Every printed limit is rounded inward, so that it never
// accepts what the exact one rejects; where no number of few decimals lies
// inside, one more is printed, and where there is none at all the converted
// limits are left out.
func (s Style) Limits(low, high *Quantity) Shown {
	return s.limits(nil, low, high, false)
}

// Literal shows what was written: a value, limits, or a nominal value with its limits.
func (s Style) Literal(l Literal) Shown {
	switch l.Form {
	case NoForm:
		return Shown{}
	case ValueForm:
		return s.Quantity(*l.Nominal)
	case DeviationForm:
		shown := s.Quantity(*l.Nominal)
		shown.First = "± " + shown.First
		if shown.Other != "" {
			shown.Other = "± " + shown.Other
		}
		return shown
	}
	return s.limits(l.Nominal, l.Low, l.High, l.Upper != nil && l.Upper.Unit == percent)
}

// limits shows limits around a nominal value, which may be nil. Relative ones
// are converted to the decimals of the nominal value.
func (s Style) limits(nominal, low, high *Quantity, relative bool) Shown {
	q := high // the larger end chooses the unit
	if q == nil || low != nil && new(big.Rat).Abs(low.num).Cmp(new(big.Rat).Abs(high.num)) > 0 {
		q = low
	}
	if q == nil {
		return Shown{}
	}
	written, ok := inward(nominal, low, high)
	if !ok { // ends that only a fraction can tell
		written = joinLimits(stringOf(nominal), stringOf(low), stringOf(high))
	}
	partner := PartnerOf(*q, s.Gallon)
	if partner == nil {
		return Shown{First: written}
	}
	n, l, h := convert(nominal, partner), convert(low, partner), convert(high, partner)
	if l != nil && h != nil && l.Decimals != Exact && h.Decimals != Exact {
		l.Decimals = finer(l.Decimals, h.Decimals)
		h.Decimals = l.Decimals
	}
	if relative && n != nil && n.Decimals != Exact {
		l.Decimals, h.Decimals = min(l.Decimals, n.Decimals), min(h.Decimals, n.Decimals)
	} else if n != nil {
		n.Decimals = finer(n.Decimals, l.Decimals)
	}
	converted, _ := inward(n, l, h)
	return s.arrange(*q, written, converted)
}

func convert(q *Quantity, u *Unit) *Quantity {
	if q == nil {
		return nil
	}
	r := q.In(u)
	if r.Decimals == Exact && !r.num.IsInt() {
		r.Decimals = significant(r.num, 4)
	}
	return &r
}

func stringOf(q *Quantity) string {
	if q == nil {
		return ""
	}
	return q.String()
}

// inward prints limits rounded inward, false where nothing with few decimals
// lies between them.
func inward(nominal, low, high *Quantity) (string, bool) {
	if low == nil || high == nil {
		return joinLimits(stringOf(nominal), limit(low, 0, up), limit(high, 0, down)), true
	}
	if low.Unit != high.Unit { // as written
		return joinLimits(stringOf(nominal), stringOf(low), stringOf(high)), low.Cmp(*high) <= 0
	}
	for more := 0; more <= maxShown; more++ {
		l, h := rounded(*low, more, up), rounded(*high, more, down)
		if l.Cmp(h) > 0 {
			continue
		}
		n := stringOf(nominal)
		if nominal != nil && low.Cmp(*nominal) <= 0 && nominal.Cmp(*high) <= 0 {
			n = clamp(*nominal, l, h).String()
		}
		if low.Unit.Label(l.num) == low.Unit.Label(h.num) { // the unit once
			return joinLimits(n, l.Value(), h.String()), true
		}
		return joinLimits(n, l.String(), h.String()), true
	}
	return "", false
}

// clamp keeps a rounded nominal value inside rounded limits.
func clamp(q, low, high Quantity) Quantity {
	switch r := q.Rounded(); {
	case r.Cmp(low) < 0:
		return low
	case r.Cmp(high) > 0:
		return high
	}
	return q
}

// rounded is q at its decimals and some more, in one direction. A fraction stays.
func rounded(q Quantity, more int, how rounding) Quantity {
	d := q.Decimals
	if d == Exact {
		if q.printable() {
			return q
		}
		d = significant(q.num, 4)
	}
	if n, exact := exactDecimals(q.num); more > 0 && (!exact || n > d) {
		d += more
	}
	return NewQuantity(roundRat(q.num, d, how), q.Unit, d)
}

func limit(q *Quantity, more int, how rounding) string {
	if q == nil {
		return ""
	}
	return rounded(*q, more, how).String()
}

func joinLimits(nominal, low, high string) string {
	var s string
	switch {
	case low == "":
		s = "at most " + high
	case high == "":
		s = "at least " + low
	default:
		s = low + " to " + high
	}
	if nominal != "" {
		return nominal + ", " + s
	}
	return s
}

// String is the quantity in its own unit, "0.10 mm", at the decimals that it is
// known to, half to even. It reads back as the same quantity where its value
// needs no more decimals than that.
func (q Quantity) String() string { return withSpace(q.Value(), q.Unit, q.num) }

func withUnit(number string, q Quantity) string { return withSpace(number, q.Unit, q.num) }

func withSpace(number string, u *Unit, value *big.Rat) string {
	label := u.Label(value)
	switch label {
	case "":
		return number
	case "°":
		return number + label
	}
	return number + " " + label
}

// Value is the number alone. An exact one is a fraction as a rule prints it
// ("3/8", "1 1/16") in a unit, and a decimal number where it is plain.
func (q Quantity) Value() string {
	if q.Decimals != Exact {
		return FormatRat(q.num, q.Decimals)
	}
	n, exact := exactDecimals(q.num)
	switch {
	case n == 0 && exact, exact && n <= maxShown && (q.Unit == One || !onRule(q.num)):
		return FormatRat(q.num, n)
	case onRule(q.num):
		return fraction(q.num)
	}
	return FormatRat(q.num, significant(q.num, 4))
}

// printable reports that Value loses nothing of an exact quantity.
func (q Quantity) printable() bool {
	n, exact := exactDecimals(q.num)
	return exact && n <= maxShown || onRule(q.num)
}

// onRule reports a fraction as rules and recipes have them: up to 64ths, and 128ths.
func onRule(r *big.Rat) bool {
	d := r.Denom()
	return d.IsInt64() && (d.Int64() <= 64 || d.Int64() == 128)
}

// fraction writes a number that is not whole as "3/8" or "-1 1/16".
func fraction(r *big.Rat) string {
	whole, rest := new(big.Int).QuoRem(new(big.Int).Abs(r.Num()), r.Denom(), new(big.Int))
	var b strings.Builder
	if r.Sign() < 0 {
		b.WriteByte('-')
	}
	if whole.Sign() != 0 {
		b.WriteString(whole.String() + " ")
	}
	b.WriteString(rest.String() + "/" + r.Denom().String())
	return b.String()
}

// Coded is a quantity for machines: an exact decimal number or fraction in
// ASCII, and a UCUM code. It loses nothing but the way it was written.
type Coded struct {
	Value string `json:"value"` // "0.10", or "3/8" where decimals would never end or were never meant
	Unit  string `json:"unit"`  // "mm"
}

// Coded is q for machines.
func (q Quantity) Coded() Coded {
	c := Coded{Unit: q.Unit.UCUM}
	n, exact := exactDecimals(q.num)
	switch {
	case q.num.IsInt() && q.Decimals == Exact:
		c.Value = q.num.Num().String()
	case !exact, q.Decimals == Exact && q.Unit != One:
		c.Value = q.num.String()
	default:
		c.Value = FormatRat(q.num, max(n, q.Decimals))
	}
	return c
}

// CodedLiteral is a literal for machines; what does not apply is nil.
type CodedLiteral struct {
	Nominal *Coded `json:"nominal,omitempty"`
	Low     *Coded `json:"low,omitempty"`
	High    *Coded `json:"high,omitempty"`
}

// Coded is l for machines.
func (l Literal) Coded() CodedLiteral {
	code := func(q *Quantity) *Coded {
		if q == nil {
			return nil
		}
		c := q.Coded()
		return &c
	}
	return CodedLiteral{code(l.Nominal), code(l.Low), code(l.High)}
}

func intRat(n int64) *big.Rat { return new(big.Rat).SetInt64(n) }
