package revision

import (
	"archive/zip"
	"bytes"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"
	"unicode/utf8"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/format"
	"fettle/lang/model"
	"fettle/lang/source/folder"
)

// Format names the form of snapshots, and of the text that the digest is of.
const Format = "issued revision 1"

// Dir is the folder of a manual that holds its snapshots.
const Dir = "issued"

// Snapshot is a revision as it was issued, with everything to load it again.
type Snapshot struct {
	Format   string `json:"format"`
	Manual   string `json:"manual"` // its label
	Title    string `json:"title"`
	Revision string `json:"revision"`
	Issued   string `json:"issued"`
	Digest   string `json:"digest"`
	Dir      string `json:"dir"`   // the manual's folder among the files
	Files    []File `json:"files"` // sorted by path: sources in canonical layout, and pictures
}

// File is one file of a snapshot: text, or base64 where it is not UTF-8.
type File struct {
	Path   string `json:"path"`
	Text   string `json:"text,omitempty"`
	Base64 string `json:"base64,omitempty"`
}

// Issued is a snapshot that was opened.
type Issued struct {
	*Snapshot
	Model *model.Manual
}

// Freeze makes the snapshot of a manual that was read from fsys. The error is of
// the world: a picture that cannot be read.
func Freeze(m *model.Manual, fsys fs.FS) (*Snapshot, error) {
	s := &Snapshot{Format: Format, Manual: m.ID, Title: m.Title(), Revision: m.Plain("revision"), Issued: m.Plain("issued"), Digest: Digest(m)}
	base := common(m)
	inside := func(name string) string { return strings.TrimPrefix(strings.TrimPrefix(name, base), "/") }
	if s.Dir = inside(m.Dir); s.Dir == "" {
		s.Dir = "."
	}
	for _, f := range m.Files {
		text, _ := format.Format([]byte(f.Text))
		s.Files = append(s.Files, File{Path: inside(f.Path), Text: string(text)})
	}
	for _, name := range pictures(m) {
		data, err := fs.ReadFile(fsys, name)
		if err != nil {
			return nil, fmt.Errorf("cannot read the picture %s: %w", name, err)
		}
		f := File{Path: inside(name)}
		if utf8.Valid(data) {
			f.Text = string(data)
		} else {
			f.Base64 = base64.StdEncoding.EncodeToString(data)
		}
		s.Files = append(s.Files, f)
	}
	slices.SortFunc(s.Files, func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	return s, nil
}

// common is the deepest folder that holds the manual's folder and all its files,
// so that a snapshot is the same whatever root fettle was given.
func common(m *model.Manual) string {
	base := path.Dir(m.Dir)
	if m.Dir == "." {
		return ""
	}
	for _, f := range m.Files {
		for base != "." && !strings.HasPrefix(f.Path, base+"/") {
			base = path.Dir(base)
		}
	}
	if base == "." {
		return ""
	}
	return base
}

// pictures are the paths of all figures, sorted, each once.
func pictures(m *model.Manual) []string {
	var all []string
	for _, n := range m.Of(entry.Figure.Name) {
		if v, ok := n.Get("file", "").(model.Paths); ok {
			for _, p := range v {
				all = append(all, path.Join(m.Dir, p.Text))
			}
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// Encode writes the snapshot; one snapshot is always the same bytes.
func (s *Snapshot) Encode() []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	if err := e.Encode(s); err != nil {
		panic("internal error: " + err.Error()) // strings always encode
	}
	return b.Bytes()
}

// Name is the name of the snapshot's file in the folder Dir.
func (s *Snapshot) Name() string { return fileName(s.Revision) }

// isSource tells the files of the dialect from pictures.
func isSource(name string) bool { return strings.HasSuffix(name, folder.Suffix) }

func fileName(letter string) string {
	safe := strings.Map(func(r rune) rune {
		if r == '.' || r == '-' || r == '_' || r >= '0' && r <= '9' || r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' {
			return r
		}
		return '_'
	}, letter)
	return strings.TrimLeft(safe, ".") + ".json"
}

// FS gives the files of the snapshot to load from.
func (s *Snapshot) FS() (fs.FS, error) {
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for i, f := range s.Files {
		if !fs.ValidPath(f.Path) || f.Path == "." || i > 0 && s.Files[i-1].Path >= f.Path {
			return nil, fmt.Errorf("the snapshot holds a file called %q", f.Path)
		}
		data := []byte(f.Text)
		if f.Base64 != "" {
			var err error
			if data, err = base64.StdEncoding.DecodeString(f.Base64); err != nil {
				return nil, fmt.Errorf("the file %s of the snapshot cannot be read: %w", f.Path, err)
			}
		}
		w, err := z.CreateHeader(&zip.FileHeader{Name: f.Path, Method: zip.Store})
		if err == nil {
			_, err = w.Write(data)
		}
		if err != nil {
			return nil, err
		}
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	return zip.NewReader(bytes.NewReader(b.Bytes()), int64(b.Len()))
}

// maxSnapshot bounds the file of a snapshot; a manual of 100,000 steps has 27 MB.
const maxSnapshot = 200 << 20

// What can be wrong with a snapshot.
var (
	ErrNoSnapshot = errors.New("this is no issued revision")
	ErrChanged    = errors.New("this is not what was issued: its content does not give its digest")
)

// Open reads a snapshot and loads its manual. It refuses one whose content does
// not give its digest.
func Open(data []byte) (*Issued, error) {
	if len(data) > maxSnapshot {
		return nil, fmt.Errorf("%w: it has more than %d megabytes", ErrNoSnapshot, maxSnapshot>>20)
	}
	s := &Snapshot{}
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(s); err != nil {
		return nil, fmt.Errorf("%w: %w", ErrNoSnapshot, err)
	}
	if _, err := d.Token(); err != io.EOF || s.Format != Format {
		return nil, fmt.Errorf("%w: its format is %q and not %q", ErrNoSnapshot, s.Format, Format)
	}
	fsys, err := s.FS()
	if err != nil {
		return nil, fmt.Errorf("%w: %w", ErrNoSnapshot, err)
	}
	m, found, err := lang.Load(fsys, s.Dir)
	if err != nil {
		return nil, fmt.Errorf("%w: %w", ErrNoSnapshot, err)
	}
	if m.Incomplete || found.Worst() == diag.Error {
		return nil, fmt.Errorf("%w: it cannot be read whole", ErrChanged)
	}
	if Digest(m) != s.Digest || m.ID != s.Manual || m.Plain("revision") != s.Revision || m.Plain("issued") != s.Issued {
		return nil, ErrChanged
	}
	return &Issued{s, m}, nil
}

// History opens all snapshots of the manual in the folder dir of fsys, the
// oldest first. A manual that was never issued has none.
func History(fsys fs.FS, dir string) ([]*Issued, error) {
	entries, err := fs.ReadDir(fsys, path.Join(dir, Dir))
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("cannot look for issued revisions: %w", err)
	}
	var all []*Issued
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".json") {
			continue
		}
		name := path.Join(dir, Dir, e.Name())
		data, err := fs.ReadFile(fsys, name)
		if err != nil {
			return nil, fmt.Errorf("cannot read %s: %w", name, err)
		}
		i, err := Open(data)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		all = append(all, i)
	}
	slices.SortStableFunc(all, func(a, b *Issued) int {
		if c, ok := Compare(a.Revision, b.Revision); ok && c != 0 {
			return c
		}
		return strings.Compare(a.Issued, b.Issued)
	})
	return all, nil
}
