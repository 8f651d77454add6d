package revision

import (
	"fmt"

	"fettle/bench/diff"
	"fettle/bench/revision"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ChangedUnderLetter compares the manual with what was issued last.
var ChangedUnderLetter = &rule.Rule{
	Name:     "revision/changed-under-letter",
	Severity: diag.Error,
	Finds:    "A manual that has changed since its revision was issued, under the same letter.",
	Why:      "Two builders with the same letter hold two manuals, and nobody can tell whose engine is right.",
	Remedy:   "Give it the next letter and its day, and say in a `history` block why the last one was replaced.",
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
  revision = "A" # want "One thing has changed since revision A was issued"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.rest]
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "3 h"
  }
}
`,
	Good: `
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

  history "A" {
    issued = "2026-03-14"
    reason = "Thick castings were still cold inside after two hours."
  }
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "3 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		if !since(p) || p.Issued.Revision != p.Plain("revision") || p.Issued.Digest == revision.Digest(p.Manual) {
			return
		}
		changes := diff.Diff(p.Issued.Model, p.Manual).List
		what := fmt.Sprintf("%d things have", len(changes))
		switch len(changes) {
		case 0:
			what = "The day or the history has"
		case 1:
			what = "One thing has"
		}
		var more []func(*diag.Finding)
		const most = 5
		for i := range min(len(changes), most) {
			if n := changes[i].New; n != nil && n != p.Node {
				more = append(more, rule.Related(n.Name, "This is not as it was issued."))
			}
		}
		p.Report(p.At("revision"), what+" changed since revision "+p.Issued.Revision+" was issued on "+p.Issued.Snapshot.Issued+".", more...)
	},
}
