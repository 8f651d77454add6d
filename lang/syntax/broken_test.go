package syntax

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"fettle/lang/source"
)

var update = flag.Bool("update", false, "rewrite the expected findings in testdata/broken")

// Each broken file has its findings, and what was saved of it, beside it.
func TestBrokenFiles(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/broken/*.proc.hcl")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		name := strings.TrimSuffix(filepath.Base(path), ".proc.hcl")
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			tree := Parse(source.New(filepath.Base(path), string(text)))
			checkSpans(t, tree)
			wantPath := strings.TrimSuffix(path, ".proc.hcl") + ".want"
			if *update {
				require.NoError(t, os.WriteFile(wantPath, []byte(report(tree)), 0o644))
			}
			want, err := os.ReadFile(wantPath)
			require.NoError(t, err)
			require.Equal(t, string(want), report(tree))
		})
	}
}

// report writes findings as line:column, source, rule and message, and then
// the blocks and attributes that were saved.
func report(t *Tree) string {
	var w strings.Builder
	for _, f := range t.Findings {
		p := f.Span.Position()
		fmt.Fprintf(&w, "%d:%d %q %s %s %s\n", p.Line, p.Column, f.Span.Text(), f.Severity, f.Rule, f.Message)
	}
	fmt.Fprintf(&w, "damaged: %v\n", t.Damaged)
	outline(&w, "", t.Attrs, t.Blocks)
	return w.String()
}

func outline(w *strings.Builder, in string, attrs []Attr, blocks []*Block) {
	for _, a := range attrs {
		fmt.Fprintf(w, "%s%s = %s\n", in, a.Name, strings.TrimPrefix(fmt.Sprintf("%T", a.Expr), "*syntax."))
	}
	for _, b := range blocks {
		fmt.Fprintf(w, "%s%s %s\n", in, b.Type, b.Label(0))
		outline(w, in+"  ", b.Attrs, b.Blocks)
	}
}

// What would overflow the stack or take for ever is stopped before the parser,
// and what stands around it is saved.
func TestLimits(t *testing.T) {
	const n = 100_000
	for _, c := range []struct{ name, value, rule string }{
		{"brackets", strings.Repeat("[", n) + strings.Repeat("]", n), ruleDeep},
		{"brackets open", strings.Repeat("[", n), ruleDeep},
		{"parentheses", strings.Repeat("(", n) + "1" + strings.Repeat(")", n), ruleDeep},
		{"braces", strings.Repeat("{a=", n) + "1" + strings.Repeat("}", n), ruleDeep},
		{"braces open", strings.Repeat("{", n), ruleDeep},
		{"calls", strings.Repeat("f(", n) + strings.Repeat(")", n), ruleDeep},
		{"interpolations", strings.Repeat(`"${`, n) + strings.Repeat(`}"`, n), ruleDeep},
		{"interpolations open", strings.Repeat(`"${`, n), ruleDeep},
		{"minus", strings.Repeat("-", n) + "1", ruleLong},
		{"minus apart", strings.Repeat("- ", n) + "1", ruleLong},
		{"not", strings.Repeat("!", n) + "a", ruleLong},
		{"sum", strings.Repeat("1 + ", n) + "1", ruleLong},
		{"choices", strings.Repeat("a ? b : ", n) + "c", ruleLong},
		{"steps", "a" + strings.Repeat(".b", n), ruleLong},
		{"indexes", "a" + strings.Repeat("[b]", n), ruleLong},
		{"digits", strings.Repeat("9", n), ruleDigits},
		{"decimals", "0." + strings.Repeat("9", n), ruleDigits},
		{"exponent", "1e1000000", ruleExponent},
		{"heredoc", "<<-EOT\n" + strings.Repeat("      line\n", n) + "    EOT", ruleHeredocLines},
		{"heredoc with more", "<<-EOT\n" + strings.Repeat("      $${line}\n", n) + "    EOT", ruleHeredocLines},
		{"heredoc open", "<<-EOT\n" + strings.Repeat("      line\n", n), ruleHeredocLines},
		{"quotes", strings.Repeat(`"`, n), ""},
		{"closers", strings.Repeat("}", n), ""},
		{"commas", strings.Repeat(",", n), ""},
		{"comment open", "/*" + strings.Repeat("*", n), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			start := time.Now()
			text := "part \"a\" {\n  mass = " + c.value + "\n}\n\npart \"z\" {\n  mass = 1\n}\n"
			tree := Parse(file(text))
			checkSpans(t, tree)
			require.NotEmpty(t, tree.Findings)
			require.Less(t, len(tree.Findings), 110)
			if c.rule != "" {
				require.Equal(t, c.rule, tree.Findings[0].Rule, "%v", tree.Findings[0])
			}
			require.Less(t, time.Since(start), 5*time.Second)
			var labels []string
			for _, b := range tree.Blocks {
				labels = append(labels, b.Label(0))
			}
			require.Equal(t, []string{"a", "z"}, labels)
		})
	}
}

// Large files that are nothing but errors cost little more than sound ones.
func TestLargeAndWrong(t *testing.T) {
	const size = 20 << 20
	for name, unit := range map[string]string{
		"prose":       "The quick brown fox, and so on.\n",
		"open blocks": "part \"a\" {\n",
		"open nested": "part \"a\" {\n  fit \"b\" {\n    c {\n",
		"closers":     "}\n",
		"quotes":      "a = \"b\n",
		"brackets":    "a = [\n",
		"wrong steps": "  fit \"a\" {\n    b = [c d]\n  }\n",
		"one line":    "a ",
		"NUL":         "\x00",
		"high bytes":  "\xff",
	} {
		t.Run(name, func(t *testing.T) {
			start := time.Now()
			tree := Parse(file(strings.Repeat(unit, size/len(unit))))
			require.NotEmpty(t, tree.Findings)
			require.True(t, tree.Damaged)
			t.Log(len(tree.Findings), time.Since(start))
			require.Less(t, time.Since(start), 20*time.Second)
		})
	}
}

// One error in a long procedure leaves its other steps.
func TestOneErrorInALongProcedure(t *testing.T) {
	text := manual(20_000)
	middle := strings.Index(text, "float_10000")
	middle += strings.Index(text[middle:], "on           = [") + len("on           = [")
	for _, wrong := range []string{"x y", "[", "\"", "<", "${"} {
		start := time.Now()
		tree := Parse(file(text[:middle] + wrong + text[middle:]))
		require.NotEmpty(t, tree.Findings)
		require.Len(t, tree.Blocks, 1, "%q", wrong)
		require.Len(t, tree.Blocks[0].Blocks, 20_000, "%q", wrong)
		require.Less(t, time.Since(start), 3*time.Second)
	}
}
