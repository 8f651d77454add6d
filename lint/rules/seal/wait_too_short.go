package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// WaitTooShort reads the waits after which a cure was still going on.
var WaitTooShort = &rule.Rule{
	Name:     "seal/wait-too-short",
	Severity: diag.Error,
	Finds:    "A wait for sealant that ends before every seal has cured.",
	Why:      "What the wait leaves out is still soft when the machine runs, and blows out.",
	Remedy:   "Name every seal that cures in `until`, or wait as long as the slowest.",
	Bad: `
part "housing" {
  name  = "Pump housing"
  faces = ["front", "back"]
}

part "front" {
  name    = "Front plate"
  sits_on = part.housing
  faces   = ["joint"]
}

part "back" {
  name    = "Back plate"
  sits_on = part.housing
  faces   = ["joint"]
}

procedure "close" {
  title = "Close the pump"

  clean "front" {
    title    = "Wash the front joint"
    on       = [part.housing.face.front, part.front.face.joint]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "front" {
    title     = "Lay a bead on the front of the housing"
    on        = [part.housing.face.front]
    between   = [part.housing.face.front, part.front.face.joint]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.front
    takes     = "4 min"
  }

  fit "front" {
    title = "Set the front plate on"
    part  = part.front
    takes = "2 min"
  }

  clean "front_bead" {
    title = "Wipe off what came out at the front"
    on    = [part.housing, part.front]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  clean "back" {
    title    = "Wash the back joint"
    on       = [part.housing.face.back, part.back.face.joint]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "back" {
    title     = "Lay a bead on the back of the housing"
    on        = [part.housing.face.back]
    between   = [part.housing.face.back, part.back.face.joint]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.back
    takes     = "4 min"
  }

  fit "back" {
    title = "Set the back plate on"
    part  = part.back
    takes = "2 min"
  }

  clean "back_bead" {
    title = "Wipe off what came out at the back"
    on    = [part.housing, part.back]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "cure" {
    title = "Let the sealant cure"
    until = [seal.front] # want "leaves"
  }

  inspect "plates" {
    title     = "Look at both joints"
    on        = [part.front, part.back]
    criterion = "The bead shows all round without a break."
    takes     = "2 min"
    otherwise = "Take the plate off and seal it again."
  }

  hold "pressure" {
    title   = "Stop before the housing is put under pressure"
    checks  = [inspect.plates]
    before  = run.pressure
    release = "second person"
  }

  run "pressure" {
    title     = "Pump the housing up to 2 bar"
    on        = [part.housing]
    by        = "pressure"
    tools     = [tool.test_pump, tool.pressure_gauge]
    ppe       = [ppe.goggles]
    criterion = "The gauge stands still for 10 min."
    takes     = "15 min"
    otherwise = "Let the pressure off, and seal the joint again."

    warning {
      hazard = "A plate can fly off under pressure."
      result = "Broken bones or an eye lost."
      avoid  = "Stand to the side of both plates."
    }
  }
}
`,
	Good: `
part "housing" {
  name  = "Pump housing"
  faces = ["front", "back"]
}

part "front" {
  name    = "Front plate"
  sits_on = part.housing
  faces   = ["joint"]
}

part "back" {
  name    = "Back plate"
  sits_on = part.housing
  faces   = ["joint"]
}

procedure "close" {
  title = "Close the pump"

  clean "front" {
    title    = "Wash the front joint"
    on       = [part.housing.face.front, part.front.face.joint]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "front" {
    title     = "Lay a bead on the front of the housing"
    on        = [part.housing.face.front]
    between   = [part.housing.face.front, part.front.face.joint]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.front
    takes     = "4 min"
  }

  fit "front" {
    title = "Set the front plate on"
    part  = part.front
    takes = "2 min"
  }

  clean "front_bead" {
    title = "Wipe off what came out at the front"
    on    = [part.housing, part.front]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  clean "back" {
    title    = "Wash the back joint"
    on       = [part.housing.face.back, part.back.face.joint]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "back" {
    title     = "Lay a bead on the back of the housing"
    on        = [part.housing.face.back]
    between   = [part.housing.face.back, part.back.face.joint]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.back
    takes     = "4 min"
  }

  fit "back" {
    title = "Set the back plate on"
    part  = part.back
    takes = "2 min"
  }

  clean "back_bead" {
    title = "Wipe off what came out at the back"
    on    = [part.housing, part.back]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "cure" {
    title = "Let the sealant cure"
    until = [seal.front, seal.back]
  }

  inspect "plates" {
    title     = "Look at both joints"
    on        = [part.front, part.back]
    criterion = "The bead shows all round without a break."
    takes     = "2 min"
    otherwise = "Take the plate off and seal it again."
  }

  hold "pressure" {
    title   = "Stop before the housing is put under pressure"
    checks  = [inspect.plates]
    before  = run.pressure
    release = "second person"
  }

  run "pressure" {
    title     = "Pump the housing up to 2 bar"
    on        = [part.housing]
    by        = "pressure"
    tools     = [tool.test_pump, tool.pressure_gauge]
    ppe       = [ppe.goggles]
    criterion = "The gauge stands still for 10 min."
    takes     = "15 min"
    otherwise = "Let the pressure off, and seal the joint again."

    warning {
      hazard = "A plate can fly off under pressure."
      result = "Broken bones or an eye lost."
      avoid  = "Stand to the side of both plates."
    }
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.WaitTooShort) {
			p.Breach(b, "This wait leaves "+rule.CalledObject(b.Objects[0])+" uncured: it needs "+rule.Lasting(b.Want)+" and gets "+rule.Lasting(b.Got)+".")
		}
	},
}
