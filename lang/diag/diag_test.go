package diag_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/lang/diag"
	"fettle/lang/source"
)

func TestApplyEdits(t *testing.T) {
	f := source.New("x", "0123456789")
	edit := func(start, end int, text string) diag.Edit { return diag.Edit{Span: f.Span(start, end), New: text} }
	for _, c := range []struct {
		name  string
		edits []diag.Edit
		want  string
		fails bool
	}{
		{"none", nil, "0123456789", false},
		{"replace, delete, insert", []diag.Edit{edit(8, 9, ""), edit(0, 1, "ab"), edit(5, 5, "-")}, "ab1234-5679", false},
		{"neighbours", []diag.Edit{edit(2, 4, "x"), edit(4, 6, "y")}, "01xy6789", false},
		{"two insertions at one place", []diag.Edit{edit(3, 3, "a"), edit(3, 3, "b")}, "012ab3456789", false},
		{"the same edit twice", []diag.Edit{edit(3, 4, "a"), edit(3, 4, "a")}, "012a456789", false},
		{"overlap", []diag.Edit{edit(2, 5, "x"), edit(4, 6, "y")}, "0123456789", true},
		{"two for one place", []diag.Edit{edit(2, 5, "x"), edit(2, 5, "y")}, "0123456789", true},
		{"outside", []diag.Edit{edit(0, 1, "x"), {Span: source.Span{File: f, Start: 9, End: 12}}}, "0123456789", true},
		{"backwards", []diag.Edit{{Span: source.Span{File: f, Start: 5, End: 4}}}, "0123456789", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := diag.ApplyEdits(f.Text, c.edits)
			require.Equal(t, c.want, got)
			require.Equal(t, c.fails, err != nil)
		})
	}
}

// Sorting gives one order whatever order the findings came in.
func TestSortForgetsTheOrderOfWork(t *testing.T) {
	files := []*source.File{source.New("a", "0123"), source.New("b", "0123")}
	one := rapid.Custom(func(t *rapid.T) diag.Finding {
		start := rapid.IntRange(0, 3).Draw(t, "start")
		return diag.Finding{
			Span:     rapid.SampledFrom(files).Draw(t, "file").Span(start, start+rapid.IntRange(0, 2).Draw(t, "length")),
			Rule:     rapid.SampledFrom([]string{"fit/a", "form/b"}).Draw(t, "rule"),
			Message:  rapid.SampledFrom([]string{"One.", "Two."}).Draw(t, "message"),
			Severity: diag.Error,
		}
	})
	rapid.Check(t, func(t *rapid.T) {
		l := diag.List(rapid.SliceOf(one).Draw(t, "findings"))
		m := slices.Clone(l)
		slices.Reverse(m)
		m.Add(l...) // everything twice
		l.Sort()
		m.Sort()
		require.Equal(t, l, m)
		for i := 1; i < len(l); i++ {
			require.LessOrEqual(t, l[i-1].Span.Compare(l[i].Span), 0)
		}
	})
}

func TestSeverity(t *testing.T) {
	require.Equal(t, "error doubt advice invalid", diag.Error.String()+" "+diag.Doubt.String()+" "+diag.Advice.String()+" "+diag.Severity(0).String())
	require.Equal(t, diag.Severity(0), diag.List{}.Worst())
	require.Equal(t, diag.Doubt, diag.List{{Severity: diag.Advice}, {Severity: diag.Doubt}}.Worst())
}
