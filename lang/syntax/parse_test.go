package syntax

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lang/source"
)

// sound is a file that uses the whole dialect.
const sound = `# The bearing end.
manual "beck" {
  title  = "Beck micro-hydro set" // trailing
  shares = ["../shop"]
  order  = [procedure.a, procedure.b,]
  history "A" { issued = "2026-01-02" }
}

/* a longer
   comment */
part "shim" {
  at_each = places.side
  size "0.20 mm" {
    in_kit = 6
  }
}

procedure "thrust_end" {
  title = "Shim the shaft"

  measure "float" {
    on      = [part.shaft, part.case.face.drive]
    likely  = "0.55..1.45 mm ± 10 %"
    mass    = 0.0035 * measure.bore["left"] + -2 % 3
    when    = option.ignition == "coil" && !(a < 2 || b >= max(c, d[0].e)) ? true : null
    accept  = within(measure.drum - "0.040 in", "0.010 in").low
    map     = { inlet = "0.10 mm", exhaust : 4
      "key" = [
        1, # one
        2
      ]
    }
    text    = <<-EOT
      Push the shaft ${choose.pack} away, 50 % of it.

        Then \n pull it towards you.
    EOT
    note = "Say \"stop\" at 20 °C: \u00b5 ${"nested ${x}"}$"
    empty = ""
  }
}
`

func file(text string) *source.File { return source.New("x.proc.hcl", text) }

func TestSoundFileIsReadWithoutHelp(t *testing.T) {
	p := newParser(file(sound))
	for {
		p.blankLines()
		if p.pos >= p.end {
			break
		}
		start := p.pos
		require.True(t, p.item(), "refused at %s", p.span(start, start))
	}
	require.Empty(t, p.findings)
}

// agrees compares Parse with hclsyntax reading the same bytes.
func agrees(t require.TestingT, text string) {
	f := file(text)
	if len(surveyItem(text, f.Body(), len(text), true).faults) > 0 {
		return
	}
	want, ok := byHCL(f)
	got := Parse(f)
	if ok {
		require.Equal(t, dump(want), dump(got), "%q", text)
		return
	}
	require.NotEmpty(t, got.Findings, "hclsyntax refuses this: %q", text)
}

