package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TightenedTooLate reads the joints that were tightened over sealant that had set.
var TightenedTooLate = &rule.Rule{
	Name:     "seal/tightened-too-late",
	Severity: diag.Error,
	Finds:    "A joint that is tightened later than its sealant allows.",
	Why:      "The sealant has begun to set: tightening tears it, and the joint stands on a hard film.",
	Remedy:   "Tighten the joint right after it is closed, or use a slower sealant.",
	Bad: housing + screws + `
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

  fit "screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.screws
    takes     = "3 min"
  }

  wait "tea" {
    title = "Let the bead grow firm"
    for   = "30 min"
  }

  torque "screws" { # want "tightens the joint 43 min after"
    title     = "Tighten the cover screws"
    fastening = fastening.screws
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "4 min"
  }

  clean "bead" {
    title = "Wipe off the sealant that came out"
    on    = [part.housing, part.cover]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }
}
`,
	Good: housing + screws + `
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

  fit "screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.screws
    takes     = "3 min"
  }

  torque "screws" {
    title     = "Tighten the cover screws"
    fastening = fastening.screws
    tools     = [tool.torque_wrench_100, tool.socket_13]
    takes     = "4 min"
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
		for _, b := range p.Breaches(bench.ClampedTooLate) {
			p.Breach(b, "This tightens the joint "+rule.Lasting(b.Got)+" after the sealant is begun; the sealant allows "+rule.Lasting(b.Want)+".")
		}
	},
}
