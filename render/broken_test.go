package render_test

import (
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/render"
)

// TestDamaged prints what can be saved of damaged manuals: every broken file of
// the dialect's cases, and the small manual cut off after every few bytes.
func TestDamaged(t *testing.T) {
	var sources [][]byte
	files, err := filepath.Glob("../testdata/broken/*.proc.hcl")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, f := range files {
		b, err := os.ReadFile(f)
		require.NoError(t, err)
		sources = append(sources, b)
	}
	whole, err := os.ReadFile("testdata/press/press.proc.hcl")
	require.NoError(t, err)
	for n := 0; n < len(whole); n += 97 {
		sources = append(sources, whole[:n])
		sources = append(sources, append(append([]byte{}, whole[:n]...), whole[min(len(whole), n+40):]...))
	}
	for _, src := range sources {
		m, _, err := lang.Load(fstest.MapFS{"m/a.proc.hcl": {Data: src}}, "m")
		require.NoError(t, err)
		d := render.Lower(m, render.Options{Given: read(t)})
		require.NotEmpty(t, d.Cautions)
		formats(t, d)
	}
}
