package revision

import (
	"slices"

	"fettle/bench/diff"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// WasNamesNothing looks for a former label in the revision that was issued last.
var WasNamesNothing = &rule.Rule{
	Name:     "revision/was-names-nothing",
	Severity: diag.Doubt,
	Finds:    "A former label that the last issued revision does not have.",
	Why:      "What a builder recorded under the true former label is lost: it will be asked for again.",
	Remedy:   "Correct the label, or take it out.",
	Bad: `
-- issued/m/casting.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest]
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
-- m/casting.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "B"
  issued   = "2026-04-02"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest]
}

procedure "rest" {
  title = "Let the casting rest"

  wait "warm" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    was   = ["setle"] # want "had no step called ` + "`setle`" + `"
  }
}
`,
	Good: `
-- issued/m/casting.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "B"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest]
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    was   = ["pause"]
  }
}
-- m/casting.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "C"
  issued   = "2026-04-02"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.cool]
}

procedure "cool" {
  title = "Let the casting rest"
  was   = ["rest"]

  wait "warm" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    was   = ["pause", "settle"]
  }
}
`,
	Run: func(p *rule.Pass) {
		if !since(p) {
			return
		}
		then := p.Issued.Model
		pairs := diff.Pair(then, p.Manual)
		look := func(n *model.Node, what string, had func(label string) bool) {
			for _, label := range written(n) {
				old := pairs.Old(n)
				if had(label.Text) || old != nil && slices.Contains(old.Names("was"), label.Text) {
					continue
				}
				p.Report(label.Span, "Revision "+p.Issued.Revision+" had no "+what+" called `"+label.Text+"`.")
			}
		}
		for _, proc := range p.Procedures {
			look(proc, "procedure", func(label string) bool { return then.Find("procedure."+label) != nil })
		}
		p.EachStep(func(s *model.Step) {
			look(s.Node, "step", func(label string) bool {
				return len(diff.Former(label, s, then, pairs.Old(s.Procedure))) > 0
			})
		})
	},
}

// written are the former labels of a block with their places.
func written(n *model.Node) model.Names {
	names, _ := n.Get("was", "").(model.Names)
	return names
}
