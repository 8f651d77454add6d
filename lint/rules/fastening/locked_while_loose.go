package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// LockedWhileLoose: a fastening that is locked before it is tight.
var LockedWhileLoose = &rule.Rule{
	Name:     "fastening/locked-while-loose",
	Severity: diag.Error,
	Finds:    "A fastening that is locked before it is tight.",
	Why:      "The tab or the pin must come off again before the wrench can go on, and a used one is spent.",
	Remedy:   "Lock it after it is tightened.",
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

  lock "bolts" {
    title     = "Bend the tabs up"
    fastening = fastening.bolts # want "before it is tight"
    tools     = [tool.hammer]
  }

  torque "bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.bolts
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
	Run: runLockedWhileLoose,
}

func runLockedWhileLoose(p *rule.Pass) {
	for _, b := range p.Breaches(bench.LockedLoose) {
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" locked here before it is tight.")
	}
}
