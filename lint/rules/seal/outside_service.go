package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// OutsideService reads the temperatures that seals met.
var OutsideService = &rule.Rule{
	Name:     "seal/outside-service",
	Severity: diag.Error,
	Finds:    "A sealed part that meets a temperature its sealant does not stand.",
	Why:      "The sealant chars or goes brittle, and the joint leaks from then on.",
	Remedy:   "Take a sealant whose service range holds the temperature, or seal after the heat.",
	Bad: housing + `
procedure "close" {
  title = "Close the housing"

  clean "flanges" {
    title    = "Wash both flanges"
    on       = [part.housing.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "flange" {
    title     = "Lay a bead on the flange of the housing"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.cover.face.flange]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.cover
    takes     = "4 min"
  }

  fit "cover" {
    title = "Set the cover on the housing"
    part  = part.cover
    takes = "2 min"
  }

  clean "bead" {
    title = "Wipe off the sealant that came out"
    on    = [part.housing, part.cover]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "cure" {
    title = "Let the sealant cure"
    until = [seal.flange]
  }

  heat "housing" {
    title = "Warm the housing for the bearing"
    on    = [part.housing]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "220 °C" # want "220 °C"
    takes = "1 h"
  }
}
`,
	Good: housing + `
procedure "close" {
  title = "Close the housing"

  clean "flanges" {
    title    = "Wash both flanges"
    on       = [part.housing.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "flange" {
    title     = "Lay a bead on the flange of the housing"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.cover.face.flange]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.cover
    takes     = "4 min"
  }

  fit "cover" {
    title = "Set the cover on the housing"
    part  = part.cover
    takes = "2 min"
  }

  clean "bead" {
    title = "Wipe off the sealant that came out"
    on    = [part.housing, part.cover]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "cure" {
    title = "Let the sealant cure"
    until = [seal.flange]
  }

  heat "housing" {
    title = "Warm the housing for the bearing"
    on    = [part.housing]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "110 °C"
    takes = "1 h"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.SealTooHot) {
			p.Breach(b, "The seal "+rule.CalledObject(b.Objects[0])+" meets "+b.Got.String()+" here; "+service(b)+".")
		}
	},
}
