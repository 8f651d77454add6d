package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// Dirtied reads the faces that were dirtied between washing and sealing.
var Dirtied = &rule.Rule{
	Name:     "seal/dirtied",
	Severity: diag.Error,
	Finds:    "Sealant on a face that was cleaned and has been dirtied since.",
	Why:      "Oil, old sealant or a night's dust lies on the face again, and the sealant does not hold.",
	Remedy:   "Clean the face again right before the sealant is laid.",
	Bad: housing + `
procedure "close" {
  title = "Close the housing"

  clean "flanges" {
    title    = "Wash both flanges"
    on       = [part.housing.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  coat "flange" {
    title    = "Oil the flange of the housing against rust"
    on       = [part.housing.face.flange]
    supplies = [supply.engine_oil]
    takes    = "2 min"
  }

  seal "flange" {
    title     = "Lay a bead on the flange of the housing"
    on        = [part.housing.face.flange] # want "cleaned before and dirtied since"
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
		for _, b := range p.Breaches(bench.Dirtied) {
			if b.Want.Valid() {
				p.Breach(b, "Sealant is laid on "+rule.CalledAll(b.Objects)+" "+rule.Lasting(b.Got)+" after the cleaning.",
					rule.Reason("A clean face stays clean for "+rule.Lasting(b.Want)+" by the house rules; dust and damp have settled on it since."))
				continue
			}
			p.Breach(b, "Sealant is laid on "+rule.CalledAll(b.Objects)+", cleaned before and dirtied since.")
		}
	},
}
