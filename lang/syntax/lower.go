package syntax

import (
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// expr lowers an expression. What the dialect does not have becomes a finding
// and a Bad.
func (l *lowerer) expr(x hclsyntax.Expression) Expr {
	if x == nil {
		return l.bad(l.start, l.start)
	}
	start, end := l.span2(x.Range())
	switch x := x.(type) {
	case *hclsyntax.LiteralValueExpr:
		return l.value(x.Val, start, end)
	case *hclsyntax.TemplateExpr:
		return l.template(x.Parts, start, end)
	case *hclsyntax.TemplateWrapExpr:
		return l.template([]hclsyntax.Expression{x.Wrapped}, start, end)
	case *hclsyntax.ScopeTraversalExpr, *hclsyntax.RelativeTraversalExpr, *hclsyntax.IndexExpr:
		return l.traversal(x, start, end)
	case *hclsyntax.ParenthesesExpr:
		return &Paren{l.node(start, end), l.expr(x.Expression)}
	case *hclsyntax.TupleConsExpr:
		return &List{l.node(start, end), l.exprs(x.Exprs)}
	case *hclsyntax.ObjectConsExpr:
		o := &Object{node: l.node(start, end)}
		for _, item := range x.Items {
			o.Pairs = append(o.Pairs, Pair{l.expr(item.KeyExpr), l.expr(item.ValueExpr)})
		}
		return o
	case *hclsyntax.ObjectConsKeyExpr:
		return l.expr(x.Wrapped)
	case *hclsyntax.UnaryOpExpr:
		return &Unary{l.node(start, end), operators[x.Op], l.expr(x.Val)}
	case *hclsyntax.BinaryOpExpr:
		return l.operation(x)
	case *hclsyntax.ConditionalExpr:
		return &Cond{l.node(start, end), l.expr(x.Condition), l.expr(x.TrueResult), l.expr(x.FalseResult)}
	case *hclsyntax.FunctionCallExpr:
		if x.ExpandFinal || strings.Contains(x.Name, "::") {
			return l.foreign(start, end, "A function takes its arguments one by one, under a plain name.")
		}
		return &Call{l.node(start, end), x.Name, l.exprs(x.Args)}
	case *hclsyntax.SplatExpr:
		return l.foreign(start, end, "`*` does not stand for all members here; name the whole, as in max(measure.bore).")
	case *hclsyntax.ForExpr:
		return l.foreign(start, end, "`for` does not build lists here.")
	}
	return l.bad(start, end) // hclsyntax's own mark for an error it has reported
}

// foreign reports HCL that is not of the dialect.
func (l *lowerer) foreign(start, end int, message string) Expr {
	l.report(ruleForeign, start, end, message)
	return l.bad(start, end)
}

func (l *lowerer) exprs(xs []hclsyntax.Expression) []Expr {
	var out []Expr
	for _, x := range xs {
		out = append(out, l.expr(x))
	}
	return out
}

// value lowers a literal. Numbers come from the source: cty holds them as
// binary floats. An unknown value marks an error that has been reported.
func (l *lowerer) value(v cty.Value, start, end int) Expr {
	switch {
	case !v.IsKnown():
	case v.IsNull():
		return &Null{l.node(start, end)}
	case v.Type() == cty.Bool:
		return &Bool{l.node(start, end), v.True()}
	case v.Type() == cty.Number:
		return l.number(start, end)
	}
	return l.bad(start, end)
}

var operators = map[*hclsyntax.Operation]string{
	hclsyntax.OpLogicalOr: "||", hclsyntax.OpLogicalAnd: "&&", hclsyntax.OpLogicalNot: "!",
	hclsyntax.OpEqual: "==", hclsyntax.OpNotEqual: "!=",
	hclsyntax.OpGreaterThan: ">", hclsyntax.OpGreaterThanOrEqual: ">=",
	hclsyntax.OpLessThan: "<", hclsyntax.OpLessThanOrEqual: "<=",
	hclsyntax.OpAdd: "+", hclsyntax.OpSubtract: "-", hclsyntax.OpNegate: "-",
	hclsyntax.OpMultiply: "*", hclsyntax.OpDivide: "/", hclsyntax.OpModulo: "%",
}

func (l *lowerer) operation(x *hclsyntax.BinaryOpExpr) Expr {
	left, right := l.expr(x.LHS), l.expr(x.RHS)
	at := l.skip(int(left.Span().End))
	op := operators[x.Op]
	if !strings.HasPrefix(l.src[at:], op) || right.Span().End < left.Span().End { // placeholders
		return l.bad(int(left.Span().Start), int(max(left.Span().End, right.Span().End)))
	}
	return l.binary(op, at, left, right)
}

// skip gives the place after the blanks, newlines and comments at pos.
func (l *lowerer) skip(pos int) int {
	for pos < l.end {
		switch l.src[pos] {
		case ' ', '\t', '\r', '\n':
			pos++
		default:
			n := commentLen(l.src[pos:l.end])
			if n == 0 {
				return pos
			}
			pos += n
		}
	}
	return pos
}

// traversal gathers the steps that hclsyntax spreads over nested nodes.
func (l *lowerer) traversal(x hclsyntax.Expression, start, end int) Expr {
	var steps []Step // last first
	for {
		switch t := x.(type) {
		case *hclsyntax.IndexExpr:
			from, to := l.span2(t.BracketRange)
			steps = append(steps, Step{Index: l.expr(t.Key), Span: l.span(from, to)})
			x = t.Collection
			continue
		case *hclsyntax.RelativeTraversalExpr:
			for i := len(t.Traversal) - 1; i >= 0; i-- {
				steps = append(steps, l.step(t.Traversal[i]))
			}
			x = t.Source
			continue
		case *hclsyntax.ScopeTraversalExpr:
			for i := len(t.Traversal) - 1; i > 0; i-- {
				steps = append(steps, l.step(t.Traversal[i]))
			}
			return &Traversal{l.node(start, end), t.Traversal.RootName(), reversed(steps)}
		}
		return &Access{l.node(start, end), l.expr(x), reversed(steps)}
	}
}

func reversed(steps []Step) []Step {
	for i, j := 0, len(steps)-1; i < j; i, j = i+1, j-1 {
		steps[i], steps[j] = steps[j], steps[i]
	}
	return steps
}

func (l *lowerer) step(t hcl.Traverser) Step {
	start, end := l.span2(t.SourceRange())
	if a, ok := t.(hcl.TraverseAttr); ok {
		return Step{Name: a.Name, Span: l.span(start, end)}
	}
	if start < end && l.src[start] == '[' {
		return Step{Index: l.key(start+1, end-1), Span: l.span(start, end)}
	}
	x := l.foreign(start, end, "An index stands in brackets.")
	return Step{Index: x, Span: l.span(start, end)}
}

// key reads the literal between an index's brackets again: hclsyntax keeps
// its value only.
func (l *lowerer) key(start, end int) Expr {
	end = max(start, end)
	p := parser{builder: builder{file: l.file, src: l.src}, pos: start, end: end}
	if x := p.expr(); x != nil && p.pos == end {
		return x
	}
	x, diags := hclsyntax.ParseExpression([]byte(l.src[start:end]), "", hcl.Pos{Line: 1, Column: 1, Byte: start})
	if diags.HasErrors() {
		return l.bad(start, end)
	}
	inner := lowerer{builder: l.builder, start: start, end: end}
	return inner.expr(x)
}
