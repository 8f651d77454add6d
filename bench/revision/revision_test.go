package revision_test

import (
	"io/fs"
	"math/rand/v2"
	"os"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/bench/revision"
	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/langtest"
	"fettle/lang/model"
)

func load(t require.TestingT, fsys fs.FS, dir string) *model.Manual {
	m, found, err := lang.Load(fsys, dir)
	require.NoError(t, err)
	require.Empty(t, found)
	return m
}

// manuals are the demo manuals and the small sound ones.
func manuals(t *testing.T) map[string]fs.FS {
	root := os.DirFS("../..")
	all := map[string]fs.FS{"procedures/sedge_2": root, "procedures/beck": root}
	sound, err := fs.ReadDir(root, "testdata/sound")
	require.NoError(t, err)
	for _, d := range sound {
		if d.IsDir() && d.Name() != "shop" {
			all["testdata/sound/"+d.Name()] = root
		}
	}
	return all
}

// A snapshot loads as the manual that it was made of, whatever the root.
func TestASnapshotLoadsAsItWas(t *testing.T) {
	for dir, root := range manuals(t) {
		t.Run(dir, func(t *testing.T) {
			m, _, err := lang.Load(root, dir)
			require.NoError(t, err)
			s, err := revision.Freeze(m, root)
			require.NoError(t, err)
			data := s.Encode()
			i, err := revision.Open(data)
			require.NoError(t, err)
			require.Equal(t, revision.Text(m), revision.Text(i.Model))
			fsys, err := s.FS()
			require.NoError(t, err)
			again, err := revision.Freeze(i.Model, fsys)
			require.NoError(t, err)
			require.Equal(t, string(data), string(again.Encode()), "freezing again is freezing once")

			parent, err := fs.Sub(root, path.Dir(dir))
			require.NoError(t, err)
			n, _, err := lang.Load(parent, path.Base(dir))
			require.NoError(t, err)
			other, err := revision.Freeze(n, parent)
			require.NoError(t, err)
			require.Equal(t, string(data), string(other.Encode()), "another root")
		})
	}
}

var header = regexp.MustCompile(`(?m)^[a-z]`)

// split cuts files at block headers.
func split(fsys fstest.MapFS) (blocks []string) {
	for _, f := range fsys {
		text := string(f.Data)
		starts := header.FindAllStringIndex(text, -1)
		for i, s := range starts {
			to := len(text)
			if i+1 < len(starts) {
				to = starts[i+1][0]
			}
			blocks = append(blocks, text[s[0]:to])
		}
	}
	slices.Sort(blocks)
	return blocks
}

var attribute = regexp.MustCompile(`(?m)^( +\w+) += `)

// How a manual is written makes no difference to its digest.
func TestTheDigestIsThatOfWhatIsSaid(t *testing.T) {
	fsys := langtest.Generate(2, 18)
	want := revision.Digest(load(t, fsys, "m"))
	blocks := split(fsys)
	rapid.Check(t, func(t *rapid.T) {
		seed := rapid.Uint64().Draw(t, "seed")
		r := rand.New(rand.NewPCG(seed, 1))
		other := fstest.MapFS{}
		for _, i := range r.Perm(len(blocks)) {
			text := blocks[i]
			if r.IntN(2) == 0 {
				text = "# a comment\n" + strings.ReplaceAll(text, "  takes ", "\n\n    takes # how long\n ")
				text = strings.Replace(text, "# how long\n", "", -1)
			}
			if r.IntN(2) == 0 {
				text = attribute.ReplaceAllString(text, "$1=")
			}
			text = strings.ReplaceAll(text, "20 N·m ± 10 %", []string{"20 Nm ± 10 %", "20 N·m ± 10%"}[r.IntN(2)])
			name := "m/" + string(rune('a'+r.IntN(4))) + ".proc.hcl"
			if other[name] == nil {
				other[name] = &fstest.MapFile{}
			}
			other[name].Data = append(append(other[name].Data, text...), '\n')
		}
		require.Equal(t, want, revision.Digest(load(t, other, "m")))
	})
}

