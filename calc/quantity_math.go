package calc

import "math/big"

func mismatch(message, remedy string) *Problem {
	return &Problem{Rule: RuleWrongDimension, Message: message,
		Reason: "Only like can be added to or taken from like.", Remedy: remedy}
}

// Add is q + r in q's unit. Of a temperature and a difference it is a
// temperature. The sum keeps every decimal that either side was written with.
// The error is a *Problem.
func (q Quantity) Add(r Quantity) (Quantity, error) {
	d, e := q.Dim(), r.Dim()
	switch {
	case d.IsPoint() && e.IsPoint():
		return Quantity{}, &Problem{Rule: RuleTemperature,
			Message: "Two temperatures are added.",
			Reason:  "A temperature has a zero of its own: 20 °C and 20 °C do not make 40 °C.",
			Remedy:  "Add a difference, in K."}
	case d.IsPoint() && TemperatureDiff.Fits(e):
		return q.plus(r.in(q.Unit.Difference()), q.Unit), nil
	case e.IsPoint() && TemperatureDiff.Fits(d):
		return r.plus(q.in(r.Unit.Difference()), r.Unit), nil
	case !d.Fits(e):
		return Quantity{}, mismatch("Here "+d.String()+" and "+e.String()+" are added.", "Add two of one sort.")
	}
	return q.plus(r.in(q.Unit), q.Unit), nil
}

// Sub is q - r in q's unit. Of two temperatures it is a difference. The error is a *Problem.
func (q Quantity) Sub(r Quantity) (Quantity, error) {
	d, e := q.Dim(), r.Dim()
	switch {
	case d.IsPoint() && e.IsPoint():
		return q.plus(r.in(q.Unit).negated(), q.Unit.Difference()), nil
	case d.IsPoint() && TemperatureDiff.Fits(e):
		return q.plus(r.in(q.Unit.Difference()).negated(), q.Unit), nil
	case !d.Fits(e):
		return Quantity{}, mismatch("Here "+e.String()+" is taken from "+d.String()+".", "Subtract two of one sort.")
	}
	return q.plus(r.in(q.Unit).negated(), q.Unit), nil
}

// Neg is -q. A temperature has none. The error is a *Problem.
func (q Quantity) Neg() (Quantity, error) {
	if q.Dim().IsPoint() {
		return Quantity{}, &Problem{Rule: RuleTemperature, Message: "A temperature is negated.",
			Reason: "A temperature has a zero of its own.", Remedy: "Subtract one temperature from another first."}
	}
	return q.negated(), nil
}

// Mul is q × r. Units of one dimension are merged, so mm × (mm/m) is mm. The
// error is a *Problem.
func (q Quantity) Mul(r Quantity) (Quantity, error) { return q.scale(r, 1) }

// Div is q / r. The error is a *Problem.
func (q Quantity) Div(r Quantity) (Quantity, error) {
	if r.Sign() == 0 {
		return Quantity{}, &Problem{Rule: RuleDivisionByZero, Message: "Something is divided by zero.",
			Reason: "There is no such number.", Remedy: "Judge the divisor before it is used."}
	}
	return q.scale(r, -1)
}

// in is q counted in u, both being of one dimension.
func (q Quantity) in(u *Unit) Quantity {
	if q.Unit == u {
		return q
	}
	return q.In(u)
}

func (q Quantity) plus(r Quantity, unit *Unit) Quantity {
	return NewQuantity(new(big.Rat).Add(q.num, r.num), unit, finer(q.Decimals, r.Decimals))
}

func (q Quantity) negated() Quantity {
	return NewQuantity(new(big.Rat).Neg(q.num), q.Unit, q.Decimals)
}

// finer is the greater number of decimals; next to a measured value an exact one has no say.
func finer(d, e int) int { return max(d, e) }

// scale is q × r or q / r.
func (q Quantity) scale(r Quantity, sign int) (Quantity, error) {
	if q.Dim().IsPoint() || r.Dim().IsPoint() {
		return Quantity{}, &Problem{Rule: RuleTemperature, Message: "A temperature is multiplied or divided.",
			Reason: "A temperature has a zero of its own: twice 20 °C means nothing.",
			Remedy: "Subtract a reference temperature first, and use the difference."}
	}
	v := new(big.Rat)
	if sign > 0 {
		v.Mul(q.num, r.num)
	} else {
		v.Quo(q.num, r.num)
	}
	unit, factor := combine(q.Unit, r.Unit, sign)
	if unit == nil {
		return Quantity{}, &Problem{Rule: RuleOutOfReach, Message: "The unit of this product is too large to work with.",
			Reason: "It multiplies more units than any quantity of a workshop has.", Remedy: "Check what is multiplied with what."}
	}
	if factor != nil {
		v.Mul(v, factor)
	}
	return NewQuantity(v, unit, scaledDecimals(q, r, sign, v, factor)), nil
}

