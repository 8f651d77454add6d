package diff

import (
	"strings"

	"fettle/calc"
	"fettle/lang/model"
)

// Part is a run of words that stayed, went out or came in.
type Part struct {
	Op   Op
	Text string
}

// Op says what became of words.
type Op uint8

// What became of words.
const (
	Same Op = iota
	Out
	In
)

// maxCells bounds the table of a comparison word by word; longer texts that have
// little in common are told as a whole.
const maxCells = 4 << 20

// Between compares two texts word by word: as few words as possible are out or
// in. Blanks and line ends only part words.
func Between(was, is string) []Part {
	a, b := strings.Fields(was), strings.Fields(is)
	head := 0
	for head < len(a) && head < len(b) && a[head] == b[head] {
		head++
	}
	tail := 0
	for tail < len(a)-head && tail < len(b)-head && a[len(a)-1-tail] == b[len(b)-1-tail] {
		tail++
	}
	var parts []Part
	add := func(op Op, words ...string) {
		if len(words) == 0 {
			return
		}
		text := strings.Join(words, " ")
		if n := len(parts) - 1; n >= 0 && parts[n].Op == op {
			parts[n].Text += " " + text
			return
		}
		parts = append(parts, Part{op, text})
	}
	add(Same, a[:head]...)
	middle(a[head:len(a)-tail], b[head:len(b)-tail], add)
	add(Same, a[len(a)-tail:]...)
	return parts
}

// middle compares by the longest common subsequence; of two ways the one that
// takes words out first.
func middle(a, b []string, add func(Op, ...string)) {
	if len(a) == 0 || len(b) == 0 || len(a) > maxCells/len(b) {
		add(Out, a...)
		add(In, b...)
		return
	}
	w := len(b) + 1
	left := make([]int32, (len(a)+1)*w) // length of the best for a[i:], b[j:]
	for i := len(a) - 1; i >= 0; i-- {
		for j := len(b) - 1; j >= 0; j-- {
			if a[i] == b[j] {
				left[i*w+j] = left[(i+1)*w+j+1] + 1
			} else {
				left[i*w+j] = max(left[(i+1)*w+j], left[i*w+j+1])
			}
		}
	}
	i, j := 0, 0
	for i < len(a) && j < len(b) {
		switch {
		case a[i] == b[j]:
			add(Same, a[i])
			i, j = i+1, j+1
		case left[(i+1)*w+j] >= left[i*w+j+1]:
			add(Out, a[i])
			i++
		default:
			add(In, b[j])
			j++
		}
	}
	add(Out, a[i:]...)
	add(In, b[j:]...)
}

// plain is a text with the formulas of its values in their places.
func plain(t *model.Text) string {
	if s, ok := t.Source.Literal(); ok {
		return s
	}
	var b strings.Builder
	inserted := 0
	for _, p := range t.Source.Parts() {
		if p.X == nil {
			b.WriteString(p.Text)
			continue
		}
		if inserted < len(t.Values) && t.Values[inserted] != nil {
			b.WriteString("‹" + nonBreaking(inserted, t) + "›")
		}
		inserted++
	}
	return b.String()
}

// nonBreaking names a value by what it rests on, as one word.
func nonBreaking(i int, t *model.Text) string {
	f := t.Values[i]
	name := ""
	if len(f.Refs) == 1 {
		name = strings.TrimPrefix(f.Refs[0].Address(), "procedure.")
	} else {
		name = calc.Formula(f.Expr)
	}
	return strings.ReplaceAll(name, " ", "\u00a0")
}
