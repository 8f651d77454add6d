package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// EnergyForTorque is reported while the manual is read.
var EnergyForTorque = &rule.Rule{
	Name:     "units/energy-for-torque",
	Severity: diag.Error,
	Finds:    "A torque in joules, or an energy in newton metres.",
	Why:      "J does work and N·m turns a fastener; they only look alike, and no wrench shows joules.",
	Remedy:   "Write a torque in N·m and an energy in J.",
	Source:   "SI Brochure, 9th edition, 2.3.4: the joule is not used for torque.",
	Bad: `fastening "plug" {
  name         = "Drain plug"
  does         = "plug"
  thread       = "M14x1.5"
  across_flats = "13 mm"
  torque       = "24 J" # want "an energy"
  basis        = "Drawing BK-012"
  locked_by    = "drag"
}

procedure "close" {
  title = "Close the drain"

  torque "plug" {
    title     = "Tighten the drain plug"
    fastening = fastening.plug
    tools     = [tool.torque_wrench_100, tool.socket_13]
    from      = "tight"
  }
}
`,
	Good: `fastening "plug" {
  name         = "Drain plug"
  does         = "plug"
  thread       = "M14x1.5"
  across_flats = "13 mm"
  torque       = "24 N·m"
  basis        = "Drawing BK-012"
  locked_by    = "drag"
}

procedure "close" {
  title = "Close the drain"

  torque "plug" {
    title     = "Tighten the drain plug"
    fastening = fastening.plug
    tools     = [tool.torque_wrench_100, tool.socket_13]
    from      = "tight"
  }
}
`,
	Broken: true,
}
