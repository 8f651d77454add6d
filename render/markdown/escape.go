package markdown

import (
	"strings"

	"fettle/render"
)

// escape makes text of s on one line: nothing in it is a mark, a link, a table's
// bar, an entity or HTML. Marks that cannot mean anything where they stand are
// left alone, so that the result reads well as it is.
func escape(s string) string {
	s = render.Printable(s)
	if !strings.ContainsAny(s, "\\`*_[]<>&|~\n\t$:@.#") {
		return s
	}
	s = strings.Join(strings.FieldsFunc(s, func(r rune) bool { return r == '\n' || r == '\t' }), " ")
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		c := s[i]
		switch c {
		case '\\', '`', '*', '[', ']', '<', '>', '|', '~', '$':
			b.WriteByte('\\')
		case '_':
			if !inside(s, i) && !room(s, i) { // inside a word it is a letter
				b.WriteByte('\\')
			}
		case '&':
			if i+1 < len(s) && s[i+1] != ' ' {
				b.WriteByte('\\')
			}
		case ':', '@', '.': // no reader shall turn an address into a link by itself
			if strings.HasPrefix(s[i:], "://") || c == '@' || c == '.' && strings.HasSuffix(strings.ToLower(s[:i]), "www") {
				b.WriteByte('\\')
			}
		}
		b.WriteByte(c)
	}
	return b.String()
}

// room reports that the byte at i belongs to a run of underscores between
// blanks: room to write, which can mean nothing else.
func room(s string, i int) bool {
	from, to := i, i
	for from > 0 && s[from-1] == '_' {
		from--
	}
	for to < len(s) && s[to] == '_' {
		to++
	}
	return (from > 0 && s[from-1] == ' ') && (to == len(s) || s[to] == ' ') && to-from > 2
}

// inside reports that the byte at i stands between letters or digits.
func inside(s string, i int) bool {
	return i > 0 && i+1 < len(s) && word(s[i-1]) && word(s[i+1])
}

func word(c byte) bool {
	return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9' || c >= 0x80
}

// leading escapes what would make a list, a quotation, a heading, a rule or code
// of a line, at its start.
func leading(s string) string {
	s = strings.TrimLeft(s, " ")
	if s == "" {
		return s
	}
	switch s[0] {
	case '-', '+', '=', '#', '_':
		return "\\" + s
	}
	n := 0
	for n < len(s) && '0' <= s[n] && s[n] <= '9' {
		n++
	}
	if n > 0 && n < len(s) && (s[n] == '.' || s[n] == ')') && (n+1 == len(s) || s[n+1] == ' ') {
		return s[:n] + "\\" + s[n:]
	}
	return s
}

// code is a code span that holds s.
func code(s string) string {
	s = strings.ReplaceAll(strings.ReplaceAll(render.Printable(s), "\n", " "), "|", `\|`)
	fence := "`"
	for strings.Contains(s, fence) {
		fence += "`"
	}
	if strings.HasPrefix(s, "`") || strings.HasSuffix(s, "`") || strings.TrimSpace(s) == "" {
		s = " " + s + " "
	}
	return fence + s + fence
}
