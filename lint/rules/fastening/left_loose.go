package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// LeftLoose: a fastening that is loosened and never tightened again.
var LeftLoose = &rule.Rule{
	Name:     "fastening/left-loose",
	Severity: diag.Error,
	Finds:    "A fastening that is loosened and never tightened again.",
	Why:      "It looks done, since it was tightened once.",
	Remedy:   "Add a step that tightens it again, with from = \"loosened\".",
	Bad: `part "case" {
  name = "Case"
}

part "cover" {
  name    = "Cover"
  sits_on = part.case
}

part "bolt" {
  name     = "Cover bolt"
  quantity = 2
  sits_on  = part.cover
}

fastening "bolts" {
  name         = "Cover bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.cover, part.case]
  fasteners    = [part.bolt]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "close" {
  title = "Close the case"

  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
  }

  fit "bolts" {
    title     = "Start the cover bolts by hand"
    fastening = fastening.bolts
  }

  torque "bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }

  loosen "bolts" { # want "never tightened again"
    title     = "Slacken the cover bolts"
    fastening = fastening.bolts
    by        = "1/2 turn"
    tools     = [tool.spanner_13]
  }
}
`,
	Good: `part "case" {
  name = "Case"
}

part "cover" {
  name    = "Cover"
  sits_on = part.case
}

part "bolt" {
  name     = "Cover bolt"
  quantity = 2
  sits_on  = part.cover
}

fastening "bolts" {
  name         = "Cover bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.cover, part.case]
  fasteners    = [part.bolt]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "close" {
  title = "Close the case"

  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
  }

  fit "bolts" {
    title     = "Start the cover bolts by hand"
    fastening = fastening.bolts
  }

  torque "bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }

  loosen "bolts" {
    title     = "Slacken the cover bolts"
    fastening = fastening.bolts
    by        = "1/2 turn"
    tools     = [tool.spanner_13]
  }

  torque "again" {
    title     = "Tighten the cover bolts again"
    fastening = fastening.bolts
    from      = "loosened"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Run: runLeftLoose,
}

func runLeftLoose(p *rule.Pass) {
	for _, b := range p.Breaches(bench.LeftLoose) {
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" loosened here and never tightened again.")
	}
}
