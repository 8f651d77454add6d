package bind

import (
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/syntax"
)

// Thin lets go of what a file's procedures are written with, but for what must be
// known before any of them is decoded: what steps yield, places and worked
// examples. The rest is read again when its turn comes, so that the trees of a
// large manual never stand beside its whole model. Of a file with faults the tree
// is kept, since only its first reading knows how they were mended.
func (f *File) Thin() {
	if f.Tree.Damaged || len(f.Tree.Findings) > 0 {
		return
	}
	var thin []*syntax.Block
	for _, b := range f.Tree.Blocks {
		if b.Type == entry.Procedure.Name {
			if syntax.Again(b) == nil {
				return
			}
			thin = append(thin, b)
		}
	}
	for _, b := range thin {
		thinBlock(b)
	}
	f.thin = true
}

func thinBlock(b *syntax.Block) {
	for i, child := range b.Blocks {
		k := kind.Of(child.Type)
		if child.Type == entry.Example.Name || k != nil && (k.Yields == kind.Reading || k.Yields == kind.Number || k.Yields == kind.Pack) {
			if again := syntax.Again(child); again != nil {
				nested := child.Blocks
				b.Blocks[i] = again
				again.Blocks = nested
				child = again
			}
			for _, inner := range child.Blocks {
				thinBlock(inner)
				inner.Attrs = nil
			}
			continue
		}
		thinBlock(child)
		keepPlaces(child)
	}
	keepPlaces(b)
}

// keepPlaces keeps at_each alone, in an array of its own.
func keepPlaces(b *syntax.Block) {
	a := b.Attr("at_each")
	if a == nil {
		b.Attrs = nil
		return
	}
	b.Attrs = []syntax.Attr{*a}
}

// whole puts back what Thin let go of.
func whole(b *syntax.Block) {
	if again := syntax.Again(b); again != nil {
		graft(b, again)
	}
}

func graft(b, from *syntax.Block) {
	b.Attrs = from.Attrs
	for i := range b.Blocks {
		graft(b.Blocks[i], from.Blocks[i])
	}
}
