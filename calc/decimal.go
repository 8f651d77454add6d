package calc

import (
	"math/big"
	"strings"
)

// rounding is a direction.
type rounding uint8

const (
	halfEven rounding = iota
	down              // towards minus infinity
	up                // towards plus infinity
)

var pow10Ints = func() (p [64]*big.Int) {
	for i := range p {
		p[i] = new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(i)), nil)
	}
	return p
}()

// intPow10 is ten to the n, n ≥ 0. The caller must not change it.
func intPow10(n int) *big.Int {
	if n < len(pow10Ints) {
		return pow10Ints[n]
	}
	return new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(n)), nil)
}

// pow10 is ten to the n.
func pow10(n int) *big.Rat {
	if n < 0 {
		return new(big.Rat).SetFrac(big.NewInt(1), intPow10(-n))
	}
	return new(big.Rat).SetInt(intPow10(n))
}

// scaled is r × 10^decimals as a whole number, rounded.
func scaled(r *big.Rat, decimals int, how rounding) *big.Int {
	n := new(big.Int).Mul(r.Num(), intPow10(decimals))
	if r.IsInt() {
		return n
	}
	rest := new(big.Int)
	n.DivMod(n, r.Denom(), rest) // towards minus infinity, 0 ≤ rest < denominator
	switch {
	case rest.Sign() == 0 || how == down:
		return n
	case how == halfEven:
		c := rest.Lsh(rest, 1).Cmp(r.Denom())
		if c < 0 || c == 0 && n.Bit(0) == 0 {
			return n
		}
	}
	return n.Add(n, one)
}

var one = big.NewInt(1)

// roundRat is r rounded to a number of decimals.
func roundRat(r *big.Rat, decimals int, how rounding) *big.Rat {
	return new(big.Rat).SetFrac(scaled(r, decimals, how), intPow10(decimals))
}

// FormatRat writes r with exactly that many decimals, half to even: 2.5 at 0
// decimals is "2". (big.Rat.FloatString rounds halves away from zero.) A result
// of zero has no sign.
func FormatRat(r *big.Rat, decimals int) string { return formatRat(r, decimals, halfEven) }

func formatRat(r *big.Rat, decimals int, how rounding) string {
	n := scaled(r, decimals, how)
	sign := ""
	if n.Sign() < 0 {
		sign = "-"
		n.Neg(n)
	}
	digits := n.String()
	if decimals == 0 {
		return sign + digits
	}
	if missing := decimals + 1 - len(digits); missing > 0 {
		digits = strings.Repeat("0", missing) + digits
	}
	point := len(digits) - decimals
	return sign + digits[:point] + "." + digits[point:]
}

// exactDecimals is how many decimals r needs to be written without rounding.
// exact is false for a number such as 1/3, which never ends.
func exactDecimals(r *big.Rat) (n int, exact bool) {
	if r.IsInt() {
		return 0, true
	}
	den := r.Denom()
	twos := int(den.TrailingZeroBits())
	rest := new(big.Int).Rsh(den, uint(twos))
	five, q, m := big.NewInt(5), new(big.Int), new(big.Int)
	fives := 0
	for rest.Cmp(one) != 0 {
		if q.QuoRem(rest, five, m); m.Sign() != 0 {
			return 0, false
		}
		rest, q = q, rest
		fives++
	}
	return max(twos, fives), true
}

// significant is the number of decimals that shows r with at least digits
// significant figures, without zeros at the end.
func significant(r *big.Rat, digits int) int {
	d := digits
	for x := new(big.Rat).Abs(r); d > 0 && x.Cmp(pow10(1)) >= 0; d-- {
		x.Mul(x, pow10(-1))
	}
	for x := new(big.Rat).Abs(r); d < maxShown && x.Sign() > 0 && x.Cmp(pow10(0)) < 0; d++ {
		x.Mul(x, pow10(1))
	}
	d = max(0, d-1)
	if n, exact := exactDecimals(r); exact {
		d = min(d, n)
	}
	return d
}
