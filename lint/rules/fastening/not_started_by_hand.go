package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NotStartedByHand: a fastening that is tightened and was never started by hand.
var NotStartedByHand = &rule.Rule{
	Name:     "fastening/not-started-by-hand",
	Severity: diag.Error,
	Finds:    "A fastening that is tightened and was never started by hand.",
	Why:      "A bolt that a wrench starts crosses its thread, and it is the casting that pays.",
	Remedy:   "Add a fit step that starts its fasteners by hand, before it is tightened.",
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

  torque "bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.bolts # want "never started"
    tools     = [tool.torque_wrench_100, tool.socket_13]
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
}
`,
	Run: runNotStartedByHand,
}

func runNotStartedByHand(p *rule.Pass) {
	for _, b := range p.Breaches(bench.NotStarted) {
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" tightened here and was never started by hand.")
	}
}
