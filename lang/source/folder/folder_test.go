package folder_test

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang/diag"
	"fettle/lang/source"
	"fettle/lang/source/folder"
)

func rules(l diag.List) (out []string) {
	for _, f := range l {
		out = append(out, f.Span.Path()+" "+f.Rule)
	}
	return out
}

func TestReadTakesTheFilesOfTheFolderAlone(t *testing.T) {
	fsys := fstest.MapFS{
		"m/b.proc.hcl":       {Data: []byte("b")},
		"m/a.proc.hcl":       {Data: []byte(source.BOM + "a")},
		"m/a.hcl":            {Data: []byte("not ours")},
		"m/README.md":        {Data: []byte("not ours")},
		"m/sub/c.proc.hcl":   {Data: []byte("another manual")},
		"m/d.proc.hcl/x.txt": {Data: []byte("in a folder named like a file")},
	}
	files, findings := folder.Read(fsys, "m")
	require.Len(t, files, 2)
	require.Equal(t, "m/a.proc.hcl", files[0].Path)
	require.Equal(t, source.BOM+"a", files[0].Text)
	require.Equal(t, "m/b.proc.hcl", files[1].Path)
	require.Equal(t, []string{"m/d.proc.hcl form/folder-named-as-file"}, rules(findings))
}

func TestReadOnARealRoot(t *testing.T) {
	dir := t.TempDir()
	outside := filepath.Join(t.TempDir(), "x.proc.hcl")
	write := func(path string, text string) {
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	}
	write(outside, "secret")
	write(filepath.Join(dir, "m", "a.proc.hcl"), "a")
	require.NoError(t, os.Symlink(outside, filepath.Join(dir, "m", "out.proc.hcl")))
	require.NoError(t, os.Symlink("nowhere", filepath.Join(dir, "m", "dangling.proc.hcl")))
	require.NoError(t, os.Symlink("a.proc.hcl", filepath.Join(dir, "m", "inside.proc.hcl")))
	require.NoError(t, os.Symlink(filepath.Dir(outside), filepath.Join(dir, "elsewhere")))

	root, err := os.OpenRoot(dir)
	require.NoError(t, err)
	defer root.Close()

	files, findings := folder.Read(root.FS(), "m")
	require.Equal(t, []string{"m/dangling.proc.hcl form/unreadable-file", "m/out.proc.hcl form/link-out-of-root"}, rules(findings))
	require.Len(t, files, 2)
	require.Equal(t, "a", files[1].Text) // a link inside the root is as good as the file

	_, findings = folder.Read(root.FS(), "none")
	require.Equal(t, []string{"none form/missing-folder"}, rules(findings))
	_, findings = folder.Read(root.FS(), "elsewhere")
	require.Equal(t, []string{"elsewhere form/link-out-of-root"}, rules(findings))
	for _, f := range findings {
		require.NotContains(t, f.Message, dir)
	}
}

func TestReadRefusesLargeFiles(t *testing.T) {
	line := "# fifty megabytes of this\n"
	fsys := fstest.MapFS{
		"large.proc.hcl": {Data: []byte(strings.Repeat(line, 50<<20/len(line)))},
		"small.proc.hcl": {Data: []byte(line)},
	}
	files, findings := folder.Read(fsys, ".")
	require.Len(t, files, 1)
	require.Equal(t, []string{"large.proc.hcl form/file-too-large"}, rules(findings))
}

// failing opens nothing, or gives files that fail in the middle.
type failing struct{ fstest.MapFS }

func (f failing) Open(name string) (fs.File, error) {
	if name == "locked.proc.hcl" {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	file, err := f.MapFS.Open(name)
	if name == "torn.proc.hcl" {
		return torn{file}, err
	}
	return file, err
}

type torn struct{ fs.File }

func (torn) Read([]byte) (int, error) { return 0, errors.New("input/output error") }

func TestReadSaysWhatItCannotRead(t *testing.T) {
	fsys := failing{fstest.MapFS{
		"good.proc.hcl":   {Data: []byte("a")},
		"locked.proc.hcl": {Data: []byte("b")},
		"torn.proc.hcl":   {Data: []byte("c")},
	}}
	files, findings := folder.Read(fsys, ".")
	require.Len(t, files, 1)
	require.Equal(t, []string{"locked.proc.hcl form/unreadable-file", "torn.proc.hcl form/unreadable-file"}, rules(findings))
	require.Contains(t, findings[0].Message, "permission denied")
	require.Contains(t, findings[1].Message, "input/output error")
}
