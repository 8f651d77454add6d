package words

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/schema"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// VagueAmount: an instruction that leaves the amount to the reader.
var VagueAmount = &rule.Rule{
	Name:     "words/vague-amount",
	Severity: diag.Doubt,
	Finds:    "An instruction with an amount that nobody can measure: tight, a little, some, firmly, as required.",
	Why:      "Two builders do two different things, and both have followed the manual.",
	Remedy:   "Give a quantity, or a sign by which the builder knows that it is enough.",
	Bad: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    text      = "Start with the gate shut. Lift its free end a little. Turn the hinge pin until it is tight." # want "“a little”" "“tight”"
    criterion = "It touches nothing."
    otherwise = "Put some grease on the pin." # want "“some grease”"
  }
}
`,
	Good: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    text      = "Start with the gate shut. Lift its free end a little, about 5 mm. Hold the post firmly."
    criterion = "It falls freely, and touches nothing on the whole edge."
    otherwise = "Grease the pin, and turn it until it stops."
  }
}
`,
	Run: runVagueAmount,
}

func runVagueAmount(p *rule.Pass) {
	gallon := p.Word("gallon")
	for _, t := range p.Texts() {
		switch t.Attr.Def.Role {
		case schema.Title, schema.Instruction, schema.Remedy:
		default:
			continue
		}
		n := t.In
		if n.Procedure() == n || n.Parent == nil && t.Attr.Def.Role == schema.Title || !prose.Any(t.Words, amounts.mayStand) {
			continue
		}
		for _, s := range p.Prose(t.Attr).Sentences {
			if places := amounts.find(s.Text); len(places) > 0 && asks(s.Text) && !measured(s.Text, gallon) {
				reportVague(p, s, places, "is no amount that can be measured")
			}
		}
	}
}

// asks reports a sentence that asks for something to be done or to be so.
func asks(s string) bool {
	if opens, _ := prose.Opens(s); opens == prose.Imperative {
		return true
	}
	return prose.Has(s, "must", "should", "has to", "have to", "needs to", "need to")
}

// measured reports a sentence with a quantity in it, or a value to come.
func measured(s, gallon string) bool {
	return strings.Contains(s, prose.Value) || len(prose.Quantities(s, gallon)) > 0 ||
		prose.Has(s, "half a", "half the", "a quarter", "quarter turn", "one turn", "a turn", "one flat", "two flats", "a finger", "a thumb", "finger's", "the width of", "the thickness of")
}
