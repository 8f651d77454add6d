package calc

import (
	"strings"
)

// literalParser reads one string, once, from left to right. lost says that no
// literal can be given.
type literalParser struct {
	s         string
	i         int
	ctx       Context
	problems  []Problem
	lost      bool
	deviating bool // a slash over zero parts two deviations
}

// side is a number with the unit text behind it.
type side struct {
	number
	unit       *Unit // nil where none is written
	uAt, uEnd  int   // the unit text
	percentage bool  // a percentage of another value
	bound      Form  // "max" or "min" stands behind it
}

// maxLiteral is the longest string that is read, in bytes.
const maxLiteral = 200

func (p *literalParser) literal() Literal {
	if !p.sound() {
		return Literal{}
	}
	p.spaces()
	if p.i == len(p.s) {
		return p.fail(problemEmpty(0, len(p.s)))
	}
	if form := p.bound(); form != NoForm {
		return p.bounded(form)
	}
	if p.plusMinus() {
		return p.deviation()
	}
	a, ok := p.side(p.ctx.Difference)
	if !ok {
		return Literal{}
	}
	switch at := p.i; {
	case p.i == len(p.s):
		return p.value(a)
	case p.rangeMark():
		return p.rangeTo(a, p.ctx.Difference)
	case p.plusMinus():
		return p.around(a)
	case p.peek('+') || p.peek('-') || p.atMinus() || strings.HasPrefix(p.s[at:], "—") || strings.HasPrefix(p.s[at:], "0/"):
		if l, ok := p.unequal(a); ok {
			return l
		}
		if p.lost {
			return Literal{}
		}
		p.i = at
		if p.hyphen(a) {
			return p.rangeTo(a, p.ctx.Difference)
		}
	case a.unit != nil && p.digit(0):
		return p.twoUnits(a)
	}
	if p.lost {
		return Literal{}
	}
	return p.fail(p.problemRest())
}

// value is a single quantity, which must end the string.
func (p *literalParser) value(a side) Literal {
	q, ok := p.quantity(&a, a.at, a.end)
	if !ok {
		return Literal{}
	}
	if a.bound != NoForm {
		return oneSided(a.bound, q)
	}
	return Literal{Form: ValueForm, Nominal: q}
}

// bound reads what makes a one-sided limit, and says which.
func (p *literalParser) bound() Form {
	rest := p.s[p.i:]
	for _, b := range bounds {
		if len(rest) < len(b.text) || !strings.EqualFold(rest[:len(b.text)], b.text) {
			continue
		}
		if b.word && len(rest) > len(b.text) && isLetter(rest[len(b.text)]) {
			continue
		}
		if b.strict {
			p.report(problemStrict(p.i, p.i+len(b.text), b.form))
		}
		p.i += len(b.text)
		p.spaces()
		return b.form
	}
	return NoForm
}

var bounds = []struct {
	text         string
	form         Form
	word, strict bool
}{
	{"≥", AtLeastForm, false, false}, {"≤", AtMostForm, false, false},
	{">=", AtLeastForm, false, false}, {"<=", AtMostForm, false, false},
	{">", AtLeastForm, false, true}, {"<", AtMostForm, false, true},
	{"min.", AtLeastForm, false, false}, {"max.", AtMostForm, false, false},
	{"minimum", AtLeastForm, true, false}, {"maximum", AtMostForm, true, false},
	{"min", AtLeastForm, true, false}, {"max", AtMostForm, true, false},
	{"at least", AtLeastForm, true, false}, {"at most", AtMostForm, true, false},
}

func (p *literalParser) bounded(form Form) Literal {
	a, ok := p.side(p.ctx.Difference)
	if !ok {
		return Literal{}
	}
	if p.i < len(p.s) {
		return p.fail(p.problemRest())
	}
	q, ok := p.quantity(&a, a.at, a.end)
	if !ok {
		return Literal{}
	}
	return oneSided(form, q)
}

