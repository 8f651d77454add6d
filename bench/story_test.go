package bench_test

import (
	"fmt"
	"os"
	"regexp"
	"sort"
	"strings"
	"testing"
	"testing/fstest"

	"fettle/bench"
	"fettle/lang"
	"fettle/lang/model"

	"github.com/stretchr/testify/require"
)

// A story is a small manual over the shop of testdata/shop.proc.hcl. Each line
// on which the bench must point says so: `# want "never tightened"`. What is
// wanted follows from language.md and checks.md of the design; the trade facts
// in it are common practice, no source.
func story(t *testing.T, name, steps string) { tell(t, name, steps, "", "") }

// tell is story with entries of the manual's own, and with lines for its
// manual block.
func tell(t *testing.T, name, steps, entries, lines string) []*bench.Trace {
	t.Helper()
	src := steps
	if !strings.Contains(steps, "procedure \"") {
		src = "procedure \"work\" {\n  title = \"Do the work\"\n" + steps + "\n}\n"
	}
	m := load(t, src, entries, lines)
	traces := bench.RunAll(m)
	t.Run(name, func(t *testing.T) {
		var got []string
		for _, b := range bench.Gather(traces) {
			got = append(got, fmt.Sprintf("%d: %s", lineOf(b), b.What))
		}
		want := wants(src, 0)
		want = append(want, wants(entries, 1000)...)
		sort.Strings(got)
		sort.Strings(want)
		if strings.Join(got, "\n") != strings.Join(want, "\n") {
			var all []string
			for _, b := range bench.Gather(traces) {
				all = append(all, say(b))
			}
			t.Errorf("want:\n  %s\ngot:\n  %s", strings.Join(want, "\n  "), strings.Join(all, "\n  "))
		}
	})
	return traces
}

func load(t *testing.T, src, entries, lines string) *model.Manual {
	t.Helper()
	var order []string
	for _, p := range regexp.MustCompile(`(?m)^procedure "(\w+)"`).FindAllStringSubmatch(src, -1) {
		order = append(order, "procedure."+p[1])
	}
	manual := "manual \"story\" {\n  title = \"Story\"\n  units = \"metric\"\n  revision = \"A\"\n  shares = [\"../shop\"]\n"
	if !strings.Contains(lines, "order") {
		manual += "  order = [" + strings.Join(order, ", ") + "]\n"
	}
	manual += lines + "\n}\n"
	shop, err := os.ReadFile("testdata/shop.proc.hcl")
	require.NoError(t, err)
	m, findings, err := lang.Load(fstest.MapFS{
		"m/a.proc.hcl":       {Data: []byte(src)},
		"m/entries.proc.hcl": {Data: []byte(entries)},
		"m/manual.proc.hcl":  {Data: []byte(manual)},
		"shop/shop.proc.hcl": {Data: shop},
	}, "m")
	require.NoError(t, err)
	for _, f := range findings {
		if !strings.HasPrefix(f.Rule, "order/") {
			t.Fatalf("the story itself is wrong: %s %s %s", f.Span, f.Rule, f.Message)
		}
	}
	return m
}

// lineOf is the line that a breach points at; entries count from 1000.
func lineOf(b bench.Breach) int {
	at := b.Node.Name
	if b.Attr != "" {
		at = b.Node.At(b.Attr)
	}
	n := at.Position().Line
	if strings.Contains(at.Path(), "entries") {
		n += 1000
	}
	return n
}

var wanted = regexp.MustCompile(`"([^"]+)"`)

func wants(src string, from int) []string {
	var all []string
	for i, line := range strings.Split(src, "\n") {
		if _, rest, ok := strings.Cut(line, "# want "); ok {
			for _, w := range wanted.FindAllStringSubmatch(rest, -1) {
				all = append(all, fmt.Sprintf("%d: %s", from+i+1, w[1]))
			}
		}
	}
	return all
}
