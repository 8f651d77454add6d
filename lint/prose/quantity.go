package prose

import (
	"strings"
	"unicode/utf8"

	"fettle/calc"
)

// Quantity is a quantity or limits that stand in a sentence, with a unit.
type Quantity struct {
	calc.Literal
	Start, End int // bytes of the sentence
}

// Quantities are the quantities of a sentence, in order: "24 N·m", "0.08 to 0.14
// mm", "between 5 and 7 min", "at least 5 mm". Numbers without a unit, threads and
// part numbers are none. Gallon is "US", "UK" or "" as in calc.Context.
func Quantities(sentence, gallon string) []Quantity {
	var all []Quantity
	for i := 0; i < len(sentence); {
		if !isDigit(sentence[i]) {
			i++
			continue
		}
		start := numberStart(sentence, i)
		if start >= 0 {
			if q, ok := quantityAt(sentence, start, gallon); ok {
				all = append(all, q)
				i = q.End
				continue
			}
		}
		for i < len(sentence) && sentence[i] != ' ' {
			i++
		}
	}
	return all
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// numberStart is where the number with its first digit at i begins, or -1 where
// the digit belongs to a name such as M8 or BK-040.
func numberStart(s string, i int) int {
	start := i
	if start > 0 && s[start-1] == '.' && (start == 1 || s[start-2] == ' ') {
		start--
	}
	for _, sign := range []string{"-", "−", "+"} {
		if strings.HasSuffix(s[:start], sign) {
			start -= len(sign)
			break
		}
	}
	for _, bound := range []string{"≥", "≤", "≥ ", "≤ "} {
		if strings.HasSuffix(s[:start], bound) {
			return start - len(bound)
		}
	}
	if start == 0 {
		return 0
	}
	switch r, _ := utf8.DecodeLastRuneInString(s[:start]); r {
	case ' ', '(', '"', '“', '~', '\u00a0':
	default:
		return -1
	}
	for _, bound := range []string{"at least ", "at most ", "max ", "min ", "max. ", "min. "} {
		if len(s[:start]) >= len(bound) && strings.EqualFold(s[start-len(bound):start], bound) && !letterBefore(s, start-len(bound)) && !afterNumber(s[:start-len(bound)]) {
			return start - len(bound)
		}
	}
	return start
}

// afterNumber reports that a number stands before: "5 min 30 s".
func afterNumber(before string) bool {
	before = strings.TrimRight(before, " ")
	return before != "" && isDigit(before[len(before)-1])
}

// quantityAt reads the longest quantity that begins at start.
func quantityAt(s string, start int, gallon string) (Quantity, bool) {
	between := len(s[:start]) >= len("between ") && strings.EqualFold(s[start-len("between "):start], "between ")
	var ends [8]int
	n, and := 0, -1
	for at, tokens := start, 0; at < len(s) && tokens < 8; tokens++ {
		stop := at
		for stop < len(s) && s[stop] != ' ' {
			stop++
		}
		token := strings.TrimRight(s[at:stop], ".,;:!?)\"”")
		switch {
		case token == "":
		case between && and < 0 && token == "and":
			and = at
		case connects(token):
		case unitEnds(token, gallon):
			if !prepositionIn(token, s[stop:]) {
				ends[n] = at + len(token)
				n++
			}
		case !isDigit(token[0]) && !strings.ContainsAny(token[:1], "-+.") && !strings.HasPrefix(token, "−") && !strings.HasPrefix(token, "±"):
			tokens = 8
		}
		if len(token) < stop-at { // a mark of punctuation ends it
			break
		}
		at = stop + 1
	}
	for n--; n >= 0; n-- {
		text := s[start:ends[n]]
		if and >= 0 && and < ends[n] {
			text = s[start:and] + "to" + s[and+len("and"):ends[n]]
		}
		l, problems := calc.ParseLiteral(text, calc.Context{Gallon: gallon})
		if l.Valid() && len(problems) == 0 && l.Any().Unit != calc.One {
			return Quantity{l, start, ends[n]}, true
		}
	}
	return Quantity{}, false
}

// connects reports a token that may stand inside a quantity and not at its end.
func connects(token string) bool {
	switch strings.ToLower(token) {
	case "to", "..", "–", "±", "+/-", "at", "least", "most", "max", "min", "≥", "≤", "us", "uk", "per":
		return token != "min" && token != "at" || token == "at"
	}
	return false
}

// unitEnds reports a token that is a unit or ends with one: "mm", "10mm", "90°".
func unitEnds(token, gallon string) bool {
	i := len(token)
	for i > 0 && !isDigit(token[i-1]) {
		i--
	}
	if i == len(token) {
		return false
	}
	unit := token[i:]
	for _, f := range []string{"½", "¼", "¾"} {
		unit = strings.TrimPrefix(unit, f)
	}
	if unit == "" {
		return false
	}
	_, ok := calc.LookUpUnit(unit, gallon)
	return ok
}

// prepositionIn reports that "in" before rest is the little word: "4 in the box".
func prepositionIn(token, rest string) bool {
	if token != "in" {
		return false
	}
	words := Words(rest)
	if len(words) == 0 {
		return false
	}
	next := words[0]
	if strings.ContainsAny(rest[:next.Start], ".,;:()") {
		return false
	}
	switch next.Text {
	case "turn", "order", "place", "sequence", "stages", "total", "number", "front", "pairs", "line", "rows", "position", "step", "steps", "succession":
		return true
	}
	return determiners[next.Text]
}
