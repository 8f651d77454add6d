package values

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// LikelyNotStated says once for each reading what could be proved if its range were known.
var LikelyNotStated = &rule.Rule{
	Name:     "values/likely-not-stated",
	Severity: diag.Advice,
	Finds:    "A reading with neither `likely` nor `accept`, on which something rests that could be proved.",
	Why:      "Whether the kit serves every engine, or a result stays inside its limit, cannot be told without it.",
	Remedy:   "Say which readings are likely: `likely = \"…\"`.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" { # want "is likely to read"
    title = "Measure the journal"
    on    = [part.shaft]
    tools = [tool.micrometer_25]
  }

  calculate "wear" {
    title  = "Work out the wear"
    is     = "20.00 mm" - measure.journal
    accept = "0..0.02 mm"
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
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  calculate "wear" {
    title  = "Work out the wear"
    is     = "20.00 mm" - measure.journal
    accept = "0..0.02 mm"
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		o := &open{Pass: p, ranges: p.Plan().Ranges(), said: map[*model.Step]bool{}}
		for _, n := range p.Having("from") {
			if n.Step != nil && n.Step.Kind.Yields == kind.Pack {
				o.choice(n.Step)
			}
		}
		for _, n := range p.Having("is") {
			if n.Step != nil && n.Has("accept") && !n.Has("otherwise") {
				o.judged(n)
			}
		}
		eachWorked(p.Having, func(n *model.Node, _ string, e calc.Expr) {
			if divides(e) && len(calc.RangeOf(e, o.ranges).ZeroDivide) > 0 {
				o.rest(e, "that "+rule.Called(n)+" never divides by zero")
			}
		})
	},
}

type open struct {
	*rule.Pass
	ranges *values.Ranges
	said   map[*model.Step]bool
}

func (o *open) choice(s *model.Step) {
	for _, place := range values.Places(s) {
		if sel, err := o.Plan().Selection(s, place); err == nil {
			o.rest(sel.Measured, "that a pack fits every time at "+rule.Called(s.Node))
		}
	}
}

func (o *open) judged(n *model.Node) {
	if below, above := sides(n); below && above {
		return
	}
	for _, place := range values.Places(n.Step) {
		if f := n.Formula("is", place); f != nil {
			o.rest(values.Localize(f.Expr, place), "that "+rule.Called(n)+" stays inside its limit")
		}
	}
}

// rest reports the readings under e of which nothing is known.
func (o *open) rest(e calc.Expr, proof string) {
	for _, v := range unbounded(e, o.ranges) {
		n := o.Find("procedure." + v.Name)
		if n == nil || n.Step == nil || n.Step.Kind.Yields != kind.Reading || o.said[n.Step] {
			continue
		}
		o.said[n.Step] = true
		o.Report(n.Name, "Nothing says what "+rule.Called(n)+" is likely to read, so it cannot be proved "+proof+".")
	}
}