// values are expressions, sound and not, that the two parsers must agree on.
var values = []string{
	`1`, `07`, `1.50`, `-1`, `- 1`, `!a`, `a-b`, `a - b`, `a.b-c.d`, `a . b`, `a .b`, `a[0]`, `a [0]`, `a["x"]`, `a["x${y}"]`,
	`a[b].c[d]`, `f(x).y`, `f (x)`, `f()`, `f(a,)`, `(a)[0]`, `(a)`, `[]`, `[a]`, `[a,]`, `{}`, `{a=1}`, `{ a.b = 1, "c" : 2 }`,
	`a ? b : c ? d : e`, `a < b < c`, `a == b != c`, `(a < b) == c`, `a + b * c - d / e % f`, `a || b && c == d`,
	`"a"`, `""`, `"${a}"`, `"x${a}y${b}"`, `"${a}${b}"`, `"$"`, `"%"`, `"50%"`, `"$5"`, `"$$"`, `"%%"`, `"$${a}"`, `"%%{a}"`, `"$$${a}"`,
	`"a\tb"`, `"a\"b"`, `"\\"`, `"\u00e9"`, `"\U0001F600"`, `"e\u0301"`, "\"e\u0301\"", "\"e\u0301 ${a} e\u0301\"", `"$\""`, `"%\n"`, `"$é"`, `"\q"`, `"\u12"`, `"\ud800"`,
	`"${ a }"`, `"${~ a ~}"`, `" ${~ a ~} "`, `"%{ if a }b%{ endif }"`, "\"${\na\n}\"", `"${{a=1}}"`, `"${"}"}"`, `"a${/* c */ a # d`,
	`a.*.b`, `a[*].b`, `a.0`, `a.0.b`, `u::f(x)`, `f(a...)`, `[for a in b : a]`, `{for a in b : a => a}`, `for`, `[for]`, `[fork]`, `{ for = 1 }`,
	`true`, `false`, `null`, `true.x`, `1.a`, `"a".b`, `[1][0]`, `{a=1}.a`, `1e5`, `1.5.2`, `2..5`, `.5`, `0x10`, `5 mm`, `1_000`, `a...`,
	"(a\n+ b)", "[a\n,b]", "f(a\n,b\n)", "{\n\n# c\na = 1 // d\n}", "{a = 1,\n b = 2,\n}", "a\n+ b", "/* x\ny */ 1", "1 /* x */", "1 # x", "1 // x", "a /b", "a // b", "[ # x\n a ]",
	"<<EOT\n  a\nEOT", "<<-EOT\n  a\n b\n\n   \n    c\n  EOT", "<<-EOT\n  ${a} b\n  EOT", "<<-EOT\n${a}\n  EOT  ", "<<-EOT\n  $5 %\n  $${x}\n EOT", "<<-EOT\nEOT", "<<-EOT\n\n\nEOT",
	"<<-EOT\n\tx\n  y\nEOT", "<<-EOT\n \u00a0x\n  y\nEOT", "<<-EOT \n a\nEOT", "<<-EOT\n  a ${\n b } c\n  d\n  EOT", "[<<-A\n x\n A\n, <<-B\n  y\n  B\n]", "<<-EOT\n  e\u0301\n  EOT", "<<-EOT\n \r x\n EOT",
	"<<-EOT\n  ${a}${b}\n  c\n EOT", "<<-EOT\n  %{ if a }\n%{ endif }\n EOT", "<<-EOT\n  ${~ a ~}\n   c\n EOT", "<<-EOT\n a $\n b %\n %EOT\n EOT", "<<-EOT\n  a", "<<-É\n  a\n É",
	`a = b`, `a => b`, `a == = b`, `a <<b`, `a &b`, `a ** b`, `a ? b`, `a ? b :: c`, `(a`, `[a`, `{a`, `f(a`, `"a`, `a.`, `a[`, `a b`, `'a'`, `“a”`, "a\tb", "\va", "é", "a.é", "aé", "-é",
}

// files are the same for whole files.
var files = []string{
	"", "\n", "a", "a =", "a {", "a {}", "a b {}", "a \"b\" c {}", "a \"b\" \"c\" {\n}", "a \"${b}\" {\n}", "a \"e\u0301\" {\n}", "a \"b\\\"c\" {\n}", "a\n{\n}", "a {\n} b {\n}", "a { b = 1 \n}", "a { b = 1, c = 2 }",
	"a { b {} }", "a {\n b {}\n b {\n}\n}", "a = 1\na = 2\n", "b {\n a = 1\n a = 2\n}\n", "a = 1 b = 2\n", "a = 1, b = 2\n", "}", "a {\n}\n}\n", "a {\n", "# c", "/* c", "/*/ c */", "a /* c */ \"b\" {\n}", "a { # c\n}\n", "a { /* c */ b = 1 }\n", "a {\n} # c\n", "\"a\" = 1", "a \"b\" {", "\r", "a = 1\r", "\x00", "a = \"\x00\"\n", "a = \"\xff\"\n", "# \xff\n", "\xef\xbb\xbf", "a-b = 1\n", "a-b \"c\" {\n}\n", "a \"%\" {\n}", "a \"$${b}\" {}\n",
}

func TestAgreesWithHCLSyntax(t *testing.T) {
	agrees(t, sound)
	agrees(t, strings.ReplaceAll(sound, "\n", "\r\n"))
	agrees(t, source.BOM+sound)
	for _, x := range values {
		for _, form := range []string{"a = %s\n", "a = %s", "b \"x\" {\n  a = %s\n  c = 1\n}\n", "b {a = %s}\n", "b {\n  a = {\n    k = %s\n  }\n}\n", "a = \"x ${%s} y\"\n", "a = [%s, 1]\n"} {
			agrees(t, fmt.Sprintf(form, x))
			agrees(t, strings.ReplaceAll(fmt.Sprintf(form, x), "\n", "\r\n"))
		}
	}
	for _, x := range files {
		agrees(t, x)
	}
}

