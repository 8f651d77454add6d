package syntax

import (
	"strings"

	"fettle/lang/diag"
)

// maxPiece bounds what hclsyntax is asked to read, in bytes: it takes many
// times more memory and time than the rest of the program.
const maxPiece = 1 << 20

// piece reads src[start:s.end], as surveyed: a block whose first line is wrong
// by salvage, anything else by hclsyntax, unless it breaks a limit; then only
// an attribute's name is saved.
func (p *parser) piece(start int, s survey) {
	if p.salvage(start, s) {
		return
	}
	for _, c := range s.comments {
		p.keep(c[0], c[1])
	}
	if s.end-start > maxPiece && len(s.faults) == 0 {
		first := strings.TrimRight(line(p.src[start:s.end]), "\r\n")
		s.faults = []fault{{ruleSyntax, start, start + len(first), "What begins here cannot be read, and is too long to tell why."}}
	}
	if len(s.faults) == 0 {
		if !p.hclItems(start, s) {
			p.damaged = true
			p.faults++
		}
		return
	}
	p.damaged = true
	p.faults++
	for _, f := range s.faults {
		p.report(f.rule, f.start, f.end, f.message)
	}
	p.saveName(start, s.end)
}

// saveName opens the attribute at src[start:end], if it is one, without its
// value.
func (p *parser) saveName(start, end int) {
	p.pos = start
	name := p.name()
	if p.skip(); name != "" && p.at(0) == '=' {
		p.openAttrs = append(p.openAttrs, Attr{name, p.bad(p.pos+1, end), p.span(start, end)})
	}
}

// salvage reads a block of several lines whose first is wrong: hclsyntax tells
// what is wrong with that line, and the layout where the block's own lines are.
func (p *parser) salvage(start int, s survey) bool {
	first := start + len(line(p.src[start:s.end]))
	if first >= s.end || p.depth >= maxDepth {
		return false
	}
	m := p.mark()
	if !p.broken(start, first) {
		p.reset(m)
		return false
	}
	p.reset(m)
	blocks := len(p.openBlocks)
	header := surveyItem(p.src, start, first, true)
	if header.torn != nil && header.torn.rule == ruleBracket {
		header.torn = nil // its own {
	}
	p.hclItems(start, header)
	if len(p.openBlocks) != blocks+1 || len(p.openAttrs) != m.attrs || len(p.findings) == m.findings ||
		p.findings[m.findings].Rule == ruleUnclosed {
		p.reset(m)
		return false
	}
	p.findings = p.findings[:m.findings+1] // the rest follows from the first
	b := p.openBlocks[blocks]
	p.openBlocks = p.openBlocks[:blocks]
	attrs := len(p.openAttrs)
	p.openAttrs = append(p.openAttrs, b.Attrs...)
	p.pos, p.end = first, s.end
	p.depth++
	if p.blankLines(); p.at(0) == '{' {
		p.pos++
	}
	if p.layoutBody(true) {
		p.pos++
	}
	p.damaged = true
	p.faults++
	p.dropRepeats(attrs)
	p.close(b, attrs, blocks)
	p.end, p.depth = m.end, m.depth
	return true
}

// broken reports whether a block begins on the line src[start:end] and that
// line is not one that ends behind a sound header.
func (p *parser) broken(start, end int) bool {
	p.pos, p.end, p.lines = start, end, true
	name := p.name()
	if p.skip(); name == "" || p.at(0) == '=' || p.at(0) == 0 {
		return false
	}
	_, ok := p.header(start, name)
	return !ok || !p.newline()
}

// checkHeredoc holds the heredoc at src[start:end] to the dialect: written <<-
// and indented at least as far as the line that opens it. One that a block ends
// in has lost its closing mark and found another's.
func (b *builder) checkHeredoc(start, end int, flush bool, margin int) {
	at := strings.LastIndexByte(b.src[:start], '\n') + 1
	indent := len(b.src[at:start]) - len(strings.TrimLeft(b.src[at:start], " \t"))
	first := start + len(strings.TrimRight(line(b.src[start:]), "\r\n"))
	switch {
	case margin < indent && swallows(b.src[first:end], indent):
		b.swallowed = true
		b.report(ruleString, start, first, "The closing mark of this text is missing; a block ends inside it.")
	case margin < indent:
		b.report(ruleFlush, start, first, "This text stands further out than the line that opens it.")
	case !flush:
		f := finding(rulePlainHeredoc, b.span(start, first), "The indentation of this text stays in the text.")
		f.Fixes = []diag.Fix{{Title: "Write <<-", Edits: []diag.Edit{{Span: b.span(start+2, start+2), New: "-"}}}}
		b.findings.Add(f)
	}
}

// swallows reports whether a line further out than indent ends a block or
// begins one.
func swallows(text string, indent int) bool {
	for l := range strings.Lines(text) {
		words := strings.TrimLeft(l, " \t")
		if len(l)-len(words) >= indent {
			continue
		}
		words = strings.TrimSpace(words)
		if words == "}" || strings.HasSuffix(words, "{") {
			return true
		}
	}
	return false
}
