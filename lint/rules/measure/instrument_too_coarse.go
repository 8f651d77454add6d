package measure

import (
	"math/big"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// InstrumentTooCoarse: an instrument that is too coarse for the tolerance that its reading serves in the end.
var InstrumentTooCoarse = &rule.Rule{
	Name:     "measure/instrument-too-coarse",
	Severity: diag.Error,
	Finds:    "An instrument that is too coarse for the tolerance that its reading serves in the end.",
	Why:      "A reading just inside the limit may be a part well outside it, and the other way round.",
	Remedy:   "Name a finer instrument, or widen the limit if the drawing allows it.",
	Source:   "Five steps to the tolerance and four times its half in accuracy: common practice, no source.",
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
    tools     = [tool.caliper] # want "too coarse"
    likely    = "0.02..0.30 mm"
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
	Run: runInstrumentTooCoarse,
}

func runInstrumentTooCoarse(p *rule.Pass) {
	resolution, accuracy := p.Threshold("resolution_ratio").Base(), p.Threshold("accuracy_ratio").Base()
	serves := served(p)
	readings(p, func(s *model.Step) {
		width, use := serves(s)
		if width == nil || width.Sign() <= 0 {
			return
		}
		if t, _ := misfit(s); t != nil {
			return
		}
		dim, ok := dimension(s)
		if !ok {
			return
		}
		var at *tooling.Tool
		problem := ""
		for _, t := range tooling.Of(s) {
			if !t.Shows(dim) {
				continue
			}
			missed := coarse(s, t, width, resolution, accuracy)
			if missed == "" {
				return
			}
			if at == nil {
				at, problem = &t, missed
			}
		}
		if at == nil {
			return
		}
		p.Report(at.At, rule.Called(at.Node)+" is too coarse: it "+problem+".",
			rule.Reason("The reading serves a tolerance of "+use.width()+" in the end"+use.through()+". A reading just inside the limit may be a part well outside it."),
			rule.Related(use.node.At(use.attr), "The tolerance stands here."))
	})
}

// coarse says why an instrument is too coarse for a width in base units, or "".
func coarse(s *model.Step, t tooling.Tool, width, resolution, accuracy *big.Rat) string {
	if q := t.Quantity("resolution", ""); q != nil && q.Sign() > 0 {
		limit := new(big.Rat).Quo(width, resolution)
		if q.Base().Cmp(limit) > 0 {
			return "shows steps of " + q.String() + ", and steps of " + calc.FromBase(limit, q.Unit, q.Decimals+1).Rounded().String() + " are the coarsest that will do"
		}
	}
	if q := t.Quantity("accuracy", ""); q != nil && q.Sign() > 0 {
		limit := new(big.Rat).Quo(width, accuracy)
		limit.Quo(limit, big.NewRat(2, 1))
		off, unit := q.Base(), q.Unit
		if q.Dim() == calc.Plain {
			end := largest(s)
			if end == nil {
				return ""
			}
			off, unit = new(big.Rat).Mul(off, end.Base()), end.Unit.Difference()
		}
		if off.Cmp(limit) > 0 {
			return "may be off by " + calc.FromBase(off, unit, q.Decimals+1).Rounded().String() + ", and " + calc.FromBase(limit, unit, q.Decimals+2).Rounded().String() + " is the most that will do"
		}
	}
	return ""
}

// largest is the largest reading of a step that is likely, or accepted.
func largest(s *model.Step) *calc.Quantity {
	for _, attr := range [...]string{"likely", "accept"} {
		if l, ok := s.Limits(attr, ""); ok && l.High != nil {
			return l.High
		}
	}
	return nil
}
