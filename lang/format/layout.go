package format

import (
	"strings"
	"unicode/utf8"
)

// A line is one line of output; a heredoc or a comment in it may hold more.
// Its cells begin in columns: what it assigns, and its comment.
type line struct {
	gap     bool // an empty line stands before it
	indent  int
	lead    string
	assign  string // from the = on
	comment string
}

// layOut arranges tokens in lines.
func layOut(tokens []token) []line {
	var (
		lines  []line
		open   []int // the indentation of the line of each open bracket
		gap    bool
		opened = true // the last line ended by opening a bracket, or there is none
	)
	for len(tokens) > 0 {
		var row []token
		row, tokens = cutRow(tokens)
		if len(row) == 0 {
			gap = true
			continue
		}
		indent := 0
		switch n := leadingClosers(row); {
		case n > 0:
			indent = open[len(open)-n]
		case len(open) > 0:
			indent = open[len(open)-1] + 2
		}
		l := compose(row, indent)
		l.gap = gap && !opened && !closes(row[0])
		lines = append(lines, l)
		for _, t := range row {
			switch {
			case opens(t):
				open = append(open, indent)
			case closes(t):
				open = open[:len(open)-1]
			}
		}
		gap, opened = false, opens(lastSolid(row))
	}
	alignAssigns(lines)
	alignComments(lines)
	return lines
}

// cutRow takes the tokens up to the next newline.
func cutRow(tokens []token) (row, rest []token) {
	for i, t := range tokens {
		if t.kind == newline {
			return tokens[:i], tokens[i+1:]
		}
	}
	return tokens, nil
}

func opens(t token) bool {
	return t.kind == operator && (t.text == "{" || t.text == "[" || t.text == "(")
}

func closes(t token) bool {
	return t.kind == operator && (t.text == "}" || t.text == "]" || t.text == ")")
}

func leadingClosers(row []token) (n int) {
	for n < len(row) && closes(row[n]) {
		n++
	}
	return n
}

// lastSolid gives the last token of a row that is no comment.
func lastSolid(row []token) (last token) {
	for _, t := range row {
		if t.kind != comment {
			last = t
		}
	}
	return last
}

// compose writes the cells of a line.
func compose(row []token, indent int) line {
	l := line{indent: indent}
	if n := len(row) - 1; n > 0 && row[n].kind == comment && !strings.HasPrefix(row[n].text, "/*") {
		l.comment = row[n].text
		row = row[:n]
	}
	split := assignAt(row)
	l.lead = join(row[:split], indent)
	l.assign = join(row[split:], indent)
	return l
}

// assignAt gives the place of the = that begins a column, or the length: one
// whose value is complete on its line.
func assignAt(row []token) int {
	for i, t := range row {
		if i == 0 || t.kind != operator || t.text != "=" {
			continue
		}
		net := 0
		for _, v := range row[i:] {
			switch {
			case opens(v):
				net++
			case closes(v):
				net--
			}
		}
		if net == 0 {
			return i
		}
		break
	}
	return len(row)
}

// join writes tokens with the blanks between them.
func join(row []token, indent int) string {
	var w strings.Builder
	for i, t := range row {
		if i > 0 && spaced(row[:i], t) {
			w.WriteByte(' ')
		}
		if t.string != nil && t.string.Heredoc() {
			w.WriteString(shift(t.string, indent))
			continue
		}
		w.WriteString(t.text)
	}
	return w.String()
}

// spaced tells whether a blank stands between the tokens before and after.
func spaced(before []token, after token) bool {
	last := before[len(before)-1]
	switch {
	case last.kind == comment || after.kind == comment:
		return true
	case last.text == "{" && after.text == "}" && last.kind == operator && after.kind == operator:
		return false
	case after.kind == operator:
		switch after.text {
		case ",", ".", ")", "]":
			return false
		case "(":
			return last.kind != word && !opens(last) && !negates(before)
		case "[":
			return !(last.kind == word || last.kind == text || closes(last) || opens(last) && last.text != "{" || negates(before))
		}
	}
	if last.kind == operator {
		switch last.text {
		case ".", "(", "[":
			return false
		case "!", "-":
			return !negates(before)
		}
	}
	return true
}

// negates tells whether the last token is a sign and not a subtraction.
func negates(row []token) bool {
	n := len(row) - 1
	if row[n].kind != operator || row[n].text != "-" && row[n].text != "!" {
		return false
	}
	if row[n].text == "!" {
		return true
	}
	for n--; n >= 0 && row[n].kind == comment; n-- {
	}
	return n < 0 || row[n].kind == operator && !closes(row[n])
}

// alignAssigns puts the = of neighbouring lines in one column.
func alignAssigns(lines []line) {
	runs(lines, func(l line) bool { return l.assign != "" }, func(run []line) {
		width := 0
		for _, l := range run {
			width = max(width, l.indent+columns(l.lead))
		}
		for i := range run {
			l := &run[i]
			l.lead += strings.Repeat(" ", width+1-l.indent-columns(l.lead)) + l.assign
		}
	})
}

// alignComments puts the trailing comments of neighbouring lines in one column.
func alignComments(lines []line) {
	runs(lines, func(l line) bool { return l.comment != "" }, func(run []line) {
		width := 0
		for _, l := range run {
			width = max(width, l.indent+columns(l.lead))
		}
		for i := range run {
			l := &run[i]
			l.lead += strings.Repeat(" ", width+1-l.indent-columns(l.lead)) + l.comment
		}
	})
}

// runs calls do for each longest run of neighbouring lines that belong.
func runs(lines []line, belongs func(line) bool, do func([]line)) {
	for start := 0; start < len(lines); {
		if !belongs(lines[start]) {
			start++
			continue
		}
		end := start + 1
		for end < len(lines) && belongs(lines[end]) && !lines[end].gap {
			end++
		}
		do(lines[start:end])
		start = end
	}
}

// columns counts the characters of the last line of s.
func columns(s string) int { return utf8.RuneCountInString(s[strings.LastIndexByte(s, '\n')+1:]) }

func print(lines []line) string {
	var w strings.Builder
	for _, l := range lines {
		if l.gap {
			w.WriteByte('\n')
		}
		w.WriteString(strings.Repeat(" ", l.indent))
		w.WriteString(l.lead)
		w.WriteByte('\n')
	}
	return w.String()
}
