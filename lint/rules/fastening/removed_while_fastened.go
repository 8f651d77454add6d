package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RemovedWhileFastened: a part that comes off while a fastening still holds it.
var RemovedWhileFastened = &rule.Rule{
	Name:     "fastening/removed-while-fastened",
	Severity: diag.Error,
	Finds:    "A part that comes off while a fastening still holds it.",
	Why:      "It does not come off; a lever that is used then breaks it.",
	Remedy:   "Take the fastening out first.",
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

  remove "cover" {
    title    = "Lift the cover off"
    part     = part.cover # want "still holds"
    for_good = true
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

  remove "bolts" {
    title     = "Take the cover bolts out"
    fastening = fastening.bolts
    for_good  = true
    tools     = [tool.spanner_13]
  }

  remove "cover" {
    title    = "Lift the cover off"
    part     = part.cover
    for_good = true
  }
}
`,
	Run: runRemovedWhileFastened,
}

func runRemovedWhileFastened(p *rule.Pass) {
	for _, b := range p.Breaches(bench.RemovedFastened) {
		p.Breach(b, rule.CalledObject(b.Objects[1])+" still holds "+rule.CalledObject(b.Objects[0])+".")
	}
}
