package syntax

import (
	"strings"
	"unicode/utf8"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// maxFaults bounds the pieces of one file that are looked at once more after
// they were found wrong.
const maxFaults = 100

// Parse reads a file. It never fails: see Tree.
func Parse(f *source.File) *Tree {
	p := newParser(f)
	p.body(false)
	p.dropRepeats(0)
	if p.unbalanced {
		l := newParser(f)
		l.layoutBody(false)
		l.dropRepeats(0)
		if p.hopeless || len(l.findings) <= len(p.findings) {
			p = l
		}
	}
	if p.faults > maxFaults {
		p.report(ruleMany, p.pos, p.pos, "More than 100 places in this file cannot be read.")
	}
	p.checkText()
	t := &Tree{File: f, Comments: p.comments, Findings: p.findings, Damaged: p.damaged}
	t.Attrs = p.attrs.copy(p.openAttrs)
	t.Blocks = p.blockLists.copy(p.openBlocks)
	t.Findings.Sort()
	return t
}

func newParser(f *source.File) *parser {
	p := &parser{pos: f.Body(), end: len(f.Text), lines: true}
	p.file, p.src = f, f.Text
	return p
}

// refused deals with the item at pos that the fast reading refused: hclsyntax
// reads it, if it can be told where it ends. False passes it on to the block
// around it.
func (p *parser) refused(nested bool) bool {
	start := p.pos
	s := surveyItem(p.src, start, p.end, false)
	if !s.balanced {
		if nested {
			return false
		}
		p.unbalanced = true
		if s.end = p.nextHeader(start); s.end-start > maxBlindPiece {
			p.hopeless = true
			return true
		}
		s = surveyItem(p.src, start, s.end, true)
	}
	p.piece(start, s)
	p.pos = s.end
	if p.faults > maxFaults {
		p.unbalanced, p.hopeless = true, true
	}
	return true
}

// maxBlindPiece bounds what hclsyntax gets when only a block header in column
// one says where to stop, in bytes.
const maxBlindPiece = 1 << 20

// nextHeader gives the next line that begins a block in column one.
func (p *parser) nextHeader(start int) int {
	for at := start + len(line(p.src[start:p.end])); at < p.end; {
		text := line(p.src[at:p.end])
		if class[text[0]]&nameStart != 0 && strings.Contains(text, "{") {
			return at
		}
		at += len(text)
	}
	return p.end
}

// piece reads src[start:s.end] by hclsyntax, unless it breaks a limit; then
// only an attribute's name is saved.
func (p *parser) piece(start int, s survey) {
	for _, c := range s.comments {
		p.keep(c[0], c[1])
	}
	if len(s.faults) == 0 {
		if !p.hclItems(start, s.end) {
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
	name := p.name()
	if p.skip(); name != "" && p.at(0) == '=' {
		p.openAttrs = append(p.openAttrs, Attr{name, p.bad(p.pos+1, s.end), p.span(start, s.end)})
	}
}

// checkText reports bytes that are not text, wherever they stand.
func (p *parser) checkText() {
	const most = 20
	text, told := p.src, 0
	for i := strings.IndexByte(text, 0); i >= 0 && told < most; told++ {
		p.report(ruleControl, i, i+1, "A NUL character stands here.")
		next := strings.IndexByte(text[i+1:], 0)
		if next < 0 {
			break
		}
		i += 1 + next
	}
	if utf8.ValidString(text) {
		return
	}
	p.damaged = true
	for i := 0; i < len(text) && told < most; {
		r, n := utf8.DecodeRuneInString(text[i:])
		if r == utf8.RuneError && n == 1 {
			p.report(ruleEncoding, i, i+1, messageEncoding)
			told++
		}
		i += n
	}
}

// checkHeredoc holds a heredoc to the dialect: written <<- and indented at
// least as far as the line that opens it.
func (b *builder) checkHeredoc(start int, flush bool, margin int) {
	at := strings.LastIndexByte(b.src[:start], '\n') + 1
	indent := len(b.src[at:start]) - len(strings.TrimLeft(b.src[at:start], " \t"))
	end := start + len(strings.TrimRight(line(b.src[start:]), "\r\n"))
	switch {
	case margin < indent:
		b.report(ruleFlush, start, end, "This text stands further out than the line that opens it.")
	case !flush:
		f := finding(rulePlainHeredoc, b.span(start, end), "The indentation of this text stays in the text.")
		f.Fixes = []diag.Fix{{Title: "Write <<-", Edits: []diag.Edit{{Span: b.span(start+2, start+2), New: "-"}}}}
		b.findings.Add(f)
	}
}
