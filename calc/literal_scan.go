package calc

import (
	"math/big"
	"strings"
	"unicode"
	"unicode/utf8"
)

// number is a number as written, sign included.
type number struct {
	num      *big.Rat
	decimals int
	at, end  int
}

// maxDigits is the most digits that a number may have.
const maxDigits = 40

func isDigit(c byte) bool  { return '0' <= c && c <= '9' }
func isLetter(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' || c >= utf8.RuneSelf }

// sound refuses what is too long, is not text, or hides something.
func (p *literalParser) sound() bool {
	if len(p.s) > maxLiteral {
		p.fail(problemTooLong(maxLiteral, len(p.s)))
		return false
	}
	ascii := true
	for i := 0; i < len(p.s); i++ {
		if c := p.s[i]; c >= utf8.RuneSelf || c < ' ' || c == 0x7f {
			ascii = false
		}
	}
	if ascii {
		return true
	}
	for i, r := range p.s {
		size := utf8.RuneLen(r)
		if r == utf8.RuneError {
			_, size = utf8.DecodeRuneInString(p.s[i:])
		}
		if r == utf8.RuneError || r != '\t' && unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp, unicode.Co) {
			p.fail(problemHidden(i, i+size, r))
			return false
		}
	}
	return true
}

// spaceAt is the width of the space at i, 0 for none. Spaces that do not break
// and thin ones count.
func (p *literalParser) spaceAt(i int) int {
	if i >= len(p.s) {
		return 0
	}
	switch c := p.s[i]; {
	case c == ' ' || c == '\t':
		return 1
	case c < utf8.RuneSelf:
		return 0
	}
	if r, size := utf8.DecodeRuneInString(p.s[i:]); unicode.Is(unicode.Zs, r) {
		return size
	}
	return 0
}

func (p *literalParser) spaces() {
	for {
		w := p.spaceAt(p.i)
		if w == 0 {
			return
		}
		p.i += w
	}
}

func (p *literalParser) peek(c byte) bool { return p.i < len(p.s) && p.s[p.i] == c }

func (p *literalParser) digit(ahead int) bool {
	return p.i+ahead < len(p.s) && isDigit(p.s[p.i+ahead])
}

// atMinus reports the typographic minus sign.
func (p *literalParser) atMinus() bool { return strings.HasPrefix(p.s[p.i:], "−") }

// accept goes past the first of the marks that stands here.
func (p *literalParser) accept(marks ...string) bool {
	for _, m := range marks {
		if strings.HasPrefix(p.s[p.i:], m) {
			p.i += len(m)
			return true
		}
	}
	return false
}

func (p *literalParser) plusMinus() bool {
	if p.i < len(p.s) && (p.s[p.i] == '+' || p.s[p.i] >= utf8.RuneSelf) && p.accept("±", "+/-", "+-", "+/−", "+−") {
		p.spaces()
		return true
	}
	return false
}

// rangeMark goes past "..", a dash or "to".
func (p *literalParser) rangeMark() bool {
	if strings.HasPrefix(p.s[p.i:], "...") && p.digit(3) {
		p.fail(problemThreeDots(p.i, p.i+3))
		return false
	}
	return p.accept("...", "..", "…", "–") || p.toAt(p.i) && p.accept("to")
}

// toAt reports the word "to" at i.
func (p *literalParser) toAt(i int) bool {
	if !strings.HasPrefix(p.s[i:], "to") {
		return false
	}
	return i+2 == len(p.s) || !isLetter(p.s[i+2]) || p.spaceAt(i+2) > 0
}

// side reads a number and the unit behind it, up to the next mark.
func (p *literalParser) side(difference bool) (side, bool) {
	n, ok := p.number(true)
	if !ok {
		if !p.lost {
			p.fail(p.problemNoNumber())
		}
		return side{}, false
	}
	a := side{number: n}
	ok = p.unitText(&a, difference)
	return a, ok
}

