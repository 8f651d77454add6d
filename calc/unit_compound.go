package calc

import (
	"math/big"
	"strings"
	"unicode/utf8"
)

// power is one factor in a compound unit, such as the s⁻² of m/s².
type power struct {
	unit *Unit
	exp  int
}

// A compound of more terms or higher powers has no use in a workshop, and
// exponents of dimensions must stay within their int8.
const (
	maxTerms = 6
	maxPower = 9
	maxExp   = 24
)

// maxCached bounds what hostile input can leave behind.
const maxCached = 4096

// find gives the unit spelled so, or says why there is none.
func (t *table) find(s, gallon string) (*Unit, string) {
	if u := t.spelled[s]; u != nil {
		return u, ""
	}
	g := gallonIndex(gallon)
	if u, ok := t.compounds[g].Load(s); ok {
		return u.(*Unit), ""
	}
	u, why := t.read(tidy(s), g)
	if why == "" && u.shared && t.cached.Add(1) <= maxCached {
		t.compounds[g].Store(strings.Clone(s), u)
	}
	return u, why
}

func gallonIndex(gallon string) int {
	switch gallon {
	case "US":
		return 1
	case "UK":
		return 2
	}
	return 0
}

var tidier = strings.NewReplacer(
	"⋅", "·", "∙", "·", "•", "·", "*", "·", "×", "·", // every dot and cross that keyboards give
	"μ", "µ", "Ω", "Ω", // Greek mu, ohm sign
	" per ", "/", "∕", "/", "⁄", "/", "÷", "/",
	"\u00a0", " ", "\u2009", " ", "\u202f", " ",
)

// tidy brings look-alike characters to one form and takes the spaces around signs away.
func tidy(s string) string {
	s = strings.Join(strings.Fields(tidier.Replace(s)), " ")
	for _, sign := range []string{"·", "/"} {
		s = strings.ReplaceAll(s, " "+sign, sign)
		s = strings.ReplaceAll(s, sign+" ", sign)
	}
	return s
}

// atom finds one unit of the table.
func (t *table) atom(s string, gallon int) (*Unit, string) {
	if u := t.spelled[s]; u != nil {
		return u, ""
	}
	if u := t.volumes[s]; u != nil {
		switch gallon {
		case 1:
			return u, ""
		case 2:
			return u.twin, ""
		}
		return nil, whyGallon
	}
	if short, ok := strings.CutSuffix(s, "."); ok && t.spelled[short] != nil {
		return t.spelled[short], ""
	}
	return nil, whyUnknown
}

// Why a spelling gives no unit.
const (
	whyUnknown = "unknown"
	whyGallon  = "gallon"
	whyTwice   = "slash"
	whyTooMany = "large"
)

// read parses a tidy spelling: one unit, or a product with slashes. A product
// below a slash stands in brackets; without them it can be read in two ways.
func (t *table) read(s string, gallon int) (*Unit, string) {
	if u, why := t.atom(s, gallon); why != whyUnknown {
		return u, why
	}
	parts := splitOutside(s, '/')
	var terms []power
	for i, part := range parts {
		sign := 1
		if i > 0 {
			sign = -1
			if len(splitOutside(part, '·')) > 1 {
				return nil, whyTwice
			}
		}
		var why string
		if terms, why = t.product(terms, part, gallon, sign); why != "" {
			return nil, why
		}
	}
	u := t.compound(terms)
	switch {
	case u == nil:
		return nil, whyTooMany
	case u.point != nil && u.point.Offset != nil: // °C in brackets, and nothing else
		return u.point, ""
	}
	return u, ""
}

// splitOutside cuts s at every sep that stands outside brackets.
func splitOutside(s string, sep rune) []string {
	if !strings.ContainsRune(s, '(') {
		return strings.Split(s, string(sep))
	}
	var parts []string
	depth, start := 0, 0
	for i, r := range s {
		switch {
		case r == '(':
			depth++
		case r == ')':
			depth--
		case r == sep && depth == 0:
			parts = append(parts, s[start:i])
			start = i + utf8.RuneLen(r)
		}
	}
	return append(parts, s[start:])
}

// product adds the factors of s, each to the power sign, to terms.
func (t *table) product(terms []power, s string, gallon, sign int) ([]power, string) {
	if s == "1" && sign == 1 {
		return terms, ""
	}
	if u, why := t.atom(s, gallon); why == "" {
		return append(terms, power{u.Difference(), sign}), ""
	}
	for _, part := range splitOutside(s, '·') {
		u, why := t.atom(part, gallon)
		exp := 1
		if why == whyUnknown {
			name, e := part, 1
			if !strings.HasSuffix(part, ")") {
				if name, e = splitPower(part); e == 0 {
					return nil, why
				}
			}
			exp = e
			if inner, ok := strings.CutPrefix(name, "("); ok && strings.HasSuffix(inner, ")") {
				if exp *= sign; exp > maxPower || exp < -maxPower {
					return nil, whyTooMany
				}
				if terms, why = t.product(terms, strings.TrimSuffix(inner, ")"), gallon, exp); why != "" {
					return nil, why
				}
				continue
			}
			u, why = t.atom(name, gallon)
		}
		if why != "" {
			return nil, why
		}
		if len(terms) == maxTerms {
			return nil, whyTooMany
		}
		terms = append(terms, power{u.Difference(), sign * exp})
	}
	return terms, ""
}

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹"

