package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// Broken reads the seals that were parted and put together again.
var Broken = &rule.Rule{
	Name:     "seal/broken",
	Severity: diag.Error,
	Finds:    "A sealed joint that is opened and closed again without new sealant.",
	Why:      "A parted bead does not seal a second time.",
	Remedy:   "Clean both faces and lay new sealant before the part goes on again.",
	Bad: housing + `
procedure "close" {
  title = "Close the housing, and look again"

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

  remove "cover" {
    title = "Pull the cover off"
    part  = part.cover
    takes = "5 min"
  }

  fit "cover_again" { # want "was broken"
    title = "Set the cover on again"
    part  = part.cover
    takes = "2 min"
  }
}
`,
	Good: housing + `
procedure "close" {
  title = "Close the housing, look, and close it again"

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

  remove "cover" {
    title = "Pull the cover off"
    part  = part.cover
    takes = "5 min"
  }

  clean "flanges_again" {
    title    = "Scrape and wash both flanges"
    on       = [part.housing.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "again" {
    title     = "Lay a new bead on the flange of the housing"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.cover.face.flange]
    supplies  = [supply.silicone_sealant]
    closed_by = fit.cover_again
    takes     = "4 min"
  }

  fit "cover_again" {
    title = "Set the cover on again"
    part  = part.cover
    takes = "2 min"
  }

  clean "bead_again" {
    title = "Wipe off the sealant that came out"
    on    = [part.housing, part.cover]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.SealBroken) {
			p.Breach(b, "The joint closes again here, and its seal "+rule.CalledObject(b.Objects[0])+" was broken when it was opened.")
		}
	},
}
