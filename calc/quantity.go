package calc

import (
	"math/big"
	"strconv"
)

func itoa(n int) string { return strconv.Itoa(n) }

// System says which readers a unit is at home with.
type System uint8

// Systems of units. A unit of neither system (degrees, minutes) is never converted for display.
const (
	Neither System = iota
	Metric
	Inch
)

// Unit is one unit of measurement. Value in base units (m, kg, s, A, K, degree,
// piece) = value × Factor + Offset; Offset is nil but for temperatures.
type Unit struct {
	Name   string   // as printed: "N·m", "in"
	UCUM   string   // code of the Unified Code for Units of Measure
	Dim    Dim      //
	Factor *big.Rat // exact
	Offset *big.Rat // exact, nil for none
	System System
}

// One is the unit of plain numbers.
var One = &Unit{UCUM: "1", Factor: big.NewRat(1, 1)}

// Exact is the Decimals of a quantity that is known without limit, such as 3/8 in.
const Exact = -1

// Quantity is an exact value in a unit, with the number of decimals it was
// written with. The zero Quantity is invalid; use IsZero only on valid ones.
// Quantities are immutable: no method changes its receiver's value.
type Quantity struct {
	num      *big.Rat // in Unit
	Unit     *Unit
	Decimals int // decimals known, counted in Unit, or Exact
}

// NewQuantity gives num of unit, known to the given decimals or Exact. It keeps num.
func NewQuantity(num *big.Rat, unit *Unit, decimals int) Quantity {
	return Quantity{num: num, Unit: unit, Decimals: decimals}
}

// PlainNumber is num without a unit, known exactly.
func PlainNumber(num *big.Rat) Quantity { return NewQuantity(num, One, Exact) }

// Valid reports whether q holds a value.
func (q Quantity) Valid() bool { return q.num != nil }

// Dim is the dimension of q.
func (q Quantity) Dim() Dim { return q.Unit.Dim }

// Num is the value counted in q.Unit. The caller must not change it.
func (q Quantity) Num() *big.Rat { return q.num }

// Base is the value counted in base units.
func (q Quantity) Base() *big.Rat {
	v := new(big.Rat).Mul(q.num, q.Unit.Factor)
	if q.Unit.Offset != nil {
		v.Add(v, q.Unit.Offset)
	}
	return v
}

// In is q counted in u, which must be of a fitting dimension. Its decimals are
// those that the authored ones are worth in u.
func (q Quantity) In(u *Unit) Quantity {
	if u == q.Unit {
		return q
	}
	v := q.Base()
	if u.Offset != nil {
		v.Sub(v, u.Offset)
	}
	v.Quo(v, u.Factor)
	return NewQuantity(v, u, decimalsIn(q, u))
}

// decimalsIn carries the resolution of q over to u: the most decimals whose
// step is not finer than a tenth of the authored step.
func decimalsIn(q Quantity, u *Unit) int {
	if q.Decimals == Exact {
		return Exact
	}
	step := new(big.Rat).Mul(pow10(-q.Decimals), q.Unit.Factor)
	step.Quo(step, u.Factor)
	d := 0
	for d < 12 && pow10(-d).Cmp(step) > 0 {
		d++
	}
	return d
}

// pow10 is ten to the n.
func pow10(n int) *big.Rat {
	if n < 0 {
		return new(big.Rat).Inv(pow10(-n))
	}
	return new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(n)), nil))
}

// Cmp orders two quantities of fitting dimensions by value: -1, 0 or 1.
func (q Quantity) Cmp(r Quantity) int {
	if q.Unit == r.Unit {
		return q.num.Cmp(r.num)
	}
	return q.Base().Cmp(r.Base())
}

// Sign is -1, 0 or 1, of the value in q.Unit.
func (q Quantity) Sign() int { return q.num.Sign() }
