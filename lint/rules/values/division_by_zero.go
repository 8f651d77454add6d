package values

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint/rule"
)

// DivisionByZero works every division over all likely readings.
var DivisionByZero = &rule.Rule{
	Name:     "values/division-by-zero",
	Severity: diag.Error,
	Finds:    "A division whose divisor may be zero for readings that the manual calls likely.",
	Why:      "Nothing can be divided by zero, so a builder with that reading gets no result.",
	Remedy:   "Ask first whether the divisor is zero, narrow what is likely, or work it out another way.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

procedure "lean" {
  title = "Find how the shaft leans"

  measure "near" {
    title  = "Measure the run-out near the flange"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0..0.30 mm"
  }

  measure "far" {
    title  = "Measure the run-out at the end"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.10..0.90 mm"
  }

  calculate "lean" {
    title     = "Work out how far it leans"
    is        = measure.far / measure.near # want "may be zero"
    accept    = "0..4"
    otherwise = "Stop. Ask the workshop."
  }

  example "a little" {
    readings = { measure.near = "0.10 mm", measure.far = "0.20 mm" }
    gives    = { calculate.lean = "2" }
  }
}
`,
	Good: `
part "shaft" {
  name = "Shaft"
}

procedure "lean" {
  title = "Find how the shaft leans"

  measure "near" {
    title  = "Measure the run-out near the flange"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.05..0.30 mm"
  }

  measure "far" {
    title  = "Measure the run-out at the end"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.10..0.90 mm"
  }

  calculate "lean" {
    title     = "Work out how far it leans"
    is        = measure.far / measure.near
    accept    = "0..4"
    otherwise = "Stop. Ask the workshop."
  }

  example "a little" {
    readings = { measure.near = "0.10 mm", measure.far = "0.20 mm" }
    gives    = { calculate.lean = "2" }
  }
}
`,
	Run: func(p *rule.Pass) {
		r := p.Plan().Ranges()
		said := map[source.Span]bool{}
		eachWorked(p.Having, func(n *model.Node, attr string, e calc.Expr) {
			if !divides(e) {
				return
			}
			for _, span := range calc.RangeOf(e, r).ZeroDivide {
				found := calc.Witness(e, r, nil)
				if found == nil || said[at(n, span)] {
					continue
				}
				said[at(n, span)] = true
				message := "This divides by what may be zero."
				if len(found.Readings) > 0 {
					message = "The divisor may be zero: it is when " + with(found) + "."
				}
				p.Report(at(n, span), message)
			}
		})
	},
}

// divides reports a division in e, or a function, which may hold one.
func divides(e calc.Expr) bool {
	found := false
	calc.Walk(e, func(e calc.Expr) bool {
		switch e := e.(type) {
		case *calc.Binary:
			found = found || e.Op == calc.Div
		case *calc.Call:
			found = found || e.Body != nil
		}
		return !found
	})
	return found
}
