package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// LockMissing: a fastening whose locking device is never fitted or set.
var LockMissing = &rule.Rule{
	Name:     "fastening/lock-missing",
	Severity: diag.Error,
	Finds:    "A fastening whose locking device is never fitted or set.",
	Why:      "It comes loose with the first vibration, and nobody looks there again.",
	Remedy:   "Add the step that locks it.",
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

  torque "bolts" { # want "never locked"
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
	Run: runLockMissing,
}

func runLockMissing(p *rule.Pass) {
	for _, b := range p.Breaches(bench.LockMissing) {
		what := "."
		if len(b.Objects) > 1 && b.Objects[1].Node != nil {
			what = " with " + rule.CalledObject(b.Objects[1]) + "."
		}
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" never locked"+what)
	}
	for _, f := range p.Having("to_slot") {
		if f.Def == entry.Fastening && f.Flag("to_slot") && !f.Has("locked_by") && !f.Damaged {
			p.Report(f.Name, rule.Called(f)+" has slots for a pin, and nothing locks it.",
				rule.Remedy("Give locked_by: the split pin or wire that goes through the slots."),
				rule.Related(f.At("to_slot"), "It is turned on to a slot."))
		}
	}
	for _, s := range p.Steps() {
		for _, r := range tooling.Done(s, kind.Locks) {
			if r.To != nil && !s.Has("by") && !r.To.Has("locked_by") && !r.To.Damaged && !s.Damaged {
				p.Report(s.Name, "This locks "+rule.Called(r.To)+", and neither says with what.",
					rule.Remedy("Give the fastening locked_by, or the step by."),
					rule.Related(r.To.Name, "The fastening stands here."))
			}
		}
	}
}
