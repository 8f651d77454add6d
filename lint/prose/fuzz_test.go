package prose_test

import (
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"fettle/lint/prose"
)

// Any text is read without a panic, and whatever is found in it stands inside the
// literal that it was written in.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{
		"Turn the nut. Then stop!", "- a\n- b **c** `d`\n\n1. e", "![x](y) [z](w) <b>q</b> <http://a.b>", "a\\*b &amp; &#x41; &nope; \\",
		"\n\n  \n# h\n===\n> q\n\n\tcode\n", "(((a: b) – c", "é\u0301 e\u0301 ﬁ \ufffc", "No. 3. e.g. X", "![", "![a]", "![a](", "**", "a\r\nb\rc",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, s string) {
		if !utf8.ValidString(s) || strings.ContainsAny(s, "$%\x00") {
			return
		}
		var literal strings.Builder
		literal.WriteByte('"')
		for _, r := range s {
			switch {
			case r == '\n':
				literal.WriteString(`\n`)
			case r == '\t':
				literal.WriteString(`\t`)
			case r == '\r':
				literal.WriteString(`\r`)
			case r == '"' || r == '\\':
				literal.WriteString(`\` + string(r))
			case !strconv.IsPrint(r) && r != ' ':
				return
			default:
				literal.WriteRune(r)
			}
		}
		literal.WriteByte('"')
		words := text(t, literal.String())
		if words == nil {
			return
		}
		inner := words.Source.Inner()
		p := prose.Read(words)
		for _, sentence := range p.Sentences {
			require.NotEmpty(t, sentence.Text)
			require.True(t, inner.Contains(sentence.Whole()))
			for _, w := range prose.Words(sentence.Text) {
				span := sentence.Span(w.Start, w.End)
				require.True(t, inner.Contains(span))
				require.Less(t, span.Start, span.End)
			}
			run := prose.LongestRun(sentence.Text)
			require.LessOrEqual(t, run.Words, len(prose.Words(sentence.Text)))
			prose.Opens(sentence.Text)
			for _, q := range prose.Quantities(sentence.Text, "US") {
				require.True(t, q.Valid() && 0 <= q.Start && q.Start < q.End && q.End <= len(sentence.Text))
			}
		}
		for _, c := range p.Pictures {
			require.True(t, inner.Contains(c.Span))
		}
	})
}
