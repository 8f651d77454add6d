package measure

import (
	"math/big"
	"slices"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// OutsideInstrumentRange: a reading that is likely, or must be accepted, outside the range of the instrument.
var OutsideInstrumentRange = &rule.Rule{
	Name:     "measure/outside-instrument-range",
	Severity: diag.Error,
	Finds:    "A reading that is likely, or must be accepted, outside the range of the instrument.",
	Why:      "The instrument ends before the reading does, and the builder stops for another.",
	Remedy:   "Name an instrument whose range holds all readings that are likely.",
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
    tools     = [tool.feeler_gauges] # want "ends at 1.00 mm"
    likely    = "0.05..1.20 mm"
    accept    = "0.10..0.60 mm"
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
	Run: runOutsideInstrumentRange,
}

func runOutsideInstrumentRange(p *rule.Pass) {
	readings(p, func(s *model.Step) {
		if t, _ := misfit(s); t != nil {
			return
		}
		for _, place := range places(s) {
			if likely, ok := s.Limits("likely", place); ok {
				if accept, ok := s.Limits("accept", place); ok && apart(interval(likely), interval(accept)) {
					continue // one of the two is wrong, and that is said
				}
			}
			if t, problem, attr := beyond(s, place); problem != "" {
				p.Report(t.At, rule.Called(t.Node)+" "+problem+".", rule.Related(s.At(attr), "The reading stands here."),
					rule.Related(t.Node.At("range"), "The range stands here."))
				return
			}
		}
	})
}

// beyond is an instrument and what is wrong with it, where no instrument of the
// step reaches all that is likely, or where nothing is likely, all that is accepted.
func beyond(s *model.Step, place string) (at tooling.Tool, problem, attr string) {
	attr = "likely"
	l, ok := s.Limits(attr, place)
	if !ok {
		attr = "accept"
		if l, ok = s.Limits(attr, place); !ok {
			return at, "", ""
		}
	}
	for _, t := range tooling.Of(s) {
		r, ok := t.Range()
		if !ok {
			if instrument(t) {
				return at, "", "" // it may reach
			}
			continue
		}
		if !r.Low.Dim().Fits(l.Type().Dim) {
			continue
		}
		if missed := reach(t, r, l); missed == "" {
			return at, "", ""
		} else if problem == "" {
			at, problem = t, missed
		}
	}
	return at, problem, attr
}

// reach says which end of limits an instrument misses, or "".
func reach(t tooling.Tool, r joint.Band, l calc.Limits) string {
	reads := t.Reads()
	if slices.Contains(reads, "movement") { // it is set to zero wherever it stands
		width := new(big.Rat).Sub(r.High.Base(), r.Low.Base())
		for _, end := range [...]*calc.Quantity{l.Low, l.High} {
			if end != nil && new(big.Rat).Abs(end.Base()).Cmp(width) > 0 {
				return "travels " + calc.FromBase(width, r.High.Unit, r.High.Decimals).String() + ", and a reading of " + end.String() + " is to be expected"
			}
		}
		return ""
	}
	switch {
	case l.High != nil && l.High.Cmp(r.High) > 0:
		return "ends at " + r.High.String() + ", and a reading of " + l.High.String() + " is to be expected"
	case l.Low != nil && l.Low.Cmp(r.Low) < 0 && !(slices.Contains(reads, "gap") && l.Low.Sign() == 0 && (l.High == nil || r.Low.Cmp(*l.High) < 0)): // no leaf goes in
		return "begins at " + r.Low.String() + ", and a reading of " + l.Low.String() + " is to be expected"
	}
	return ""
}
