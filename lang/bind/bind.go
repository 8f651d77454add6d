package bind

import (
	"runtime"
	"sync"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

// File is one parsed file of a manual or of a shared folder.
type File struct {
	Tree   *syntax.Tree
	Shared bool
	thin   bool
}

// Bind makes a manual of parsed files, which must be in the order of their
// paths. It drops the trees as it goes.
func Bind(dir string, files []File) (*model.Manual, diag.List) {
	n := 0
	for _, f := range files {
		n += len(f.Tree.Blocks)
	}
	b := &binder{m: model.New(n), source: map[*model.Node]*syntax.Block{}, types: map[*model.Node]*yield{}, thin: map[*source.File]bool{}}
	b.m.Dir = dir
	for _, f := range files {
		b.m.Files = append(b.m.Files, f.Tree.File)
		b.m.Incomplete = b.m.Incomplete || f.Tree.Damaged
		b.comments(f.Tree)
		if f.thin {
			b.thin[f.Tree.File] = true
		}
	}
	d := &decoder{binder: b}
	for _, f := range files {
		d.declareFile(f)
	}
	d.manual(files)
	d.entries()
	d.order()
	d.yields()
	out := d.out
	out = append(out, b.procedures()...)
	return b.m, out
}

// binder is what all decoders share: filled while blocks are declared and
// entries decoded, only read while procedures are decoded in parallel.
type binder struct {
	m      *model.Manual
	source map[*model.Node]*syntax.Block // what entries were written as
	steps  []*model.Step                 // those that yield something
	types  map[*model.Node]*yield
	gallon string
	thin   map[*source.File]bool // files whose procedures are read again
}

// decoder collects the findings of one goroutine.
type decoder struct {
	*binder
	out       diag.List
	open      []opened // the entries that are being read, the innermost last
	read      map[written]*calc.Literal
	durations map[*calc.Literal]*model.Formula
}

type opened struct {
	node  *model.Node
	block *syntax.Block
}

func (b *binder) comments(t *syntax.Tree) {
	if len(t.Comments) == 0 {
		return
	}
	cs := make([]model.Comment, len(t.Comments))
	for i, c := range t.Comments {
		cs[i] = model.Comment{Text: c.Text, Span: c.Span, OwnLine: c.OwnLine}
	}
	b.m.Comments[t.File] = cs
}

// manual settles which block is the manual's own.
func (d *decoder) manual(files []File) {
	if d.m.Node != nil {
		d.decode(d.m.Node)
		d.gallon = d.m.Word("gallon")
		return
	}
	d.m.Node = &model.Node{Def: entry.Manual}
	if d.m.Incomplete {
		return
	}
	at := source.Span{}
	for _, f := range files {
		if !f.Shared {
			at = f.Tree.File.Span(0, 0)
			break
		}
	}
	d.find("form/no-manual", at, "No `manual` block stands in this folder.",
		"Without it nobody knows the title, the revision or the order of the work.",
		`Write one: manual "id" { title = "…", units = "metric", revision = "A", order = [procedure.…] }, each on its own line.`)
}

// entries decodes the catalogue: first what others rest on.
func (d *decoder) entries() {
	for _, first := range []*schema.Block{entry.Option, entry.Places, entry.Limit} {
		for _, n := range d.m.Entries {
			if n.Def == first {
				d.decode(n)
			}
		}
	}
	for _, n := range d.m.Entries {
		d.decode(n)
	}
}

// procedures decodes them, a few at a time: everything they need of each other
// is settled by now.
func (b *binder) procedures() diag.List {
	results := make([]diag.List, len(b.m.Procedures))
	var wg sync.WaitGroup
	next := make(chan int)
	for range min(runtime.GOMAXPROCS(0), max(1, len(results))) {
		wg.Go(func() {
			d := &decoder{binder: b}
			for i := range next {
				d.out = nil
				d.procedure(b.m.Procedures[i])
				results[i] = d.out
			}
		})
	}
	for i := range results {
		next <- i
	}
	close(next)
	wg.Wait()
	d := &decoder{binder: b}
	for _, n := range b.m.Examples {
		d.decodeBlock(n)
	}
	b.source = nil
	var all diag.List
	for _, r := range results {
		all = append(all, r...)
	}
	return append(all, d.out...)
}
