package prose

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// sentences appends the sentences of a paragraph.
func sentences(all []Sentence, p paragraph) []Sentence {
	start := 0
	add := func(end int) {
		text := p.text[start:end]
		trimmed := strings.TrimLeftFunc(text, unicode.IsSpace)
		from := start + len(text) - len(trimmed)
		if trimmed = strings.TrimRightFunc(trimmed, unicode.IsSpace); trimmed != "" {
			all = append(all, Sentence{Text: trimmed, Block: p.block, at: int32(p.at + from), pieces: p.pieces, flat: p.flat})
		}
		start = end
	}
	for i := 0; i < len(p.text); {
		n := mark(p.text[i:])
		if n == 0 {
			i++
			continue
		}
		after := i + n
		for after < len(p.text) && p.text[after] != ' ' {
			r, size := utf8.DecodeRuneInString(p.text[after:])
			if !strings.ContainsRune(".!?…\"')]”’»", r) {
				break
			}
			after += size
		}
		if ends(p.text[start:i], p.text[i], p.text[after:]) {
			add(after)
		}
		i = after
	}
	add(len(p.text))
	return all
}

// mark is the length of the mark that may end a sentence, at the start of s.
func mark(s string) int {
	switch s[0] {
	case '.', '!', '?':
		return 1
	case "…"[0]:
		if strings.HasPrefix(s, "…") {
			return len("…")
		}
	}
	return 0
}

// ends reports that the mark with between before and rest ends a sentence.
func ends(before string, with byte, rest string) bool {
	after := strings.TrimLeftFunc(rest, unicode.IsSpace)
	switch {
	case rest == "":
		return true
	case len(after) == len(rest):
		return false
	case after == "":
		return true
	}
	next, _ := utf8.DecodeRuneInString(after)
	if unicode.IsLower(next) {
		return false
	}
	if with != '.' {
		return true
	}
	word := before[strings.LastIndexFunc(before, func(r rune) bool { return unicode.IsSpace(r) || r == '(' })+1:]
	if word == strings.TrimSpace(before) && strings.Trim(word, "0123456789") == "" {
		return false // "1. Fit the cover"
	}
	word = strings.ToLower(word)
	return !shortened[word] && !(beforeNumber[word] && (unicode.IsDigit(next) || strings.HasPrefix(after, Value)))
}

// shortened words are never the last of a sentence.
var shortened = map[string]bool{"e.g": true, "i.e": true, "cf": true, "vs": true, "approx": true}

// beforeNumber are shortened only before a number.
var beforeNumber = map[string]bool{
	"no": true, "nos": true, "fig": true, "figs": true, "max": true, "min": true, "ca": true, "dia": true, "p": true, "pp": true,
	"ch": true, "sec": true, "nom": true, "ref": true, "rev": true, "drg": true, "qty": true,
}

// Find is the place of the first of the words or phrases that stands in text on
// its own, letter case aside; at is -1 where none does. Phrases are in lower case.
func Find(text string, phrases ...string) (at int, phrase string) {
	lower := strings.ToLower(text)
	at = -1
	if len(lower) != len(text) { // a letter that changes its length: places would not hold
		lower = text
	}
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
