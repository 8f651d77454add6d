package syntax

import (
	"fettle/lang/diag"
	"fettle/lang/source"
)

// body reads items up to the } of the block, which it leaves, or at the top
// level up to the end.
func (p *parser) body(nested bool) bool {
	for {
		p.blankLines()
		if p.pos >= p.end || p.hopeless {
			return !nested
		}
		if p.src[p.pos] == '}' && nested {
			return true
		}
		m := p.mark()
		if p.item() {
			continue
		}
		p.reset(m)
		if !p.refused(nested) {
			return false
		}
	}
}

// blankLines passes blanks, newlines and comments.
func (p *parser) blankLines() {
	p.lines = false
	p.skip()
	p.lines = true
}

// item reads one attribute or block with the end of its line.
func (p *parser) item() bool {
	start := p.pos
	name := p.name()
	if name == "" {
		return false
	}
	p.skip()
	if p.at(0) == '=' {
		return p.attr(start, name) && p.newline()
	}
	return p.block(start, name) && p.newline()
}

// attr reads from the = on.
func (p *parser) attr(start int, name string) bool {
	p.pos++
	p.chain = 0
	x := p.expr()
	if x == nil {
		return false
	}
	p.openAttrs = append(p.openAttrs, Attr{name, x, p.span(start, int(x.Span().End))})
	return true
}

// block reads from behind the type on.
func (p *parser) block(start int, typ string) bool {
	b, ok := p.header(start, typ)
	if !ok || p.depth >= maxDepth {
		return false
	}
	p.depth++
	attrs, blocks := len(p.openAttrs), len(p.openBlocks)
	if !p.braced() {
		return false
	}
	p.pos++ // }
	p.depth--
	p.dropRepeats(attrs)
	p.close(b, attrs, blocks)
	return true
}

// header reads labels and the {.
func (p *parser) header(start int, typ string) (*Block, bool) {
	var labels [4]Label
	n, end := 0, start+len(typ)
	for {
		p.skip()
		from := p.pos
		switch c := p.at(0); {
		case c == '{':
			p.pos++
			b := p.blocks.one()
			*b = Block{
				Type: typ, TypeSpan: p.span(start, start+len(typ)),
				Labels: p.labels.copy(labels[:n]), Header: p.span(start, end),
			}
			return b, true
		case n == len(labels):
			return nil, false
		case c == '"':
			text, ok := p.label()
			if !ok {
				return nil, false
			}
			labels[n] = Label{text, p.span(from, p.pos)}
		default:
			name := p.name()
			if name == "" {
				return nil, false
			}
			labels[n] = Label{name, p.span(from, p.pos)}
		}
		n, end = n+1, p.pos
	}
}

// label reads a quoted label; escapes and the like are refused.
func (p *parser) label() (string, bool) {
	p.pos++
	start := p.pos
	for p.quotedRun(); p.at(0) >= 0x80; p.quotedRun() {
		p.pos++
	}
	if p.at(0) != '"' {
		return "", false
	}
	p.pos++
	return p.literal(start, p.pos-1, quoted, 0, true)
}

// braced reads from behind the { up to the }: items on lines of their own, or
// one attribute on the same line.
func (p *parser) braced() bool {
	p.skip()
	if class[p.at(0)]&nameStart == 0 {
		return p.body(true)
	}
	start := p.pos
	name := p.name()
	p.skip()
	if name == "" || p.at(0) != '=' || !p.attr(start, name) {
		return false
	}
	p.skip()
	return p.at(0) == '}'
}

// close wraps up a block whose } has just been read.
func (p *parser) close(b *Block, attrs, blocks int) {
	b.Span = p.span(int(b.Header.Start), p.pos)
	b.Attrs = p.attrs.copy(p.openAttrs[attrs:])
	b.Blocks = p.blockLists.copy(p.openBlocks[blocks:])
	p.openAttrs = p.openAttrs[:attrs]
	p.openBlocks = append(p.openBlocks[:blocks], b)
}

// dropRepeats keeps the first of the attributes that share a name.
func (p *parser) dropRepeats(base int) {
	if !repeats(p.openAttrs[base:]) {
		return
	}
	p.damaged = true
	first := map[string]source.Span{}
	kept := p.openAttrs[:base]
	for _, a := range p.openAttrs[base:] {
		if at, ok := first[a.Name]; ok {
			f := finding(ruleRepeated, a.NameSpan(), messageRepeated)
			f.Related = []diag.Related{{Span: at, Message: "set here first"}}
			p.findings.Add(f)
			continue
		}
		first[a.Name] = a.NameSpan()
		kept = append(kept, a)
	}
	p.openAttrs = kept
}

// repeats reports whether a name stands twice.
func repeats(attrs []Attr) bool {
	if len(attrs) > 32 {
		seen := make(map[string]bool, len(attrs))
		for i := range attrs {
			if seen[attrs[i].Name] {
				return true
			}
			seen[attrs[i].Name] = true
		}
		return false
	}
	for i := range attrs {
		for j := range i {
			if attrs[i].Name == attrs[j].Name {
				return true
			}
		}
	}
	return false
}
