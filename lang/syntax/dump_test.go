package syntax

import (
	"fmt"
	"strings"

	"fettle/lang/source"
)

// byHCL reads a whole file by hclsyntax alone: the oracle. It reports whether
// hclsyntax found it sound.
func byHCL(f *source.File) (*Tree, bool) {
	p := newParser(f)
	s := surveyItem(p.src, p.pos, p.end, true)
	for _, c := range s.comments {
		p.keep(c[0], c[1])
	}
	sound := p.hclItems(p.pos, s) && !p.swallowed
	p.dropRepeats(0)
	p.checkText()
	p.findings.Sort()
	return &Tree{File: f, Blocks: p.openBlocks, Attrs: p.openAttrs, Comments: p.comments, Findings: p.findings}, sound
}

// dump prints a tree with every span.
func dump(t *Tree) string {
	var w strings.Builder
	dumpAttrs(&w, "", t.Attrs)
	for _, b := range t.Blocks {
		dumpBlock(&w, "", b)
	}
	for _, c := range t.Comments {
		fmt.Fprintf(&w, "comment %s own line %v\n", at(c.Span), c.OwnLine)
	}
	for _, f := range t.Findings {
		fmt.Fprintf(&w, "%s %s %s\n", f.Rule, at(f.Span), f.Message)
	}
	return w.String()
}

func at(s source.Span) string { return fmt.Sprintf("%d..%d", s.Start, s.End) }

func dumpBlock(w *strings.Builder, in string, b *Block) {
	fmt.Fprintf(w, "%sblock %s %s header %s whole %s", in, b.Type, at(b.TypeSpan), at(b.Header), at(b.Span))
	for _, l := range b.Labels {
		fmt.Fprintf(w, " label %q %s", l.Text, at(l.Span))
	}
	w.WriteString("\n")
	dumpAttrs(w, in+"  ", b.Attrs)
	for _, n := range b.Blocks {
		dumpBlock(w, in+"  ", n)
	}
}

func dumpAttrs(w *strings.Builder, in string, attrs []Attr) {
	for i := range attrs {
		a := &attrs[i]
		fmt.Fprintf(w, "%sattr %s %s name %s = ", in, a.Name, at(a.Span), at(a.NameSpan()))
		dumpExpr(w, a.Expr)
		w.WriteString("\n")
	}
}

func dumpExpr(w *strings.Builder, x Expr) {
	fmt.Fprintf(w, "(%T %s", x, at(x.Span()))
	switch x := x.(type) {
	case *Number:
		w.WriteString(" " + x.Text)
	case *Bool:
		fmt.Fprint(w, " ", x.Value)
	case *String:
		fmt.Fprintf(w, " form %d indent %d inner %s", x.form, x.indent, at(x.Inner()))
		for i, p := range x.Parts() {
			if p.X != nil {
				fmt.Fprintf(w, " interp %s ", at(p.Span))
				dumpExpr(w, p.X)
				continue
			}
			fmt.Fprintf(w, " lit %s %q", at(p.Span), p.Text)
			mid := len(p.Text) / 2
			fmt.Fprintf(w, " mid %s", at(x.PartSource(i, mid, mid+1)))
		}
	case *Traversal:
		fmt.Fprintf(w, " %s %s", x.Root, at(x.RootSpan()))
		dumpSteps(w, x.Steps)
	case *Access:
		w.WriteString(" ")
		dumpExpr(w, x.X)
		dumpSteps(w, x.Steps)
	case *List:
		dumpExprs(w, x.Items)
	case *Object:
		for _, p := range x.Pairs {
			dumpExprs(w, []Expr{p.Key, p.Value})
		}
	case *Unary:
		w.WriteString(" " + x.Op)
		dumpExprs(w, []Expr{x.X})
	case *Binary:
		fmt.Fprintf(w, " %s %s", x.Op, at(x.OpSpan()))
		dumpExprs(w, []Expr{x.X, x.Y})
	case *Cond:
		dumpExprs(w, []Expr{x.If, x.Then, x.Else})
	case *Call:
		fmt.Fprintf(w, " %s %s", x.Name, at(x.NameSpan()))
		dumpExprs(w, x.Args)
	case *Paren:
		dumpExprs(w, []Expr{x.X})
	}
	w.WriteString(")")
}

func dumpExprs(w *strings.Builder, xs []Expr) {
	for _, x := range xs {
		w.WriteString(" ")
		dumpExpr(w, x)
	}
}

func dumpSteps(w *strings.Builder, steps []Step) {
	for _, s := range steps {
		fmt.Fprintf(w, " step %s %q %s", at(s.Span), s.Name, at(s.NameSpan()))
		if s.Index != nil {
			dumpExpr(w, s.Index)
		}
	}
}
