package revision

import (
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lint/rule"
)

// DayGoesBack compares days of issue, which are written so that they sort.
var DayGoesBack = &rule.Rule{
	Name:     "revision/day-goes-back",
	Severity: diag.Error,
	Finds:    "A new revision dated before the one that was issued last, or before one that is history.",
	Why:      "Builders take the older manual for the newer one.",
	Remedy:   "Correct the day.",
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
  issued   = "2025-03-20" # want "before A of 2026-03-14"
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
	Run: func(p *rule.Pass) {
		for _, h := range p.Nested(entry.History) {
			if day, past := p.Plain("issued"), h.Plain("issued"); day != "" && day < past {
				p.Report(h.At("issued"), "Revision "+h.ID+" is history and dated "+past+", after the manual itself, which is dated "+day+".",
					rule.Related(p.At("issued"), "The manual's own day stands here."))
				return
			}
		}
		if !since(p) || p.Plain("revision") == p.Issued.Revision {
			return // content changed under the letter says it
		}
		if day := p.Plain("issued"); day != "" && day < p.Issued.Snapshot.Issued {
			p.Report(p.At("issued"), "Revision "+p.Plain("revision")+" is dated "+day+", before "+p.Issued.Revision+" of "+p.Issued.Snapshot.Issued+".")
		}
	},
}
