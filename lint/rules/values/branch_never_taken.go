package values

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint/rule"
)

// BranchNeverTaken asks of every condition in a formula whether it can go both ways.
var BranchNeverTaken = &rule.Rule{
	Name:     "values/branch-never-taken",
	Severity: diag.Doubt,
	Finds:    "A choice in a formula that always goes the same way.",
	Why:      "What stands in the other branch looks as if it applied, and never does; mostly a number in the condition is wrong.",
	Remedy:   "Correct the condition, or write only the branch that is taken.",
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
    title     = "Work out the wear"
    is        = measure.journal > "20.10 mm" ? "0 mm" : "20.00 mm" - measure.journal # want "never holds"
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
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
    likely = "19.95..20.02 mm"
  }

  calculate "wear" {
    title     = "Work out the wear"
    is        = measure.journal > "20.00 mm" ? "0 mm" : "20.00 mm" - measure.journal
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
		ways := map[source.Span]calc.Range{} // over all places
		var conditions []source.Span
		eachWorked(p.Having, func(n *model.Node, attr string, e calc.Expr) {
			calc.Walk(e, func(e calc.Expr) bool {
				if c, ok := e.(*calc.Cond); ok {
					span := at(n, c.If.Span())
					old, known := ways[span]
					if !known {
						conditions = append(conditions, span)
					}
					this := calc.RangeOf(c.If, r)
					ways[span] = calc.Range{Yes: old.Yes || this.Yes, No: old.No || this.No}
				}
				return true
			})
		})
		for _, span := range conditions {
			switch w := ways[span]; {
			case !w.Yes:
				p.Report(span, "This condition never holds, so the value before the colon is never used.")
			case !w.No:
				p.Report(span, "This condition always holds, so the value behind the colon is never used.")
			}
		}
	},
}
