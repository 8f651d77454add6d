package markdown

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/text"

	"fettle/calc"
	"fettle/lang"
	"fettle/render"
)

func page1(t testing.TB, root, dir string) []byte {
	t.Helper()
	fsys := os.DirFS(root)
	m, _, err := lang.Load(fsys, dir)
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, Write(&b, render.Lower(m, render.Options{Digest: "sha256:00", Figures: fsys})))
	return b.Bytes()
}

var reader = goldmark.New(goldmark.WithExtensions(extension.GFM))

// active are the nodes that would lead out, run or show something of an author's.
func active(src []byte) []string {
	var all []string
	_ = ast.Walk(reader.Parser().Parse(text.NewReader(src)), func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		switch n.(type) {
		case *ast.Link, *ast.AutoLink, *ast.Image, *ast.RawHTML, *ast.HTMLBlock, *extast.Strikethrough:
			if entering {
				all = append(all, n.Kind().String())
			}
		}
		return ast.WalkContinue, nil
	})
	return all
}

// TestHostile reads the output as CommonMark with GitHub's tables and bare links.
func TestHostile(t *testing.T) {
	out := page1(t, "../testdata", "hostile")
	require.Empty(t, active(out), "%s", out)
	require.NotContains(t, string(out), "\u202e")
	require.Contains(t, string(out), `\<script\>alert(9)\</script\>`, "it is printed as text")
}

func TestNothingActive(t *testing.T) {
	for _, m := range [][2]string{{"../testdata", "press"}, {"../../procedures", "beck"}, {"../../procedures", "sedge_2"}} {
		require.Empty(t, active(page1(t, m[0], m[1])), m[1])
	}
}

// TestReadsAsMarkdown: what is meant as a table, a heading, a box is one to a reader.
func TestReadsAsMarkdown(t *testing.T) {
	src := page1(t, "../testdata", "press")
	count := map[string]int{}
	require.NoError(t, ast.Walk(reader.Parser().Parse(text.NewReader(src)), func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if entering {
			count[n.Kind().String()]++
		}
		return ast.WalkContinue, nil
	}))
	require.Equal(t, 1+bytes.Count(src, []byte("\n#")), count["Heading"])
	require.GreaterOrEqual(t, count["Table"], 8)
	require.Equal(t, bytes.Count(src, []byte("- [ ] ")), count["TaskCheckBox"])
	require.Zero(t, count["CodeBlock"], "nothing is indented so far that it turns into code")
}

func TestEscape(t *testing.T) {
	for in, want := range map[string]string{
		"24 N·m":        "24 N·m",
		"a_b":           "a_b",
		"_a_":           `\_a\_`,
		"gap: ____ mm":  "gap: ____ mm",
		"(____)":        `(\_\_\_\_)`,
		"a | b":         `a \| b`,
		"2 * 3":         `2 \* 3`,
		"R&D":           `R\&D`,
		"a & b":         "a & b",
		"http://x":      `http\://x`,
		"a@b.example":   `a\@b.example`,
		"one\ntwo":      "one two",
		"- 0.5":         "- 0.5",
		"-0.05 to 0.05": "-0.05 to 0.05",
	} {
		require.Equal(t, want, escape(in))
	}
	require.Equal(t, `\- x`, leading("- x"))
	require.Equal(t, `1\. x`, leading("1. x"))
	require.Equal(t, "1.5 mm", leading("1.5 mm"))
}

// FuzzEscape: whatever stands in a manual comes back as the same text from a
// reader of Markdown, in a paragraph and in a cell.
func FuzzEscape(f *testing.F) {
	for _, s := range []string{"<b>", "[x](y)", "*a* _b_ `c`", "&amp;", "http://a.example", "a@b.example", "| x |", "1. x", "# x", "~~x~~",
		"____ x ____", "www.a.example", `\*`, "![x](y)", "***", "+ x", "=", "a\\", "x  ", "$x$", "<!--", "[ ] x"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		s = strings.Join(strings.Fields(render.Printable(s)), " ")
		if s == "" || strings.ContainsRune(s, 0xfffd) {
			return
		}
		src := []byte("| a |\n| --- |\n| " + escape(s) + " |\n\nx " + escape(s) + "\n\n" + leading(escape(s)) + "\n")
		require.Empty(t, active(src), "%q", s)
		var out bytes.Buffer
		require.NoError(t, reader.Convert(src, &out))
		require.NotContains(t, out.String(), "<em>", "%q", s)
		require.NotContains(t, out.String(), "<li>", "%q", s)
		require.NotContains(t, out.String(), "<code>", "%q", s)
		require.Equal(t, 1, strings.Count(out.String(), "<td>"), "%q", s)
	})
}

func TestBlankIsRoomToWrite(t *testing.T) {
	l := render.Line{{Kind: render.Text, Text: "They leave "}, {Kind: render.Value, Text: calc.Blank}, {Kind: render.Text, Text: "."}}
	require.Equal(t, "They leave ______.", line(l))
	l[0].Text = "("
	require.Equal(t, `(\_\_\_\_\_\_.`, line(l))
}
