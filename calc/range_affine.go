package calc

import (
	"math/big"
	"strconv"
	"strings"
)

// affine is c plus a multiple of each symbol. A symbol stands for one number
// that is not known: a reading, or a result that is not linear in readings.
// Sums keep symbols, so that `a + b - a` is b and nothing wider.
type affine struct {
	c     *big.Rat
	terms []summand // by symbol, factors never zero
}

type summand struct {
	symbol int
	k      *big.Rat
}

func constant(c *big.Rat) affine { return affine{c: c} }

func (a affine) add(b affine) affine {
	sum := affine{c: new(big.Rat).Add(a.c, b.c), terms: make([]summand, 0, len(a.terms)+len(b.terms))}
	i, j := 0, 0
	for i < len(a.terms) || j < len(b.terms) {
		switch {
		case j == len(b.terms) || i < len(a.terms) && a.terms[i].symbol < b.terms[j].symbol:
			sum.terms = append(sum.terms, a.terms[i])
			i++
		case i == len(a.terms) || b.terms[j].symbol < a.terms[i].symbol:
			sum.terms = append(sum.terms, b.terms[j])
			j++
		default:
			if k := new(big.Rat).Add(a.terms[i].k, b.terms[j].k); k.Sign() != 0 {
				sum.terms = append(sum.terms, summand{a.terms[i].symbol, k})
			}
			i, j = i+1, j+1
		}
	}
	return sum
}

func (a affine) scale(k *big.Rat) affine {
	s := affine{c: new(big.Rat).Mul(a.c, k)}
	if k.Sign() == 0 {
		return s
	}
	for _, t := range a.terms {
		s.terms = append(s.terms, summand{t.symbol, new(big.Rat).Mul(t.k, k)})
	}
	return s
}

func (a affine) tooBig() bool {
	for _, t := range a.terms {
		if tooBig(t.k) {
			return true
		}
	}
	return tooBig(a.c)
}

// interval is exact where the symbols do not depend on one another.
func (a affine) interval(symbols []Interval) Interval {
	sum := PointInterval(a.c)
	for _, t := range a.terms {
		sum = sum.Add(symbols[t.symbol].Mul(PointInterval(t.k)))
	}
	return sum
}

// key is equal for equal forms.
func (a affine) key() string {
	var b strings.Builder
	b.WriteString(a.c.RatString())
	for _, t := range a.terms {
		b.WriteString("+" + t.k.RatString() + "·" + strconv.Itoa(t.symbol))
	}
	return b.String()
}
