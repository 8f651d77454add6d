package render_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/calc"
	"fettle/lang"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/render"
	"fettle/render/html"
	fjson "fettle/render/json"
	"fettle/render/markdown"
)

var update = flag.Bool("update", false, "rewrite the goldens")

const digest = "sha256:0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef"

func load(t testing.TB, root, dir string) *model.Manual {
	t.Helper()
	m, found, err := lang.Load(os.DirFS(root), dir)
	require.NoError(t, err)
	for _, f := range found {
		t.Logf("%s: %s", f.Span, f.Message)
	}
	return m
}

func lower(t testing.TB, root, dir string, g values.Given) *render.Document {
	t.Helper()
	return render.Lower(load(t, root, dir), render.Options{Given: g, Digest: digest, Figures: os.DirFS(root)})
}

// formats writes a document in every format.
func formats(t testing.TB, d *render.Document) map[string][]byte {
	t.Helper()
	var h, m, j bytes.Buffer
	require.NoError(t, html.Write(&h, d))
	require.NoError(t, markdown.Write(&m, d))
	require.NoError(t, fjson.Write(&j, d))
	return map[string][]byte{"html": h.Bytes(), "md": m.Bytes(), "json": j.Bytes()}
}

func mm(t testing.TB, s string) calc.Quantity {
	t.Helper()
	l, problems := calc.ParseLiteral(s, calc.Context{})
	require.Empty(t, problems)
	return *l.Nominal
}

// read are readings of the small manual.
func read(t testing.TB) values.Given {
	return values.Given{Readings: map[string][]calc.Quantity{
		"ram.measure.gap":                {mm(t, "0.46 mm"), mm(t, "0.48 mm")},
		`columns.measure.height["left"]`: {mm(t, "12.6 mm")},
	}}
}

var goldens = []struct {
	name, root, dir string
	given           func(testing.TB) values.Given
}{
	{"press", "testdata", "press", nil},
	{"press_read", "testdata", "press", read},
	{"press_motor", "testdata", "press", func(testing.TB) values.Given {
		return values.Given{Options: map[string]string{"drive": "motor"}}
	}},
	{"beck", "../procedures", "beck", nil},
	{"sedge_2", "../procedures", "sedge_2", nil},
}

var ownScript = regexp.MustCompile(`(?s)<script>.*?</script>\n|script-src '[^']*'; `)

// TestGoldens compares every output byte for byte. After a change that is meant:
// go test ./render -run Goldens -update, and read the difference.
func TestGoldens(t *testing.T) {
	for _, g := range goldens {
		t.Run(g.name, func(t *testing.T) {
			given := values.Given{}
			if g.given != nil {
				given = g.given(t)
			}
			for ext, got := range formats(t, lower(t, g.root, g.dir, given)) {
				if ext == "html" { // the scripts are files of their own
					got = ownScript.ReplaceAll(got, nil)
				}
				path := filepath.Join("testdata", "golden", g.name+"."+ext)
				if *update {
					require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
					require.NoError(t, os.WriteFile(path, got, 0o644))
					continue
				}
				want, err := os.ReadFile(path)
				require.NoError(t, err)
				if !bytes.Equal(want, got) {
					at := 0
					for at < len(want) && at < len(got) && want[at] == got[at] {
						at++
					}
					t.Errorf("%s differs at byte %d: …%s… was …%s…; run with -update and read the difference",
						path, at, around(got, at), around(want, at))
				}
			}
		})
	}
}

func around(b []byte, at int) []byte { return b[max(0, at-40):min(len(b), at+80)] }

// TestSameInputSameBytes writes twice, from manuals loaded twice.
func TestSameInputSameBytes(t *testing.T) {
	for _, dir := range []string{"press", "hostile"} {
		a := formats(t, lower(t, "testdata", dir, read(t)))
		b := formats(t, lower(t, "testdata", dir, read(t)))
		require.Equal(t, a, b)
	}
}
