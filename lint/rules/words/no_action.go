package words

import (
	"slices"

	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// NoAction: a title that names a thing and not what to do.
var NoAction = &rule.Rule{
	Name:     "words/no-action",
	Severity: diag.Doubt,
	Finds:    "A step that asks for nothing: its title begins with a thing or with a word in -ing, or it names nothing to act on.",
	Why:      "The builder knows what the step is about, and not what it asks of him.",
	Remedy:   "Begin the title with the verb: Fit, Tighten, Measure.",
	Source:   "ASD-STE100, rule 5.3: instructions in the command form (read in a reproduction).",
	Bad: `part "gate" {
  name = "Gate"
}

part "post" {
  name = "Gate post"
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Gate post and upper hinge" # want "“Gate”"
    on        = [part.gate, part.post]
    criterion = "No crack shows."
    otherwise = "Stop. Ask the workshop for another post."
  }

  wait "rest" { # want "neither for how long"
    title = "Let the paint dry"
  }
}
`,
	Good: `part "gate" {
  name = "Gate"
}

part "post" {
  name = "Gate post"
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Look at the post and the upper hinge"
    on        = [part.gate, part.post]
    criterion = "No crack shows."
    otherwise = "Stop. Ask the workshop for another post."
  }

  wait "rest" {
    title = "Let the paint dry"
    for   = "4 h"
  }
}
`,
	Run: runNoAction,
}

func runNoAction(p *rule.Pass) {
	var names map[string]bool // worked out when a title is met that may be one
	for _, s := range p.Steps() {
		if s.Damaged {
			continue
		}
		if missing := idle(s); missing != "" {
			p.Report(s.Name, rule.Called(s.Node)+" says "+missing+".",
				rule.Reason("The bench is after it as it was before, and the builder ticks off nothing."),
				rule.Remedy("Name it, or take the step out."))
			continue
		}
		a := s.Attr("title")
		if a == nil {
			continue
		}
		if t, ok := a.Value.(*model.Text); !ok || prose.Any(t, prose.BeginsWithVerb) {
			continue
		}
		sentences := p.Prose(a).Sentences
		if len(sentences) == 0 {
			continue
		}
		first := sentences[0]
		if tooling.Does(s.Kind, kind.Stops) != "" && prose.Has(first.Text, stops...) {
			continue
		}
		opening, word := prose.Opens(first.Text)
		if opening == prose.Unsure && word.Text != "" {
			if names == nil {
				names = namesIn(p.Manual)
			}
			if names[word.Text] && !acts(first.Text, word) || prose.Leads(word.Text) && !ordered(first.Text) {
				opening = prose.NoVerb
			}
		}
		if opening == prose.NoVerb {
			p.Report(first.Span(0, len(first.Text)), "This title begins with “"+first.Text[word.Start:word.End]+"”, and does not say what to do.")
		}
	}
}

// stops are words that say what is asked for in the title of a stop, which is
// printed as one.
var stops = []string{"check", "checks", "inspection", "release", "review", "hold", "stop", "witness", "sign-off", "signature"}

// idle says what a step leaves out so that it does nothing; "" where it does something.
func idle(s *model.Step) string {
	var may []string
	for _, e := range s.Kind.Does {
		switch {
		case e.Verb == kind.Waits && !s.Has("for") && !s.Has("until"):
			return "neither for how long nor until when"
		case e.Attr == "title" || s.Has(e.Attr) || s.Kind.NeedsOn && e.Attr == "on":
			return ""
		}
		if !slices.Contains(may, e.Attr) {
			may = append(may, e.Attr)
		}
	}
	switch len(may) {
	case 0:
		return ""
	case 1:
		return "nothing of the " + may[0] + " that it is about"
	}
	return "nothing of the " + rule.Join(may, "or") + " that it is about"
}

// acts reports a title that has a verb in spite of its first word.
func acts(title string, first prose.Word) bool {
	for _, w := range prose.Words(title) {
		if w.Start > first.Start && prose.Verb(w.Text) && !prose.NounToo(w.Text) {
			return true
		}
	}
	return false
}

// ordered reports a title with an instruction somewhere behind what leads up to it:
// "On the bench fit the shaft".
func ordered(title string) bool {
	words := prose.Words(title)
	for i, w := range words {
		if i > 0 && prose.Verb(w.Text) && (!prose.NounToo(w.Text) || i+1 < len(words) && prose.Determiner(words[i+1].Text)) {
			return true
		}
	}
	return false
}

// namesIn are the words by which the manual calls its parts, tools and so on,
// without those that are verbs.
func namesIn(m *model.Manual) map[string]bool {
	all := map[string]bool{}
	for _, n := range m.Entries {
		for _, w := range prose.Words(n.Plain("name")) {
			if !prose.Verb(w.Text) {
				all[w.Text] = true
			}
		}
	}
	return all
}
