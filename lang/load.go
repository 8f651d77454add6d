package lang

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"runtime"
	"sort"
	"sync"

	"fettle/lang/bind"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lang/source/folder"
	"fettle/lang/syntax"
)

// Load reads the manual in the folder dir of fsys, with the shared folders it
// draws on. Paths in the model and in findings are slash paths inside fsys, and
// no path leaves it. The findings are those of form, names and dimensions; they
// are not sorted. The error is non-nil only where dir cannot be read at all.
func Load(fsys fs.FS, dir string) (*model.Manual, diag.List, error) {
	dir = path.Clean(dir)
	info, err := fs.Stat(fsys, dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil, fmt.Errorf("there is no folder %s", dir)
	case err != nil:
		return nil, nil, fmt.Errorf("cannot look into %s: %w", dir, err)
	case !info.IsDir():
		return nil, nil, fmt.Errorf("%s is a file; give the folder that holds the manual", dir)
	}
	sources, out := folder.Read(fsys, dir)
	if len(sources) == 0 && len(out) == 0 {
		return nil, nil, fmt.Errorf("no file in %s ends with %s", dir, folder.Suffix)
	}
	incomplete := len(out) > 0
	files := parse(sources, false)
	for _, share := range shares(files, dir) {
		more, found := share.read(fsys)
		out = append(out, found...)
		incomplete = incomplete || len(found) > 0
		files = append(files, parse(more, true)...)
	}
	sort.SliceStable(files, func(i, j int) bool { return files[i].Tree.File.Path < files[j].Tree.File.Path })
	for _, f := range files {
		out = append(out, f.Tree.Findings...)
	}
	m, found := bind.Bind(dir, files)
	m.Incomplete = m.Incomplete || incomplete
	return m, append(out, found...), nil
}

// parse reads files a few at a time and gives them in their order.
func parse(sources []*source.File, shared bool) []bind.File {
	files := make([]bind.File, len(sources))
	var wg sync.WaitGroup
	next := make(chan int)
	for range min(runtime.GOMAXPROCS(0), len(sources)) {
		wg.Go(func() {
			for i := range next {
				files[i] = bind.File{Tree: syntax.Parse(sources[i]), Shared: shared}
				files[i].Thin()
			}
		})
	}
	for i := range sources {
		next <- i
	}
	close(next)
	wg.Wait()
	return files
}

// share is one shared folder, as the manual names it.
type share struct {
	dir string // inside fsys, or "" where it leaves it
	at  source.Span
}

// shares finds the folders that the manual block names.
func shares(files []bind.File, dir string) []share {
	var all []share
	for _, f := range files {
		for _, b := range f.Tree.Blocks {
			if b.Type != entry.Manual.Name {
				continue
			}
			a := b.Attr("shares")
			if a == nil {
				continue
			}
			items := []syntax.Expr{a.Expr}
			if l, ok := a.Expr.(*syntax.List); ok {
				items = l.Items
			}
			for _, item := range items {
				s, ok := item.(*syntax.String)
				if !ok {
					continue
				}
				if name, plain := s.Literal(); plain {
					sh := share{path.Join(dir, name), s.Span()}
					if path.IsAbs(name) || !fs.ValidPath(sh.dir) {
						sh.dir = ""
					}
					all = append(all, sh)
				}
			}
		}
	}
	return all
}

func (s share) read(fsys fs.FS) ([]*source.File, diag.List) {
	fault := func(message, remedy string) diag.List {
		return diag.List{{Rule: "form/shared-folder", Severity: diag.Error, Span: s.at, Message: message,
			Reason: "The tools and supplies in it are missing from the manual.", Remedy: remedy}}
	}
	if s.dir == "" {
		return nil, fault("This shared folder lies outside the root.",
			"Move it inside, or give fettle a root that holds both: --root.")
	}
	info, err := fs.Stat(fsys, s.dir)
	if err != nil || !info.IsDir() {
		return nil, fault("There is no shared folder "+s.dir+".", "Correct the path; it is seen from the manual's folder.")
	}
	files, found := folder.Read(fsys, s.dir)
	if len(files) == 0 && len(found) == 0 {
		return nil, fault("The shared folder "+s.dir+" holds no file that ends with "+folder.Suffix+".", "Correct the path, or take it out.")
	}
	return files, found
}
