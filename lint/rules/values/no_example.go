package values

import (
	"errors"

	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
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
			if shown[s.Node] || s.Damaged || cannotChoose(p, s) {
				continue
			}
			if s.Kind.Yields == kind.Pack || s.Kind.Yields == kind.Number && s.Has("accept") {
				p.Report(s.Name, "No worked example shows what "+rule.Called(s.Node)+" gives.")
			}
		}
	},
}

// cannotChoose reports a choice that no rule of group fit lets through, so that no
// example can be right.
func cannotChoose(p *rule.Pass, s *model.Step) bool {
	if !values.Chooses(s) {
		return false
	}
	for _, place := range values.Places(s) {
		if _, err := p.Plan().Selection(s, place); err != nil && !errors.Is(err, values.ErrOpenLimits) {
			return true
		}
		if c, err := p.Plan().Cover(s, place); err == nil && len(c.Served) == 0 {
			return true
		}
	}
	return false
}
