package source

import (
	"cmp"
	"fmt"
	"strings"
	"unicode/utf8"
)

// A Span is the half-open range of bytes [Start, End) of a file. The zero Span
// is no place at all.
type Span struct {
	File       *File
	Start, End int32
}

// IsZero reports whether the span is no place.
func (s Span) IsZero() bool { return s.File == nil }

// Text gives the bytes that the span covers.
func (s Span) Text() string {
	if s.File == nil {
		return ""
	}
	return s.File.Text[s.Start:s.End]
}

// Path gives the file's path, or nothing for the zero span.
func (s Span) Path() string {
	if s.File == nil {
		return ""
	}
	return s.File.Path
}

// Sub gives the part of the span from byte from to byte to, counted from its
// start and clamped to it.
func (s Span) Sub(from, to int) Span {
	n := int(s.End - s.Start)
	from = min(max(from, 0), n)
	to = min(max(to, from), n)
	return Span{s.File, s.Start + int32(from), s.Start + int32(to)}
}

// To gives the span from the start of s to the end of t, which stands later in
// the same file.
func (s Span) To(t Span) Span { return Span{s.File, s.Start, max(s.End, t.End)} }

// Contains reports whether t lies inside s.
func (s Span) Contains(t Span) bool {
	return s.File == t.File && s.Start <= t.Start && t.End <= s.End
}

// Compare orders spans by path, start and end.
func (s Span) Compare(t Span) int {
	return cmp.Or(strings.Compare(s.Path(), t.Path()), cmp.Compare(s.Start, t.Start), cmp.Compare(s.End, t.End))
}

// String gives path:line:column, the form that terminals make clickable.
func (s Span) String() string {
	if s.File == nil {
		return "-"
	}
	p := s.Position()
	return fmt.Sprintf("%s:%d:%d", s.File.Path, p.Line, p.Column)
}

// A Position is a place in a file as others count. Line and Column count from
// 1 and Column counts characters, for people. UTF16 counts code units from 0,
// for editors. Offset is the byte.
type Position struct {
	Line, Column int
	UTF16        int
	Offset       int
}

// Position gives where the span starts.
func (s Span) Position() Position { return s.File.Position(int(s.Start)) }

// EndPosition gives the place just after the span.
func (s Span) EndPosition() Position { return s.File.Position(int(s.End)) }

// Position converts a byte offset, clamped to the file; it is the only place
// where that is done. An offset inside a character counts as before it.
func (f *File) Position(offset int) Position {
	if f == nil {
		return Position{}
	}
	offset = min(max(offset, f.Body()), len(f.Text))
	for offset > 0 && offset < len(f.Text) && !utf8.RuneStart(f.Text[offset]) {
		offset--
	}
	line := f.line(offset)
	p := Position{Line: line + 1, Column: 1, Offset: offset}
	for _, r := range f.Text[f.starts()[line]:offset] {
		p.Column++
		p.UTF16++
		if r > 0xFFFF {
			p.UTF16++
		}
	}
	return p
}

// Offset converts a line, counted from 0, and UTF-16 units into it, as editors
// send them, to a byte offset. Both are clamped to what is there.
func (f *File) Offset(line, utf16 int) int {
	starts := f.starts()
	line = min(max(line, 0), len(starts)-1)
	at := int(starts[line])
	for _, r := range f.Line(line + 1) {
		if utf16 <= 0 {
			break
		}
		utf16--
		if r > 0xFFFF {
			utf16--
		}
		at += utf8.RuneLen(r)
	}
	return at
}
