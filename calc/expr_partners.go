package calc

import "strconv"

// AppendPartners appends what readers of the other system use for each unit of
// the table, in the order of AppendUnits, which is called after it: null for
// none, else [[least, unit], …], of which the first counts whose least, "n/d" or
// null for any, the value reaches.
func (c *Encoder) AppendPartners(b []byte, gallon string) []byte {
	c.Unit(One)
	b = append(b, '[')
	for i := 0; i < len(c.units); i++ { // partners lengthen the table
		if i > 0 {
			b = append(b, ',')
		}
		b = c.appendPartners(b, c.units[i], gallon)
	}
	return append(b, ']')
}

func (c *Encoder) appendPartners(b []byte, u *Unit, gallon string) []byte {
	all := u.partners
	if u.terms != nil {
		all = nil
		if p := u.compoundPartner(gallon); p != nil {
			all = []partner{{unit: p}}
		}
	}
	if len(all) == 0 {
		return append(b, "null"...)
	}
	b = append(b, '[')
	for i, p := range all {
		if i > 0 {
			b = append(b, ',')
		}
		b = append(b, '[')
		if p.least == nil {
			b = append(b, "null"...)
		} else {
			b = appendRat(b, p.least)
		}
		unit := p.unit
		if gallon == "UK" && unit.twin != nil && unit.System == Inch {
			unit = unit.twin
		}
		b = append(b, ',')
		b = strconv.AppendInt(b, int64(c.Unit(unit)), 10)
		b = append(b, ']')
	}
	return append(b, ']')
}
