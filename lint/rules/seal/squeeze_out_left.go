package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// SqueezeOutLeft reads the beads that came out and were left.
var SqueezeOutLeft = &rule.Rule{
	Name:     "seal/squeeze-out-left",
	Severity: diag.Doubt,
	Finds:    "Sealant that came out of a joint and is not cleaned off before the next part goes on or the machine runs.",
	Why:      "It hardens where it hangs, breaks off inside and blocks a passage, or keeps the next part from seating.",
	Remedy:   "Wipe it off with a clean step right after the joint is closed.",
	Bad: housing + `
part "lever" {
  name    = "Lever"
  sits_on = part.cover
}

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

  fit "cover" { # want "comes out here"
    title = "Set the cover on the housing"
    part  = part.cover
    takes = "2 min"
  }

  fit "lever" {
    title = "Slip the lever on the cover"
    part  = part.lever
    takes = "2 min"
  }
}
`,
	Good: housing + `
part "lever" {
  name    = "Lever"
  sits_on = part.cover
}

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

  fit "lever" {
    title = "Slip the lever on the cover"
    part  = part.lever
    takes = "2 min"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.SqueezeOutLeft) {
			p.Breach(b, "Sealant comes out here and is never wiped off.")
		}
	},
}
