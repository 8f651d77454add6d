package syntax

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// template lowers the parts of a string. hclsyntax tells where the literals
// and the expressions are; the ${ and } between them are found here.
func (l *lowerer) template(exprs []hclsyntax.Expression, start, end int) Expr {
	if !strings.HasPrefix(l.src[start:end], `"`) {
		return l.heredoc(exprs, start, end)
	}
	if end-start < 2 {
		return l.bad(start, end)
	}
	parts, ok := l.parts(exprs, start+1, end-1, quoted)
	if !ok {
		return l.bad(start, end)
	}
	return l.join(parts, quoted, start, end, 0)
}

func (l *lowerer) heredoc(exprs []hclsyntax.Expression, start, end int) Expr {
	_, flush, n := heredocOpen(l.src[start:end])
	closing := strings.LastIndexByte(l.src[start:end], '\n') + 1
	if n == 0 || closing < n {
		return l.bad(start, end)
	}
	parts, ok := l.parts(exprs, start+n, start+closing, heredoc)
	if !ok {
		return l.bad(start, end)
	}
	margin := l.margin(parts)
	l.checkHeredoc(start, end, flush, margin)
	if !flush || margin == noMargin {
		margin = 0
	}
	return l.join(parts, heredoc, start, end, margin)
}

func (l *lowerer) join(parts []Part, form form, start, end, indent int) Expr {
	switch {
	case len(parts) == 0:
		return l.text(form, start, end, indent, "")
	case len(parts) == 1 && parts[0].X == nil:
		return l.text(form, start, end, indent, parts[0].Text)
	}
	return l.builder.template(form, start, end, indent, parts)
}

// parts pairs the parts that hclsyntax found with their source. False means
// that a directive or an error stands in the way, which has its finding.
func (l *lowerer) parts(exprs []hclsyntax.Expression, start, end int, form form) ([]Part, bool) {
	var parts []Part
	at := start
	for _, x := range exprs {
		switch rest := l.src[at:end]; {
		case strings.HasPrefix(rest, "%{"):
			l.report(ruleForeign, at, at+2, "`%{` begins a directive, which does not exist here.")
			return nil, false
		case strings.HasPrefix(rest, "${"):
			y := l.expr(x)
			after := min(l.skip(int(y.Span().End)), end)
			if strings.HasPrefix(l.src[after:end], "~") {
				after++
			}
			if after < at || !strings.HasPrefix(l.src[after:end], "}") {
				return nil, false
			}
			parts = append(parts, Part{X: y, Span: l.span(at, after+1)})
			at = after + 1
		default:
			lit, ok := x.(*hclsyntax.LiteralValueExpr)
			if !ok || !lit.Val.IsKnown() || lit.Val.IsNull() || lit.Val.Type() != cty.String {
				return nil, false
			}
			text := lit.Val.AsString()
			if form == heredoc {
				text = strings.ReplaceAll(text, "\r\n", "\n")
			}
			to := min(max(at, lit.SrcRange.End.Byte), end)
			parts = append(parts, Part{Text: text, Span: l.span(at, to)})
			at = to
		}
	}
	return parts, true
}

// margin gives the blanks that all lines of a heredoc begin with.
func (l *lowerer) margin(parts []Part) int {
	margin, bol := noMargin, true
	for _, p := range parts {
		if p.X != nil {
			if bol {
				return 0
			}
			continue
		}
		for rest := p.Span.Text(); rest != ""; {
			text := line(rest)
			rest = rest[len(text):]
			words := strings.TrimLeftFunc(text, unicode.IsSpace)
			if bol && (words != "" || !strings.HasSuffix(text, "\n")) {
				margin = min(margin, utf8.RuneCountInString(text[:len(text)-len(words)]))
			}
			bol = strings.HasSuffix(text, "\n")
		}
	}
	return margin
}
