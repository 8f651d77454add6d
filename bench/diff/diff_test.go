package diff_test

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/bench/diff"
	"fettle/bench/revision"
	"fettle/lang"
	"fettle/lang/langtest"
	"fettle/lang/model"
)

var update = flag.Bool("update", false, "rewrite goldens")

func load(t require.TestingT, fsys fs.FS, dir string) *model.Manual {
	m, found, err := lang.Load(fsys, dir)
	require.NoError(t, err)
	for _, f := range found {
		require.Fail(t, "finding", "%s: %s", f.Span, f.Message)
	}
	return m
}

// The two revisions of an invented hub in testdata say between them everything
// that can change.
func hub(t *testing.T) (old, new *model.Manual) {
	root := os.DirFS("testdata")
	return load(t, root, "hub_a"), load(t, root, "hub_b")
}

func TestGoldens(t *testing.T) {
	old, new := hub(t)
	c := diff.Diff(old, new)
	for name, got := range map[string]string{
		"hub.txt": c.Text(), "hub.md": c.Markdown(), "hub.json": string(c.JSON()),
		"back.txt": diff.Diff(new, old).Text(), "none.txt": diff.Diff(old, old).Text(), "none.md": diff.Diff(old, old).Markdown(),
	} {
		file := filepath.Join("testdata", name)
		if *update {
			require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Equal(t, string(want), got, name)
	}
}

func TestJSONMeetsItsSchema(t *testing.T) {
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(diff.Schema))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("urn:fettle:changes", doc))
	schema, err := c.Compile("urn:fettle:changes")
	require.NoError(t, err)
	old, new := hub(t)
	for _, x := range []*diff.Changes{diff.Diff(old, new), diff.Diff(old, old)} {
		v, err := jsonschema.UnmarshalJSON(strings.NewReader(string(x.JSON())))
		require.NoError(t, err)
		require.NoError(t, schema.Validate(v))
	}
}

// A manual does not differ from itself.
func TestNothingDiffersFromItself(t *testing.T) {
	root := os.DirFS("../..")
	for _, dir := range []string{"procedures/sedge_2", "procedures/beck"} {
		m, _, err := lang.Load(root, dir)
		require.NoError(t, err)
		require.Empty(t, diff.Diff(m, m).List)
		n, _, err := lang.Load(root, dir)
		require.NoError(t, err)
		require.Empty(t, diff.Diff(m, n).List)
	}
}

var stepHead = regexp.MustCompile(`(?m)^  (\w+) "(\w+)" \{\n`)

// steps cuts a procedure's file into what stands before the first step, the
// steps, and the closing brace.
func steps(text string) (before string, list []string) {
	at := stepHead.FindAllStringIndex(text, -1)
	before = text[:at[0][0]]
	for i, s := range at {
		to := strings.LastIndex(text, "}\n")
		if i+1 < len(at) {
			to = at[i+1][0]
		}
		list = append(list, text[s[0]:to])
	}
	return before, list
}

// edit is a revision made of another by random edits that keep it readable, and
// what it should show.
type edit struct {
	fsys             fstest.MapFS
	moved            bool
	changed, renamed map[string]bool // new addresses
	added, removed   map[string]bool
}

func edited(t *rapid.T, base fstest.MapFS) edit {
	e := edit{fsys: fstest.MapFS{}, changed: map[string]bool{}, renamed: map[string]bool{}, added: map[string]bool{}, removed: map[string]bool{}}
	for name, f := range base {
		e.fsys[name] = f
	}
	for p := range 2 {
		name := fmt.Sprintf("m/%05d.proc.hcl", p)
		before, list := steps(string(base[name].Data))
		address := func(s string) string {
			h := stepHead.FindStringSubmatch(s)
			return fmt.Sprintf("p%d.%s.%s", p, h[1], h[2])
		}
		for range rapid.IntRange(0, 3).Draw(t, "edits") {
			i := rapid.IntRange(0, len(list)-1).Draw(t, "step")
			s := list[i]
			free := strings.HasPrefix(s, "  inspect") && !e.renamed[address(s)] && !e.changed[address(s)] && !e.added[address(s)]
			switch op := rapid.SampledFrom([]string{"move", "title", "takes", "rename", "remove", "add"}).Draw(t, "op"); {
			case op == "move" && free:
				j := rapid.IntRange(0, len(list)-1).Draw(t, "to")
				list = slices.Insert(slices.Delete(slices.Clone(list), i, i+1), j, s)
				e.moved = e.moved || i != j
			case op == "title" && !e.added[address(s)]:
				list[i] = strings.Replace(s, `title = "`, `title = "Then `, 1)
				if list[i] == s {
					list[i] = regexp.MustCompile(`title( +)= "`).ReplaceAllString(s, `title$1= "Then `)
				}
				e.changed[address(s)] = true
			case op == "takes" && strings.Contains(s, "min\"") && !e.added[address(s)] && strings.Contains(s, "takes"):
				list[i] = regexp.MustCompile(`takes( +)= "(\d+) min"`).ReplaceAllString(s, `takes$1= "1$2 min"`)
				e.changed[address(s)] = true
			case op == "rename" && free:
				h := stepHead.FindStringSubmatch(s)
				list[i] = strings.Replace(s, h[0], fmt.Sprintf("  %s \"%s_x\" {\n    was = [\"%s\"]\n", h[1], h[2], h[2]), 1)
				e.renamed[address(list[i])] = true
			case op == "remove" && free && len(list) > 2:
				list = slices.Delete(slices.Clone(list), i, i+1)
				e.removed[address(s)] = true
			case op == "add":
				n := fmt.Sprintf("  inspect \"new%d\" {\n    title = \"Look again\"\n    on = [part.bed]\n    criterion = \"It is there.\"\n    otherwise = \"Stop.\"\n  }\n\n", len(e.added))
				e.added[address(n)] = true
				list = slices.Insert(slices.Clone(list), i, n)
			}
		}
		e.fsys[name] = &fstest.MapFile{Data: []byte(before + strings.Join(list, "") + "}\n")}
	}
	return e
}