// unitText reads the unit behind a number, if there is one.
func (p *literalParser) unitText(a *side, difference bool) bool {
	p.spaces()
	start := p.i
	end := p.unitEnd()
	a.uAt, a.uEnd = start, end
	if start == end {
		return true
	}
	text := p.s[start:end]
	if text == "%" {
		a.percentage, a.unit = true, percent
		return true
	}
	if p.spaceAt(start+1) > 0 && text[0] == '%' { // ±10 % N·m
		a.percentage = true
		text = strings.TrimLeftFunc(text[1:], unicode.IsSpace)
		a.uAt = end - len(text)
	}
	u, why := theTable.find(text, p.ctx.Gallon)
	if why != "" && p.i == len(p.s) && strings.TrimSpace(p.s[:a.at]) == "" {
		if short, form := trailingBound(text); form != NoForm {
			a.bound, a.uEnd = form, a.uAt+len(short)
			p.report(p.problemTrailingBound(*a))
			if short == "" {
				return true
			}
			text = short
			u, why = theTable.find(text, p.ctx.Gallon)
		}
	}
	if why != "" {
		p.fail(p.problemUnit(a.uAt, a.uAt+len(text), text, why))
		return false
	}
	if difference {
		u = u.Difference()
	}
	a.unit = u
	return true
}

// trailingBound parts "mm max" into the unit and what it bounds.
func trailingBound(text string) (string, Form) {
	short := strings.TrimSuffix(text, ".")
	for _, b := range bounds {
		if rest, ok := strings.CutSuffix(short, b.text); ok && b.word && (rest == "" || rest[len(rest)-1] == ' ') {
			return strings.TrimRight(rest, " "), b.form
		}
	}
	return text, NoForm
}

// unitEnd goes past unit text and the spaces behind it, and says where the text ends.
func (p *literalParser) unitEnd() int {
	start, end := p.i, p.i
	if strings.HasPrefix(p.s[start:], "1/") && len(p.s) > start+2 && isLetter(p.s[start+2]) {
		p.i, end = start+2, start+2
	}
	for p.i < len(p.s) {
		if w := p.spaceAt(p.i); w > 0 {
			p.i += w
			continue
		}
		if p.unitStops(start, end) {
			break
		}
		p.i++
		end = p.i
	}
	return end
}

// unitStops reports that no unit goes on at p.i; end is where its text ends so far.
func (p *literalParser) unitStops(start, end int) bool {
	spaced := p.i > end || p.i == start
	switch c := p.s[p.i]; c {
	case '+', ',', ';', '<', '>', '=':
		return true
	case '.':
		return p.i+1 < len(p.s) && p.s[p.i+1] == '.'
	case '-':
		j := p.i + 1
		for w := p.spaceAt(j); w > 0; w = p.spaceAt(j) {
			j += w
		}
		return j < len(p.s) && (isDigit(p.s[j]) || p.s[j] == '.' || p.s[j] == '-')
	case 't':
		return spaced && p.toAt(p.i)
	case 0xc2: // ±
		return p.s[p.i+1] == 0xb1
	case 0xe2: // – — − … ≤ ≥
		switch r, _ := utf8.DecodeRuneInString(p.s[p.i:]); r {
		case '–', '—', '−', '…', '≤', '≥':
			return true
		}
		return false
	default:
		return isDigit(c) && spaced
	}
}

// hyphen goes past a hyphen, a minus or a long dash between two numbers, which
// is a range in the wrong dress. It fails where the second number might be negative.
func (p *literalParser) hyphen(a side) bool {
	at := p.i
	for at > 0 && at > a.end && p.spaceBefore(at) > 0 {
		at -= p.spaceBefore(at)
	}
	spaced := at < p.i
	if !p.accept("-", "−", "—") {
		return false
	}
	tight := p.i
	p.spaces()
	if !p.digit(0) && !p.peek('.') && !p.peek('-') && !p.atMinus() {
		p.i = at
		return false
	}
	sure := a.num.Sign() >= 0 && !(spaced && tight == p.i)
	p.report(p.problemHyphen(at, p.i, sure))
	if !sure {
		p.lost = true
	}
	return true
}

// spaceBefore is the width of the space that ends at i.
func (p *literalParser) spaceBefore(i int) int {
	r, size := utf8.DecodeLastRuneInString(p.s[:i])
	if r == '\t' || unicode.Is(unicode.Zs, r) {
		return size
	}
	return 0
}
