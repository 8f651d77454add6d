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
	Bad: `part "bed" {
  name  = "Bed plate"
  faces = ["pad"]
}

part "unit" {
  name    = "Motor"
  sits_on = part.bed
  mass    = "12 kg"
}

part "shim" {
  name    = "Motor shim, slotted"
  sits_on = part.bed

  size "0.20 mm" { in_kit = 2 }
  size "0.50 mm" { in_kit = 2 }
}

part "bolt" {
  name     = "Motor bolt"
  quantity = 2
  sits_on  = part.unit
}

fastening "bolts" {
  name         = "Motor bolts"
  thread       = "M10x1.5"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.unit, part.shim, part.bed]
  fasteners    = [part.bolt]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "48 N·m ± 10 %"
}

procedure "set" {
  title = "Set the motor on the bed"

  fit "unit" {
    title = "Set the motor on its pad"
    part  = part.unit
  }

  measure "gap" {
    title     = "Measure the gap under the foot"
    on        = [part.bed.face.pad]
    tools     = [tool.feeler_gauges]
    likely    = "0.25..0.55 mm"
    otherwise = "Look for dirt under the foot."
  }

  choose "shim" {
    title  = "Choose the shim"
    from   = part.shim
    pieces = "1"
    gap    = measure.gap
    leaves = "-0.30..0.35 mm"
  }

  example "a middling foot" {
    readings = { measure.gap = "0.45 mm" }
    gives    = { choose.shim.total = "0.50 mm", choose.shim.result = "-0.05 mm" }
  }

  fit "bolts" {
    title     = "Start the bolts by hand"
    fastening = fastening.bolts
  }

  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.bolts # want "is not on"
    tools     = [tool.torque_wrench_100, tool.socket_16]
  }

  fit "shim" {
    title = "Slide the shim under the foot: ${choose.shim}"
    part  = choose.shim
  }
}
`,
	Good: `part "bed" {
  name  = "Bed plate"
  faces = ["pad"]
}

part "unit" {
  name    = "Motor"
  sits_on = part.bed
  mass    = "12 kg"
}

part "shim" {
  name    = "Motor shim, slotted"
  sits_on = part.bed

  size "0.20 mm" { in_kit = 2 }
  size "0.50 mm" { in_kit = 2 }
}

part "bolt" {
  name     = "Motor bolt"
  quantity = 2
  sits_on  = part.unit
}

fastening "bolts" {
  name         = "Motor bolts"
  thread       = "M10x1.5"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.unit, part.shim, part.bed]
  fasteners    = [part.bolt]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "48 N·m ± 10 %"
}

procedure "set" {
  title = "Set the motor on the bed"

  fit "unit" {
    title = "Set the motor on its pad"
    part  = part.unit
  }

  measure "gap" {
    title     = "Measure the gap under the foot"
    on        = [part.bed.face.pad]
    tools     = [tool.feeler_gauges]
    likely    = "0.25..0.55 mm"
    otherwise = "Look for dirt under the foot."
  }

  choose "shim" {
    title  = "Choose the shim"
    from   = part.shim
    pieces = "1"
    gap    = measure.gap
    leaves = "-0.30..0.35 mm"
  }

  example "a middling foot" {
    readings = { measure.gap = "0.45 mm" }
    gives    = { choose.shim.total = "0.50 mm", choose.shim.result = "-0.05 mm" }
  }

  fit "bolts" {
    title     = "Start the bolts by hand"
    fastening = fastening.bolts
  }

  fit "shim" {
    title = "Slide the shim under the foot: ${choose.shim}"
    part  = choose.shim
  }

  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.bolts
    tools     = [tool.torque_wrench_100, tool.socket_16]
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
