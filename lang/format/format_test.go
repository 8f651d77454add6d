package format_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2/hclwrite"
	"github.com/stretchr/testify/require"

	"fettle/lang/format"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

func TestFormat(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"nothing", "", ""},
		{"blank lines only", "\n\n", ""},
		{"last newline", "a = 1", "a = 1\n"},
		{"byte order mark and line ends", source.BOM + "a = 1\r\nb = 2 \r\n", "a = 1\nb = 2\n"},
		{"columns", "part   \"shim\"{\nname=\"Shim\" # why\n quantity  =  4 // how many\n\n\n\nmass=1\n\n}\n",
			"part \"shim\" {\n  name     = \"Shim\" # why\n  quantity = 4      // how many\n\n  mass = 1\n}\n"},
		{"characters and not bytes", "a {\n  x = \"20 °C\" # one\n  y = \"20 C\" # two\n}\n", "a {\n  x = \"20 °C\" # one\n  y = \"20 C\"  # two\n}\n"},
		{"list over lines", "a = [\n1,2\n,3 # three\n]\nb = f( x,y )\n", "a = [\n  1, 2\n  , 3 # three\n]\nb = f(x, y)\n"},
		{"brackets that open together", "a = f([\n1,\n], [\n2])\n", "a = f([\n  1,\n], [\n  2])\n"},
		{"map", "a = {b=1,\"c\" : [ 2 ],}\nd={}\n", "a = { b = 1, \"c\" : [2], }\nd = {}\n"},
		{"operators", "a=-b+ -c*!d -( e )\nf = a.b [0] . c\ng = x?y:z\nh = a-b - c\n", "a = -b + -c * !d - (e)\nf = a.b[0].c\ng = x ? y : z\nh = a-b - c\n"},
		{"one-line block", "history \"A\"{issued=\"2026-01-02\"}\n", "history \"A\" { issued = \"2026-01-02\" }\n"},
		{"comments stay", "# a  \n\n\n/* b\n   c  */\na = /* d */ 1 /* e */\nb {# f\n\n# g\n}\n# h", "# a\n\n/* b\n   c  */\na = /* d */ 1 /* e */\nb { # f\n  # g\n}\n# h\n"},
		{"text moves with its line", "a {\nb {\ntext = <<-EOT\nOne ${\nx}\n\n  two\n   EOT\nc = 1\n}\n}\n",
			"a {\n  b {\n    text = <<-EOT\n      One ${\nx}\n\n        two\n    EOT\n    c    = 1\n  }\n}\n"},
		{"plain heredoc stays", "a {\n  long = 1\n  t = <<EOT\n One\n   EOT\n}\n", "a {\n  long = 1\n  t    = <<EOT\n One\nEOT\n}\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, ok := format.Format([]byte(c.in))
			require.True(t, ok)
			require.Equal(t, c.want, string(got))
			keeps(t, c.in)
		})
	}
}

func TestFormatLeavesBrokenFilesAlone(t *testing.T) {
	for _, in := range []string{"a = [\n", "a {\n", "a = 'x'\n", "a = 1\na = 2\n", "a =1\n}\n", "a = \"\xff\"\n", "a =[for x in y : x]\n"} {
		got, ok := format.Format([]byte(in))
		require.False(t, ok, "%q", in)
		require.Equal(t, in, string(got))
	}
}

// keeps holds that formatting is idempotent and changes no meaning.
func keeps(t require.TestingT, in string) {
	once, ok := format.Format([]byte(in))
	if !ok {
		require.Equal(t, in, string(once))
		return
	}
	twice, ok := format.Format(once)
	require.True(t, ok)
	require.Equal(t, string(once), string(twice), "%q", in)
	require.Equal(t, meaning(in), meaning(string(once)), "%q", in)
}

