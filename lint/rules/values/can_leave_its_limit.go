package values

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// CanLeaveItsLimit works judged calculations over all likely readings.
var CanLeaveItsLimit = &rule.Rule{
	Name:     "values/can-leave-its-limit",
	Severity: diag.Error,
	Finds:    "A judged calculation that can lie outside its limit for likely readings, with no `otherwise` for it.",
	Why:      "A builder with those readings stands before a result that is refused, and is told nothing.",
	Remedy:   "Say in `otherwise` what to do when the result is outside.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title  = "Measure the journal"
    on     = [part.shaft]
    tools  = [tool.micrometer_25]
    likely = "19.95..20.00 mm"
  }

  calculate "wear" {
    title  = "Work out the wear"
    is     = "20.00 mm" - measure.journal
    accept = "0..0.02 mm" # want "0.05 mm when journal is 19.95 mm"
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Good: `
part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title  = "Measure the journal"
    on     = [part.shaft]
    tools  = [tool.micrometer_25]
    likely = "19.95..20.00 mm"
  }

  calculate "wear" {
    title     = "Work out the wear"
    is        = "20.00 mm" - measure.journal
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		r := p.Plan().Ranges()
		for _, n := range p.Having("is") {
			if n.Step == nil || n.Step.Kind.Yields != kind.Number || !n.Has("accept") || n.Has("otherwise") {
				continue
			}
			below, above := sides(n)
			if below && above {
				continue
			}
			for _, place := range values.Places(n.Step) {
				if leaves(p, r, n, place, below, above) {
					break
				}
			}
		}
	},
}

// sides reports which sides of the limits have an otherwise block.
func sides(n *model.Node) (below, above bool) {
	for _, b := range n.Nested(kind.Otherwise) {
		w := b.Plain("when")
		below = below || w != "above"
		above = above || w != "below"
	}
	return below, above
}

// leaves reports a result that can lie on a side of its limits that nobody speaks of.
func leaves(p *rule.Pass, r *values.Ranges, n *model.Node, place string, below, above bool) bool {
	is, accept := n.Formula("is", place), n.Formula("accept", place)
	if is == nil || accept == nil {
		return false
	}
	e := values.Localize(is.Expr, place)
	l, constant := accept.Limits()
	switch {
	case constant:
		out := func(v calc.Value) bool {
			q, ok := v.(calc.Quantity)
			return ok && q.Dim().Fits(l.Type().Dim) && (!below && l.Low != nil && q.Cmp(*l.Low) < 0 || !above && l.High != nil && q.Cmp(*l.High) > 0)
		}
		in := calc.RangeOf(e, r).Number
		if (below || !under(in, l.Low)) && (above || !over(in, l.High)) {
			return false
		}
		found := calc.Witness(e, r, out)
		if found == nil || found.Problem != nil {
			return false
		}
		report(p, n, found, say(found.Value)+" when "+with(found))
	case accept.Expr.Type().Shape == calc.TruthShape:
		judged := values.Localize(accept.Expr, place)
		if !calc.RangeOf(judged, r).No {
			return false
		}
		found := calc.Witness(judged, r, func(v calc.Value) bool { return v == calc.Truth(false) })
		if found == nil || found.Problem != nil {
			return false
		}
		report(p, n, found, "refused when "+with(found))
	default:
		return outsideWorkedLimits(p, r, n, e, values.Localize(accept.Expr, place), below, above)
	}
	return true
}

// outsideWorkedLimits judges limits that are worked out themselves.
func outsideWorkedLimits(p *rule.Pass, r *values.Ranges, n *model.Node, e, accept calc.Expr, below, above bool) bool {
	low, high := accept, accept
	if call, ok := accept.(*calc.Call); ok {
		b, ok := call.Body.(*calc.Between)
		if !ok {
			return false
		}
		low, high = b.Low, b.High
	} else if accept.Type().Shape != calc.NumberShape {
		return false
	}
	for _, side := range []struct {
		spoken bool
		op     calc.Op
		end    calc.Expr
	}{{below, calc.Less, low}, {above, calc.Greater, high}} {
		if side.spoken || side.end == nil {
			continue
		}
		out, problem := calc.NewBinary(side.op, e, side.end, e.Span())
		if problem != nil || !calc.RangeOf(out, r).Yes {
			continue
		}
		found := calc.Witness(out, r, func(v calc.Value) bool { return v == calc.Truth(true) })
		if found != nil && found.Problem == nil {
			report(p, n, found, "refused when "+with(found))
			return true
		}
	}
	return false
}

func report(p *rule.Pass, n *model.Node, found *calc.Found, outside string) {
	if len(found.Readings) == 0 {
		outside = say(found.Value) + " always"
	}
	p.Report(n.At("accept"), rule.Called(n)+" can come out outside its limit: "+outside+".",
		rule.Related(n.At("is"), "It is worked out here."))
}

func under(in calc.Interval, low *calc.Quantity) bool {
	return low != nil && (in.Lo == nil || in.Lo.Cmp(low.Base()) < 0)
}

func over(in calc.Interval, high *calc.Quantity) bool {
	return high != nil && (in.Hi == nil || in.Hi.Cmp(high.Base()) > 0)
}
