package syntax

import (
	"cmp"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"golang.org/x/text/unicode/norm"
)

// hclItems lets hclsyntax read src[start:s.end], which holds whole items, and
// opens what it finds, with its findings. It reports whether all was well.
func (p *parser) hclItems(start int, s survey) bool {
	body, diags := parseConfig(p.src[start:s.end], start)
	if len(diags) > 0 && p.explain(start, s, diags) {
		p.saveName(start, s.end)
		return false
	}
	if body != nil {
		l := lowerer{builder: &p.builder, start: start, end: s.end}
		attrs, blocks := l.body(body)
		p.openAttrs = append(p.openAttrs, attrs...)
		p.openBlocks = append(p.openBlocks, blocks...)
	}
	return len(diags) == 0
}

// parseConfig calls hclsyntax, whose invariants broken input can break.
func parseConfig(src string, start int) (body *hclsyntax.Body, diags hcl.Diagnostics) {
	defer func() {
		if recover() != nil {
			body = nil
			diags = hcl.Diagnostics{{Severity: hcl.DiagError, Summary: summaryUnreadable}}
		}
	}()
	file, diags := hclsyntax.ParseConfig([]byte(src), "", hcl.Pos{Line: 1, Column: 1, Byte: start})
	body, _ = file.Body.(*hclsyntax.Body)
	return body, diags
}

// A lowerer turns hclsyntax's trees into ours. Placeholders of broken input
// have odd ranges, so every offset is kept inside the piece that was read.
type lowerer struct {
	*builder
	start, end int
}

func (l *lowerer) at(byte int) int { return min(max(byte, l.start), l.end) }

func (l *lowerer) span2(r hcl.Range) (start, end int) {
	start = l.at(r.Start.Byte)
	return start, max(start, l.at(r.End.Byte))
}

func (l *lowerer) body(body *hclsyntax.Body) (attrs []Attr, blocks []*Block) {
	if body == nil {
		return nil, nil
	}
	// Attributes are a map; source order comes back by offset.
	named := make([]*hclsyntax.Attribute, 0, len(body.Attributes))
	for _, a := range body.Attributes {
		if a != nil {
			named = append(named, a)
		}
	}
	slices.SortFunc(named, func(a, b *hclsyntax.Attribute) int {
		return cmp.Compare(a.NameRange.Start.Byte, b.NameRange.Start.Byte)
	})
	for _, a := range named {
		start, nameEnd := l.span2(a.NameRange)
		x := l.expr(a.Expr)
		attrs = append(attrs, Attr{a.Name, x, l.span(start, max(nameEnd, int(x.Span().End)))})
	}
	for _, b := range body.Blocks {
		blocks = append(blocks, l.block(b))
	}
	return attrs, blocks
}

func (l *lowerer) block(b *hclsyntax.Block) *Block {
	start, end := l.span2(b.TypeRange)
	out := &Block{Type: b.Type, TypeSpan: l.span(start, end)}
	for i, text := range b.Labels {
		from, to := l.span2(b.LabelRanges[i])
		out.Labels = append(out.Labels, Label{norm.NFC.String(text), l.span(from, to)})
		end = max(end, to)
	}
	out.Header = l.span(start, end)
	_, closing := l.span2(b.CloseBraceRange)
	out.Span = l.span(start, max(end, closing))
	out.Attrs, out.Blocks = l.body(b.Body)
	return out
}
