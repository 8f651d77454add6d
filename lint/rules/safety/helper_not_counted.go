package safety

import (
	"slices"
	"strconv"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// HelperNotCounted: a helper in the words of a step whose people does not count one.
var HelperNotCounted = &rule.Rule{
	Name:     "safety/helper-not-counted",
	Severity: diag.Error,
	Finds:    "A helper in the words of a step whose people does not count one.",
	Why:      "The builder begins alone, and finds out with the load in hand.",
	Remedy:   "Give the step people = 2, or more: all hands, the builder included.",
	Bad: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    text      = "A helper holds the lower eye." # want "helper"
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
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
    people    = 2
    text      = "A helper holds the lower eye."
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Run: runHelperNotCounted,
}

func runHelperNotCounted(p *rule.Pass) {
	for _, s := range p.Steps() {
		people := s.Whole("people", "", 1)
		if s.Damaged || stops(s) {
			continue
		}
		if r := s.AllRefs("held_by"); people < 2 && len(r) > 0 && r[0].Word == "second person" {
			p.Report(s.At("people"), rule.Called(s.Node)+" is held by a second person, and counts one.", rule.Related(s.At("held_by"), "The second person is named here."))
			continue
		}
		for _, attr := range [...]string{"title", "text", "criterion"} {
			if t := s.Text(attr); t != nil && helped(p, s, t, people) {
				break
			}
		}
	}
}

// stops reports a step whose second person is the one that releases it.
func stops(s *model.Step) bool { return tooling.Does(s.Kind, kind.Stops) != "" }

// helpers are phrases for hands beyond the builder's, and how many people they make.
var helpers = []struct {
	people  int
	phrases []string
}{
	{2, []string{"a helper", "your helper", "the helper", "an assistant", "your assistant", "the assistant", "a second person", "the second person", "another person",
		"the other person", "both of you", "one of you", "two people", "two persons", "one person", "a second pair of hands", "a mate", "your mate", "each of you", "between you", "somebody", "someone"}},
	{3, []string{"three people", "three persons", "all three of you", "two helpers"}},
	{4, []string{"four people", "four persons", "all four of you", "three helpers"}},
}

// helped reports prose that counts more hands than the step does.
func helped(p *rule.Pass, s *model.Step, t *model.Text, people int) bool {
	plain := t.Plain()
	if people >= 4 || !strings.Contains(plain, "e") || !mentions(plain) {
		return false
	}
	for _, sentence := range prose.Sentences(t) {
		for _, h := range helpers {
			if h.people <= people {
				continue
			}
			at, phrase := prose.Find(sentence.Text, h.phrases...)
			if at < 0 || phrase == "one person" && !prose.Has(sentence.Text, "the other", "another") || strings.HasPrefix(phrase, "some") && !lends(sentence.Text[at+len(phrase):]) || denied(sentence.Text, at) {
				continue
			}
			count := "one person"
			if people > 1 {
				count = strconv.Itoa(people) + " people"
			}
			p.Report(sentence.Span(at, at+len(phrase)), "“"+sentence.Text[at:at+len(phrase)]+"” is needed here, and the step counts "+count+".",
				rule.Related(s.At("people"), "The hands of the step are counted here."),
				rule.Remedy("Give the step people = "+strconv.Itoa(h.people)+": all hands, the builder included."))
			return true
		}
	}
	return false
}

// mentions is a quick look for any of the phrases.
func mentions(text string) bool {
	for _, w := range [...]string{"elper", "omebody", "omeone", "ssistant", "erson", "of you", "eople", "mate", "pair of hands", "etween you"} {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}

// asks reports "ask a helper to hold it": a hand is needed now.
func asks(sentence string, at int) bool {
	rest := strings.Fields(strings.ToLower(sentence[at:]))
	i := slices.Index(rest, "to")
	return i > 0 && i < 5 && lends(strings.Join(rest[i:], " "))
}

// hands are what somebody does who lends a hand.
var hands = []string{"hold", "lift", "steady", "support", "guide", "press", "push", "pull", "turn", "carry", "catch", "steer", "keep", "lower"}

// lends reports words behind "somebody" that have him work: "to hold the lamp".
func lends(after string) bool {
	words := strings.Fields(strings.ToLower(after))
	for i, w := range words {
		switch {
		case slices.Contains(hands, strings.TrimSuffix(strings.Trim(w, ",.;"), "s")):
			return true
		case i > 1 || w != "else" && w != "to" && w != "who":
			return false
		}
	}
	return false
}

// denied reports a sentence that needs no helper, has one only perhaps, or speaks
// of people who keep away.
func denied(sentence string, at int) bool {
	before := strings.ToLower(sentence[:at])
	for _, w := range [...]string{"no ", "not ", "never ", "without ", "if ", "unless ", "instead of ", "nor ", "until ", "call ", "ask "} {
		if w == "ask " && asks(sentence, at) {
			continue
		}
		if strings.HasSuffix(before, w) || strings.HasPrefix(strings.TrimSpace(before), w) {
			return true
		}
	}
	return prose.Has(sentence, "easier with", "may help", "can help", "no need for", "not needed", "if you have")
}
