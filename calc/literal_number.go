package calc

import (
	"math/big"
	"strconv"
	"strings"
	"unicode/utf8"
)

// number reads a number: signed, decimal, a fraction, or whole and fraction.
// Where false is returned and nothing was reported, no number stands here.
func (p *literalParser) number(fractions bool) (number, bool) {
	n := number{at: p.i}
	minus := p.accept("-", "−")
	if !minus {
		p.accept("+")
	}
	p.spaces()
	start := p.i
	if num, size := vulgar(p.s[p.i:]); size > 0 && fractions {
		p.i += size
		n.num, n.decimals = num, Exact
		return n.signed(minus, p.i), true
	}
	if !p.digit(0) && !(p.peek('.') && p.digit(1)) {
		p.i = n.at
		return n, false
	}
	text, decimals, ok := p.decimal()
	if !ok {
		return n, false
	}
	if p.i-start > maxDigits && len(text) > maxDigits {
		p.fail(problemDigits(start, p.i, maxDigits))
		return n, false
	}
	if e := p.i; e < len(p.s) && p.s[e]|0x20 == 'e' && (p.digit(1) || e+1 < len(p.s) && (p.s[e+1] == '-' || p.s[e+1] == '+') && p.digit(2)) {
		p.fail(p.problemExponent(e))
		return n, false
	}
	n.num, n.decimals = ratOf(text, decimals), decimals
	if decimals == 0 && fractions {
		if !p.fraction(&n, start) {
			return n, false
		}
	}
	return n.signed(minus, p.i), true
}

func (n number) signed(minus bool, end int) number {
	if minus {
		n.num.Neg(n.num)
	}
	n.end = end
	return n
}

// ratOf is the digits as a number with that many decimals.
func ratOf(digits string, decimals int) *big.Rat {
	if len(digits) > 18 {
		n, _ := new(big.Int).SetString(digits, 10)
		return new(big.Rat).SetFrac(n, intPow10(decimals))
	}
	n, _ := strconv.ParseInt(digits, 10, 64)
	if decimals == 0 {
		return new(big.Rat).SetInt64(n)
	}
	return new(big.Rat).SetFrac(big.NewInt(n), intPow10(decimals))
}

// decimal reads digits with at most one point, gives them without the point, and
// says how many stood behind it.
func (p *literalParser) decimal() (text string, decimals int, ok bool) {
	start, point := p.i, -1
	for ; p.i < len(p.s); p.i++ {
		switch c := p.s[p.i]; {
		case isDigit(c):
			continue
		case c == ',' && p.digit(1), c == '.' && p.digit(1) && point >= 0:
			p.i = start
			return p.separated()
		case c == '.' && p.digit(1):
			point = p.i
			continue
		case c == '.' && !(p.i+1 < len(p.s) && p.s[p.i+1] == '.'):
			p.fail(problemLooseDot(p.i, p.i+1))
			return "", 0, false
		}
		break
	}
	if point < 0 {
		return p.s[start:p.i], 0, true
	}
	return p.s[start:point] + p.s[point+1:p.i], p.i - point - 1, true
}

// separated reads a number with commas or several points in it. It goes on with
// the number where only one reading is left.
func (p *literalParser) separated() (text string, decimals int, ok bool) {
	start := p.i
	for p.i < len(p.s) && (isDigit(p.s[p.i]) || (p.s[p.i] == ',' || p.s[p.i] == '.') && p.digit(1)) {
		p.i++
	}
	run := p.s[start:p.i]
	commas, points := strings.Count(run, ","), strings.Count(run, ".")
	last := strings.LastIndexAny(run, ",.")
	grouped := func(s, sep string) bool { // 1,234,567
		groups := strings.Split(s, sep)
		for _, g := range groups[1:] {
			if len(g) != 3 {
				return false
			}
		}
		return groups[0] != "" && len(groups[0]) <= 3 && groups[0][0] != '0'
	}
	mark := "," // of the decimals
	switch {
	case commas == 1 && points == 0 && !grouped(run, ","): // 1,02
	case commas == 1 && points == 0: // 1,000
		p.fail(problemComma(start, p.i, run))
		return "", 0, false
	case points == 0 && grouped(run, ","): // 1,000,000
		mark = "."
	case commas == 0 && grouped(run, "."): // 1.000.000
	case points == 1 && run[last] == '.' && grouped(run[:last], ","): // 1,000.5
		mark = "."
	case commas == 1 && run[last] == ',' && grouped(run[:last], "."): // 1.000,5
	default:
		p.fail(problemSeparators(start, p.i, run))
		return "", 0, false
	}
	whole, part, _ := strings.Cut(run, mark)
	whole = strings.Map(func(r rune) rune {
		if r == ',' || r == '.' {
			return -1
		}
		return r
	}, whole)
	clean := whole
	if part != "" {
		clean += "." + part
	}
	p.report(problemDecimalComma(start, p.i, run, clean))
	return whole + part, len(part), true
}

