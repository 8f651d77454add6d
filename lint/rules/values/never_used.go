package values

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NeverUsed looks for values that lead to nothing.
var NeverUsed = &rule.Rule{
	Name:     "values/never-used",
	Severity: diag.Doubt,
	Finds:    "A reading, calculation or pack that nothing judges, uses, prints or fits.",
	Why:      "A builder takes a reading and learns nothing from it; mostly the limit or the step that needs it was forgotten.",
	Remedy:   "Give it `accept`, use it, or say `record = true` where the record is what it is for.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" { # want "Nothing judges or uses"
    title  = "Measure the journal"
    on     = [part.shaft]
    tools  = [tool.micrometer_25]
    likely = "19.97..20.01 mm"
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
    likely = "19.97..20.01 mm"
    record = true
  }
}
`,
	Run: func(p *rule.Pass) {
		told := map[*model.Node]bool{} // parts of which the bench says so
		for _, b := range p.Breaches(bench.NeverFitted) {
			told[b.Node] = true
		}
		byName := fitted(p)
		for _, s := range p.Steps() {
			switch s.Kind.Yields {
			case kind.Reading, kind.Number:
				if s.Has("accept") {
					continue
				}
			case kind.Pack:
				if part := s.Ref("from"); part == nil || told[part] || byName[part] {
					continue
				}
			default:
				continue
			}
			if p.Read(s) || s.Damaged || s.Has("record") && s.Flag("record") {
				continue
			}
			message := "Nothing judges or uses what " + rule.Called(s.Node) + " gives."
			if s.Kind.Yields == kind.Pack {
				message = "The pack that " + rule.Called(s.Node) + " picks is never fitted."
			}
			p.Report(s.Name, message)
		}
	},
}

// fitted are the parts that a step names itself, and not by the pack chosen.
func fitted(p *rule.Pass) map[*model.Node]bool {
	parts := map[*model.Node]bool{}
	for _, n := range p.Having("part") {
		for _, r := range n.AllRefs("part") {
			if n.Step != nil && r.To != nil {
				parts[r.To] = true
			}
		}
	}
	return parts
}
