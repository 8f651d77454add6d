package syntax

import (
	"golang.org/x/text/unicode/norm"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// A builder makes tree nodes and collects findings. Both parsers make every
// node through it, so that what is checked here is checked on either way.
type builder struct {
	file     *source.File
	src      string
	findings diag.List
	comments []Comment

	swallowed bool // a heredoc runs over the end of its block

	attrs      slab[Attr]
	blocks     slab[Block]
	blockLists slab[*Block]
	labels     slab[Label]
	strings    slab[String]
	parts      slab[Part]
	numbers    slab[Number]
	traversals slab[Traversal]
	steps      slab[Step]
	lists      slab[List]
	objects    slab[Object]
	pairs      slab[Pair]
	binaries   slab[Binary]
	calls      slab[Call]
	exprs      slab[Expr]
}

func (b *builder) span(start, end int) source.Span {
	return source.Span{File: b.file, Start: int32(start), End: int32(end)}
}

func (b *builder) node(start, end int) node { return node{b.span(start, end)} }

func (b *builder) bad(start, end int) Expr { return &Bad{b.node(start, end)} }

// report adds an error; the table of rules gives reason and remedy.
func (b *builder) report(rule string, start, end int, message string) {
	b.findings.Add(finding(rule, b.span(start, end), message))
}

func (b *builder) number(start, end int) Expr {
	n := b.numbers.one()
	*n = Number{b.node(start, end), b.src[start:end]}
	return n
}

// binary joins two operands. HCL reads a < b < c as (a < b) < c, which nobody
// means.
func (b *builder) binary(op string, at int, x, y Expr) Expr {
	if left, ok := x.(*Binary); ok && compares(op) && compares(left.Op) {
		b.report(ruleChained, int(left.op), at+len(op),
			"Two comparisons in a row compare the answer of the first, true or false, with the rest.")
	}
	n := b.binaries.one()
	*n = Binary{b.node(int(x.Span().Start), int(y.Span().End)), op, x, y, int32(at)}
	return n
}

func compares(op string) bool {
	switch op {
	case "==", "!=", "<", ">", "<=", ">=":
		return true
	}
	return false
}

// text makes a string without interpolations.
func (b *builder) text(form form, start, end int, indent int, text string) *String {
	s := b.strings.one()
	*s = String{node: b.node(start, end), plain: text, form: form, indent: int32(indent)}
	return s
}

// template makes a string of parts; literals without text are left out.
func (b *builder) template(form form, start, end int, indent int, parts []Part) *String {
	kept := parts[:0]
	for _, p := range parts {
		if p.X != nil || p.Text != "" {
			kept = append(kept, p)
		}
	}
	s := b.strings.one()
	list := b.parts.copy(kept)
	*s = String{node: b.node(start, end), parts: &list, form: form, indent: int32(indent)}
	return s
}

// A slab hands out values from larger allocations: a tree has many small nodes
// that live and die together.
type slab[T any] struct {
	free []T
	size int
}

const slabMin, slabMax = 8, 64

func (s *slab[T]) grow(n int) {
	s.size = min(max(slabMin, 2*s.size), slabMax)
	s.free = make([]T, max(n, s.size))
}

func (s *slab[T]) one() *T {
	if len(s.free) == 0 {
		s.grow(1)
	}
	v := &s.free[0]
	s.free = s.free[1:]
	return v
}

// copy gives a slice of its own that holds the values, nil for none.
func (s *slab[T]) copy(values []T) []T {
	n := len(values)
	if n == 0 {
		return nil
	}
	if n > len(s.free) {
		s.grow(n)
	}
	out := s.free[:n:n]
	s.free = s.free[n:]
	copy(out, values)
	return out
}

// normal gives text in NFC, as cty does with every string value.
func normal(text string) string { return norm.NFC.String(text) }
