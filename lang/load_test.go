package lang_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/langtest"
	"fettle/lang/model"
)

const header = `manual "m" {
  title    = "M"
  units    = "metric"
  revision = "A"
  order    = [procedure.p]
}
`

// load reads files, each in the folder m unless its name has a slash.
func load(t testing.TB, files map[string]string) (*model.Manual, []string) {
	t.Helper()
	fsys := fstest.MapFS{}
	for name, text := range files {
		if !strings.Contains(name, "/") {
			name = "m/" + name
		}
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
	}
	m, found, err := lang.Load(fsys, "m")
	require.NoError(t, err)
	return m, said(found)
}

func said(found diag.List) []string {
	found.Sort()
	var out []string
	for _, f := range found {
		out = append(out, f.Span.String()+" "+f.Rule+": "+f.Message)
	}
	return out
}

func TestTheWorldsRefusalsAreErrors(t *testing.T) {
	fsys := fstest.MapFS{
		"m/a.proc.hcl":          {Data: []byte(header)},
		"empty/readme.txt":      {Data: []byte("nothing")},
		"m/sub.proc.hcl/x.text": {Data: []byte("a folder named like a file")},
	}
	for dir, want := range map[string]string{
		"nowhere":      "there is no folder nowhere",
		"m/a.proc.hcl": "m/a.proc.hcl is a file; give the folder that holds the manual",
		"empty":        "no file in empty ends with .proc.hcl",
	} {
		_, _, err := lang.Load(fsys, dir)
		require.EqualError(t, err, want)
	}
	_, found, err := lang.Load(fsys, "m")
	require.NoError(t, err)
	require.Contains(t, strings.Join(said(found), "\n"), "m/sub.proc.hcl")
}

func TestOneManualBlock(t *testing.T) {
	_, none := load(t, map[string]string{"a.proc.hcl": `part "a" { name = "A" }`})
	require.Equal(t, []string{"m/a.proc.hcl:1:1 form/no-manual: No `manual` block stands in this folder."}, none)
	_, two := load(t, map[string]string{
		"a.proc.hcl": strings.Replace(header, "order    = [procedure.p]", "order    = []", 1),
		"b.proc.hcl": strings.Replace(header, "order    = [procedure.p]", "order    = []", 1),
	})
	require.Equal(t, []string{"m/b.proc.hcl:1:1 form/two-manuals: This folder holds a second `manual` block."}, two)
}

func TestSharedFolders(t *testing.T) {
	head := `manual "m" {
  title    = "M"
  units    = "metric"
  revision = "A"
  order    = []
  shares   = ["../shop", "../gone", "../../out", "/etc"]
}
`
	m, found := load(t, map[string]string{
		"a.proc.hcl":           head,
		"shop/tools.proc.hcl":  "tool \"rule\" {\n  name = \"Rule\"\n  kind = \"steel rule\"\n}\n",
		"shop/manual.proc.hcl": "procedure \"p\" {\n  title = \"P\"\n}\n",
	})
	require.NotNil(t, m.Find("tool.rule"))
	require.True(t, m.Find("tool.rule").Shared)
	require.Equal(t, []string{
		"m/a.proc.hcl:6:26 form/shared-folder: There is no shared folder gone.",
		"m/a.proc.hcl:6:37 form/shared-folder: This shared folder lies outside the root.",
		"m/a.proc.hcl:6:50 form/shared-folder: This shared folder lies outside the root.",
		"shop/manual.proc.hcl:1:1 form/not-in-shared-folder: A shared folder cannot hold a `procedure` block.",
	}, found)
}