func oneSided(form Form, q *Quantity) Literal {
	if form == AtLeastForm {
		return Literal{Form: form, Low: q}
	}
	return Literal{Form: form, High: q}
}

// deviation reads an accuracy, "± 0.02 mm".
func (p *literalParser) deviation() Literal {
	at := p.i
	a, ok := p.side(true)
	if !ok {
		return Literal{}
	}
	if p.i < len(p.s) {
		return p.fail(p.problemRest())
	}
	if !p.ctx.Difference && !p.ctx.AllowPercent {
		return p.fail(problemLonelyDeviation(0, at))
	}
	if a.num.Sign() < 0 {
		return p.fail(problemNegativeDeviation(a.at, a.end))
	}
	q, ok := p.quantity(&a, a.at, a.end)
	if !ok {
		return Literal{}
	}
	return Literal{Form: DeviationForm, Nominal: q}
}

// rangeTo reads the upper end of a range that starts at a.
func (p *literalParser) rangeTo(a side, difference bool) Literal {
	p.spaces()
	b, ok := p.side(difference)
	if !ok {
		return Literal{}
	}
	if p.i < len(p.s) {
		return p.fail(p.problemRest())
	}
	if a.unit == nil {
		a.unit, a.uAt, a.uEnd = b.unit, b.uAt, b.uEnd
	} else if b.unit == nil {
		b.unit, b.uAt, b.uEnd = a.unit, a.uAt, a.uEnd
	}
	start := a.at
	low, ok := p.quantity(&a, start, b.end)
	if !ok {
		return Literal{}
	}
	if a.uAt == b.uAt && a.unit != b.unit { // the unit was bent for the place: once is enough
		b.unit = a.unit
	}
	high, ok := p.quantity(&b, start, b.end)
	if !ok || p.lost {
		return Literal{}
	}
	said := len(p.problems)
	if !p.oneSystem(low, high, a, b) {
		return Literal{}
	}
	switch c := low.Cmp(*high); {
	case c > 0 && len(p.problems) > said: // in two systems, which is why
		p.lost = true
		return Literal{}
	case c > 0:
		return p.fail(p.problemBackwards(a, b))
	case c == 0:
		p.report(p.problemNoWidth(a, b))
	}
	return Literal{Form: RangeForm, Low: low, High: high}
}

// oneSystem reports two ends of different dimensions or systems; only the
// former leaves no range.
func (p *literalParser) oneSystem(x, y *Quantity, a, b side) bool {
	if x.Unit == y.Unit {
		return true
	}
	if !x.Dim().Fits(y.Dim()) {
		p.fail(p.problemTwoDimensions(x, y, b))
		return false
	}
	if s, t := x.Unit.System, y.Unit.System; s != t && s != Neither && t != Neither {
		p.report(p.problemTwoSystems(a, b))
	}
	return true
}

// around reads what follows the sign in "24 ± 2 N·m".
func (p *literalParser) around(a side) Literal {
	p.spaces()
	d, ok := p.side(a.unit != nil)
	if !ok {
		return Literal{}
	}
	if p.i < len(p.s) {
		return p.fail(p.problemRest())
	}
	if d.num.Sign() < 0 {
		return p.fail(problemNegativeDeviation(d.at, d.end))
	}
	l := Literal{Form: PlusMinusForm}
	upper, _, ok := p.deviations(&l, &a, &d, nil)
	if !ok {
		return Literal{}
	}
	l.Upper = upper
	lower := upper.negated()
	l.spread(lower, *upper)
	return l
}

