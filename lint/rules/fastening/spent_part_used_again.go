package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// SpentPartUsedAgain: a part or a fastening that serves once and is used a second time.
var SpentPartUsedAgain = &rule.Rule{
	Name:     "fastening/spent-part-used-again",
	Severity: diag.Error,
	Finds:    "A part or a fastening that serves once and is used a second time.",
	Why:      "A tab bent twice cracks, and a crushed washer leaks.",
	Remedy:   "Fit a new one: raise its quantity, and say in the step that it is new.",
	Bad: `part "case" {
  name = "Case"
}

part "cover" {
  name    = "Cover"
  sits_on = part.case
}

part "tab" {
  name     = "Tab washer"
  sits_on  = part.cover
  use_once = true
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
  locked_by    = part.tab
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

  lock "bolts" {
    title     = "Bend the tabs up"
    fastening = fastening.bolts
    tools     = [tool.hammer]
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

  lock "bolts_again" {
    title     = "Bend the tabs up again"
    fastening = fastening.bolts # want "spent"
    tools     = [tool.hammer]
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

part "tab" {
  name     = "Tab washer"
  sits_on  = part.cover
  use_once = true
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
  locked_by    = part.tab
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

  lock "bolts" {
    title     = "Bend the tabs up"
    fastening = fastening.bolts
    tools     = [tool.hammer]
  }
}
`,
	Run: runSpentPartUsedAgain,
}

func runSpentPartUsedAgain(p *rule.Pass) {
	for _, b := range p.Breaches(bench.SpentUsedAgain) {
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" spent and used again.")
	}
}
