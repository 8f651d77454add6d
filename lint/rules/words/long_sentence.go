package words

import (
	"strconv"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// LongSentence: more words than a reader with a spanner in hand can hold.
var LongSentence = &rule.Rule{
	Name:     "words/long-sentence",
	Severity: diag.Advice,
	Finds:    "A sentence with more words than the house rules allow: 20 for an instruction, 25 for an explanation.",
	Why:      "A builder reads it with both hands full, and keeps the first half of it.",
	Remedy:   "Make two sentences of it, or a list.",
	Source: "ASD-STE100, rules 5.1 and 6.3 (read in a reproduction). Words are counted as its section 8 says: a colon or a dash counts as a full stop, " +
		"what stands in parentheses as a sentence of its own; a number, an identifier, an abbreviation and a value are one word each. " +
		"A hyphenated word is one word, as in its later issues (from memory).",
	Bad: `part "gate" {
  name = "Gate"
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    text      = "Start with the gate shut. Push it slowly with one hand until the latch is clear of the post, and then let it swing to the far stop by its own weight alone." # want "28 words"
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
    text      = <<-EOT
      Start with the gate shut. Push it slowly with one hand until the latch is
      clear of the post (the left one, as you stand in the yard). Then let it
      swing to the far stop by its own weight alone.
    EOT
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Run: runLongSentence,
}

func runLongSentence(p *rule.Pass) {
	instruction, explanation := int(rule.Whole(p.Manual, "sentence_words")), int(rule.Whole(p.Manual, "explanation_words"))
	least := min(instruction, explanation)
	for _, t := range p.Texts() {
		role := t.Attr.Def.Role
		switch role {
		case schema.Title, schema.Instruction, schema.Remedy, schema.Reason, schema.Judgement:
		default:
			continue
		}
		if !mayBeLong(t.Words, least) {
			continue
		}
		for _, s := range p.Prose(t.Attr).Sentences {
			run := prose.LongestRun(s.Text)
			if run.Words <= least {
				continue
			}
			most, what := explanation, "a sentence"
			if role != schema.Reason && role != schema.Judgement {
				if opening, _ := prose.Opens(s.Text); opening == prose.Imperative {
					most, what = instruction, "an instruction"
				}
			}
			if run.Words > most {
				p.Report(s.Span(run.Start, run.End), "This sentence has "+strconv.Itoa(run.Words)+" words; "+what+" has at most "+strconv.Itoa(most)+".")
			}
		}
	}
}

// mayBeLong is a quick look at a text, with or without values in it.
func mayBeLong(t *model.Text, words int) bool {
	if s, ok := t.Source.Literal(); ok {
		return longer(s, words)
	}
	blanks := 0
	return prose.Any(t, func(s string) bool {
		blanks += strings.Count(s, " ") + strings.Count(s, "\n")
		return blanks >= words
	})
}

// longer is a quick look for a sentence of more words: they stand apart by blanks,
// and a mark before a blank and a capital ends a sentence.
func longer(s string, words int) bool {
	blanks := 0
	for i := range len(s) {
		switch s[i] {
		case ' ', '\n':
			if blanks++; blanks >= words {
				return true
			}
		case '.', '!', '?':
			if i+2 < len(s) && s[i+1] <= ' ' && 'A' <= s[i+2] && s[i+2] <= 'Z' {
				blanks = -1
			}
		}
	}
	return false
}
