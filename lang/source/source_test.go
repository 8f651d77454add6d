package source_test

import (
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/lang/source"
)

func TestPosition(t *testing.T) {
	// µ has two bytes, 👍 four and two UTF-16 units.
	f := source.New("a/b.proc.hcl", source.BOM+"aµ👍x\r\n\nend")
	for _, c := range []struct {
		at                        string
		line, column, utf16Column int
	}{
		{"a", 1, 1, 0},
		{"µ", 1, 2, 1},
		{"👍", 1, 3, 2},
		{"x", 1, 4, 4},
		{"\r", 1, 5, 5},
		{"\nend", 2, 1, 0},
		{"end", 3, 1, 0},
	} {
		at := strings.Index(f.Text, c.at)
		p := f.Position(at)
		require.Equal(t, source.Position{Line: c.line, Column: c.column, UTF16: c.utf16Column, Offset: at}, p, "%q", c.at)
		require.Equal(t, at, f.Offset(c.line-1, c.utf16Column))
	}
	require.Equal(t, "a/b.proc.hcl:1:2", f.Span(4, 6).String())
	require.Equal(t, source.Position{Line: 3, Column: 4, UTF16: 3, Offset: len(f.Text)}, f.Position(len(f.Text)+9))
	require.Equal(t, 1, f.Position(0).Column, "the byte order mark is no column")
	require.Equal(t, f.Position(5).Offset, f.Position(4).Offset, "an offset inside a character counts as before it")
	require.Equal(t, []string{"", "aµ👍x", "", "end", ""}, []string{f.Line(0), f.Line(1), f.Line(2), f.Line(3), f.Line(4)})
	require.Equal(t, 3, f.Lines())
	require.Equal(t, 1, source.New("e", "").Lines())
	require.Equal(t, source.Position{}, source.Span{}.Position())
}

// The positions agree with the standard library's UTF-16 encoder, and the two
// conversions are inverse.
func TestPositionsAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune("a µ👍\n\t±é"))).Draw(t, "text")
		f := source.New("x", text)
		at := 0
		for i := range text + "." {
			at = i
			p := f.Position(at)
			before := text[:at]
			lineStart := strings.LastIndexByte(before, '\n') + 1
			require.Equal(t, strings.Count(before, "\n")+1, p.Line)
			require.Equal(t, len([]rune(before[lineStart:]))+1, p.Column)
			require.Equal(t, len(utf16.Encode([]rune(before[lineStart:]))), p.UTF16)
			require.Equal(t, at, f.Offset(p.Line-1, p.UTF16))
		}
	})
}

func TestSpan(t *testing.T) {
	f := source.New("x", "0123456789")
	s := f.Span(2, 6)
	require.Equal(t, "2345", s.Text())
	require.Equal(t, "34", s.Sub(1, 3).Text())
	require.Equal(t, "45", s.Sub(2, 99).Text())
	require.Equal(t, "", s.Sub(9, 1).Text())
	require.Equal(t, "234567", s.To(f.Span(7, 8)).Text())
	require.True(t, s.Contains(s.Sub(1, 2)))
	require.False(t, s.Contains(f.Span(5, 7)))
	require.Equal(t, "", f.Span(-4, -1).Text())
	require.Equal(t, "89", f.Span(8, 400).Text())
	require.True(t, source.Span{}.IsZero())
	require.Equal(t, "", source.Span{}.Text())
	require.Negative(t, s.Compare(f.Span(2, 7)))
	require.Positive(t, s.Compare(source.New("w", "").Whole()))
}
