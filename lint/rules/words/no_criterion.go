package words

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// NoCriterion: an inspection that does not say what passes.
var NoCriterion = &rule.Rule{
	Name:     "words/no-criterion",
	Severity: diag.Doubt,
	Finds:    "An inspection that does not say what must be seen, heard or felt.",
	Why:      "Whoever looks accepts what he happens to find, and the next one something else.",
	Remedy:   "Give the step a criterion that two people would judge alike.",
	Bad: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "hinges" { # want "what must be seen"
    title     = "Look at the hinges"
    on        = [part.gate]
    otherwise = "Stop. Ask the workshop for other hinges."
  }
}
`,
	Good: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "hinges" {
    title     = "Look at the hinges"
    on        = [part.gate]
    criterion = "No crack shows in either hinge."
    otherwise = "Stop. Ask the workshop for other hinges."
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, s := range p.Steps() {
			if !s.Damaged && tooling.Does(s.Kind, kind.Accepts) != "" && s.Def.Attr("criterion") != nil && strings.TrimSpace(s.Plain("criterion")) == "" {
				p.Report(s.At("criterion"), rule.Called(s.Node)+" does not say what must be seen, heard or felt.")
			}
		}
	},
}
