package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NotCleaned reads the faces that were sealed unwashed.
var NotCleaned = &rule.Rule{
	Name:     "seal/not-cleaned",
	Severity: diag.Error,
	Finds:    "Sealant on a face that was never cleaned.",
	Why:      "Sealant does not hold on oil or dust, and the joint leaks when it is warm.",
	Remedy:   "Clean every face of the joint before the sealant is laid.",
	Bad: housing + `
procedure "close" {
  title = "Close the housing"

  clean "flange" {
    title    = "Wash the flange of the housing"
    on       = [part.housing.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "flange" {
    title     = "Lay a bead on the flange of the housing"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.cover.face.flange] # want "the face “flange” of “Cover”, never cleaned before"
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
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.NotCleaned) {
			p.Breach(b, "Sealant is laid on "+rule.CalledAll(b.Objects)+", never cleaned before.")
		}
	},
}
