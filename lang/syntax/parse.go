package syntax

import (
	"strings"
	"unicode/utf8"

	"fettle/lang/source"
)

// maxFaults bounds the pieces of one file that are looked at once more after
// they were found wrong.
const maxFaults = 100

// maxUnbalanced bounds how often strict reading starts again behind a bracket
// without a partner, each time looking at all that follows.
const maxUnbalanced = 10

// Parse reads a file. It never fails: see Tree.
func Parse(f *source.File) *Tree {
	p := newParser(f)
	p.body(false)
	p.dropRepeats(0)
	if p.faults > 0 || p.swallowed {
		l := newParser(f)
		l.layoutBody(false)
		l.dropRepeats(0)
		if p.worseThan(l) {
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

// worseThan compares strict reading with reading by layout. One fault that is
// explained as several was misunderstood.
func (p *parser) worseThan(layout *parser) bool {
	less := len(layout.findings) - len(p.findings)
	return p.hopeless || less < 0 || less == 0 && (p.unbalanced > 0 || p.swallowed)
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
	if p.lost && nested {
		return false
	}
	s := surveyItem(p.src, start, p.end, false)
	if !s.balanced {
		// A bracket that closes more than the item may belong to the block
		// around it; one that closes the wrong thing, or nothing, is wrong there
		// too.
		p.lost = !s.overrun
		if nested {
			return false
		}
		p.lost = false
		if p.unbalanced++; p.unbalanced > maxUnbalanced {
			p.hopeless = true
			return true
		}
		s = surveyItem(p.src, start, p.nextHeader(start), true)
	}
	p.piece(start, s)
	p.pos = s.end
	if p.faults > maxFaults {
		p.hopeless = true
	}
	return true
}

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
