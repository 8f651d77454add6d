package syntax

import "fettle/lang/source"

// A String is a quoted string or a heredoc, decoded: escapes resolved, the
// common indentation of a <<- heredoc taken off, line ends \n, text in NFC.
type String struct {
	node
	plain  string // the text, where it is nothing but literal text
	parts  []Part // otherwise
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
func (s *String) Literal() (string, bool) { return s.plain, s.parts == nil }

// Heredoc reports whether the string is a heredoc.
func (s *String) Heredoc() bool { return s.form == heredoc }

// Parts gives the string's parts in order; none for an empty string. No two
// literals are neighbours.
func (s *String) Parts() []Part {
	if s.parts != nil || s.plain == "" {
		return s.parts
	}
	return []Part{{Text: s.plain, Span: s.inner()}}
}

// inner covers what stands between the quotes or the heredoc's markers.
func (s *String) inner() source.Span {
	return s.span
}

// Source gives the source of the bytes start to end of Literal's text, or the
// whole literal where normalising to NFC changed it.
func (s *String) Source(start, end int) source.Span { return s.inner().Sub(start, end) }

// Source gives the source of the bytes start to end of the part's Text.
func (s *String) PartSource(part, start, end int) source.Span {
	return s.Parts()[part].Span.Sub(start, end)
}