// Random edits are found as what they are, and both ways round the same blocks
// are paired.
func TestRandomEditsAreToldAsWhatTheyAre(t *testing.T) {
	base := langtest.Generate(2, 18)
	old := load(t, base, "m")
	rapid.Check(t, func(t *rapid.T) {
		e := edited(t, base)
		new := load(t, e.fsys, "m")
		c := diff.Diff(old, new)
		back := diff.Diff(new, old)
		require.Equal(t, revision.Digest(old) == revision.Digest(new), c.Empty())
		require.Len(t, back.List, len(c.List))
		old.EachNode(func(o *model.Node) { require.Equal(t, c.Pairs.New(o), back.Pairs.Old(o)) })
		new.EachNode(func(n *model.Node) { require.Equal(t, c.Pairs.Old(n), back.Pairs.New(n)) })

		seen := map[string]bool{}
		for i := range c.List {
			x := &c.List[i]
			at := strings.TrimPrefix(x.Node().Address, "procedure.")
			switch {
			case x.Added():
				require.True(t, e.added[at], "not added: %s", at)
			case x.Removed():
				require.True(t, e.removed[at], "not removed: %s", at)
			default:
				require.True(t, e.changed[at] || e.renamed[at] || x.Moved && e.moved, "nothing was done to %s", at)
				require.Equal(t, e.renamed[at], x.Renamed)
			}
			seen[at] = true
		}
		for _, want := range []map[string]bool{e.added, e.removed, e.renamed, e.changed} {
			for at := range want {
				require.True(t, seen[at], "not told: %s", at)
			}
		}
	})
}

// A step that changes place is moved, and the steps that it passes are not.
func TestAMoveIsOneMove(t *testing.T) {
	base := langtest.Generate(1, 18)
	old := load(t, base, "m")
	name := "m/00000.proc.hcl"
	before, list := steps(string(base[name].Data))
	last := list[len(list)-1]
	list = append([]string{list[0], last}, list[1:len(list)-1]...)
	base[name] = &fstest.MapFile{Data: []byte(before + strings.Join(list, "") + "}\n")}
	c := diff.Diff(old, load(t, base, "m"))
	require.Len(t, c.List, 1)
	require.True(t, c.List[0].Moved)
	require.Equal(t, diff.Sequence, c.List[0].Class)
}

// Words: the parts of either side make that side, and no word is out that could stay.
func TestBetween(t *testing.T) {
	words := rapid.SliceOfN(rapid.SampledFrom([]string{"pull", "the", "wrench", "until", "it", "clicks"}), 0, 12)
	rapid.Check(t, func(t *rapid.T) {
		a, b := words.Draw(t, "a"), words.Draw(t, "b")
		parts := diff.Between(strings.Join(a, " "), strings.Join(b, "\n"))
		side := func(op diff.Op) (out []string) {
			for _, p := range parts {
				if p.Op == diff.Same || p.Op == op {
					out = append(out, strings.Fields(p.Text)...)
				}
			}
			return out
		}
		require.Equal(t, strings.Join(a, " "), strings.Join(side(diff.Out), " "))
		require.Equal(t, strings.Join(b, " "), strings.Join(side(diff.In), " "))
		same := 0
		for _, p := range parts {
			if p.Op == diff.Same {
				same += len(strings.Fields(p.Text))
			}
		}
		require.Equal(t, longestCommon(a, b), same)
	})
}

// longestCommon is the textbook recursion.
func longestCommon(a, b []string) int {
	memo := map[[2]int]int{}
	var f func(i, j int) int
	f = func(i, j int) int {
		if i == len(a) || j == len(b) {
			return 0
		}
		if n, ok := memo[[2]int{i, j}]; ok {
			return n
		}
		n := max(f(i+1, j), f(i, j+1))
		if a[i] == b[j] {
			n = max(n, 1+f(i+1, j+1))
		}
		memo[[2]int{i, j}] = n
		return n
	}
	return f(0, 0)
}

func BenchmarkDiff(b *testing.B) {
	m := load(b, langtest.Generate(100, 60), "m")
	n := load(b, langtest.Generate(100, 60), "m")
	for b.Loop() {
		require.True(b, diff.Diff(m, n).Empty())
	}
}
