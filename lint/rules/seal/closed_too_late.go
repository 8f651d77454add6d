package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ClosedTooLate reads the joints that were closed over a skinned bead.
var ClosedTooLate = &rule.Rule{
	Name:     "seal/closed-too-late",
	Severity: diag.Error,
	Finds:    "A joint that is closed later than its sealant allows.",
	Why:      "The sealant has a skin by then, does not wet the other face, and the joint weeps.",
	Remedy:   "Lay the sealant right before the part goes on, or use a slower one.",
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

  inspect "housing" {
    title     = "Look into the housing"
    on        = [part.housing]
    criterion = "No tool and no rag lies in it."
    takes     = "10 min"
    otherwise = "Take out what lies in it."
  }

  fit "cover" { # want "closes the joint 16 min after"
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
		for _, b := range p.Breaches(bench.ClosedTooLate) {
			p.Breach(b, "This closes the joint "+rule.Lasting(b.Got)+" after the sealant is begun; the sealant allows "+rule.Lasting(b.Want)+".")
		}
	},
}
