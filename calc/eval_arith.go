package calc

import (
	"math/big"
	"strings"
	"sync"
)

// multiply is x * y or x / y, a quantity of dimension d. The divisor is not zero.
func multiply(x, y Quantity, op Op, d Dim) Quantity {
	apply := (*big.Rat).Mul
	if op == Div {
		apply = (*big.Rat).Quo
	}
	plainX, plainY := x.Dim() == Plain, y.Dim() == Plain
	switch {
	case plainY && !plainX:
		num := apply(new(big.Rat), x.num, y.Base())
		return NewQuantity(num, x.Unit, decimalsTimes(num, x, y))
	case plainX && !plainY && op == Mul:
		num := apply(new(big.Rat), x.Base(), y.num)
		return NewQuantity(num, y.Unit, decimalsTimes(num, y, x))
	}
	system := x.Unit.System
	if system == Neither {
		system = y.Unit.System
	}
	unit := productUnit(d, apply(new(big.Rat), x.Unit.Factor, y.Unit.Factor), system)
	num := apply(new(big.Rat), x.Base(), y.Base())
	num.Quo(num, unit.Factor)
	return NewQuantity(num, unit, decimalsFor(num, leastDigits(x, y)))
}

// decimalsTimes is the decimals of num, which is x times or over the plain
// number k: those of x, and enough for two digits where x shrinks tenfold, so
// that 0.0035 × 82 mm shows 0.29 mm.
func decimalsTimes(num *big.Rat, x, k Quantity) int {
	if x.Decimals == Exact {
		return decimalsFor(num, digits(k))
	}
	if ten := new(big.Rat).Mul(num, pow10(1)); num.Sign() != 0 && ten.Abs(ten).Cmp(new(big.Rat).Abs(x.num)) < 0 {
		return max(x.Decimals, decimalsFor(num, 2))
	}
	return x.Decimals
}

// leastDigits is the significant digits of the less precise of the two, or
// Exact. Three are always shown: a thread of "10 mm" is no rough guess.
func leastDigits(x, y Quantity) int {
	a, b := digits(x), digits(y)
	switch {
	case a == Exact && b == Exact:
		return Exact
	case a == Exact:
		a = b
	case b == Exact:
		b = a
	}
	return max(min(a, b), 3)
}

// digits is the significant digits that q was written with, at least one, or Exact.
func digits(q Quantity) int {
	if q.Decimals == Exact {
		return Exact
	}
	return max(1, magnitude(q.num)+1+q.Decimals)
}

// decimalsFor is the decimals that show r with the given significant digits.
func decimalsFor(r *big.Rat, digits int) int {
	if digits == Exact {
		return Exact
	}
	return min(max(digits-1-magnitude(r), 0), maxShown)
}

// magnitude is the power of ten of r's first digit: 0 for 1 to 9, and for zero.
func magnitude(r *big.Rat) int {
	if r.Sign() == 0 {
		return 0
	}
	abs := new(big.Rat).Abs(r)
	m := len(abs.Num().String()) - len(abs.Denom().String())
	if abs.Cmp(pow10(m)) < 0 {
		m--
	}
	return m
}

// productUnit is the unit for a product of dimension d whose own unit would
// have the given factor: the table's unit with that factor, else the first of
// the system, else the first, else the coherent one.
func productUnit(d Dim, factor *big.Rat, s System) *Unit {
	candidates := unitsOf(d)
	for _, u := range candidates {
		if u.Factor.Cmp(factor) == 0 {
			return u
		}
	}
	for _, u := range candidates {
		if u.System == s {
			return u
		}
	}
	return candidates[0]
}

var unitsByDim sync.Map // Dim -> []*Unit

// unitsOf lists the units of dimension d, in the order of the table; the
// coherent unit where the table has none.
func unitsOf(d Dim) []*Unit {
	if l, ok := unitsByDim.Load(d); ok {
		return l.([]*Unit)
	}
	var list []*Unit
	if d == Plain {
		list = []*Unit{One}
	}
	for _, u := range Units() {
		if u.Dim.Fits(d) && u.Dim != Plain && (len(list) == 0 || u.Dim == list[0].Dim) {
			list = append(list, u)
		}
	}
	if len(list) == 0 {
		list = []*Unit{coherent(d)}
	}
	unitsByDim.Store(d, list)
	return list
}

// coherent is the product of base units of dimension d, with their UCUM codes.
func coherent(d Dim) *Unit {
	u := &Unit{Dim: d, Factor: big.NewRat(1, 1), System: Metric, Source: "product of base units"}
	names := [bases]string{"m", "kg", "s", "A", "K", "°", "pieces"}
	codes := [bases]string{"m", "kg", "s", "A", "K", "deg", "{piece}"}
	var over, under, code []string
	for i, n := range d.exp {
		switch {
		case n > 0:
			over = append(over, names[i]+superscript(int(n)))
		case n < 0:
			under = append(under, names[i]+superscript(int(-n)))
		}
		if n == 1 {
			code = append(code, codes[i])
		} else if n != 0 {
			code = append(code, codes[i]+itoa(int(n)))
		}
	}
	u.Name = strings.Join(over, "·")
	if len(under) > 0 {
		if u.Name == "" {
			u.Name = "1"
		}
		u.Name += "/" + strings.Join(under, "/")
	}
	u.UCUM = strings.Join(code, ".")
	return u
}

func superscript(n int) string {
	if n == 1 {
		return ""
	}
	return strings.Map(func(r rune) rune { return []rune("⁰¹²³⁴⁵⁶⁷⁸⁹")[r-'0'] }, itoa(n))
}
