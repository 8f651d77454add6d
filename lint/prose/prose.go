// Package prose reads an author's words sentence by sentence, and knows where
// each stands in the source.
//
// It is for rules that look for words. It refuses grammar: a rule that needs
// more than words in one sentence stays silent.
package prose

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"fettle/lang/model"
	"fettle/lang/source"
)

// Value stands in a sentence for a value that is not known yet.
const Value = "\uFFFC"

// Sentence is one sentence, with Value for each ${…} and lines joined by spaces.
type Sentence struct {
	Text  string
	words *model.Text
	marks []mark
}

// mark says that Text from At on is the literal part Part from From on.
type mark struct{ at, part, from int }

// Span is where the bytes start to end of the sentence stand in the source.
func (s Sentence) Span(start, end int) source.Span {
	m := s.marks[0]
	for _, next := range s.marks {
		if next.at > start {
			break
		}
		m = next
	}
	from := m.from + start - m.at
	return s.words.Source.PartSource(m.part, from, from+end-start)
}

// Sentences cuts a text into sentences: at a full stop, a question or an
// exclamation mark before a blank, and at an empty line or a list item.
func Sentences(t *model.Text) []Sentence {
	if t == nil {
		return nil
	}
	var all []Sentence
	s := Sentence{words: t}
	var b strings.Builder
	flush := func() {
		if text := b.String(); strings.TrimSpace(text) != "" && len(s.marks) > 0 {
			s.Text = text
			all = append(all, s)
		}
		s = Sentence{words: t}
		b.Reset()
	}
	for i, p := range t.Source.Parts() {
		if p.X != nil {
			if len(s.marks) > 0 {
				b.WriteString(Value)
			}
			continue
		}
		s.marks = append(s.marks, mark{b.Len(), i, 0})
		for at := 0; at < len(p.Text); {
			r, n := utf8.DecodeRuneInString(p.Text[at:])
			rest := p.Text[at+n:]
			switch {
			case r == '\n' && (strings.TrimSpace(firstLine(rest)) == "" || listItem(rest)):
				flush()
				s.marks = append(s.marks, mark{0, i, at + n})
			case r == '\n':
				b.WriteByte(' ')
			default:
				b.WriteString(p.Text[at : at+n])
				if strings.ContainsRune(".!?", r) && ends(rest) {
					flush()
					s.marks = append(s.marks, mark{0, i, at + n})
				}
			}
			at += n
		}
	}
	flush()
	return all
}

func firstLine(s string) string {
	line, _, _ := strings.Cut(s, "\n")
	return line
}

func listItem(s string) bool {
	s = strings.TrimLeft(s, " ")
	return strings.HasPrefix(s, "- ") || strings.HasPrefix(s, "* ")
}

// ends reports a full stop that ends a sentence, by what follows it.
func ends(rest string) bool {
	if rest == "" {
		return true
	}
	after := strings.TrimLeftFunc(rest, unicode.IsSpace)
	if len(after) == len(rest) {
		return false
	}
	r, _ := utf8.DecodeRuneInString(after)
	return after == "" || !unicode.IsLower(r)
}

// Find is the place of the first of the words or phrases that stands in text on
// its own, letter case aside; at is -1 where none does.
func Find(text string, phrases ...string) (at int, phrase string) {
	lower := strings.ToLower(text)
	at = -1
	for _, p := range phrases {
		for from := 0; ; {
			i := strings.Index(lower[from:], p)
			if i < 0 {
				break
			}
			i += from
			if !letterBefore(lower, i) && !letterAfter(lower, i+len(p)) {
				if at < 0 || i < at {
					at, phrase = i, p
				}
				break
			}
			from = i + 1
		}
	}
	return at, phrase
}

// Has reports whether Find finds any of the phrases.
func Has(text string, phrases ...string) bool {
	at, _ := Find(text, phrases...)
	return at >= 0
}

func letterBefore(s string, i int) bool {
	r, _ := utf8.DecodeLastRuneInString(s[:i])
	return unicode.IsLetter(r)
}

func letterAfter(s string, i int) bool {
	r, _ := utf8.DecodeRuneInString(s[i:])
	return unicode.IsLetter(r)
}
