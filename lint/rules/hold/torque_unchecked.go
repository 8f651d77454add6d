package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TorqueUnchecked reads the critical torques that nobody looked at again.
var TorqueUnchecked = &rule.Rule{
	Name:     "hold/torque-unchecked",
	Severity: diag.Error,
	Finds:    "A critical torque that nobody checks independently.",
	Why:      "One bolt left out is not seen by the one who left it out.",
	Remedy:   "Put a hold that checks this step, released by somebody else.",
	Bad: `
part "rod" {
  name     = "Rod"
  material = "steel"
}

part "cap" {
  name    = "Rod cap"
  sits_on = part.rod
}

part "bolt" {
  name     = "Rod bolt, M8"
  quantity = 2
  sits_on  = part.cap
}

fastening "rod_bolts" {
  name            = "Rod bolts"
  thread          = "M8x1.25"
  bolt_class      = "10.9"
  quantity        = 2
  stack           = [part.cap, part.rod]
  fasteners       = [part.bolt]
  lubricant       = "dry"
  thread_material = "steel"
  thread_length   = "14 mm"
  across_flats    = "13 mm"
  torque          = "34 N·m ± 5 %"
  basis           = "About 70 % of proof at K 0.20"
}

procedure "close" {
  title = "Close the rod"

  fit "cap" {
    title = "Set the cap on the rod"
    part  = part.cap
  }

  fit "bolts" {
    title     = "Start the rod bolts by hand"
    fastening = fastening.rod_bolts
  }

  torque "bolts" {
    title     = "Tighten the rod bolts"
    fastening = fastening.rod_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    critical  = true # want "Nobody checks the critical torque of “Rod bolts”"
  }
}
`,
	Good: `
part "rod" {
  name     = "Rod"
  material = "steel"
}

part "cap" {
  name    = "Rod cap"
  sits_on = part.rod
}

part "bolt" {
  name     = "Rod bolt, M8"
  quantity = 2
  sits_on  = part.cap
}

fastening "rod_bolts" {
  name            = "Rod bolts"
  thread          = "M8x1.25"
  bolt_class      = "10.9"
  quantity        = 2
  stack           = [part.cap, part.rod]
  fasteners       = [part.bolt]
  lubricant       = "dry"
  thread_material = "steel"
  thread_length   = "14 mm"
  across_flats    = "13 mm"
  torque          = "34 N·m ± 5 %"
  basis           = "About 70 % of proof at K 0.20"
}

procedure "close" {
  title = "Close the rod"

  fit "cap" {
    title = "Set the cap on the rod"
    part  = part.cap
  }

  fit "bolts" {
    title     = "Start the rod bolts by hand"
    fastening = fastening.rod_bolts
  }

  torque "bolts" {
    title     = "Tighten the rod bolts"
    fastening = fastening.rod_bolts
    tools     = [tool.torque_wrench_100, tool.socket_13]
    critical  = true
  }

  hold "bolts" {
    title   = "Stop until somebody else has tried the rod bolts"
    checks  = [torque.bolts]
    release = "second person"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.TorqueUnchecked) {
			p.Breach(b, "Nobody checks the critical torque of "+rule.CalledObject(b.Objects[0])+" a second time.")
		}
	},
}