// meaning prints a file without its layout.
func meaning(text string) string {
	tree := syntax.Parse(source.New("", text))
	var w strings.Builder
	attrs := func(attrs []syntax.Attr) {
		for _, a := range attrs {
			fmt.Fprintf(&w, "%s = %s\n", a.Name, value(a.Expr))
		}
	}
	var blocks func([]*syntax.Block)
	blocks = func(list []*syntax.Block) {
		for _, b := range list {
			fmt.Fprintf(&w, "%s", b.Type)
			for _, l := range b.Labels {
				fmt.Fprintf(&w, " %q", l.Text)
			}
			w.WriteString(" {\n")
			attrs(b.Attrs)
			blocks(b.Blocks)
			w.WriteString("}\n")
		}
	}
	attrs(tree.Attrs)
	blocks(tree.Blocks)
	for _, c := range tree.Comments {
		fmt.Fprintf(&w, "comment %q own line %v\n", strings.Fields(c.Text), c.OwnLine)
	}
	return w.String()
}

func value(x syntax.Expr) string {
	out := fmt.Sprintf("%T", x)
	switch x := x.(type) {
	case *syntax.Number:
		out += x.Text
	case *syntax.Bool:
		out += fmt.Sprint(x.Value)
	case *syntax.String:
		for _, p := range x.Parts() {
			out += fmt.Sprintf(" %q", p.Text)
		}
	case *syntax.Traversal:
		out += x.Root
		for _, s := range x.Steps {
			out += "." + s.Name
		}
	case *syntax.Access:
		for _, s := range x.Steps {
			out += "." + s.Name
		}
	case *syntax.Unary:
		out += x.Op
	case *syntax.Binary:
		out += x.Op
	case *syntax.Call:
		out += x.Name
	case *syntax.Object:
		out += fmt.Sprint(len(x.Pairs))
	case *syntax.List:
		out += fmt.Sprint(len(x.Items))
	}
	inner := ""
	syntax.Walk(x, func(y syntax.Expr) bool {
		if y == x {
			return true
		}
		inner += " " + value(y)
		return false
	})
	return "(" + out + inner + ")"
}

// corpus gives every file of the dialect in this checkout.
func corpus(t testing.TB) []string {
	var texts []string
	for _, dir := range []string{"../../testdata", "../../procedures"} {
		require.NoError(t, filepath.WalkDir(dir, func(path string, e os.DirEntry, err error) error {
			if err == nil && !e.IsDir() && strings.HasSuffix(path, ".hcl") {
				text, err := os.ReadFile(path)
				require.NoError(t, err)
				texts = append(texts, string(text))
			}
			return err
		}))
	}
	return texts
}

// HCL's own formatter finds nothing to do in what we formatted, and we find
// nothing to do but our own additions in what it formatted.
func TestFormatAgreesWithHCLWrite(t *testing.T) {
	for _, in := range corpus(t) {
		keeps(t, in)
		out, ok := format.Format([]byte(in))
		if ok {
			require.Equal(t, string(out), string(hclwrite.Format(out)))
			again, _ := format.Format(hclwrite.Format([]byte(in)))
			require.Equal(t, string(out), string(again))
		}
	}
}

func TestFormatKeepsMeaningAfterRandomEdits(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	snippets := []string{"\n", "\n\n\n", " ", "\t", "  ", "# c\n", "// c\n", "/* c */", "/* c\nd */", "\r\n", "[", "]", "(", ")", "{", "}", ",", "-", "x", "1", "a = 1\n", "b {}\n", "t = <<-EOT\n x\n  y\nEOT\n"}
	texts := corpus(t)
	for range 2000 {
		in := texts[r.IntN(len(texts))]
		if len(in) > 2000 {
			i := r.IntN(len(in) - 1000)
			in = in[i : i+1000]
		}
		for range 1 + r.IntN(4) {
			i := r.IntN(len(in) + 1)
			in = in[:i] + snippets[r.IntN(len(snippets))] + in[i:]
		}
		keeps(t, in)
	}
}

func FuzzFormat(f *testing.F) {
	for _, text := range corpus(f) {
		if len(text) < 1<<10 { // short seeds make fast rounds
			f.Add(text)
		}
	}
	f.Add("a = -b[0]\n# c\nt = <<-EOT\n x ${ a\n } y\n  EOT\n")
	f.Fuzz(func(t *testing.T, in string) {
		if len(in) < 1<<13 {
			keeps(t, in)
		}
	})
}

func BenchmarkFormat(b *testing.B) {
	text := []byte(strings.Join(corpus(b), "\n"))
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		format.Format(text)
	}
}
