package values

import (
	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// Verdict is what a judging step makes of its value.
type Verdict uint8

// Verdicts.
const (
	Unjudged Verdict = iota // nothing to judge by, or not known yet
	Accepted
	Refused
)

// Judge is the verdict of a step at a place, with the limits it judged by; these
// are empty where a condition decides. A choice is accepted when a pack fits.
func (e *Env) Judge(s *model.Step, place string) (Verdict, calc.Limits) {
	if s.Kind.Yields == kind.Pack {
		switch r := e.result(s, place); {
		case r.pack != nil:
			return Accepted, calc.Limits{}
		case r.problem != nil:
			return Refused, calc.Limits{}
		}
		return Unjudged, calc.Limits{}
	}
	f := s.Formula("accept", place)
	q, ok := e.Of(s, place).(calc.Quantity)
	if f == nil || !ok {
		return Unjudged, calc.Limits{}
	}
	v, p := calc.Eval(f.Expr, e.At(place))
	if p != nil {
		return Unjudged, calc.Limits{}
	}
	var l calc.Limits
	good := false
	switch v := v.(type) {
	case calc.Limits:
		l = v
	case calc.Quantity:
		l = calc.Limits{Low: &v, High: &v, Target: &v}
	case calc.Truth:
		good = bool(v)
	}
	if l != (calc.Limits{}) {
		if !l.Type().Dim.Fits(q.Dim()) {
			return Unjudged, calc.Limits{}
		}
		good = l.Contain(q)
	}
	if good {
		return Accepted, l
	}
	return Refused, l
}
