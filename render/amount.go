package render

import (
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/values"
)

// quantity is one value for reader and machine.
func (l *lowering) quantity(q calc.Quantity) *Amount {
	s := l.style.Quantity(q)
	c := q.Coded()
	return &Amount{s.First, s.Other, calc.CodedLiteral{Nominal: &c}}
}

// limits are a range for reader and machine.
func (l *lowering) limits(v calc.Limits) *Amount {
	s := l.style.Limits(v.Low, v.High)
	return &Amount{s.First, s.Other, calc.Literal{Low: v.Low, High: v.High}.Coded()}
}

// amount is a formula as a number to set: a value with the limits allowed
// around it, or a range alone. nil as long as it is not known.
func (l *lowering) amount(f *model.Formula, sc *scope) (set, allowed *Amount) {
	if f == nil {
		return nil, nil
	}
	if lit := f.Literal; lit != nil {
		s := l.style.Literal(*lit)
		if !lit.IsLimits() || lit.Nominal == nil {
			return &Amount{s.First, s.Other, lit.Coded()}, nil
		}
		first, firstRange, _ := strings.Cut(s.First, ", ") // no number holds a comma
		other, otherRange, _ := strings.Cut(s.Other, ", ")
		if lit.Upper != nil && lit.Upper.Dim() == calc.Plain { // of ± 5 % no more decimals than the value has
			r := l.style.Limits(atDecimalsOf(lit.Low, lit.Nominal), atDecimalsOf(lit.High, lit.Nominal))
			firstRange, otherRange = r.First, r.Other
		}
		return &Amount{first, other, calc.Literal{Nominal: lit.Nominal}.Coded()},
			&Amount{firstRange, otherRange, calc.Literal{Low: lit.Low, High: lit.High}.Coded()}
	}
	switch v := l.value(f, sc).(type) {
	case calc.Quantity:
		return l.quantity(v), nil
	case calc.Limits:
		return l.limits(v), nil
	}
	return nil, nil
}

// atDecimalsOf is q at the decimals of another value, which limits are then
// rounded to, inward.
func atDecimalsOf(q, other *calc.Quantity) *calc.Quantity {
	if q == nil || other.Decimals == calc.Exact {
		return q
	}
	r := calc.NewQuantity(q.Num(), q.Unit, other.Decimals)
	return &r
}

// one is a formula as one amount, its limits left out.
func (l *lowering) one(f *model.Formula, sc *scope) *Amount {
	set, _ := l.amount(f, sc)
	return set
}

// value is what a formula comes to, or nil.
func (l *lowering) value(f *model.Formula, sc *scope) calc.Value {
	if f == nil {
		return nil
	}
	if f.Const != nil {
		return f.Const
	}
	v, problem := calc.Eval(f.Expr, sc)
	if problem != nil {
		return nil
	}
	return v
}

// limit is what decides about a value. Where the formula is a condition, or
// limits that are not known yet, judge is it in words.
func (l *lowering) limit(f *model.Formula, sc *scope) (limit *Limit, judge string) {
	if f == nil {
		return nil, ""
	}
	v, ok := l.value(f, sc).(calc.Limits)
	if !ok {
		if q, isOne := l.value(f, sc).(calc.Quantity); isOne {
			return &Limit{Range: *l.quantity(q)}, ""
		}
		return nil, calc.FormulaWith(f.Expr, sc)
	}
	limit = &Limit{Range: *l.limits(v)}
	if v.Target != nil {
		limit.Aim = l.quantity(*v.Target)
	}
	if len(f.Refs) == 1 && f.Refs[0].To != nil && f.Refs[0].To.Is(entry.Limit) {
		limit.Name, limit.Basis = f.Refs[0].To.Title(), f.Refs[0].To.Plain("basis")
	}
	return limit, ""
}

// verdict is how the value of a step stands to its limits.
func (l *lowering) verdict(s *model.Step, sc *scope) Verdict {
	switch v, _ := l.env.Judge(s, sc.keyPlace(s)); v {
	case values.Accepted:
		return Inside
	case values.Refused:
		return Outside
	}
	return Unknown
}

// unit is the unit that readers see a quantity in.
func (l *lowering) unit(q calc.Quantity) *calc.Unit {
	if partner := calc.PartnerOf(q, l.style.Gallon); partner != nil && l.style.First != calc.Neither && q.Unit.System != l.style.First {
		return partner
	}
	return q.Unit
}

// label is the name of a unit beside a box.
func label(u *calc.Unit) string {
	if u == nil {
		return ""
	}
	if u.Plural != "" {
		return u.Plural
	}
	return u.Name
}
