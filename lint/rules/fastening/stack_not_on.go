package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// StackNotOn: a fastening that is tightened before all that it clamps is on.
var StackNotOn = &rule.Rule{
	Name:     "fastening/stack-not-on",
	Severity: diag.Error,
	Finds:    "A fastening that is tightened before all that it clamps is on.",
	Why:      "What is missing cannot go in any more, and the number is reached on the wrong parts.",
	Remedy:   "Tighten it after the last part of its stack is on. Where a trial fit leaves parts out, say trial and without.",
	Bad: `part "case" {
  name = "Case"
}

part "cover" {
  name    = "Cover"
  sits_on = part.case
}

part "plate" {
  name    = "Name plate"
  sits_on = part.cover
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
  stack        = [part.plate, part.cover, part.case]
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
    fastening = fastening.bolts # want "is not on"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }

  fit "plate" {
    title = "Lay the name plate on the cover"
    part  = part.plate
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

part "plate" {
  name    = "Name plate"
  sits_on = part.cover
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
  stack        = [part.plate, part.cover, part.case]
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

  fit "plate" {
    title = "Lay the name plate on the cover"
    part  = part.plate
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
	Run: runStackNotOn,
}

func runStackNotOn(p *rule.Pass) {
	for _, b := range p.Breaches(bench.StackNotOn) {
		verb := " is not on yet."
		if len(b.Objects) > 2 {
			verb = " are not on yet."
		}
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" tightened while "+rule.CalledAll(b.Objects[1:])+verb)
	}
}
