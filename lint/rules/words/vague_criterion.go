package words

import (
	"fettle/lang/diag"
	"fettle/lang/schema"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// VagueCriterion: a criterion that everybody reads in his own way.
var VagueCriterion = &rule.Rule{
	Name:     "words/vague-criterion",
	Severity: diag.Doubt,
	Finds:    "A criterion that two people would judge differently: good, tight, correct, as required.",
	Why:      "It passes for one who wants to go on, and fails for one who is careful.",
	Remedy:   "Say what is seen, heard, felt or measured.",
	Bad: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "hinges" {
    title     = "Look at the hinges"
    on        = [part.gate]
    criterion = "The pins are tight." # want "“tight”"
    otherwise = "Stop. Ask the workshop for other hinges."
  }

  inspect "paint" {
    title     = "Look at the paint"
    on        = [part.gate]
    criterion = "The paint is in good condition." # want "“good condition”"
    otherwise = "Stop. Ask the workshop for paint."
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
    criterion = "The pins do not turn by hand. The gate swings without a tight spot."
    otherwise = "Stop. Ask the workshop for other hinges."
  }

  inspect "paint" {
    title     = "Look at the paint"
    on        = [part.gate]
    criterion = "No bare wood shows."
    otherwise = "Stop. Ask the workshop for paint."
  }
}
`,
	Run: func(p *rule.Pass) {
		gallon := p.Word("gallon")
		for _, t := range p.Texts() {
			if t.Attr.Def.Role != schema.Judgement || !prose.Any(t.Words, criteria.mayStand) {
				continue
			}
			for _, s := range p.Prose(t.Attr).Sentences {
				if places := criteria.find(s.Text); len(places) > 0 && !measured(s.Text, gallon) {
					reportVague(p, s, places, "is judged differently by everybody who looks")
				}
			}
		}
	},
}
