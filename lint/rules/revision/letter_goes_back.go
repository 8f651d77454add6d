package revision

import (
	"fettle/bench/revision"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lint/rule"
)

// LetterGoesBack compares letters as drawings order them: A, B … Z, AA.
var LetterGoesBack = &rule.Rule{
	Name:     "revision/letter-goes-back",
	Severity: diag.Error,
	Finds:    "A revision whose letter comes before one that is issued, or that is history.",
	Why:      "Builders take the older manual for the newer one.",
	Remedy:   "Give it the letter after the last one.",
	Bad: `
-- issued/m/casting.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "C"
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
  revision = "B" # want "comes before C, which is issued"
  issued   = "2026-04-02"
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
  revision = "Z"
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
  revision = "AA"
  issued   = "2026-04-02"
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
	Run: func(p *rule.Pass) {
		for _, h := range p.Nested(entry.History) {
			if c, ok := revision.Compare(p.Plain("revision"), h.ID); ok && c <= 0 {
				p.Report(h.Name, "Revision "+h.ID+" is history, and the manual is revision "+p.Plain("revision")+".",
					rule.Related(p.At("revision"), "The manual's own letter stands here."))
				return
			}
		}
		if !since(p) {
			return
		}
		if c, ok := revision.Compare(p.Plain("revision"), p.Issued.Revision); ok && c < 0 {
			p.Report(p.At("revision"), "Revision "+p.Plain("revision")+" comes before "+p.Issued.Revision+", which is issued.")
		}
	},
}
