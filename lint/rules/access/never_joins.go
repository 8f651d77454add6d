package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NeverJoins reads the groups that stood on the bench at the end.
var NeverJoins = &rule.Rule{
	Name:     "access/never-joins",
	Severity: diag.Error,
	Finds:    "A group of parts that is put together and never joins the machine.",
	Why:      "At the end two machines stand on the bench, each with something missing.",
	Remedy:   "Fit the group to the machine, or name in sits_on what its lowest part sits on.",
	Bad: `
part "frame" {
  name = "Winch frame"
}

part "drum" {
  name    = "Drum"
  sits_on = part.frame
}

part "box" { # want "“Brake box” never joins"
  name = "Brake box"
}

part "lining" {
  name    = "Brake lining"
  sits_on = part.box
}

procedure "winch" {
  title = "Build the winch"

  fit "drum" {
    title = "Lay the drum in the frame"
    part  = part.drum
  }

  fit "lining" {
    title = "Press the lining into the brake box"
    part  = part.lining
  }
}
`,
	Good: `
part "frame" {
  name = "Winch frame"
}

part "drum" {
  name    = "Drum"
  sits_on = part.frame
}

part "box" {
  name    = "Brake box"
  sits_on = part.frame
}

part "lining" {
  name    = "Brake lining"
  sits_on = part.box
}

procedure "winch" {
  title = "Build the winch"

  fit "drum" {
    title = "Lay the drum in the frame"
    part  = part.drum
  }

  fit "lining" {
    title = "Press the lining into the brake box"
    part  = part.lining
  }

  fit "box" {
    title = "Set the brake box on the frame"
    part  = part.box
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.NeverJoins) {
			message := rule.CalledAll(b.Objects) + " never join the machine: each stands on the bench by itself at the end."
			if len(b.Objects) == 1 {
				message = rule.CalledAll(b.Objects) + " never joins the machine: it stands on the bench by itself at the end."
			}
			p.Breach(b, message)
		}
	},
}
