package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// FittedTwice reads the parts that were on when they were to be fitted.
var FittedTwice = &rule.Rule{
	Name:     "access/fitted-twice",
	Severity: diag.Error,
	Finds:    "A part that is fitted when it is on already.",
	Why:      "A builder looks for a second one, or takes the first off again to follow the page.",
	Remedy:   "Take one of the steps out, or take the part off in between.",
	Bad: `
part "post" {
  name = "Gate post"
}

part "latch" {
  name    = "Latch"
  sits_on = part.post
}

procedure "latch" {
  title = "Fit the latch"

  fit "latch" {
    title = "Hang the latch on the post"
    part  = part.latch
  }

  fit "latch_again" {
    title = "Put the latch on the post"
    part  = part.latch # want "“Latch” is fitted here and is on already"
  }
}
`,
	Good: `
part "post" {
  name = "Gate post"
}

part "latch" {
  name    = "Latch"
  sits_on = part.post
}

procedure "latch" {
  title = "Fit the latch"

  fit "latch" {
    title = "Hang the latch on the post"
    part  = part.latch
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.FittedTwice) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" fitted here and is on already.")
		}
	},
}
