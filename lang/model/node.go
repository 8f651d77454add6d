package model

import (
	"fettle/lang/schema"
	"fettle/lang/source"
)

// Node is one block: a catalogue entry, a procedure, a step, or a block nested
// in one of these.
type Node struct {
	Def     *schema.Block
	ID      string // the label, "" for a block without one
	Address string // "part.crankcase", "procedure.close.fit.cover"; "" for nested blocks
	File    *source.File
	Header  source.Span // type and labels
	Name    source.Span // the label, quotes included; the header where there is none
	Extent  source.Span // the whole block
	Attrs   []Attr      // in source order; what could not be read is left out
	Blocks  []*Node     // nested blocks that are not steps, in source order
	Steps   []*Step     // of a procedure or an otherwise block
	Parent  *Node       // of a nested block or a step
	Step    *Step       // the step that this node is, or nil
	Shared  bool        // from a shared catalogue folder
	Damaged bool        // something of it could not be read
}

// Attr is one attribute with its value.
type Attr struct {
	Def              *schema.Attr
	Value            Value
	start, from, end int32 // of name, value, whole
}

// NewAttr gives an attribute written at name and value.
func NewAttr(def *schema.Attr, value Value, name, expr source.Span) Attr {
	return Attr{def, value, name.Start, expr.Start, expr.End}
}

// Span covers the attribute, name and value.
func (n *Node) Span(a *Attr) source.Span {
	return source.Span{File: n.File, Start: a.start, End: a.end}
}

// NameSpan covers the attribute's name.
func (n *Node) NameSpan(a *Attr) source.Span {
	return source.Span{File: n.File, Start: a.start, End: a.start + int32(len(a.Def.Name))}
}

// ValueSpan covers the attribute's value.
func (n *Node) ValueSpan(a *Attr) source.Span {
	return source.Span{File: n.File, Start: a.from, End: a.end}
}

// Attr finds an attribute that is written, or nil.
func (n *Node) Attr(name string) *Attr {
	for i := range n.Attrs {
		if n.Attrs[i].Def.Name == name {
			return &n.Attrs[i]
		}
	}
	return nil
}

// Has reports whether the attribute is written.
func (n *Node) Has(name string) bool { return n.Attr(name) != nil }

// At is where a finding about the attribute belongs: its value, or the name of
// the block where it is not written.
func (n *Node) At(name string) source.Span {
	if a := n.Attr(name); a != nil {
		return n.ValueSpan(a)
	}
	return n.Name
}

// ByRole lists the attributes of a role, in source order.
func (n *Node) ByRole(role schema.Role) []*Attr {
	var found []*Attr
	for i := range n.Attrs {
		if n.Attrs[i].Def.Role == role {
			found = append(found, &n.Attrs[i])
		}
	}
	return found
}

// Is reports whether the node is a block of the given definition.
func (n *Node) Is(def *schema.Block) bool { return n.Def == def }

// Nested lists the nested blocks of a definition.
func (n *Node) Nested(def *schema.Block) []*Node {
	var found []*Node
	for _, b := range n.Blocks {
		if b.Def == def {
			found = append(found, b)
		}
	}
	return found
}

// Procedure is the procedure that the node is or stands in, or nil.
func (n *Node) Procedure() *Node {
	for ; n != nil; n = n.Parent {
		if n.Def.Steps && n.Step == nil && n.Def.Name == "procedure" {
			return n
		}
	}
	return nil
}