const small = `manual "m" {
  title    = "M"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-05"
  shares   = ["../shop"]
  order    = [procedure.p]
}

part "bed" { name = "Bed" }

limit "gap" {
  name  = "Gap"
  range = "0.10..0.20 mm"
}

procedure "p" {
  title = "P"

  measure "a" {
    title  = "Measure ${part.bed}"
    on     = [part.bed]
    tools  = [tool.rule]
    accept = limit.gap
    text   = <<-EOT
      Hold it still.
      Read it.
    EOT
  }

  calculate "b" {
    title = "Work it out"
    is    = measure.a - limit.gap.low
  }

  example "one" {
    readings = { measure.a = "0.15 mm" }
    gives    = { calculate.b = "0.05 mm" }
  }
}
`

const shop = `tool "rule" {
  name = "Steel rule"
  kind = "steel rule"
}

tool "hammer" {
  name = "Hammer"
  kind = "hammer"
}
`

func pair(manual, shop string) fstest.MapFS {
	return fstest.MapFS{"m/a.proc.hcl": {Data: []byte(manual)}, "shop/t.proc.hcl": {Data: []byte(shop)}}
}

func TestWhatChangesTheDigest(t *testing.T) {
	base := revision.Digest(load(t, pair(small, shop), "m"))
	digest := func(old, text string) string {
		require.Equal(t, 1, strings.Count(small+shop, old), old)
		return revision.Digest(load(t, pair(strings.Replace(small, old, text, 1), strings.Replace(shop, old, text, 1)), "m"))
	}
	for old, text := range map[string]string{
		`name = "Bed"`:            `name = "Bedplate"`,
		"0.10..0.20 mm":           "0.10..0.200 mm",
		"Hold it still.":          "Hold it quite still.",
		`calculate.b = "0.05 mm"`: `calculate.b = "0.050 mm"`,
		"limit.gap.low":           "limit.gap.high",
		"accept = limit.gap":      `accept = "0.10..0.20 mm"`,
		`kind = "steel rule"`:     `kind = "tape measure"`,
		`issued   = "2026-01-05"`: `issued   = "2026-01-06"`,
		"measure.a - limit":       "limit.gap.low - measure.a + limit",
		`title = "P"`:             `title = "Q"`,
	} {
		require.NotEqual(t, base, digest(old, text), text)
	}
	for old, text := range map[string]string{
		`name = "Hammer"`: `name = "Big hammer"`, // the manual does not use it
		`  calculate "b" {
`: `  # why
  calculate "b" {
    people = 1
`, // the default
		"    title  = \"Measure ${part.bed}\"\n    on     = [part.bed]\n": "    on     = part.bed\n    title  = \"Measure ${part.bed}\"\n",
		"Read it.\n": "Read it.   \n\n",
	} {
		require.Equal(t, base, digest(old, text), text)
	}
}

func TestOpenRefusesWhatWasNotIssued(t *testing.T) {
	fsys := pair(small, shop)
	s, err := revision.Freeze(load(t, fsys, "m"), fsys)
	require.NoError(t, err)
	data := string(s.Encode())
	_, err = revision.Open([]byte(data))
	require.NoError(t, err)
	for _, c := range []struct{ old, text string }{
		{"0.10..0.20 mm", "0.10..0.21 mm"}, {`"revision": "A"`, `"revision": "B"`}, {"accept = limit.gap", "accept = limit.gone"},
	} {
		_, err = revision.Open([]byte(strings.Replace(data, c.old, c.text, 1)))
		require.ErrorIs(t, err, revision.ErrChanged, c.text)
	}
	for _, c := range []struct{ old, text string }{
		{"m/a.proc.hcl", "../a.proc.hcl"}, {"issued revision 1", "issued revision 2"}, {`"dir": "m"`, `"dir": "n"`}, {"{", "{{"}, {`"title"`, `"titel"`},
	} {
		_, err = revision.Open([]byte(strings.Replace(data, c.old, c.text, 1)))
		require.ErrorIs(t, err, revision.ErrNoSnapshot, c.text)
	}
}

