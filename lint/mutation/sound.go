package mutation

import (
	"errors"
	"io/fs"
	"path"
	"strings"
	"testing/fstest"

	revisions "fettle/bench/revision"
	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint"
)

// Sound is a manual without a fault, into which classes put theirs.
type Sound struct {
	*model.Manual
	*story
	Name  string
	Found diag.List // what is found all the same; none, it is hoped

	issued *revisions.Issued // the manual as it would have been issued
	fsys   fstest.MapFS
	dir    string
	known  map[string]int // of Found, how often each is said
}

// Open reads the manual in the folder dir of root, and everything beside it
// that a manual may draw on, into memory.
func Open(root fs.FS, dir string) (*Sound, error) {
	fsys := fstest.MapFS{}
	err := fs.WalkDir(root, path.Dir(dir), func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(root, name)
		fsys[name] = &fstest.MapFile{Data: data}
		return err
	})
	if err != nil {
		return nil, err
	}
	return open(path.Base(dir), fsys, dir)
}

func open(name string, fsys fstest.MapFS, dir string) (*Sound, error) {
	s := &Sound{Name: name, fsys: fsys, dir: dir, known: map[string]int{}}
	m, found, err := lang.Load(s.fsys, dir)
	if err != nil {
		return nil, err
	}
	if m.Incomplete {
		return nil, errors.New(dir + " cannot be read whole; only a sound manual can be measured with")
	}
	told := tell(m)
	s.Manual, s.story = m, &told
	frozen, err := revisions.Freeze(m, s.fsys)
	if err != nil {
		return nil, err
	}
	if s.issued, err = revisions.Open(frozen.Encode()); err != nil {
		return nil, err
	}
	s.Found = lint.Check(m, found, lint.Files(s.fsys)).Findings
	for _, f := range s.Found {
		s.known[said(f)]++
	}
	return s, nil
}

func said(f diag.Finding) string { return f.Rule + " " + f.Message }

// Check lints the manual with some of its files replaced; since says that the
// sound manual was issued before.
func (s *Sound) Check(files map[string]string, since bool) (diag.List, error) {
	fsys := make(fstest.MapFS, len(s.fsys))
	for name, f := range s.fsys {
		fsys[name] = f
	}
	for name, text := range files {
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
	}
	m, found, err := lang.Load(fsys, s.dir)
	if err != nil {
		return nil, err
	}
	options := []lint.Option{lint.Files(fsys)}
	if since {
		options = append(options, lint.Since(s.issued))
	}
	return lint.Check(m, found, options...).Findings, nil
}

// Own lists the entries of a block that stand in the manual's own folder.
func (s *Sound) Own(block string) []*model.Node {
	var all []*model.Node
	for _, n := range s.Of(block) {
		if !n.Shared {
			all = append(all, n)
		}
	}
	return all
}

// Uses counts how often a node is named, worked examples included.
func (s *Sound) Uses(n *model.Node) int {
	count := 0
	visit := func(by *model.Node) {
		for i := range by.Attrs {
			model.EachRef(by.Attrs[i].Value, func(r *model.Ref) {
				if r.To == n && by != n {
					count++
				}
			})
		}
	}
	s.EachNode(visit)
	for _, e := range s.Examples {
		visit(e)
	}
	return count
}

// Spared reports whether a step can let go of an entry without leaving it unused.
func (s *Sound) Spared(n *model.Node) bool { return n.Shared || s.Uses(n) > 1 }

// sparesAll reports whether a step can let go of all that it uses.
func (s *Sound) sparesAll(n *model.Node) bool {
	for _, attr := range []string{"tools", "tool", "supplies", "ppe", "figures", "held_by"} {
		for _, r := range n.AllRefs(attr) {
			if r.To != nil && r.To.Def.Name != "part" && !s.Spared(r.To) {
				return false
			}
		}
	}
	return true
}

// Variant gives a step a copy of one of its tools, or another entry, with
// changes made to it: the entry itself where nothing else uses it.
func (s *Sound) Variant(step *model.Node, attr string, n *model.Node, changes ...*Change) *Change {
	if !n.Shared && s.Uses(n) == 1 {
		c := &Change{Where: nil}
		return c.And(changes...).At(step, n)
	}
	label := n.ID + "_b"
	text := Copy(n, label, changes...)
	if text == "" {
		return nil
	}
	name := strings.Replace(text, quote(n.Plain("name")), quote(n.Plain("name")+", the other one"), 1)
	anchor := n
	if n.Shared {
		anchor = s.Node
	}
	return InsertAfter(anchor, name).And(SwapRef(step, attr, n, n.Def.Name+"."+label)).At(step)
}
