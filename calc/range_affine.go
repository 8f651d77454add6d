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
	s.terms = make([]summand, 0, len(a.terms))
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
	lo, hi := new(big.Rat).Set(a.c), new(big.Rat).Set(a.c)
	var p big.Rat
	for _, t := range a.terms {
		low, high := symbols[t.symbol].Lo, symbols[t.symbol].Hi
		if t.k.Sign() < 0 {
			low, high = high, low
		}
		if low == nil || tooBig(lo) {
			lo = nil
		}
		if high == nil || tooBig(hi) {
			hi = nil
		}
		if lo != nil {
			lo.Add(lo, p.Mul(t.k, low))
		}
		if hi != nil {
			hi.Add(hi, p.Mul(t.k, high))
		}
	}
	return Interval{lo, hi}
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
