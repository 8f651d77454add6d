package syntax

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"fettle/lang/source"
)

// A String is a quoted string or a heredoc, decoded: escapes resolved, the
// common indentation of a <<- heredoc taken off, its line ends \n, text in NFC.
type String struct {
	node
	plain  string  // the text, where it is nothing but literal text
	parts  *[]Part // otherwise; a pointer, since a tree has many strings and few of these
	form   form
	indent int32 // blanks taken off each line of a heredoc
}

type form uint8

const (
	quoted form = iota
	heredoc
)

// A Part of a string is literal text or, where X is not nil, an interpolation
// ${X}. Span covers the source of either, ${ and } included.
type Part struct {
	Text string
	X    Expr
	Span source.Span
}

// Literal gives the text, and whether the string is literal text throughout.
func (s *String) Literal() (text string, ok bool) { return s.plain, s.parts == nil }

// Heredoc reports whether the string is a heredoc.
func (s *String) Heredoc() bool { return s.form == heredoc }

// Margin gives the blanks that were taken off each line of a <<- heredoc.
func (s *String) Margin() int { return int(s.indent) }

// Parts gives the string's parts in order; none for an empty string. No two
// literals are neighbours.
func (s *String) Parts() []Part {
	switch {
	case s.parts != nil:
		return *s.parts
	case s.plain == "":
		return nil
	}
	return []Part{{Text: s.plain, Span: s.Inner()}}
}

// Alone gives a copy that holds nothing of the tree it came from: a value in it
// is known to be one, and no more. A model keeps texts long after their tree.
func (s *String) Alone() *String {
	c := *s
	if s.parts != nil {
		parts := slices.Clone(*s.parts)
		for i := range parts {
			if parts[i].X != nil {
				parts[i].X = value
			}
		}
		c.parts = &parts
	}
	return &c
}

// value stands for any value in a String that is alone.
var value Expr = &Bad{}

// Inner covers what stands between the quotes, or the lines between a heredoc's
// markers.
func (s *String) Inner() source.Span {
	n := int(s.span.End - s.span.Start)
	if s.form == quoted {
		return s.span.Sub(1, n-1)
	}
	raw := s.span.Text()
	return s.span.Sub(strings.IndexByte(raw, '\n')+1, strings.LastIndexByte(raw, '\n')+1)
}

// Source gives the source of the bytes start to end of Literal's text. Where
// normalising to NFC changed the text, that is the whole literal.
func (s *String) Source(start, end int) source.Span {
	return s.locate(s.plain, s.Inner(), start, end)
}

// PartSource gives the source of the bytes start to end of the Text of a
// literal part, as Source does.
func (s *String) PartSource(part, start, end int) source.Span {
	p := s.Parts()[part]
	return s.locate(p.Text, p.Span, start, end)
}

func (s *String) locate(text string, raw source.Span, start, end int) source.Span {
	start = min(max(start, 0), len(text))
	end = min(max(end, start), len(text))
	src := raw.Text()
	if src == text {
		return raw.Sub(start, end)
	}
	bol := s.form == heredoc && raw.Start == s.Inner().Start
	if string(decode(nil, src, s.form, int(s.indent), bol)) != text {
		return raw
	}
	from, to, at := -1, len(src), 0
	walk(src, s.form, int(s.indent), bol, func(pos int, rawLen int, piece string) {
		if from < 0 && start < at+len(piece) {
			from = pos
			if rawLen == len(piece) {
				from += start - at
			}
		}
		if at < end && end <= at+len(piece) {
			to = pos + rawLen
			if rawLen == len(piece) {
				to = pos + end - at
			}
		}
		at += len(piece)
	})
	if from < 0 {
		from = len(src)
	}
	if start == end {
		to = from
	}
	return raw.Sub(from, to)
}

// decode appends what the source of a literal stands for, before NFC.
func decode(out []byte, src string, form form, indent int, bol bool) []byte {
	walk(src, form, indent, bol, func(_, _ int, piece string) { out = append(out, piece...) })
	return out
}

// walk takes the source of a literal apart and gives each piece of text with
// the place and length of its source. A piece as long as its source equals it
// byte for byte. Bol says that the source begins at the start of a line.
func walk(src string, form form, indent int, bol bool, emit func(pos, rawLen int, piece string)) {
	i := 0
	for i < len(src) {
		if bol && form == heredoc {
			bol = false
			i += cut(src[i:], indent)
			continue
		}
		n := plainRun(src[i:], form)
		if n > 0 {
			emit(i, n, src[i:i+n])
			i += n
			bol = src[i-1] == '\n'
			continue
		}
		raw, piece := escape(src[i:], form)
		emit(i, raw, piece)
		i += raw
		bol = piece == "\n"
	}
}

// cut gives the bytes of indentation to take off a heredoc line. A line of
// nothing but blanks keeps them, as HCL has it.
func cut(src string, indent int) int {
	line := src
	if i := strings.IndexByte(src, '\n'); i >= 0 {
		line = src[:i+1]
		if strings.TrimLeftFunc(line, unicode.IsSpace) == "" {
			return 0
		}
	}
	n := 0
	for range indent {
		if n < len(line) {
			_, size := utf8.DecodeRuneInString(line[n:])
			n += size
		}
	}
	return n
}

// plainRun gives the length of the text that stands for itself; for a heredoc
// at most one line.
func plainRun(src string, form form) int {
	for i := 0; i < len(src); i++ {
		switch src[i] {
		case '\\':
			if form == quoted {
				return i
			}
		case '\n':
			if form == heredoc {
				return i + 1
			}
		case '\r':
			if form == heredoc && strings.HasPrefix(src[i:], "\r\n") {
				return i
			}
		case '$', '%':
			if len(src) > i+2 && src[i+1] == src[i] && src[i+2] == '{' {
				return i
			}
		}
	}
	return len(src)
}

// escape decodes the one escape at the start of src: the bytes it takes and
// what it stands for. A wrong one, which has its finding, stands for itself.
func escape(src string, form form) (raw int, text string) {
	switch {
	case src[0] == '$' || src[0] == '%':
		return 3, src[1:3]
	case src[0] == '\r':
		return 2, "\n"
	case len(src) < 2:
		return 1, src
	}
	switch src[1] {
	case 'n':
		return 2, "\n"
	case 'r':
		return 2, "\r"
	case 't':
		return 2, "\t"
	case '"':
		return 2, `"`
	case '\\':
		return 2, `\`
	case 'u':
		return unicodeEscape(src, 6)
	case 'U':
		return unicodeEscape(src, 10)
	}
	return 1, src[:1]
}

func unicodeEscape(src string, n int) (raw int, text string) {
	if len(src) < n {
		return 1, src[:1]
	}
	var r rune
	for _, c := range []byte(src[2:n]) {
		d, ok := hexDigit(c)
		if !ok {
			return 1, src[:1]
		}
		r = r<<4 | d
	}
	if !utf8.ValidRune(r) {
		return 1, src[:1]
	}
	return n, string(r)
}

func hexDigit(c byte) (rune, bool) {
	switch {
	case '0' <= c && c <= '9':
		return rune(c - '0'), true
	case 'a' <= c && c <= 'f':
		return rune(c-'a') + 10, true
	case 'A' <= c && c <= 'F':
		return rune(c-'A') + 10, true
	}
	return 0, false
}