// splitPower parts "s²", "s^2" and "s2" into name and power, 0 where there is none.
func splitPower(s string) (string, int) {
	r, size := utf8.DecodeLastRuneInString(s)
	if size == 0 {
		return s, 0
	}
	name, digit := s[:len(s)-size], -1
	if '1' <= r && r <= '9' {
		name, digit = strings.TrimSuffix(name, "^"), int(r-'0')
	} else if at := strings.IndexRune(superscripts, r); at >= 0 {
		digit = utf8.RuneCountInString(superscripts[:at])
	}
	if digit <= 0 {
		return s, 0
	}
	if short, ok := strings.CutSuffix(name, "⁻"); ok {
		return short, -digit
	}
	return name, digit
}

// compound is the unit of a product of powers, nil where that goes too far.
func (t *table) compound(terms []power) *Unit {
	terms = merge(terms)
	if len(terms) == 0 {
		return One
	}
	if len(terms) == 1 && terms[0].exp == 1 {
		return terms[0].unit
	}
	if !reasonable(terms) {
		return nil
	}
	u := &Unit{Factor: big.NewRat(1, 1), terms: terms, Source: "product of its units"}
	metric, isInch, counted := false, false, NoKind
	for _, f := range terms {
		for range max(f.exp, -f.exp) {
			if f.exp > 0 {
				u.Factor.Mul(u.Factor, f.unit.Factor)
				u.Dim = u.Dim.Mul(f.unit.Dim)
			} else {
				u.Factor.Quo(u.Factor, f.unit.Factor)
				u.Dim = u.Dim.Div(f.unit.Dim)
			}
		}
		if f.unit.Dim.exp[baseCount] != 0 {
			counted = max(counted, f.unit.Dim.Kind)
		}
		metric = metric || f.unit.System == Metric
		isInch = isInch || f.unit.System == Inch
	}
	if u.Dim.exp[baseCount] != 0 { // whatever the order of the factors
		u.Dim.Kind = counted
	}
	switch {
	case metric && !isInch:
		u.System = Metric
	case isInch && !metric:
		u.System = Inch
	}
	u.Name, u.UCUM = compoundName(terms), compoundUCUM(terms)
	if known := t.spelled[u.Name]; known != nil {
		same := known.Factor.Cmp(u.Factor) == 0
		switch {
		case same && known.Dim == u.Dim:
			return known
		case !same: // lb × in is not the torque that the trade calls lb·in
			first := terms[0].unit.Name
			u.Name = "(" + first + ")" + strings.TrimPrefix(u.Name, first)
		}
	}
	key := u.Name + " " + itoa(int(u.Dim.Kind))
	if known, ok := t.interned.Load(key); ok {
		return known.(*Unit)
	}
	if t.cached.Add(1) > maxCached {
		return u
	}
	u.shared = true
	known, _ := t.interned.LoadOrStore(key, u)
	return known.(*Unit)
}

// merge adds up the powers of each unit, in the order they first stand.
func merge(terms []power) []power {
	var merged []power
next:
	for _, f := range terms {
		for i := range merged {
			if merged[i].unit == f.unit {
				merged[i].exp += f.exp
				continue next
			}
		}
		merged = append(merged, f)
	}
	kept := merged[:0]
	for _, f := range merged {
		if f.exp != 0 {
			kept = append(kept, f)
		}
	}
	return kept
}

func reasonable(terms []power) bool {
	if len(terms) > maxTerms {
		return false
	}
	var exp [bases]int
	for _, f := range terms {
		if max(f.exp, -f.exp) > maxPower {
			return false
		}
		for i, e := range f.unit.Dim.exp {
			exp[i] += int(e) * f.exp
			if max(exp[i], -exp[i]) > maxExp {
				return false
			}
		}
	}
	return true
}

// powers is u as terms, so that products of compounds stay flat.
func (u *Unit) powers(sign int) []power {
	switch {
	case u == One:
		return nil
	case u.terms == nil:
		return []power{{u, sign}}
	}
	terms := make([]power, len(u.terms))
	for i, f := range u.terms {
		terms[i] = power{f.unit, sign * f.exp}
	}
	return terms
}
