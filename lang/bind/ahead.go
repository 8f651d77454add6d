package bind

import (
	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/syntax"
)

// What follows looks ahead at attributes that may stand behind the one that is read.

// block is what a node that is being read was written as.
func (d *decoder) block(n *model.Node) *syntax.Block {
	for i := len(d.open) - 1; i >= 0; i-- {
		if d.open[i].node == n {
			return d.open[i].block
		}
	}
	return nil
}

// ahead is the dimension of an attribute that may stand behind the one that is read.
func (d *decoder) ahead(n *model.Node, name string) (calc.Dim, bool) {
	if sb := d.block(n); sb != nil {
		if a := sb.Attr(name); a != nil {
			if s, ok := a.Expr.(*syntax.String); ok {
				if lit := d.silently(s); lit != nil {
					return lit.Dim(), true
				}
			}
		}
	}
	return calc.Dim{}, false
}

// toolReads is the dimension of all that an instrument reads, where that is one; a
// count may do without a unit.
func (d *decoder) toolReads(n *model.Node) (calc.Dim, bool) {
	sb := d.block(n)
	if sb == nil {
		return calc.Dim{}, false
	}
	word := func(name string) string {
		if a := sb.Attr(name); a != nil {
			if s, ok := a.Expr.(*syntax.String); ok {
				text, _ := s.Literal()
				return text
			}
		}
		return ""
	}
	reads, _ := entry.Instrument(word("kind"))
	if w := word("reads"); w != "" {
		reads = []string{w}
	}
	var one calc.Dim
	for i, w := range reads {
		dim, ok := entry.ReadingDim(w)
		if !ok || i > 0 && dim != one {
			return calc.Dim{}, false
		}
		one = dim
	}
	return one, len(reads) > 0 && one != calc.Counted
}