func TestASymbolicLinkCannotLeaveTheRoot(t *testing.T) {
	base := t.TempDir()
	outside := filepath.Join(base, "outside.proc.hcl")
	require.NoError(t, os.WriteFile(outside, []byte(`part "secret" { name = "S" }`), 0o600))
	require.NoError(t, os.MkdirAll(filepath.Join(base, "root", "m"), 0o700))
	require.NoError(t, os.WriteFile(filepath.Join(base, "root", "m", "a.proc.hcl"), []byte(strings.Replace(header, "procedure.p", "", 1)), 0o600))
	require.NoError(t, os.Symlink(outside, filepath.Join(base, "root", "m", "b.proc.hcl")))
	root, err := os.OpenRoot(filepath.Join(base, "root"))
	require.NoError(t, err)
	defer root.Close()
	m, found, err := lang.Load(root.FS(), "m")
	require.NoError(t, err)
	require.Nil(t, m.Find("part.secret"))
	require.True(t, m.Incomplete)
	require.Len(t, found, 1)
	require.Equal(t, "m/b.proc.hcl", found[0].Span.Path())
}

func TestABrokenFileKeepsWhatIsWhole(t *testing.T) {
	m, found := load(t, map[string]string{"a.proc.hcl": header + `
part "one" {
  name = "One"

part "two" {
  name = "Two"
}

procedure "p" {
  title = "P"
  inspect "x" {
    title     = "Look at it"
    on        = [part.two]
    criterion = "It is whole."
  }
}
`})
	require.NotEmpty(t, found)
	require.True(t, m.Incomplete)
	require.NotNil(t, m.Find("part.two"))
	require.NotNil(t, m.Find("procedure.p.inspect.x"))
}

func TestAnyOrderOfFilesReadsTheSame(t *testing.T) {
	parts := "part \"two\" {\n  name = \"Two\"\n}\n"
	proc := "procedure \"p\" {\n  title = \"P\"\n\n  inspect \"x\" {\n    title = \"Look\"\n    on    = [part.two, part.gone]\n  }\n}\n"
	_, a := load(t, map[string]string{"1.proc.hcl": header, "2.proc.hcl": parts, "3.proc.hcl": proc})
	_, b := load(t, map[string]string{"3.proc.hcl": header, "2.proc.hcl": parts, "1.proc.hcl": proc})
	require.Equal(t, []string{"m/3.proc.hcl:6:29 kit/unknown-entry: There is no part called `gone`."}, a)
	require.Equal(t, []string{"m/1.proc.hcl:6:29 kit/unknown-entry: There is no part called `gone`."}, b)
}

func TestAGeneratedManualIsWhole(t *testing.T) {
	m, found, err := lang.Load(langtest.Generate(3, 60), "m")
	require.NoError(t, err)
	require.Empty(t, said(found))
	steps := 0
	m.EachStep(func(*model.Step) { steps++ })
	require.Equal(t, 180, steps)
}

func FuzzLoad(f *testing.F) {
	for _, file := range langtest.Generate(1, 18) {
		f.Add(string(file.Data))
	}
	f.Add(header + "part \"a\" {\n name = \"${part.a}\"\n at_each = places.a\n sits_on = { left = part.a }\n}\nplaces \"a\" {\n names = [\"left\"]\n}\n")
	f.Add(header + "procedure \"p\" {\n calculate \"a\" {\n is = calculate.b + \"1 mm\"\n}\n calculate \"b\" {\n is = max(calculate.a, measure.x-y) \n}\n}\n")
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 1<<16 {
			return
		}
		fsys := fstest.MapFS{"m/a.proc.hcl": {Data: []byte(text)}}
		_, found, err := lang.Load(fsys, "m")
		require.NoError(t, err)
		for _, x := range found {
			require.NotEmpty(t, x.Rule)
			require.NotEmpty(t, x.Message)
			if x.Span.File != nil {
				require.LessOrEqual(t, x.Span.Start, x.Span.End)
				require.LessOrEqual(t, int(x.Span.End), len(x.Span.File.Text))
			}
		}
	})
}

func BenchmarkLoad(b *testing.B) {
	fsys := langtest.Generate(200, 60)
	n := 0
	for _, f := range fsys {
		n += len(f.Data)
	}
	b.SetBytes(int64(n))
	b.ReportAllocs()
	for b.Loop() {
		_, _, err := lang.Load(fsys, "m")
		require.NoError(b, err)
	}
}
