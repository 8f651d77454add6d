package calc

import (
	"math/big"
	"strconv"
	"sync"
)

func itoa(n int) string { return strconv.Itoa(n) }

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
// those that the authored ones are worth in u: the fewest whose step is not
// coarser than the authored step.
func (q Quantity) In(u *Unit) Quantity {
	if u == q.Unit {
		return q
	}
	c := conversionOf(q.Unit, u)
	v := new(big.Rat).Mul(q.num, c.ratio)
	if c.offset != nil {
		v.Add(v, c.offset)
	}
	d := q.Decimals
	if d != Exact {
		d = min(max(0, d+c.shift), max(maxShown, d))
	}
	return NewQuantity(v, u, d)
}

// conversion takes a value from one unit to another: value × ratio + offset.
type conversion struct {
	ratio, offset *big.Rat // offset nil for none
	shift         int      // decimals more than the authored ones
}

// conversions keeps those between shared units, of which there are few.
var conversions sync.Map // [2]*Unit -> *conversion

func conversionOf(from, to *Unit) *conversion {
	key := [2]*Unit{from, to}
	if c, ok := conversions.Load(key); ok {
		return c.(*conversion)
	}
	c := &conversion{ratio: new(big.Rat).Quo(from.Factor, to.Factor)}
	for c.shift > -maxShown && pow10(1-c.shift).Cmp(c.ratio) <= 0 {
		c.shift--
	}
	for c.shift < maxShown && pow10(-c.shift).Cmp(c.ratio) > 0 {
		c.shift++
	}
	if from.Offset != nil || to.Offset != nil {
		c.offset = new(big.Rat)
		if from.Offset != nil {
			c.offset.Add(c.offset, from.Offset)
		}
		if to.Offset != nil {
			c.offset.Sub(c.offset, to.Offset)
		}
		c.offset.Quo(c.offset, to.Factor)
	}
	if from.shared && to.shared {
		conversions.Store(key, c)
	}
	return c
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