func TestIssuing(t *testing.T) {
	root := pair(small, shop)
	frozen := func(change ...string) *revision.Snapshot {
		fsys := pair(strings.NewReplacer(change...).Replace(small), shop)
		s, err := revision.Freeze(load(t, fsys, "m"), fsys)
		require.NoError(t, err)
		return s
	}
	say := func(s *revision.Snapshot, found diag.List) string {
		history, err := revision.History(root, "m")
		require.NoError(t, err)
		if r := s.MayIssue(found, history); r != nil {
			require.NotEmpty(t, r.Reason)
			require.NotEmpty(t, r.Remedy)
			return r.Message
		}
		return ""
	}
	a := frozen()
	require.Equal(t, "An error stands in this manual.", say(a, diag.List{{Severity: diag.Error}, {Severity: diag.Doubt}}))
	require.Empty(t, say(a, diag.List{{Severity: diag.Doubt}}))
	require.Equal(t, "A.json", a.Name())
	root["m/issued/A.json"] = &fstest.MapFile{Data: a.Encode()}
	require.Contains(t, say(a, nil), "is issued already, and nothing has changed")
	require.Contains(t, say(frozen("Bed", "Plate"), nil), "has changed since revision A was issued on 2026-01-05")
	require.Contains(t, say(frozen(`"A"`, `"B"`, "2026-01-05", "2025-12-31"), nil), "dated 2025-12-31, before A of 2026-01-05")
	b := frozen(`"A"`, `"B"`, "2026-01-05", "2026-02-01")
	require.Empty(t, say(b, nil))
	root["m/issued/B.json"] = &fstest.MapFile{Data: b.Encode()}
	require.Empty(t, say(frozen(`"A"`, `"AA"`, "2026-01-05", "2026-02-02"), nil))
	require.Contains(t, say(frozen(`"A"`, `"b"`, "2026-01-05", "2026-02-02"), nil), "would lie in one file")
	require.Contains(t, say(frozen(`"A"`, `"0"`, "2026-01-05", "2026-01-02"), nil), "before B of 2026-02-01")
	require.Contains(t, say(frozen(`"A"`, `""`), nil), "has no revision")
	history, err := revision.History(root, "m")
	require.NoError(t, err)
	require.Equal(t, []string{"A", "B"}, []string{history[0].Revision, history[1].Revision})
	root["m/issued/B.json"].Data = root["m/issued/B.json"].Data[:500]
	_, err = revision.History(root, "m")
	require.ErrorContains(t, err, "m/issued/B.json")
}

func TestLetters(t *testing.T) {
	sorted := []string{"A", "B", "Z", "AA", "AB", "BA"}
	for i := range sorted {
		for j := range sorted {
			c, ok := revision.Compare(sorted[i], sorted[j])
			require.True(t, ok)
			require.Equal(t, i < j, c < 0)
			require.Equal(t, i == j, c == 0)
		}
	}
	for _, p := range [][2]string{{"9", "10"}, {"1.9", "1.10"}, {"C", "C.1"}, {"C1", "C2"}, {"a", "B"}, {"02", "3"}} {
		c, ok := revision.Compare(p[0], p[1])
		require.True(t, ok)
		require.Negative(t, c, "%v", p)
	}
	_, ok := revision.Compare("A", "1")
	require.False(t, ok)
}

func BenchmarkDigest(b *testing.B) {
	m := load(b, langtest.Generate(100, 60), "m")
	for b.Loop() {
		revision.Digest(m)
	}
}

func TestSnapshotsMeetTheirSchema(t *testing.T) {
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(revision.Schema))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("urn:fettle:issued-revision", doc))
	schema, err := c.Compile("urn:fettle:issued-revision")
	require.NoError(t, err)
	root := os.DirFS("../..")
	m, _, err := lang.Load(root, "procedures/sedge_2")
	require.NoError(t, err)
	s, err := revision.Freeze(m, root)
	require.NoError(t, err)
	v, err := jsonschema.UnmarshalJSON(strings.NewReader(string(s.Encode())))
	require.NoError(t, err)
	require.NoError(t, schema.Validate(v))
}

func FuzzOpen(f *testing.F) {
	fsys := pair(small, shop)
	s, err := revision.Freeze(load(f, fsys, "m"), fsys)
	require.NoError(f, err)
	f.Add(s.Encode())
	f.Add([]byte(`{"format":"issued revision 1","dir":".","files":[{"path":"a/../b"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1<<16 {
			return
		}
		if i, err := revision.Open(data); err == nil {
			require.Equal(t, i.Digest, revision.Digest(i.Model))
		}
	})
}
