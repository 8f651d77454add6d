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
	for _, child := range b.Blocks {
		thinBlock(child)
	}
	if wanted(b) {
		if again := syntax.Again(b); again != nil {
			b.Attrs = again.Attrs // in arrays of their own
			return
		}
	}
	keepPlaces(b)
}

// wanted reports blocks that are looked into before procedures are decoded.
func wanted(b *syntax.Block) bool {
	k := kind.Of(b.Type)
	return b.Type == entry.Example.Name || k != nil && (k.Yields == kind.Reading || k.Yields == kind.Number || k.Yields == kind.Pack)
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
	if b.Type != entry.Example.Name { // decoded last, and whole
		b.Attrs = from.Attrs
	}
	for i := range b.Blocks {
		graft(b.Blocks[i], from.Blocks[i])
	}
}
