package prose

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Word is one word of a sentence.
type Word struct {
	Text       string // in lower case
	Start, End int    // bytes of the sentence
}

// Words are the words of a text: letters and digits, with the marks inside them
// (-, ', ., /, ·) as in "M8x1.25", "top-hat" and "N·m". A value is a word.
func Words(s string) []Word {
	var all []Word
	for i := 0; i < len(s); {
		r, n := utf8.DecodeRuneInString(s[i:])
		if !inWord(r) {
			i += n
			continue
		}
		end := i + n
		for end < len(s) {
			r, n := utf8.DecodeRuneInString(s[end:])
			if joins(r) {
				if next, _ := utf8.DecodeRuneInString(s[end+n:]); !inWord(next) || end+n == len(s) {
					break
				}
			} else if !inWord(r) {
				break
			}
			end += n
		}
		all = append(all, Word{strings.ToLower(s[i:end]), i, end})
		i = end
	}
	return all
}

func inWord(r rune) bool {
	return unicode.IsLetter(r) || unicode.IsDigit(r) || r == '°' || r == '%' || r == '\uFFFC'
}

func joins(r rune) bool { return strings.ContainsRune("-'’./·×", r) }

// Run is the longest stretch of words between two stops.
type Run struct{ Words, Start, End int }

// LongestRun counts words as ASD-STE100 does: a colon or a dash counts as a full
// stop, text in parentheses as a sentence of its own; a number, an identifier, an
// abbreviation and a value are one word each. A hyphenated word is one word, which
// is the rule of its later issues (from memory; the first ones counted its parts).
func LongestRun(s string) Run {
	var best Run
	var open []Run // what stands around the parentheses
	now := Run{}
	settle := func() {
		if now.Words > best.Words {
			best = now
		}
	}
	words := Words(s)
	for i := 0; i < len(s); {
		if len(words) > 0 && words[0].Start == i {
			if now.Words == 0 {
				now.Start = i
			}
			now.Words++
			now.End, i = words[0].End, words[0].End
			words = words[1:]
			continue
		}
		r, n := utf8.DecodeRuneInString(s[i:])
		switch {
		case r == '(':
			open = append(open, now)
			now = Run{}
		case r == ')' && len(open) > 0:
			settle()
			now = open[len(open)-1]
			open = open[:len(open)-1]
		case r == ':', r == '—', (r == '–' || r == '-') && blankAround(s, i, n):
			settle()
			now = Run{}
		}
		i += n
	}
	settle()
	for _, now = range open { // parentheses that nobody closed
		settle()
	}
	return best
}

func blankAround(s string, i, n int) bool {
	return i > 0 && s[i-1] == ' ' && i+n < len(s) && s[i+n] == ' '
}
