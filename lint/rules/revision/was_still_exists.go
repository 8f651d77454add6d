package revision

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// WasStillExists looks for a former label among those of today.
var WasStillExists = &rule.Rule{
	Name:     "revision/was-still-exists",
	Severity: diag.Error,
	Finds:    "A former label that another step or procedure still has.",
	Why:      "What a builder recorded under that label goes to one of two steps, and nobody can tell to which.",
	Remedy:   "Take the label out of `was`, or rename the other.",
	Bad: `
procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }

  wait "warm" {
    title = "Wait until the oven is as warm as the room"
    for   = "2 h"
    was   = ["settle"] # want "` + "`settle`" + ` is still there"
  }
}
`,
	Good: `
procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }

  wait "warm" {
    title = "Wait until the oven is as warm as the room"
    for   = "2 h"
    was   = ["rest"]
  }
}
`,
	Run: func(p *rule.Pass) {
		look := func(n *model.Node, find func(label string) *model.Node) {
			for _, label := range written(n) {
				if other := find(label.Text); other != nil {
					p.Report(label.Span, "`"+label.Text+"` is still there.", rule.Related(other.Name, "Here."))
				}
			}
		}
		for _, proc := range p.Procedures {
			look(proc, func(label string) *model.Node { return p.Find("procedure." + label) })
		}
		p.EachStep(func(s *model.Step) {
			look(s.Node, func(label string) *model.Node {
				switch strings.Count(label, ".") {
				case 0:
					return p.Find(s.Procedure.Address + "." + s.Def.Name + "." + label)
				case 1:
					return p.Find(s.Procedure.Address + "." + label)
				}
				return p.Find("procedure." + label)
			})
		})
	},
}
