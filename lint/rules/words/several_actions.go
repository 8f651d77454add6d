package words

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// SeveralActions: a title after which a builder would stop more than once.
var SeveralActions = &rule.Rule{
	Name:     "words/several-actions",
	Severity: diag.Doubt,
	Finds:    "A step whose title asks for several things, each of which a builder would tick off by itself.",
	Why:      "There is one box to tick. Whoever is called away ticks it after the first half, and the second is never done.",
	Remedy:   "Make a step of each.",
	Source:   "ASD-STE100, rule 5.2: one instruction a sentence unless the actions are simultaneous (read in a reproduction).",
	Bad: `part "post" {
  name     = "Gate post"
  in_place = 1
}

part "plate" {
  name    = "Hinge plate"
  sits_on = part.post
}

procedure "hang" {
  title = "Hang the hinge"

  fit "plate" {
    title = "Put the plate on the post and tighten its bolts" # want "“tighten”"
    part  = part.plate
  }
}
`,
	Good: `part "post" {
  name     = "Gate post"
  in_place = 1
}

part "plate" {
  name    = "Hinge plate"
  sits_on = part.post
}

procedure "hang" {
  title = "Hang the hinge"

  fit "plate" {
    title = "Lift the plate and slide it onto the post"
    part  = part.plate
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, s := range p.Steps() {
			a := s.Attr("title")
			if a == nil || s.Damaged {
				continue
			}
			t, _ := a.Value.(*model.Text)
			if t == nil || !prose.Any(t, joined) {
				continue
			}
			first, second, ok := severalActions(p.Prose(a).Sentences, s)
			if ok {
				p.Report(second.sentence.Span(second.verb.Start, second.verb.End),
					"This title asks for two things: “"+first.written()+"” and “"+second.written()+"”.")
			}
		}
	},
}
