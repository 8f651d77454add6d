package joint

import (
	"math/big"

	"fettle/calc"
)

// rat reads a constant of this package; a wrong one is a fault of the program.
func rat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic("joint: bad constant " + s)
	}
	return r
}

var (
	pi  = rat("3.14159265358979323846264338327950288")
	one = rat("1")
	two = rat("2")
)

func whole(n int) *big.Rat       { return big.NewRat(int64(n), 1) }
func add(a, b *big.Rat) *big.Rat { return new(big.Rat).Add(a, b) }
func sub(a, b *big.Rat) *big.Rat { return new(big.Rat).Sub(a, b) }
func quo(a, b *big.Rat) *big.Rat { return new(big.Rat).Quo(a, b) }
func less(a, b *big.Rat) bool    { return a.Cmp(b) < 0 }
func larger(a, b *big.Rat) *big.Rat {
	if less(a, b) {
		return b
	}
	return a
}

// mul is the product of its factors.
func mul(factors ...*big.Rat) *big.Rat {
	p := new(big.Rat).Set(one)
	for _, f := range factors {
		p.Mul(p, f)
	}
	return p
}

// round gives x to 30 decimals, half away from zero.
func round(x *big.Rat) *big.Rat {
	const decimals = 30
	r, _ := new(big.Rat).SetString(x.FloatString(decimals))
	return r
}

// cosine of an angle in degrees: exact at multiples of 60° and 90°, else to 30 decimals.
func cosine(degrees *big.Rat) *big.Rat {
	turn := whole(360)
	turns := quo(degrees, turn)
	n := new(big.Int).Div(turns.Num(), turns.Denom()) // floored
	a := sub(degrees, mul(turn, new(big.Rat).SetInt(n)))
	if a.Cmp(whole(180)) > 0 {
		a = sub(turn, a)
	}
	if a.Cmp(whole(90)) > 0 {
		return new(big.Rat).Neg(cosine(sub(whole(180), a)))
	}
	switch {
	case a.Cmp(whole(90)) == 0:
		return new(big.Rat)
	case a.Cmp(whole(60)) == 0:
		return big.NewRat(1, 2)
	}
	x := quo(mul(a, pi), whole(180))
	square := mul(x, x)
	sum, term := whole(1), whole(1)
	for k := 1; term.Sign() != 0; k += 2 { // the terms fall below 30 decimals
		term = round(quo(mul(term, square), whole(-k*(k+1))))
		sum = add(sum, term)
	}
	return sum
}

// root is the square root of x ≥ 0, to 30 decimals.
func root(x *big.Rat) *big.Rat {
	f := new(big.Float).SetPrec(256).SetRat(x)
	r, _ := f.Sqrt(f).Rat(nil)
	return round(r)
}

// Band is everything from Low to High, both included, in one dimension.
type Band struct{ Low, High calc.Quantity }

// Point is the band of one value.
func Point(q calc.Quantity) Band { return Band{q, q} }

// BandOf is the band of limits that are bounded on both sides; false otherwise.
func BandOf(l calc.Limits) (Band, bool) {
	if l.Low == nil || l.High == nil || l.Low.Cmp(*l.High) > 0 {
		return Band{}, false
	}
	return Band{*l.Low, *l.High}, true
}

// plain is the band of two plain numbers.
func plain(low, high string) Band {
	return Band{calc.PlainNumber(rat(low)), calc.PlainNumber(rat(high))}
}

// width is High − Low, in base units.
func (b Band) width() *big.Rat { return sub(b.High.Base(), b.Low.Base()) }

// positive reports a problem when a quantity is missing, of the wrong dimension, or not above zero.
func positive(what string, dim calc.Dim, qs ...calc.Quantity) *calc.Problem {
	for _, q := range qs {
		switch {
		case !q.Valid():
			return &calc.Problem{Message: "The " + what + " is not given.",
				Reason: "Nothing can be worked out without it.", Remedy: "Give the " + what + "."}
		case !dim.Fits(q.Dim()):
			return &calc.Problem{Message: "The " + what + " must be " + dim.String() + ", and this is " + q.Dim().String() + ".",
				Reason: "Nothing can be worked out from it.", Remedy: "Give the " + what + " as " + dim.String() + "."}
		case q.Base().Sign() <= 0:
			return &calc.Problem{Message: "The " + what + " must be above zero.",
				Reason: "Nothing can be worked out from it.", Remedy: "Correct the " + what + "."}
		}
	}
	return nil
}

func (b Band) positive(what string, dim calc.Dim) *calc.Problem {
	if p := positive(what, dim, b.Low, b.High); p != nil {
		return p
	}
	if b.width().Sign() < 0 {
		return &calc.Problem{Message: "The " + what + " runs backwards.",
			Reason: "Nothing lies in it.", Remedy: "Write the lower end first."}
	}
	return nil
}
