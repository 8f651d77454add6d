package seal

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// OverWhatStaysClear reads what the sealant was laid over.
var OverWhatStaysClear = &rule.Rule{
	Name:     "seal/over-what-stays-clear",
	Severity: diag.Error,
	Finds:    "Sealant that is laid over a port or mark that must stay clear of it.",
	Why:      "The sealant blocks the passage or hides the mark, and nobody sees it once the joint is closed.",
	Remedy:   "Name in keep_clear what must stay free, and lay the bead around it.",
	Bad: `
part "housing" {
  name  = "Housing"
  faces = ["flange"]
  ports = ["oil_feed"]
}

part "cover" {
  name    = "Cover"
  sits_on = part.housing
  faces   = ["flange"]
}

procedure "close" {
  title = "Close the housing"

  clean "flanges" {
    title    = "Wash both flanges"
    on       = [part.housing.face.flange, part.housing.port.oil_feed, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "flange" {
    title      = "Lay a bead on the flange of the housing"
    on         = [part.housing.face.flange, part.housing.port.oil_feed] # want "the port “oil feed” of “Housing”"
    between    = [part.housing.face.flange, part.cover.face.flange]
    supplies   = [supply.silicone_sealant]
    keep_clear = [part.housing.port.oil_feed]
    closed_by  = fit.cover
    takes      = "4 min"
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

  fill "oil" {
    title    = "Pour the first oil into the feed"
    on       = [part.housing]
    through  = part.housing.port.oil_feed
    supplies = [supply.engine_oil]
    tools    = [tool.oil_can]
    amount   = "50 mL"
    takes    = "2 min"
  }
}
`,
	Good: `
part "housing" {
  name  = "Housing"
  faces = ["flange"]
  ports = ["oil_feed"]
}

part "cover" {
  name    = "Cover"
  sits_on = part.housing
  faces   = ["flange"]
}

procedure "close" {
  title = "Close the housing"

  clean "flanges" {
    title    = "Wash both flanges"
    on       = [part.housing.face.flange, part.housing.port.oil_feed, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  seal "flange" {
    title      = "Lay a bead on the flange of the housing"
    on         = [part.housing.face.flange]
    between    = [part.housing.face.flange, part.cover.face.flange]
    supplies   = [supply.silicone_sealant]
    keep_clear = [part.housing.port.oil_feed]
    closed_by  = fit.cover
    takes      = "4 min"
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

  fill "oil" {
    title    = "Pour the first oil into the feed"
    on       = [part.housing]
    through  = part.housing.port.oil_feed
    supplies = [supply.engine_oil]
    tools    = [tool.oil_can]
    amount   = "50 mL"
    takes    = "2 min"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.SealOver) {
			p.Breach(b, "Sealant is laid over "+mark(b.Objects[0])+", which must stay clear.")
		}
	},
}
