package order

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// ProceduresInRing looks for circles of `after` between procedures.
var ProceduresInRing = &rule.Rule{
	Name:     "order/procedures-in-ring",
	Severity: diag.Error,
	Finds:    "Procedures each of which must be done after another of them, all round.",
	Why:      "None of them can be the first, so none can be begun.",
	Remedy:   "Take one `after` out of the ring.",
	Bad: `
procedure "rest" {
  title = "Let the casting rest"
  after = [procedure.cool] # want "in a ring"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}

procedure "cool" {
  title = "Let the core cool"
  after = [procedure.rest]

  wait "settle" {
    title = "Wait until the core is as warm as the room"
    for   = "1 h"
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
}

procedure "cool" {
  title = "Let the core cool"
  after = [procedure.rest]

  wait "settle" {
    title = "Wait until the core is as warm as the room"
    for   = "1 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, ring := range rings(p.Procedures) {
			first := ring[0]
			titles := make([]string, len(ring))
			about := []func(*diag.Finding){}
			for i, e := range ring {
				titles[i] = rule.Called(e.from)
				if i > 0 {
					about = append(about, rule.Related(e.ref.Span(e.from), rule.Called(e.from)+" must come after "+rule.Called(e.ref.To)+"."))
				}
			}
			p.Report(first.ref.Span(first.from), "The procedures "+strings.Join(titles, ", ")+" wait for each other in a ring.", about...)
		}
	},
}

// edge is one `after` of a procedure.
type edge struct {
	from *model.Node
	ref  model.Ref
}

// rings finds circles of `after`, each once, from its first procedure on. Each
// procedure is in one ring at most.
func rings(procedures []*model.Node) [][]edge {
	const (
		unseen = iota
		open
		closed
	)
	state := map[*model.Node]int{}
	var path []edge
	var found [][]edge
	var visit func(n *model.Node)
	visit = func(n *model.Node) {
		state[n] = open
		for _, r := range n.Refs("after", "") {
			if r.To == nil || r.To.Step != nil {
				continue
			}
			switch state[r.To] {
			case unseen:
				path = append(path, edge{n, r})
				visit(r.To)
				path = path[:len(path)-1]
			case open:
				ring := []edge{{n, r}}
				for i := len(path) - 1; i >= 0 && n != r.To; i-- {
					ring = append([]edge{path[i]}, ring...)
					if path[i].from == r.To {
						break
					}
				}
				found = append(found, ring)
			}
		}
		state[n] = closed
	}
	for _, n := range procedures {
		if state[n] == unseen {
			visit(n)
		}
	}
	return found
}
