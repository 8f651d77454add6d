package calc

import (
	"math/big"
	"strings"
	"sync"
	"sync/atomic"
)

// System says which readers a unit is at home with.
type System uint8

// Systems of units. A unit of neither system (degrees, minutes) is never converted for display.
const (
	Neither System = iota
	Metric
	Inch
)

// Unit is one unit of measurement. Value in base units (m, kg, s, A, K, degree,
// piece) = value × Factor + Offset; Offset is nil but for temperatures. Units of
// the table are shared: two quantities are in one unit when the pointers are
// equal. Nothing changes a unit once it is made.
type Unit struct {
	Name      string   // as printed: "N·m", "in"
	Plural    string   // printed after 2, "" where it is Name
	UCUM      string   // code of the Unified Code for Units of Measure
	Dim       Dim      //
	Factor    *big.Rat // exact
	Offset    *big.Rat // exact, nil for none
	System    System   //
	Spellings []string // what is read for it, Name first; empty for a compound
	Source    string   // where Factor is defined

	partners []partner // what the other system shows instead, largest first
	twin     *Unit     // the UK measure of a US one and the other way round
	point    *Unit     // the temperature that goes with a difference
	diff     *Unit     // the difference that goes with a temperature
	terms    []power   // of a compound, nil for a unit of the table
	shared   bool      // one pointer for the whole program
}

// One is the unit of plain numbers.
var One = &Unit{UCUM: "1", Factor: big.NewRat(1, 1), Source: "definition", shared: true}

// partner is a unit to show from a given size upwards.
type partner struct {
	unit  *Unit
	least *big.Rat // of the authored unit, nil for any
}

// Difference is the unit for the difference of two values in u: for a
// temperature its difference, and u itself for everything else.
func (u *Unit) Difference() *Unit {
	if u.diff != nil {
		return u.diff
	}
	return u
}

// Label is the name to print after the value r.
func (u *Unit) Label(r *big.Rat) string {
	if u.Plural == "" || r.Sign() > 0 && r.Num().Cmp(r.Denom()) <= 0 {
		return u.Name
	}
	return u.Plural
}

// PartnerOf is the unit that readers of the other system use for q, nil where
// there is none. Gallon ("US" or "UK") says whose measures of volume they use.
func PartnerOf(q Quantity, gallon string) *Unit {
	u := q.Unit
	if u.terms != nil {
		return u.compoundPartner(gallon)
	}
	for _, p := range u.partners {
		if p.least == nil || new(big.Rat).Abs(q.num).Cmp(p.least) >= 0 {
			if gallon == "UK" && p.unit.twin != nil && p.unit.System == Inch {
				return p.unit.twin
			}
			return p.unit
		}
	}
	return nil
}

// Units lists the table in its own order.
func Units() []*Unit { return theTable.units }

// MustUnit is the unit of the table with that printed name. It panics on any
// other name, and is for names that stand in source code.
func MustUnit(name string) *Unit {
	if u := theTable.spelled[name]; u != nil {
		return u
	}
	panic("calc: no unit is called " + name)
}

// LookUpUnit finds the unit that an author spells so, compounds such as L/min
// included. Gallon is "US", "UK" or "" where nobody has said. ok is false for
// an unknown unit and for a measure whose gallon nobody has said.
func LookUpUnit(spelling, gallon string) (u *Unit, ok bool) {
	u, err := theTable.find(spelling, gallon)
	return u, err == ""
}

// table is the units by spelling. It is built once, before main.
type table struct {
	units     []*Unit
	spelled   map[string]*Unit
	volumes   map[string]*Unit // spellings that mean two measures: the US one
	compounds [3]sync.Map      // spelling -> *Unit, by gallon
	interned  sync.Map         // name -> *Unit
	cached    atomic.Int32     // entries of the maps above
}

var theTable = buildTable()

