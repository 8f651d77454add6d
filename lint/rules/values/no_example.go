package values

import (
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NoExample looks for arithmetic that nobody has worked by hand.
var NoExample = &rule.Rule{
	Name:     "values/no-example",
	Severity: diag.Advice,
	Finds:    "A choice, or a calculation that is judged, without a worked example.",
	Why:      "A sign that runs the wrong way shows in one worked example, and in no amount of reading.",
	Remedy:   "Work one through by hand and write it beside the step: example \"…\" { readings = { … } gives = { … } }.",
	Bad: `
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

  calculate "wear" { # want "No worked example"
    title     = "Work out the wear"
    is        = "20.00 mm" - measure.journal
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
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
		shown := map[*model.Node]bool{}
		for _, e := range p.Examples {
			if t, ok := e.Get("gives", "").(*model.Table); ok {
				for _, pair := range t.Pairs {
					shown[pair.Key.To] = true
				}
			}
		}
		for _, s := range p.Steps() {
			if shown[s.Node] || s.Damaged {
				continue
			}
			if s.Kind.Yields == kind.Pack || s.Kind.Yields == kind.Number && s.Has("accept") {
				p.Report(s.Name, "No worked example shows what "+rule.Called(s.Node)+" gives.")
			}
		}
	},
}
