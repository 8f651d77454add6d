package syntax

import "strings"

// When a bracket has no partner, strict reading cannot tell where anything
// ends. Then the layout decides, as it does for a human reader: an item ends
// before the next line that stands no further in than its own first line, but
// a closing bracket right under that first line still belongs to it.

// extent gives the end of the item that starts at start.
func (p *parser) extent(start int) int {
	column, ok := p.column(start)
	if !ok {
		return start + len(line(p.src[start:p.end]))
	}
	at := start
	text := line(p.src[start:p.end])
	for {
		at += len(text)
		if marker, ok := opensPlainHeredoc(text); ok {
			at = p.heredocEnd(at, marker)
		}
		if at >= p.end {
			return p.end
		}
		text = line(p.src[at:p.end])
		words := strings.TrimLeft(text, " \t")
		indent := len(text) - len(words)
		switch {
		case strings.TrimSpace(words) == "" || lineComment(words) || indent > column:
		case indent == column && strings.IndexByte("}])", words[0]) >= 0:
			return at + len(text)
		case indent == column && strings.TrimSpace(words) == "{":
		case closesHeredoc(p.src[start:at], strings.TrimSpace(words)):
		default:
			return at
		}
	}
}

// column gives the indentation of what stands first on its line.
func (p *parser) column(start int) (int, bool) {
	at := start
	for at > p.file.Body() && (p.src[at-1] == ' ' || p.src[at-1] == '\t') {
		at--
	}
	return start - at, at == p.file.Body() || p.src[at-1] == '\n'
}

// opensPlainHeredoc finds a heredoc without -, whose lines may stand anywhere.
func opensPlainHeredoc(text string) (marker string, ok bool) {
	if i := strings.LastIndex(text, "<<"); i >= 0 {
		marker, flush, n := heredocOpen(text[i:])
		return marker, n > 0 && !flush
	}
	return "", false
}

// heredocEnd gives the place after the line that holds the marker, or at if
// there is none.
func (p *parser) heredocEnd(at int, marker string) int {
	for end := at; end < p.end; {
		text := line(p.src[end:p.end])
		end += len(text)
		if strings.TrimSpace(text) == marker {
			return end
		}
	}
	return at
}

// closesHeredoc reports whether word closes a heredoc that the item opened.
func closesHeredoc(item, word string) bool {
	i := strings.LastIndex(item, "<<-")
	if i < 0 {
		return false
	}
	marker, _, n := heredocOpen(item[i:])
	return n > 0 && marker == word
}

// layoutBody reads items up to the end of what belongs to the block, and tells
// whether it met the } that closes it, which it leaves.
func (p *parser) layoutBody(nested bool) (closed bool) {
	for {
		p.blankLines()
		switch {
		case p.pos >= p.end || p.faults > maxFaults:
			return false
		case p.src[p.pos] == '}' && nested && p.lastIn():
			return true
		case strings.IndexByte("}])", p.src[p.pos]) >= 0:
			p.wrong(ruleStray, p.pos, p.pos+1, messageStray)
			p.pos++
		default:
			p.layoutItem()
		}
	}
}

// lastIn reports whether nothing but blanks and comments follows the byte at
// pos.
func (p *parser) lastIn() bool {
	m := p.mark()
	p.pos++
	p.blankLines()
	last := p.pos >= p.end
	p.reset(m)
	return last
}

// layoutItem reads one item as far as the layout goes.
func (p *parser) layoutItem() {
	start, outer := p.pos, p.end
	p.end = p.extent(start)
	m := p.mark()
	if p.item() && !p.swallowed && len(p.findings) == m.findings {
		if p.blankLines(); p.pos >= p.end {
			p.end = outer
			return
		}
	}
	p.reset(m)
	p.swallowed = false
	if !p.layoutBlock(start) {
		p.reset(m)
		p.piece(start, surveyItem(p.src, start, p.end, true))
	}
	p.pos, p.end = p.end, outer
	p.depth = m.depth
}

// layoutBlock reads a block whose header is sound.
func (p *parser) layoutBlock(start int) bool {
	typ := p.name()
	if typ == "" {
		return false
	}
	b, ok := p.header(start, typ)
	if !ok || p.depth >= maxDepth || !p.newline() {
		return false
	}
	p.depth++
	attrs, blocks := len(p.openAttrs), len(p.openBlocks)
	if p.layoutBody(true) {
		p.pos++
	} else {
		if p.faults <= maxFaults {
			p.wrong(ruleUnclosed, int(b.Header.Start), int(b.Header.End), messageUnclosed)
		}
		p.pos = p.end
	}
	p.dropRepeats(attrs)
	p.close(b, attrs, blocks)
	return true
}

// wrong reports a place that leaves the tree incomplete.
func (p *parser) wrong(rule string, start, end int, message string) {
	p.damaged = true
	p.faults++
	p.report(rule, start, end, message)
}
