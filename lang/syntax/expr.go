package syntax

import "fettle/lang/source"

// An Expr is one expression as written: *String, *Number, *Bool, *Null,
// *Traversal, *Access, *List, *Object, *Unary, *Binary, *Cond, *Call, *Paren or
// *Bad.
type Expr interface {
	Span() source.Span
	expr()
}

type node struct{ span source.Span }

// Span covers the whole expression.
func (n *node) Span() source.Span { return n.span }
func (*node) expr()               {}

// A Number keeps the literal as written, such as "0.10"; never negative, never
// with an exponent.
type Number struct {
	node
	Text string
}

// A Bool is true or false.
type Bool struct {
	node
	Value bool
}

// Null is the word null.
type Null struct{ node }

// A Traversal is a name and the steps from it: part.shim, measure.bore["left"].
type Traversal struct {
	node
	Root  string
	Steps []Step
}

// RootSpan covers the first name.
func (t *Traversal) RootSpan() source.Span { return t.span.Sub(0, len(t.Root)) }

// A Step is .Name or, where Name is empty, [Index]. Span covers the dot or the
// brackets too.
type Step struct {
	Name  string
	Index Expr
	Span  source.Span
}

// NameSpan covers the name without the dot.
func (s Step) NameSpan() source.Span {
	n := int(s.Span.End - s.Span.Start)
	return s.Span.Sub(n-len(s.Name), n)
}

// An Access is steps from anything but a name: max(a, b).x, (a)[0].
type Access struct {
	node
	X     Expr
	Steps []Step
}

// A List is [a, b].
type List struct {
	node
	Items []Expr
}

// An Object is { key = value }.
type Object struct {
	node
	Pairs []Pair
}

// A Pair is one entry of an Object. A key that is a bare name is a Traversal
// without steps, and bare addresses have steps.
type Pair struct{ Key, Value Expr }

// A Unary is -x or !x.
type Unary struct {
	node
	Op string
	X  Expr
}

// A Binary is x op y.
type Binary struct {
	node
	Op   string // || && == != < > <= >= + - * / %
	X, Y Expr
	op   int32 // where Op stands
}

// OpSpan covers the operator.
func (b *Binary) OpSpan() source.Span {
	return source.Span{File: b.span.File, Start: b.op, End: b.op + int32(len(b.Op))}
}

// A Cond is if ? then : else.
type Cond struct {
	node
	If, Then, Else Expr
}

// A Call is name(args).
type Call struct {
	node
	Name string
	Args []Expr
}

// NameSpan covers the function's name.
func (c *Call) NameSpan() source.Span { return c.span.Sub(0, len(c.Name)) }

// A Paren is (x).
type Paren struct {
	node
	X Expr
}

// A Bad stands where an expression could not be read or is not of the dialect;
// there is a finding already, so be silent about it.
type Bad struct{ node }
