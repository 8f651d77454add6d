package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MarkNotMade reads the marks that were not there yet on the bench.
var MarkNotMade = &rule.Rule{
	Name:     "access/mark-not-made",
	Severity: diag.Error,
	Finds:    "A mark that a step goes by before it is made.",
	Why:      "A builder looks for a mark that is not there, and takes a scratch for it.",
	Remedy:   "Make the mark first.",
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

  fit "rotor" {
    title = "Put the rotor on, its dot to the high spot"
    part  = part.rotor
    align = [part.rotor.mark.dot, mark.high_spot] # want "not made yet"
  }

  mark "high_spot" {
    title = "Scribe the high spot on the rim"
    on    = [part.hub.face.rim]
    how   = "scribe"
    tools = [tool.scriber]
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
    title = "Scribe the high spot on the rim"
    on    = [part.hub.face.rim]
    how   = "scribe"
    tools = [tool.scriber]
  }

  fit "rotor" {
    title = "Put the rotor on, its dot to the high spot"
    part  = part.rotor
    align = [part.rotor.mark.dot, mark.high_spot]
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range merged(p.Breaches(bench.MarkNotMade)) {
			p.Breach(b, "This step goes by "+markNames(b.Objects)+", not made yet.")
		}
	},
}
