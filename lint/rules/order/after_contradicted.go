package order

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// AfterContradicted holds every `after` against the order of the work.
var AfterContradicted = &rule.Rule{
	Name:     "order/after-contradicted",
	Severity: diag.Error,
	Finds:    "A step or procedure that stands before what it must come after.",
	Why:      "A builder who follows the pages does it too early.",
	Remedy:   "Change the order, or take the `after` out if it does not hold any more.",
	Bad: `
procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    after = [wait.dry] # want "comes before"
  }

  wait "dry" {
    title = "Wait until the paint is dry"
    for   = "1 h"
  }
}
`,
	Good: `
procedure "rest" {
  title = "Let the casting rest"

  wait "dry" {
    title = "Wait until the paint is dry"
    for   = "1 h"
  }

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
    after = [wait.dry]
  }
}
`,
	Run: func(p *rule.Pass) {
		waiting := p.Having("after")
		if len(waiting) == 0 {
			return
		}
		inRing := map[*model.Node]bool{}
		for _, ring := range rings(p.Procedures) {
			for _, e := range ring {
				inRing[e.from] = true
			}
		}
		place := orderOfWork(p.Manual)
		wrong := map[[2]*model.Node]bool{} // pairs of procedures, said already
		for _, n := range waiting {
			for _, r := range n.Refs("after", "") {
				if r.To == nil || r.To == n || inRing[n] && inRing[r.To] {
					continue
				}
				mine, theirs := place[n].from, place[r.To].to
				if n.Step != nil && r.To.Step != nil && n.Step.Places != nil && n.Step.Places == r.To.Step.Places {
					theirs = place[r.To].from // place to place
				}
				if mine == 0 || theirs == 0 || theirs < mine {
					continue
				}
				pair := [2]*model.Node{n.Procedure(), r.To.Procedure()}
				if n.Step == nil {
					wrong[pair] = true
				} else if wrong[pair] && pair[0] != pair[1] {
					continue
				}
				p.Report(r.Span(n), rule.Called(n)+" must come after "+rule.Called(r.To)+", and comes before it.",
					rule.Related(r.To.Name, "This comes later."))
			}
		}
	},
}

// span is where a step or procedure stands in the order of work, from 1; zero for
// one that is never done.
type span struct{ from, to int }

type work map[*model.Node]span

func orderOfWork(m *model.Manual) work {
	w := work{}
	n := 0
	values.Work(m, func(s *model.Step, _ string) {
		n++
		w.grow(s.Node, n)
		w.grow(s.Procedure, n)
	})
	return w
}

func (w work) grow(n *model.Node, at int) {
	s := w[n]
	if s.from == 0 {
		s.from = at
	}
	s.to = at
	w[n] = s
}
