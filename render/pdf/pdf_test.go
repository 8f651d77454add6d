package pdf

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/render"
)

// Source of what stands on the pages: pdftotext of poppler.
func TestWrite(t *testing.T) {
	if testing.Short() {
		t.Skip("left out: printing takes a while")
	}
	if _, err := Browser(); err != nil {
		t.Skip("left out: no Chromium on this machine, so nothing was printed")
	}
	fsys := os.DirFS("../testdata")
	m, _, err := lang.Load(fsys, "press")
	require.NoError(t, err)
	const digest = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
	var b bytes.Buffer
	require.NoError(t, Write(&b, render.Lower(m, render.Options{Figures: fsys, Digest: digest})))
	require.True(t, bytes.HasPrefix(b.Bytes(), []byte("%PDF-")))
	if _, err := exec.LookPath("pdftotext"); err != nil {
		t.Skip("left out: no pdftotext on this machine, so the pages were not read")
	}
	file := filepath.Join(t.TempDir(), "press.pdf")
	require.NoError(t, os.WriteFile(file, b.Bytes(), 0o600))
	text, err := exec.Command("pdftotext", "-layout", file, "-").Output()
	require.NoError(t, err)
	pages := strings.Split(strings.TrimSuffix(string(text), "\f"), "\f")
	require.Greater(t, len(pages), 2)
	for i, page := range pages {
		require.Contains(t, page, "Revision "+m.Plain("revision"), "page %d", i+1)
		require.Contains(t, strings.ReplaceAll(page, "\n", ""), digest[:16], "page %d", i+1)
		require.Regexp(t, `\b`+string(rune('1'+i))+` ?/ ?\d`, page, "page %d", i+1)
	}
	require.NotContains(t, string(text), "One step", "the bar is for the screen")
}

func TestNoBrowser(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	err := Write(&bytes.Buffer{}, &render.Document{})
	require.ErrorIs(t, err, ErrNoBrowser)
	require.Contains(t, err.Error(), "install chromium")
}