// fraction turns the whole number n, which begins at start, into n/8, n 1/8 or
// n½ where that is what stands here.
func (p *literalParser) fraction(n *number, start int) bool {
	if p.i == len(p.s) {
		return true
	}
	whole, back := n.num, p.i
	switch c := p.s[p.i]; {
	case c == '/' || c >= utf8.RuneSelf && p.atSlash():
		p.i = start
		whole = nil
	case c == '-':
		if n.num.Sign() == 0 {
			return true
		}
		p.i++
	default:
		p.spaces()
		if num, size := vulgar(p.s[p.i:]); size > 0 {
			p.i += size
			n.num, n.decimals = num.Add(num, whole), Exact
			return true
		}
	}
	at := p.i
	part, ok := p.ratio()
	if !ok || p.s[back] == '-' && part.Cmp(oneRat) >= 0 { // 1-3/2 is a range in the wrong dress
		p.i = back
		return !p.lost
	}
	if whole != nil {
		if part.Cmp(oneRat) >= 0 {
			p.fail(p.problemImproper(at, p.i))
			return false
		}
		part.Add(part, whole)
	}
	n.num, n.decimals = part, Exact
	if part.IsInt() {
		n.decimals = 0
	}
	return true
}

var oneRat = big.NewRat(1, 1)

func (p *literalParser) atSlash() bool { return strings.HasPrefix(p.s[p.i:], "⁄") }

// ratio reads digits, a slash and digits.
func (p *literalParser) ratio() (*big.Rat, bool) {
	start := p.i
	over := p.digits()
	if over == "" || !p.accept("/", "⁄") {
		return nil, false
	}
	below := p.i
	under := p.digits()
	switch {
	case under == "":
		return nil, false
	case strings.Trim(under, "0") == "":
		if !p.deviating { // +2/0 is two deviations
			p.fail(problemOverZero(below, p.i))
		}
		return nil, false
	case len(over)+len(under) > maxDigits:
		p.fail(problemDigits(start, p.i, maxDigits))
		return nil, false
	}
	r := ratOf(over, 0)
	return r.Quo(r, ratOf(under, 0)), true
}

func (p *literalParser) digits() string {
	start := p.i
	for p.digit(0) {
		p.i++
	}
	return p.s[start:p.i]
}

// vulgar reads a fraction that is one character.
func vulgar(s string) (*big.Rat, int) {
	if s == "" || s[0] < utf8.RuneSelf {
		return nil, 0
	}
	r, size := utf8.DecodeRuneInString(s)
	switch r {
	case '½':
		return big.NewRat(1, 2), size
	case '¼':
		return big.NewRat(1, 4), size
	case '¾':
		return big.NewRat(3, 4), size
	case '⅓':
		return big.NewRat(1, 3), size
	case '⅔':
		return big.NewRat(2, 3), size
	case '⅛':
		return big.NewRat(1, 8), size
	case '⅜':
		return big.NewRat(3, 8), size
	case '⅝':
		return big.NewRat(5, 8), size
	case '⅞':
		return big.NewRat(7, 8), size
	}
	return nil, 0
}

// deviationNumber reads "+2", "-0.1" or a bare zero.
func (p *literalParser) deviationNumber() (number, bool) {
	bare := p.digit(0) || p.peek('.')
	p.deviating = true
	n, ok := p.number(true)
	p.deviating = false
	return n, ok && !(bare && n.num.Sign() != 0)
}
