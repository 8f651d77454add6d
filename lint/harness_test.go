package lint_test

import (
	"embed"
	"flag"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"sort"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
	"golang.org/x/tools/txtar"

	"fettle/bench/revision"
	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint"
	"fettle/lint/rules"
)

var update = flag.Bool("update", false, "rewrite goldens")

//go:embed testdata/shop
var shop embed.FS

// bench of the tests: a little manual in folder m, with the shop beside it.
const manualDir = "m"

// folder makes a root that holds the shop and the given files. A manual block
// is added where no file has one; its order is that of the procedures.
func folder(files map[string]string) fstest.MapFS {
	root := fstest.MapFS{}
	entries, err := fs.ReadDir(shop, "testdata/shop")
	if err != nil {
		panic(err)
	}
	for _, e := range entries {
		data, err := shop.ReadFile("testdata/shop/" + e.Name())
		if err != nil {
			panic(err)
		}
		root["shop/"+e.Name()] = &fstest.MapFile{Data: data}
	}
	for name, text := range files {
		root[name] = &fstest.MapFile{Data: []byte(text)}
	}
	if text, missing := manualBlock(files); missing {
		root[manualDir+"/manual.proc.hcl"] = &fstest.MapFile{Data: []byte(text)}
	}
	return root
}

var (
	hasManual    = regexp.MustCompile(`(?m)^manual\b`)
	hasProcedure = regexp.MustCompile(`(?m)^procedure "(\w+)"`)
)

func manualBlock(files map[string]string) (text string, missing bool) {
	var order []string
	for _, name := range sorted(files) {
		if hasManual.MatchString(files[name]) {
			return "", false
		}
		for _, p := range hasProcedure.FindAllStringSubmatch(files[name], -1) {
			order = append(order, "procedure."+p[1])
		}
	}
	return fmt.Sprintf(`manual "little" {
  title    = "A little machine: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  shares   = ["../shop"]
  order    = [%s]
}
`, strings.Join(order, ", ")), true
}

