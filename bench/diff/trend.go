package diff

import (
	"fettle/calc"
	"fettle/lang/model"
)

// Trend says which way a value or limits went.
type Trend uint8

// Trends. NoTrend stands where the two cannot be compared.
const (
	NoTrend   Trend = iota
	Tightened       // the new limits lie inside the old ones
	Widened         // the old limits lie inside the new ones
	Shifted         // neither
	Raised          // a value, or a nominal value with its limits, went up
	Lowered
)

func (t Trend) String() string {
	return [...]string{"", "tightened", "widened", "shifted", "raised", "lowered"}[t]
}

func trend(was, is model.Value) Trend {
	f, ok := was.(*model.Formula)
	g, also := is.(*model.Formula)
	if !ok || !also {
		return NoTrend
	}
	a, ok := f.Limits()
	b, also := g.Limits()
	if !ok || !also || !a.Type().Dim.Fits(b.Type().Dim) {
		return NoTrend
	}
	if point(a) && point(b) {
		return direction(*a.Low, *b.Low)
	}
	switch low, high := inward(b.Low, a.Low, 1), inward(b.High, a.High, -1); {
	case low == 0 && high == 0:
		if p, q := f.Quantity(), g.Quantity(); p != nil && q != nil { // the target alone
			return direction(*p, *q)
		}
		return NoTrend
	case low >= 0 && high >= 0:
		return Tightened
	case low <= 0 && high <= 0:
		return Widened
	}
	if p, q := f.Quantity(), g.Quantity(); p != nil && q != nil && p.Cmp(*q) != 0 {
		return direction(*p, *q)
	}
	return Shifted
}

// point reports limits that are one value.
func point(l calc.Limits) bool {
	return l.Low != nil && l.High != nil && l.Low.Cmp(*l.High) == 0
}

func direction(was, is calc.Quantity) Trend {
	switch was.Cmp(is) {
	case -1:
		return Raised
	case 1:
		return Lowered
	}
	return NoTrend
}

// inward is 1 where the new end lies inside the old one, 0 where they are one
// value, and -1 where it lies outside; up is 1 for the lower end, -1 for the
// higher. nil is open.
func inward(is, was *calc.Quantity, up int) int {
	switch {
	case is == nil && was == nil:
		return 0
	case was == nil:
		return 1
	case is == nil:
		return -1
	}
	return is.Cmp(*was) * up
}