// corpus gives every file of the dialect in this checkout, and the file above.
func corpus(t testing.TB) []string {
	texts := []string{sound}
	for _, dir := range []string{"../../testdata", "../../procedures"} {
		err := filepath.WalkDir(dir, func(path string, e os.DirEntry, err error) error {
			if err == nil && !e.IsDir() && strings.HasSuffix(path, ".hcl") {
				text, err := os.ReadFile(path)
				require.NoError(t, err)
				texts = append(texts, string(text))
			}
			return err
		})
		require.NoError(t, err)
	}
	return texts
}

func TestAgreesOnTheCorpus(t *testing.T) {
	for _, text := range corpus(t) {
		agrees(t, text)
	}
}

// edit makes one random change, of the kind that typing makes.
func edit(r *rand.Rand, text string) string {
	snippets := []string{`"`, "{", "}", "[", "]", "(", ")", "=", ",", ".", "$", "%", "${", "%{", "<<-EOT\n", "EOT\n", "\n", "\r\n", "#", "//", "/*", "*/", "\\", "-", "1", "a", " ", "\t", "é", "?", ":", "<", "==", "&&", "~", "for ", "0.", "e9"}
	i := r.IntN(len(text) + 1)
	switch r.IntN(4) {
	case 0:
		j := min(len(text), i+1+r.IntN(3))
		return text[:i] + text[j:]
	case 1:
		j := min(len(text), i+r.IntN(40))
		k := r.IntN(len(text) + 1)
		return text[:k] + text[i:j] + text[k:]
	default:
		return text[:i] + snippets[r.IntN(len(snippets))] + text[i:]
	}
}

func TestAgreesAfterRandomEdits(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	rounds := 3000
	if testing.Short() {
		rounds = 300
	}
	for range rounds {
		text := sound
		for range 1 + r.IntN(3) {
			text = edit(r, text)
		}
		agrees(t, text)
		checkSpans(t, Parse(file(text)))
	}
}

// checkSpans holds every span inside the file and inside its parent.
func checkSpans(t require.TestingT, tree *Tree) {
	whole := tree.File.Whole()
	for _, f := range tree.Findings {
		require.True(t, f.Span.File == tree.File && f.Span.Start >= 0 && f.Span.End <= whole.End, "%v", f)
	}
	dump(tree) // slices every span that is made on demand
	for _, c := range tree.Comments {
		require.Equal(t, c.Text, c.Span.Text())
	}
	var inside func(outer source.Span, attrs []Attr, blocks []*Block)
	inside = func(outer source.Span, attrs []Attr, blocks []*Block) {
		for i := range attrs {
			require.True(t, outer.Contains(attrs[i].Span))
			require.True(t, attrs[i].Span.Contains(attrs[i].Expr.Span()), "%s", at(attrs[i].Span))
			require.Equal(t, attrs[i].Name, attrs[i].NameSpan().Text())
		}
		for _, b := range blocks {
			require.True(t, outer.Contains(b.Span))
			require.True(t, b.Span.Contains(b.Header))
			inside(b.Span, b.Attrs, b.Blocks)
		}
	}
	inside(whole, tree.Attrs, tree.Blocks)
}

func FuzzParse(f *testing.F) {
	for _, x := range values {
		f.Add("a \"b\" {\n  c = " + x + "\n}\n")
	}
	for _, text := range append(corpus(f), files...) {
		if len(text) < 1<<10 { // short seeds make fast rounds
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) < 1<<13 {
			checkSpans(t, Parse(file(text)))
			agrees(t, text)
		}
	})
}
