package syntax

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// quotedRun reads text that needs no decoding.
func (p *parser) quotedRun() string {
	start := p.pos
	for p.pos < p.end && class[p.src[p.pos]]&special == 0 {
		p.pos++
	}
	return p.src[start:p.pos]
}

// quotedString reads "text ${x}". It refuses directives, doubled $ and %, and
// trimming ~, which are rare and hard.
func (p *parser) quotedString() Expr {
	start, base := p.pos, len(p.openParts)
	p.pos++
	from := p.pos
	raw := true // the text is its own source
	for {
		p.quotedRun()
		at := p.pos
		switch c := p.at(0); {
		case c == '"':
			text, ok := p.literal(from, at, quoted, 0, raw)
			if !ok {
				return nil
			}
			p.pos++
			if len(p.openParts) == base {
				return p.text(quoted, start, p.pos, 0, text)
			}
			p.openParts = append(p.openParts, Part{Text: text, Span: p.span(from, at)})
			return p.wrap(quoted, start, 0, base)
		case c == '\\':
			n, _ := escape(p.src[at:p.end], quoted)
			if n < 2 {
				return nil
			}
			p.pos += n
			raw = false
		case c == '$' && p.at(1) == '{':
			text, ok := p.literal(from, at, quoted, 0, raw)
			if !ok || !p.interpolation(text, from) {
				return nil
			}
			from, raw = p.pos, true
		case (c == '$' || c == '%') && p.at(1) != '{' && p.at(1) != c:
			p.pos++
		case c >= 0x80:
			p.pos++
		default:
			return nil
		}
	}
}

// interpolation reads ${x} and keeps it with the literal before it, which
// starts at from.
func (p *parser) interpolation(text string, from int) bool {
	start, lines, chain := p.pos, p.lines, p.chain
	p.pos += len("${")
	p.lines, p.chain = false, 0
	x := p.expr()
	if x == nil || p.at(0) != '}' {
		return false
	}
	p.pos++
	p.lines, p.chain = lines, chain
	p.openParts = append(p.openParts,
		Part{Text: text, Span: p.span(from, start)},
		Part{X: x, Span: p.span(start, p.pos)})
	return true
}

// wrap makes a string of the open parts from base on.
func (p *parser) wrap(form form, start, indent, base int) Expr {
	s := p.template(form, start, p.pos, indent, p.openParts[base:])
	p.openParts = p.openParts[:base]
	return s
}

// literal gives the text that src[start:end] stands for; false if it is not
// UTF-8. Raw says that it needs no decoding.
func (p *parser) literal(start, end int, form form, indent int, raw bool) (string, bool) {
	text := p.src[start:end]
	ascii := isASCII(text)
	if !ascii && !utf8.ValidString(text) {
		return "", false
	}
	if !raw {
		bol := form == heredoc && p.src[start-1] == '\n'
		p.buf = decode(p.buf[:0], text, form, indent, bol)
		text = string(p.buf)
	}
	if !ascii || form == quoted && !raw {
		text = normal(text)
	}
	return text, true
}

func isASCII(s string) bool {
	for i := range len(s) {
		if s[i] >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

// maxHeredoc bounds the lines of a heredoc: hclsyntax takes time that grows
// with their square, and no step needs so many.
const maxHeredoc = 500

// heredocString reads <<-MARKER. It refuses what quotedString refuses.
func (p *parser) heredocString() Expr {
	start, base := p.pos, len(p.openParts)
	marker, flush, n := heredocOpen(p.src[p.pos:p.end])
	if n == 0 || !isASCII(marker) {
		return nil
	}
	p.pos += n
	body := p.pos
	from, margin, bol, lines := p.pos, noMargin, true, 0
	for {
		text := line(p.src[p.pos:p.end])
		if text == "" || text[len(text)-1] != '\n' {
			return nil
		}
		if bol {
			if strings.TrimSpace(text) == marker {
				break
			}
			blanks, ok := indentation(text)
			if lines++; !ok || lines > maxHeredoc {
				return nil
			}
			margin = min(margin, blanks)
		}
		at := strings.IndexByte(text, '$')
		if percent := strings.IndexByte(text, '%'); percent >= 0 && (at < 0 || percent < at) {
			at = percent
		}
		if at < 0 {
			p.pos += len(text)
			bol = true
			continue
		}
		bol = false
		p.pos += at
		switch c, next := text[at], text[at+1]; {
		case c == '$' && next == '{':
			// The text is decoded when the margin is known.
			if !p.interpolation("", from) {
				return nil
			}
			from = p.pos
		case next == '{' || next == c:
			return nil
		default:
			p.pos++
		}
	}
	end := p.pos
	if strings.Count(p.src[body:end], "\r") != strings.Count(p.src[body:end], "\r\n") {
		return nil
	}
	p.pos += len(strings.TrimRight(line(p.src[p.pos:p.end]), "\r\n"))
	p.checkHeredoc(start, p.pos, flush, margin)

	p.openParts = append(p.openParts, Part{Span: p.span(from, end)})
	indent := 0
	if flush && margin != noMargin {
		indent = margin
	}
	for i := base; i < len(p.openParts); i++ {
		part := &p.openParts[i]
		if part.X != nil {
			continue
		}
		var ok bool
		part.Text, ok = p.literal(int(part.Span.Start), int(part.Span.End), heredoc, indent, false)
		if !ok {
			return nil
		}
	}
	if len(p.openParts) == base+1 {
		text := p.openParts[base].Text
		p.openParts = p.openParts[:base]
		return p.text(heredoc, start, p.pos, indent, text)
	}
	return p.wrap(heredoc, start, indent, base)
}

// noMargin is the margin of a heredoc without a line that counts.
const noMargin = 1 << 30

// indentation gives the blanks that a heredoc line begins with, noMargin if it
// has nothing else. It refuses blanks other than space and tab.
func indentation(line string) (n int, ok bool) {
	for n < len(line) && (line[n] == ' ' || line[n] == '\t') {
		n++
	}
	switch rest := line[n:]; {
	case rest == "\n" || rest == "\r\n":
		return noMargin, true
	case rest[0] < 0x20:
		return 0, false
	case rest[0] >= 0x80:
		r, _ := utf8.DecodeRuneInString(rest)
		return n, !unicode.IsSpace(r)
	}
	return n, true
}