func sorted[V any](m map[string]V) []string {
	var names []string
	for name := range m {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// check lints a root and fails on a rule that nobody has described.
func check(t *testing.T, root fstest.MapFS) (*model.Manual, diag.List) {
	t.Helper()
	m, found, err := lang.Load(root, manualDir)
	require.NoError(t, err)
	r := lint.Check(m, found, lint.Files(root), lint.Since(issued(t, root)))
	for _, f := range r.Findings {
		require.NotNil(t, rules.Find(f.Rule), "a finding of an unknown rule: %s", show(f))
		require.NotEmpty(t, f.Message, f.Rule)
		require.NotEmpty(t, f.Reason, f.Rule)
		require.NotEmpty(t, f.Remedy, f.Rule)
		require.False(t, f.Span.IsZero(), "a finding without a place: %s", f.Message)
	}
	return m, r.Findings
}

// issuedDir holds, in a fragment or case, the manual as it was issued last, as
// sources, and the shop as it was then.
const issuedDir = "issued"

func issued(t *testing.T, root fstest.MapFS) *revision.Issued {
	t.Helper()
	then := fstest.MapFS{}
	for name, f := range root {
		if rest, ok := strings.CutPrefix(name, issuedDir+"/"); ok {
			then[rest] = f
		} else if strings.HasPrefix(name, "shop/") && root[issuedDir+"/"+name] == nil {
			then[name] = f
		}
	}
	if _, err := fs.Stat(then, manualDir); err != nil {
		return nil
	}
	m, found, err := lang.Load(then, manualDir)
	require.NoError(t, err)
	require.Empty(t, found)
	s, err := revision.Freeze(m, then)
	require.NoError(t, err)
	i, err := revision.Open(s.Encode())
	require.NoError(t, err)
	return i
}

// want is one finding that a comment asks for:
//
//	# want "part of the message"              of the fragment's own rule
//	# want group/rule "part" group/rule "part"
//	# want@-2 "part"                          two lines above, for lines that cannot hold a comment
type want struct {
	file string
	line int
	rule string
	part string
	met  bool
}

func (w *want) String() string {
	return fmt.Sprintf("%s:%d: no finding of %s with %q", w.file, w.line, w.rule, w.part)
}

var (
	wantComment = regexp.MustCompile(`# want(@[+-]\d+)?\s+(.*)$`)
	wantOne     = regexp.MustCompile(`^(?:([a-z]+/[a-z-]+)\s+)?("(?:[^"\\]|\\.)*")\s*`)
)

// wants reads the comments of a file; own is the rule that they leave out.
func wants(t *testing.T, file, text, own string) []*want {
	t.Helper()
	var all []*want
	for i, line := range strings.Split(text, "\n") {
		c := wantComment.FindStringSubmatch(line)
		if c == nil {
			continue
		}
		at := i + 1
		if c[1] != "" {
			offset, err := strconv.Atoi(c[1][1:])
			require.NoError(t, err)
			at += offset
		}
		for rest := strings.TrimSpace(c[2]); rest != ""; {
			one := wantOne.FindStringSubmatch(rest)
			require.NotNil(t, one, "%s:%d: cannot read %q", file, i+1, rest)
			rest = rest[len(one[0]):]
			part, err := strconv.Unquote(one[2])
			require.NoError(t, err)
			w := &want{file: file, line: at, rule: one[1], part: part}
			if w.rule == "" {
				w.rule = own
			}
			require.NotEmpty(t, w.rule, "%s:%d: no rule is named", file, i+1)
			all = append(all, w)
		}
	}
	return all
}

// compare fails on wants without a finding and findings without a want.
func compare(t *testing.T, wanted []*want, found diag.List) {
	t.Helper()
	var faults []string
next:
	for _, f := range found {
		for _, w := range wanted {
			if !w.met && w.file == f.Span.Path() && w.line == f.Span.Position().Line && w.rule == f.Rule && strings.Contains(f.Message, w.part) {
				w.met = true
				continue next
			}
		}
		faults = append(faults, "not wanted: "+show(f))
	}
	for _, w := range wanted {
		if !w.met {
			faults = append(faults, w.String())
		}
	}
	if len(faults) > 0 {
		t.Error(strings.Join(faults, "\n"))
	}
}

func silent(t *testing.T, found diag.List) {
	t.Helper()
	for _, f := range found {
		t.Error("not silent: " + show(f))
	}
}

func show(f diag.Finding) string {
	s := fmt.Sprintf("%s: %s %s: %s", f.Span, f.Severity, f.Rule, f.Message)
	for _, r := range f.Related {
		s += fmt.Sprintf("\n    %s: %s", r.Span, r.Message)
	}
	return s
}

// fixed applies edits to the text of one file: all sure ones, or the first fix
// of each finding.
func fixed(t *testing.T, found diag.List, file, text string, sure bool) string {
	t.Helper()
	var edits []diag.Edit
	for _, f := range found {
		for i, fix := range f.Fixes {
			if sure && !fix.Sure || !sure && i > 0 {
				continue
			}
			for _, e := range fix.Edits {
				if e.Span.Path() == file {
					edits = append(edits, e)
				}
			}
		}
	}
	out, err := diag.ApplyEdits(text, edits)
	require.NoError(t, err)
	return out
}

// fragment makes a root of a rule's fragment: the text of one file, or an
// archive of files that stand as they are.
func fragment(text string) (root fstest.MapFS, wanted func(t *testing.T, own string) []*want) {
	files := map[string]string{inManual("fragment.proc.hcl"): text}
	root = folder(files)
	if a := txtar.Parse([]byte(text)); len(a.Files) > 0 {
		clear(files)
		for _, f := range a.Files {
			files[f.Name] = string(f.Data)
		}
		root = folder(files)
		if _, missing := manualBlock(files); missing {
			delete(root, inManual("manual.proc.hcl"))
		}
	}
	return root, func(t *testing.T, own string) (all []*want) {
		for _, name := range sorted(files) {
			all = append(all, wants(t, name, files[name], own)...)
		}
		return all
	}
}

func inManual(name string) string { return path.Join(manualDir, name) }
