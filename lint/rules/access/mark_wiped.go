package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MarkWiped reads the marks that were gone on the bench.
var MarkWiped = &rule.Rule{
	Name:     "access/mark-wiped",
	Severity: diag.Error,
	Finds:    "A mark in pen or paint that is wiped off before a step goes by it.",
	Why:      "Solvent takes pen and paint off with the oil, and a builder has nothing left to go by.",
	Remedy:   "Scribe or punch the mark, wipe around it, or make it after the face is cleaned.",
	Bad: `
part "hub" {
  name  = "Hub"
  faces = ["rim"]
}

part "rotor" {
  name    = "Rotor"
  sits_on = part.hub
  marks   = ["dot"]
}

procedure "rotor" {
  title = "Fit the rotor"

  mark "high_spot" {
    title = "Mark the high spot on the rim"
    on    = [part.hub.face.rim]
    how   = "paint"
    tools = [tool.paint_marker]
  }

  clean "rim" {
    title    = "Wash the rim"
    on       = [part.hub.face.rim]
    supplies = [supply.solvent]
  }

  fit "rotor" {
    title = "Put the rotor on, its dot to the high spot"
    part  = part.rotor
    align = [part.rotor.mark.dot, mark.high_spot] # want "wiped off before"
  }
}
`,
	Good: `
part "hub" {
  name  = "Hub"
  faces = ["rim"]
}

part "rotor" {
  name    = "Rotor"
  sits_on = part.hub
  marks   = ["dot"]
}

procedure "rotor" {
  title = "Fit the rotor"

  mark "high_spot" {
    title = "Mark the high spot on the rim"
    on    = [part.hub.face.rim]
    how   = "scribe"
    tools = [tool.scriber]
  }

  clean "rim" {
    title    = "Wash the rim"
    on       = [part.hub.face.rim]
    supplies = [supply.solvent]
  }

  fit "rotor" {
    title = "Put the rotor on, its dot to the high spot"
    part  = part.rotor
    align = [part.rotor.mark.dot, mark.high_spot]
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range merged(p.Breaches(bench.MarkWiped)) {
			p.Breach(b, "This step goes by "+markNames(b.Objects)+", wiped off before.")
		}
	},
}
