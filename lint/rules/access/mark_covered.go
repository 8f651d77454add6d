package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MarkCovered reads the marks that were out of sight on the bench.
var MarkCovered = &rule.Rule{
	Name:     "access/mark-covered",
	Severity: diag.Error,
	Finds:    "A mark that a step goes by while something covers it.",
	Why:      "A builder who cannot see the mark guesses, and a gear one tooth out looks right.",
	Remedy:   "Use the mark before it is covered, or make one that stays in sight.",
	Bad: `
part "frame" {
  name  = "Grinder frame"
  marks = ["pointer"]
}

part "guard" {
  name    = "Wheel guard"
  sits_on = part.frame
  covers  = [part.frame.mark.pointer]
}

part "dial" {
  name    = "Dial plate"
  sits_on = part.frame
  marks   = ["zero"]
}

procedure "dial" {
  title = "Fit the dial plate"

  fit "guard" {
    title = "Hang the guard on the frame"
    part  = part.guard
  }

  fit "dial" {
    title = "Set the dial plate on the frame, zero to the pointer"
    part  = part.dial
    align = [part.dial.mark.zero, part.frame.mark.pointer] # want "“Wheel guard” covers it"
  }
}
`,
	Good: `
part "frame" {
  name  = "Grinder frame"
  marks = ["pointer"]
}

part "guard" {
  name    = "Wheel guard"
  sits_on = part.frame
  covers  = [part.frame.mark.pointer]
}

part "dial" {
  name    = "Dial plate"
  sits_on = part.frame
  marks   = ["zero"]
}

procedure "dial" {
  title = "Fit the dial plate"

  fit "dial" {
    title = "Set the dial plate on the frame, zero to the pointer"
    part  = part.dial
    align = [part.dial.mark.zero, part.frame.mark.pointer]
  }

  fit "guard" {
    title = "Hang the guard on the frame"
    part  = part.guard
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.MarkCovered) {
			p.Breach(b, "Nobody can see "+markName(b.Objects[0])+" here: "+rule.CalledObject(b.Objects[1])+" covers it.",
				wayOut(b, "Do this before %s, or go by a mark that stays in sight."))
		}
	},
}
