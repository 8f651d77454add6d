package format

import (
	"strings"
	"unicode/utf8"

	"fettle/lang/syntax"
)

// shift writes a heredoc that stands in a line of that indentation. The lines
// of a <<- move together, which leaves the text as it is; those of a << stay.
// Lines of nothing but blanks count as text, so they stay as well.
func shift(s *syntax.String, indent int) string {
	raw := s.Span().Text()
	first, _, _ := strings.Cut(raw, "\n")
	inner := s.Inner()
	closing := strings.TrimSpace(raw[inner.End-s.Span().Start:])
	if !strings.HasPrefix(first, "<<-") {
		return unix(first + "\n" + inner.Text() + closing)
	}
	var w strings.Builder
	w.WriteString(first + "\n")
	at := int(inner.Start)
	for line := range strings.Lines(inner.Text()) {
		if strings.TrimSpace(line) != "" && !interpolates(s, at) {
			w.WriteString(strings.Repeat(" ", indent+2))
			w.WriteString(line[margin(line, s.Margin()):])
		} else {
			w.WriteString(line)
		}
		at += len(line)
	}
	w.WriteString(strings.Repeat(" ", indent) + closing)
	return unix(w.String())
}

func unix(text string) string { return strings.ReplaceAll(text, "\r\n", "\n") }

// interpolates reports whether the byte at offset stands inside ${…}.
func interpolates(s *syntax.String, offset int) bool {
	for _, p := range s.Parts() {
		if p.X != nil && int(p.Span.Start) < offset && offset < int(p.Span.End) {
			return true
		}
	}
	return false
}

// margin gives the bytes of the first n characters.
func margin(line string, n int) (bytes int) {
	for range n {
		_, size := utf8.DecodeRuneInString(line[bytes:])
		bytes += size
	}
	return bytes
}
