package syntax

// maxDepth bounds the nesting of brackets, blocks and interpolations: Go
// cannot catch a stack that overflows.
const maxDepth = 200

// A parser is the hand-written one. Its methods read from pos on; those that
// can refuse give nil or false, and pos means nothing then.
type parser struct {
	builder
	pos   int
	end   int  // nothing is read from here on
	lines bool // a newline ends the expression
	depth int
	chain int // operators and steps in the expression so far

	unbalanced int  // brackets without a partner, in strict reading
	lost       bool // the same, on the way out to the block that can tell
	hopeless   bool // strict reading gave up
	damaged    bool
	faults     int // pieces that could not be read well

	// What is read and not yet wrapped up, innermost last.
	openAttrs  []Attr
	openBlocks []*Block
	openExprs  []Expr
	openPairs  []Pair
	openSteps  []Step
	openParts  []Part
	buf        []byte
}

// A mark is a state to come back to when an item is refused.
type mark struct {
	pos, end, depth                           int
	lines                                     bool
	findings, comments, faults                int
	attrs, blocks, exprs, pairs, steps, parts int
}

func (p *parser) mark() mark {
	return mark{
		p.pos, p.end, p.depth, p.lines, len(p.findings), len(p.comments), p.faults,
		len(p.openAttrs), len(p.openBlocks), len(p.openExprs), len(p.openPairs), len(p.openSteps), len(p.openParts),
	}
}

func (p *parser) reset(m mark) {
	p.pos, p.end, p.depth, p.lines = m.pos, m.end, m.depth, m.lines
	p.findings, p.comments = p.findings[:m.findings], p.comments[:m.comments]
	p.faults = m.faults
	p.openAttrs, p.openBlocks = p.openAttrs[:m.attrs], p.openBlocks[:m.blocks]
	p.openExprs, p.openPairs = p.openExprs[:m.exprs], p.openPairs[:m.pairs]
	p.openSteps, p.openParts = p.openSteps[:m.steps], p.openParts[:m.parts]
}

// at gives the byte i places on, or 0 past the end.
func (p *parser) at(i int) byte {
	if p.pos+i < p.end {
		return p.src[p.pos+i]
	}
	return 0
}

// skip passes blanks and comments, and newlines where they end nothing.
func (p *parser) skip() {
	for p.pos < p.end {
		switch p.src[p.pos] {
		case ' ', '\t':
			p.pos++
		case '\n':
			if p.lines {
				return
			}
			p.pos++
		case '\r':
			if p.lines || p.at(1) != '\n' {
				return
			}
			p.pos += 2
		case '#', '/':
			if lineComment(p.src[p.pos:p.end]) && p.lines || !p.comment() {
				return
			}
		default:
			return
		}
	}
}

// newline passes blanks and the end of the line, or stands at the end of what
// is read.
func (p *parser) newline() bool {
	p.skip()
	switch {
	case p.pos >= p.end:
		return true
	case p.src[p.pos] == '\n':
		p.pos++
		return true
	case p.src[p.pos] == '\r' && p.at(1) == '\n':
		p.pos += 2
		return true
	}
	return lineComment(p.src[p.pos:p.end]) && p.comment() && (p.pos >= p.end || p.newline())
}

// comment passes and keeps the comment at pos, a line comment without its line
// end; false if there is none.
func (p *parser) comment() bool {
	n := commentLen(p.src[p.pos:p.end])
	if n == 0 {
		return false
	}
	p.keep(p.pos, p.pos+n)
	p.pos += n
	return true
}

func (b *builder) keep(start, end int) {
	line := start
	for line > 0 && (b.src[line-1] == ' ' || b.src[line-1] == '\t') {
		line--
	}
	b.comments = append(b.comments, Comment{
		Text: b.src[start:end], Span: b.span(start, end),
		OwnLine: line == b.file.Body() || b.src[line-1] == '\n',
	})
}

func lineComment(src string) bool {
	return src[0] == '#' || len(src) > 1 && src[0] == '/' && src[1] == '/'
}

// name reads an identifier of ASCII letters, digits, _ and -; empty for
// anything else.
func (p *parser) name() string {
	start := p.pos
	if start >= p.end || class[p.src[start]]&nameStart == 0 {
		return ""
	}
	i := start + 1
	for i < p.end && class[p.src[i]]&namePart != 0 {
		i++
	}
	if i < p.end && p.src[i] >= 0x80 {
		return ""
	}
	p.pos = i
	return p.src[start:i]
}

const (
	nameStart = 1 << iota
	namePart
	digit
	special // ends a run of plain text in a quoted string
)

var class = func() (t [256]uint8) {
	for c := range t {
		switch {
		case 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || c == '_':
			t[c] = nameStart | namePart
		case '0' <= c && c <= '9':
			t[c] = namePart | digit
		case c == '-':
			t[c] = namePart
		case c < 0x20 && c != '\t' || c == '"' || c == '\\' || c == '$' || c == '%' || c >= 0x80:
			t[c] = special
		}
	}
	return t
}()