// combine is the unit of a product, and what to multiply by where units of one
// dimension were merged (nil for one).
func combine(a, b *Unit, sign int) (*Unit, *big.Rat) {
	switch {
	case b == One:
		return a, nil
	case a == One && sign > 0:
		return b, nil
	}
	var factor *big.Rat
	var merged []power
	for _, f := range append(a.powers(1), b.powers(sign)...) {
		for _, m := range merged {
			if m.unit == f.unit || m.unit.Dim != f.unit.Dim {
				continue
			}
			if factor == nil {
				factor = big.NewRat(1, 1)
			}
			ratio := new(big.Rat).Quo(f.unit.Factor, m.unit.Factor)
			for range max(f.exp, -f.exp) {
				if f.exp > 0 {
					factor.Mul(factor, ratio)
				} else {
					factor.Quo(factor, ratio)
				}
			}
			f.unit = m.unit
			break
		}
		merged = append(merged, f)
	}
	return theTable.compound(merged), factor
}

// scaledDecimals carries the written steps of both sides through a product: the
// result is known to the larger of (step of q × r) and (q × step of r), to first
// order, and is written with the decimals that this step needs.
func scaledDecimals(q, r Quantity, sign int, v, factor *big.Rat) int {
	if q.Decimals == Exact && r.Decimals == Exact {
		return Exact
	}
	step := new(big.Rat)
	if q.Decimals != Exact {
		if sign > 0 {
			step.Mul(pow10(-q.Decimals), r.num)
		} else {
			step.Quo(pow10(-q.Decimals), r.num)
		}
		if factor != nil {
			step.Mul(step, factor)
		}
		step.Abs(step)
	}
	if r.Decimals != Exact && r.Sign() != 0 {
		s := new(big.Rat).Mul(pow10(-r.Decimals), v)
		s.Quo(s, r.num).Abs(s)
		if s.Cmp(step) > 0 {
			step = s
		}
	}
	if step.Sign() == 0 { // a product with zero
		return max(q.Decimals, r.Decimals)
	}
	return decimalsOf(step)
}

// maxShown bounds what is printed of a converted or computed value.
const maxShown = 12

// decimalsOf is the fewest decimals whose step is not coarser than step.
func decimalsOf(step *big.Rat) int {
	d := 0
	for d < maxShown && pow10(-d).Cmp(step) > 0 {
		d++
	}
	return d
}

// Rounded is q at its own decimals, half to even. An exact quantity stays as it is.
func (q Quantity) Rounded() Quantity {
	if q.Decimals == Exact {
		return q
	}
	return NewQuantity(roundRat(q.num, q.Decimals, halfEven), q.Unit, q.Decimals)
}

// RoundTo is the multiple of step that is nearest to q, half to even, in q's
// unit. Step must be more than zero and of q's dimension, for a temperature a
// difference. The error is a *Problem.
func RoundTo(q, step Quantity) (Quantity, error) { return roundTo(q, step, halfEven) }

// RoundUpTo is the least multiple of step that is not below q; otherwise as RoundTo.
func RoundUpTo(q, step Quantity) (Quantity, error) { return roundTo(q, step, up) }

// RoundDownTo is the greatest multiple of step that is not above q; otherwise as RoundTo.
func RoundDownTo(q, step Quantity) (Quantity, error) { return roundTo(q, step, down) }

func roundTo(q, step Quantity, how rounding) (Quantity, error) {
	unit := q.Unit.Difference()
	if !unit.Dim.Fits(step.Dim()) {
		return Quantity{}, mismatch("Here "+q.Dim().String()+" is rounded to "+step.Dim().String()+".", "Give the step in the unit of the value.")
	}
	if step.Sign() <= 0 {
		return Quantity{}, &Problem{Rule: RuleOutOfReach, Message: "The step to round to is not above zero.",
			Reason: "There is nothing to round to.", Remedy: "Give a step such as 0.05 mm."}
	}
	s := step.in(unit)
	v := new(big.Rat).Quo(q.num, s.num)
	v.Mul(roundRat(v, 0, how), s.num)
	d := s.Decimals
	if n, exact := exactDecimals(s.num); exact && step.Unit == unit {
		d = n
	}
	return NewQuantity(v, q.Unit, d), nil
}
