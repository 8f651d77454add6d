package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NothingToLoosen: a step that loosens or takes out a fastening that is not on, or is not tight.
var NothingToLoosen = &rule.Rule{
	Name:     "fastening/nothing-to-loosen",
	Severity: diag.Error,
	Finds:    "A step that loosens or takes out a fastening that is not on, or is not tight.",
	Why:      "The builder stands with a spanner before something that is not there.",
	Remedy:   "Take the step out, or put it after the step that tightens the fastening.",
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

  loosen "bolts" {
    title     = "Slacken the cover bolts"
    fastening = fastening.bolts
    by        = "1/2 turn"
    tools     = [tool.spanner_13]
  }

  loosen "bolts_again" {
    title     = "Slacken the cover bolts"
    fastening = fastening.bolts # want "nothing to loosen"
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
	Run: runNothingToLoosen,
}

func runNothingToLoosen(p *rule.Pass) {
	for _, b := range p.Breaches(bench.NothingToLoosen) {
		p.Breach(b, "There is nothing to loosen on "+rule.CalledObject(b.Objects[0])+" here.")
	}
}