// unequal reads "+2/-0 N·m" behind a nominal value; false where that is not what stands there.
func (p *literalParser) unequal(a side) (Literal, bool) {
	told := len(p.problems)
	x, y, ok := p.twoDeviations()
	if !ok { // it is read again as something else
		p.problems, p.lost = p.problems[:told], false
		return Literal{}, false
	}
	d := side{number: y}
	if !p.unitText(&d, a.unit != nil) {
		return Literal{}, true
	}
	if p.i < len(p.s) {
		p.fail(p.problemRest())
		return Literal{}, true
	}
	l := Literal{Form: UnequalForm}
	e := d
	e.number = x
	second, first, ok := p.deviations(&l, &a, &d, &e)
	if !ok {
		return Literal{}, true
	}
	if first.Cmp(*second) < 0 {
		first, second = second, first
	}
	l.Upper, l.Lower = first, second
	l.spread(*second, *first)
	return l, true
}

func (p *literalParser) twoDeviations() (x, y number, ok bool) {
	if x, ok = p.deviationNumber(); !ok {
		return x, y, false
	}
	p.spaces()
	slash := p.accept("/")
	p.spaces()
	if y, ok = p.deviationNumber(); !ok {
		return x, y, false
	}
	if slash {
		return x, y, !(isDigit(p.s[x.at]) && isDigit(p.s[y.at]))
	}
	// 24 +2 -0, but never 10-15-20
	return x, y, (p.s[x.at] == '+') != (p.s[y.at] == '+') && p.spaceBefore(x.at) > 0 && !isDigit(p.s[y.at])
}

// deviations gives l its nominal value from a, and the deviations d and e (which
// may be nil and has d's unit text) in units that go with it.
func (p *literalParser) deviations(l *Literal, a, d, e *side) (*Quantity, *Quantity, bool) {
	relative := d.percentage
	plain := !p.ctx.HasWant || p.ctx.Want == Plain
	if a.unit == nil && d.unit != nil && (d.unit != percent || plain) { // 10 ± 2 % is 8..12 %
		a.unit, a.uAt, a.uEnd = d.unit, d.uAt, d.uEnd
	}
	n, ok := p.quantity(a, a.at, d.end)
	if !ok {
		return nil, nil, false
	}
	l.Nominal = n
	unit := n.Unit.Difference()
	switch {
	case relative && n.Unit != percent:
		if n.Dim().IsPoint() {
			p.fail(problemPercentOfTemperature(d.at, d.end))
			return nil, nil, false
		}
		unit = percent
	case d.unit != nil && d.uAt != a.uAt:
		unit = d.unit.Difference()
	}
	q := NewQuantity(d.num, unit, d.decimals)
	if unit != percent || !relative {
		base := NewQuantity(n.num, n.Unit.Difference(), n.Decimals)
		if !p.oneSystem(&base, &q, *a, *d) {
			return nil, nil, false
		}
	}
	if e == nil {
		return &q, nil, !p.lost
	}
	r := NewQuantity(e.num, unit, e.decimals)
	return &q, &r, !p.lost
}

// twoUnits explains "1 h 30 min" and "5 ft 3 in".
func (p *literalParser) twoUnits(a side) Literal {
	b, ok := p.side(p.ctx.Difference)
	if !ok {
		return Literal{}
	}
	if p.i < len(p.s) || b.unit == nil || a.unit == b.unit || !a.unit.Dim.Fits(b.unit.Dim) || a.unit.Dim.IsPoint() || a.num.Sign() < 0 {
		return p.fail(p.problemSecondNumber(a, b))
	}
	x := NewQuantity(a.num, a.unit, a.decimals).In(b.unit)
	sum := x.plus(NewQuantity(b.num, b.unit, b.decimals), b.unit)
	n, exact := exactDecimals(sum.num)
	if sum.Decimals = max(n, b.decimals); b.decimals == Exact {
		sum.Decimals = Exact
	}
	if !exact || n > b.decimals+3 && b.decimals != Exact || !sum.printable() {
		return p.fail(p.problemSecondNumber(a, b))
	}
	p.report(p.problemTwoUnits(a, b, sum))
	c := b
	c.num, c.decimals = sum.num, sum.Decimals
	q, ok := p.quantity(&c, a.at, b.end)
	if !ok {
		return Literal{}
	}
	return Literal{Form: ValueForm, Nominal: q}
}
