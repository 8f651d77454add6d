package calc

import "strings"

// compoundName prints powers so that LookUpUnit reads them back: a unit whose own
// name is a product or a quotient stands in brackets where it could be taken apart.
func compoundName(terms []power) string {
	return joinTerms(terms, "·", func(f power, e int) string {
		name := f.unit.Name
		if f.exp > 0 && f.unit.Plural != "" {
			name = f.unit.Plural
		}
		if strings.Contains(name, "/") || strings.Contains(name, "·") && (f.exp != 1 || above(terms) > 1) {
			name = "(" + name + ")"
		}
		if e > 1 {
			name += string([]rune(superscripts)[e])
		}
		return name
	})
}

// above counts the units above the slash.
func above(terms []power) int {
	n := 0
	for _, f := range terms {
		if f.exp > 0 {
			n++
		}
	}
	return n
}

func compoundUCUM(terms []power) string {
	return joinTerms(terms, ".", func(f power, e int) string {
		code := f.unit.UCUM
		if strings.ContainsAny(code, "./") {
			code = "(" + code + ")"
		}
		switch {
		case e == 1:
			return code
		case strings.ContainsAny(code, "(0123456789'{"): // which UCUM gives no powers
			return strings.Repeat(code+".", e-1) + code
		}
		return code + itoa(e)
	})
}

// joinTerms writes powers above and below one slash; below it, several of them
// in brackets.
func joinTerms(terms []power, dot string, show func(f power, e int) string) string {
	var over, under []string
	for _, f := range terms {
		if f.exp > 0 {
			over = append(over, show(f, f.exp))
		} else {
			under = append(under, show(f, -f.exp))
		}
	}
	s := strings.Join(over, dot)
	if s == "" {
		s = "1"
	}
	switch len(under) {
	case 0:
		return s
	case 1:
		return s + "/" + under[0]
	}
	return s + "/(" + strings.Join(under, dot) + ")"
}

// compoundPartner swaps every unit of a compound for its largest partner.
func (u *Unit) compoundPartner(gallon string) *Unit {
	if u.System == Neither {
		return nil
	}
	terms := make([]power, len(u.terms))
	for i, f := range u.terms {
		if terms[i] = f; f.unit.System == Neither {
			continue
		}
		if len(f.unit.partners) == 0 {
			return nil
		}
		p := f.unit.partners[0].unit
		if gallon == "UK" && p.System == Inch && p.twin != nil {
			p = p.twin
		}
		terms[i].unit = p
	}
	return theTable.compound(terms)
}
