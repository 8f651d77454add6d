package syntax

import (
	"fettle/lang/diag"
	"fettle/lang/source"
)

// A Tree is one parsed file.
type Tree struct {
	File     *source.File
	Blocks   []*Block  // top-level, in source order
	Attrs    []Attr    // top-level, in source order; the dialect has none
	Comments []Comment // in source order
	Findings diag.List // rules form/…, in source order
	Damaged  bool      // something could not be read; what is here may be incomplete
}

// A Block is `type "label" "label" { … }`.
type Block struct {
	Type     string
	TypeSpan source.Span
	Labels   []Label
	Attrs    []Attr   // in source order, no name twice
	Blocks   []*Block // in source order
	Header   source.Span
	Span     source.Span
}

// Attr gives the attribute of that name, or nil.
func (b *Block) Attr(name string) *Attr {
	for i := range b.Attrs {
		if b.Attrs[i].Name == name {
			return &b.Attrs[i]
		}
	}
	return nil
}

// Label gives the text of label i, or nothing.
func (b *Block) Label(i int) string {
	if i < len(b.Labels) {
		return b.Labels[i].Text
	}
	return ""
}

// A Label is a block's label, normalised to NFC. Span includes the quotes.
type Label struct {
	Text string
	Span source.Span
}

// An Attr is `name = expr`. Span covers both.
type Attr struct {
	Name string
	Expr Expr
	Span source.Span
}

// NameSpan covers the name.
func (a *Attr) NameSpan() source.Span { return a.Span.Sub(0, len(a.Name)) }

// A Comment is one comment as written, its markers included and its line end
// not. OwnLine means that nothing but blanks stands before it on its line.
type Comment struct {
	Text    string
	Span    source.Span
	OwnLine bool
}