func buildTable() *table {
	t := &table{spelled: map[string]*Unit{}, volumes: map[string]*Unit{}}
	for _, r := range rows {
		u := &Unit{
			Name: r.name, UCUM: r.ucum, Dim: r.dim, Factor: product(r.factor),
			System: r.system, Source: r.source, shared: true,
		}
		if r.offset != "" {
			u.Offset = product(r.offset)
		}
		u.Name, u.Plural, _ = strings.Cut(r.name, "|")
		u.Spellings = spellings(r)
		for _, s := range u.Spellings {
			if t.spelled[s] != nil {
				panic("calc: two units are spelled " + s)
			}
			t.spelled[s] = u
		}
		t.units = append(t.units, u)
	}
	t.linkTemperatures()
	t.linkVolumes()
	t.linkPartners()
	return t
}

// linkTemperatures ties each temperature to its difference.
func (t *table) linkTemperatures() {
	for _, name := range []string{"°C", "°F"} {
		p, d := t.spelled[name], t.spelled["Δ"+name]
		p.diff, d.point = d, p
		d.Name = name // the place where it stands says that it is a difference
	}
	k := t.spelled["K"]
	k.point = &Unit{Name: "K", UCUM: "K", Dim: Temperature, Factor: k.Factor, System: Metric,
		Spellings: k.Spellings, Source: k.Source, diff: k, shared: true}
}

// linkVolumes makes "gal" mean the US or the UK one once somebody has said which.
func (t *table) linkVolumes() {
	for _, u := range t.units {
		bare, ok := strings.CutPrefix(u.Name, "US ")
		if !ok {
			continue
		}
		u.twin = t.spelled["UK "+bare]
		u.twin.twin = u
		for _, s := range u.Spellings {
			if s, ok := strings.CutPrefix(s, "US "); ok {
				t.volumes[s] = u
			}
		}
	}
}

func (t *table) linkPartners() {
	for i, r := range rows {
		u := t.units[i]
		for entry := range strings.SplitSeq(r.partners, "|") {
			name, least, limited := strings.Cut(entry, ">")
			p := partner{unit: t.spelled[strings.TrimSpace(name)]}
			if entry == "" {
				continue
			}
			if limited {
				p.least = product(strings.TrimSpace(least))
				p.least.Mul(p.least, p.unit.Factor).Quo(p.least, u.Factor)
			}
			u.partners = append(u.partners, p)
		}
	}
	k := t.spelled["K"]
	k.point.partners = []partner{{unit: t.spelled["°F"]}}
}

// product reads a factor of the table, numbers joined by * and /.
func product(s string) *big.Rat {
	p := big.NewRat(1, 1)
	for factor := range strings.SplitSeq(s, "*") {
		for i, part := range strings.Split(factor, "/") {
			r, ok := new(big.Rat).SetString(strings.TrimSpace(part))
			if !ok {
				panic("calc: factor " + s)
			}
			if i > 0 {
				r.Inv(r)
			}
			p.Mul(p, r)
		}
	}
	return p
}

// spellings lists what is read for a row. A pattern "N Nw~m" stands for every
// way to write the product of a word of the left side and one of the right.
func spellings(r row) []string {
	name, plural, _ := strings.Cut(r.name, "|")
	list := []string{name}
	if plural != "" {
		list = append(list, plural)
	}
	for s := range strings.SplitSeq(r.spellings, "|") {
		force, arm, isProduct := strings.Cut(s, "~")
		if !isProduct {
			list = append(list, s)
			continue
		}
		for _, f := range strings.Fields(force) {
			for _, a := range strings.Fields(arm) {
				for _, sep := range []string{"·", ".", "", " ", "-"} {
					list = append(list, f+sep+a)
					if r.system == Inch {
						list = append(list, a+sep+f)
					}
				}
			}
		}
	}
	return unique(list)
}

func unique(list []string) []string {
	seen := map[string]bool{"": true}
	kept := list[:0]
	for _, s := range list {
		if !seen[s] {
			seen[s] = true
			kept = append(kept, s)
		}
	}
	return kept
}
