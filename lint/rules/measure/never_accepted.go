package measure

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// NeverAccepted: readings that are likely and that the limits can never accept.
var NeverAccepted = &rule.Rule{
	Name:     "measure/never-accepted",
	Severity: diag.Error,
	Finds:    "Readings that are likely and that the limits can never accept.",
	Why:      "Every builder stops here, with parts that are as they should be.",
	Remedy:   "Correct the limits or what is likely; one of the two is wrong.",
	Bad: `part "housing" {
  name = "Housing"
}

part "shaft" {
  name     = "Shaft"
  in_place = 1
  sits_on  = part.housing
  features = ["journal"]
}

procedure "check" {
  title = "Check the shaft"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    likely    = "0.20..0.30 mm" # want "can ever be accepted"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Good: `part "housing" {
  name = "Housing"
}

part "shaft" {
  name     = "Shaft"
  in_place = 1
  sits_on  = part.housing
  features = ["journal"]
}

procedure "check" {
  title = "Check the shaft"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Run: runNeverAccepted,
}

func runNeverAccepted(p *rule.Pass) {
	ranges := lazily(func() *values.Ranges { return p.Plan().Ranges() })
	for _, s := range p.Steps() {
		if !s.Has("accept") {
			continue
		}
		attr := tooling.Does(s.Kind, kind.WorksOut)
		if attr == "" {
			attr = "likely"
		}
		for _, place := range places(s) {
			from, to := bounds(s, attr, place, ranges), bounds(s, "accept", place, ranges)
			if from == nil || to == nil || !apart(*from, *to) {
				continue
			}
			what := "No reading that is likely"
			if attr != "likely" {
				what = "Nothing that this comes to"
			}
			p.Report(s.At(attr), what+" can ever be accepted.", rule.Related(s.At("accept"), "The limits stand here."))
			break
		}
	}
}

// bounds are all values that an attribute may come to, nil where that is not known.
func bounds(s *model.Step, attr, place string, ranges func() *values.Ranges) *calc.Interval {
	f := s.Formula(attr, place)
	if f == nil {
		return nil
	}
	if l, ok := f.Limits(); ok {
		in := interval(l)
		return &in
	}
	if shape := f.Expr.Type().Shape; shape != calc.NumberShape && shape != calc.LimitsShape {
		return nil
	}
	in := calc.RangeOf(values.Localize(f.Expr, place), ranges()).Number
	return &in
}

// interval is all that limits allow, in base units.
func interval(l calc.Limits) (in calc.Interval) {
	if l.Low != nil {
		in.Lo = l.Low.Base()
	}
	if l.High != nil {
		in.Hi = l.High.Base()
	}
	return in
}

// apart reports two intervals with nothing in common.
func apart(a, b calc.Interval) bool {
	return a.Hi != nil && b.Lo != nil && a.Hi.Cmp(b.Lo) < 0 || b.Hi != nil && a.Lo != nil && b.Hi.Cmp(a.Lo) < 0
}

// lazily makes a value when it is first asked for; for one goroutine.
func lazily[T any](make func() *T) func() *T {
	var made *T
	return func() *T {
		if made == nil {
			made = make()
		}
		return made
	}
}
