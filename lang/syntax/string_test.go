package syntax

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// only gives the one attribute's string.
func only(t require.TestingT, value string) *String {
	tree := Parse(file("a {\n  b = " + value + "\n}\n"))
	require.Empty(t, tree.Findings, "%s", value)
	s, ok := tree.Blocks[0].Attrs[0].Expr.(*String)
	require.True(t, ok)
	return s
}

// Places in a string's text are found in its source.
func TestStringSource(t *testing.T) {
	for _, c := range []struct{ value, text, find, source string }{
		{`"24 N·m"`, "24 N·m", "N·m", "N·m"},
		{`"a \"b\" c"`, `a "b" c`, `"b"`, `\"b\"`},
		{`"a\tb\nc"`, "a\tb\nc", "b", "b"},
		{`"20 \u00b0C x"`, "20 °C x", "°C", `\u00b0C`},
		{`"20 \U000000b0C x"`, "20 °C x", "x", "x"},
		{`"a $${b} c"`, "a ${b} c", "${b", "$${b"},
		{`"a %%{b} c"`, "a %{b} c", "c", "c"},
		{`"50 % of $5"`, "50 % of $5", "% of $", "% of $"},
		{"\"e\u0301 x\"", "\u00e9 x", "x", "e\u0301 x"}, // NFC changed it: the whole literal
		{"<<-EOT\n    One\n      two.\n\n    Three\n  EOT", "One\n  two.\n\nThree\n", "two", "two"},
		{"<<-EOT\n    One\n      two.\n\n    Three\n  EOT", "One\n  two.\n\nThree\n", "  two.\n\nThr", "  two.\n\n    Thr"},
		{"<<-EOT\n    One\n    Three\n  EOT", "One\nThree\n", "Three\n", "Three\n"},
		{"<<-EOT\r\n    One\r\n    Three\r\n  EOT", "One\nThree\n", "e\nT", "e\r\n    T"},
		{"<<-EOT\n    One $${x}\n    Three\n  EOT", "One ${x}\nThree\n", "x}\nT", "x}\n    T"},
	} {
		s := only(t, c.value)
		text, ok := s.Literal()
		require.True(t, ok)
		require.Equal(t, c.text, text)
		i := strings.Index(text, c.find)
		require.Equal(t, c.source, s.Source(i, i+len(c.find)).Text(), "%s", c.value)
		require.Equal(t, c.source, s.PartSource(0, i, i+len(c.find)).Text(), "%s", c.value)
	}
}

func TestPartSource(t *testing.T) {
	s := only(t, "<<-EOT\n    One ${a} two\n    three ${b}\n  EOT")
	_, ok := s.Literal()
	require.False(t, ok)
	parts := s.Parts()
	require.Len(t, parts, 5)
	require.Equal(t, " two\nthree ", parts[2].Text)
	require.Equal(t, "two\n    thr", s.PartSource(2, 1, 8).Text())
	require.Equal(t, "${b}", parts[3].Span.Text())
	require.Equal(t, "One ", s.PartSource(0, 0, 4).Text())
}

// Every character of a text, escaped at random, is found where it was written.
func TestEveryCharacterIsFound(t *testing.T) {
	escapes := map[rune]string{'\n': `\n`, '\t': `\t`, '"': `\"`, '\\': `\\`, 'µ': `\u00b5`, '👍': `\U0001F44D`}
	rapid.Check(t, func(t *rapid.T) {
		runes := rapid.SliceOf(rapid.SampledFrom([]rune("ab µ👍\"\\\n\t$%{}°"))).Draw(t, "text")
		var src strings.Builder
		var places []string
		for _, r := range runes {
			written, ok := escapes[r]
			if plain := string(r); !ok || r > 0x7f && rapid.Bool().Draw(t, "plain") {
				written = plain
			}
			places = append(places, written)
			src.WriteString(written)
		}
		if strings.Contains(src.String(), "${") || strings.Contains(src.String(), "%{") || strings.Contains(src.String(), "$\\") {
			return
		}
		s := only(t, `"`+src.String()+`"`)
		text, _ := s.Literal()
		require.Equal(t, string(runes), text)
		at := 0
		for i, r := range runes {
			n := utf8.RuneLen(r)
			require.Equal(t, places[i], s.Source(at, at+n).Text())
			at += n
		}
	})
}

func TestWalkVisitsEverything(t *testing.T) {
	tree := Parse(file("a = [{ k = -x[y.z] }, f(\"p ${q}\", (r ? s : t)).u[v], w + null]\n"))
	var roots []string
	Walk(tree.Attrs[0].Expr, func(x Expr) bool {
		if r, ok := x.(*Traversal); ok {
			roots = append(roots, r.Root)
		}
		return true
	})
	require.Equal(t, strings.Split("kxyqrstvw", ""), roots)
}

func TestRulesAreComplete(t *testing.T) {
	for _, r := range Rules() {
		require.Regexp(t, `^(form|values)/[a-z0-9-]+$`, r.Name)
		require.NotZero(t, r.Severity)
		require.NotEmpty(t, r.Reason)
		require.NotEmpty(t, r.Remedy)
	}
	for _, tr := range translations {
		require.Contains(t, byName, tr.rule)
	}
}
