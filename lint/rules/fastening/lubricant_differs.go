package fastening

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// LubricantDiffers: threads that are wet with another thing than the torque rests on, or dry where it rests on a lubricant.
var LubricantDiffers = &rule.Rule{
	Name:     "fastening/lubricant-differs",
	Severity: diag.Error,
	Finds:    "Threads that are wet with another thing than the torque rests on, or dry where it rests on a lubricant.",
	Why:      "The same torque stretches an oiled bolt half as far again as a dry one.",
	Remedy:   "Coat the threads with what the fastening names, or set its lubricant and torque to what the threads have.",
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
  lubricant    = supply.engine_oil
  across_flats = "13 mm"
  torque       = "18 N·m ± 10 %"
}

procedure "close" {
  title = "Close the case"

  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
  }

  coat "threads" {
    title    = "Oil the cover bolts"
    on       = [fastening.bolts]
    supplies = [supply.anti_seize]
  }

  fit "bolts" {
    title     = "Start the cover bolts by hand"
    fastening = fastening.bolts
  }

  torque "bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.bolts # want "Anti-seize"
    tools     = [tool.torque_wrench_20, tool.socket_13_quarter]
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
  lubricant    = supply.engine_oil
  across_flats = "13 mm"
  torque       = "18 N·m ± 10 %"
}

procedure "close" {
  title = "Close the case"

  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
  }

  coat "threads" {
    title    = "Oil the cover bolts"
    on       = [fastening.bolts]
    supplies = [supply.engine_oil]
  }

  fit "bolts" {
    title     = "Start the cover bolts by hand"
    fastening = fastening.bolts
  }

  torque "bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.bolts
    tools     = [tool.torque_wrench_20, tool.socket_13_quarter]
  }
}
`,
	Run: runLubricantDiffers,
}

func runLubricantDiffers(p *rule.Pass) {
	for _, b := range p.Breaches(bench.WrongLubricant) {
		has, wants := state(b, 1), state(b, 2)
		p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" tightened "+has+", and its torque is meant for threads that are "+wants+".")
	}
}

// state is what the threads are: dry, or wet with a supply.
func state(b bench.Breach, i int) string {
	if i >= len(b.Objects) || b.Objects[i].Node == nil {
		return "dry"
	}
	return "wet with " + rule.CalledObject(b.Objects[i])
}
