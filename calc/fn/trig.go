package fn

import (
	"math/big"

	"fettle/calc"
)

// The three functions of an angle give a plain number, rounded half to even to
// the decimals asked for. The result is the correctly rounded one, so that any
// way to work it out gives the same: on the builder's page as here, with whole
// numbers scaled by a power of ten, more digits until the rounding is sure.

// maxTrigDecimals bounds the decimals that may be asked for.
const maxTrigDecimals = 40

var trigArgs = []calc.Arg{
	{Name: "angle", Of: anAngle, Doc: "an angle"},
	{Name: "decimals", Of: plain, Doc: "decimals of the result, a whole number from 0 to 40"},
}

// quarterTurn reduces an angle in degrees to the first quarter: the angle is
// sign × rest after the given number of quarter turns, 0 ≤ rest < 90.
func quarterTurn(deg *big.Rat) (quarters int, rest *big.Rat) {
	n := new(big.Rat).Quo(deg, ninety)
	whole := new(big.Int).Div(n.Num(), n.Denom()) // Euclidean: towards minus infinity
	rest = new(big.Rat).Mul(new(big.Rat).SetInt(whole), ninety)
	rest.Sub(deg, rest)
	return int(new(big.Int).And(whole, big.NewInt(3)).Int64()), rest
}

var ninety = big.NewRat(90, 1)

// sinCos is sine and cosine of an angle of 0 to 90 degrees, scaled by 10^digits,
// each less than two units off. The Taylor series is summed with whole numbers,
// eight digits more than asked for.
func sinCos(deg *big.Rat, digits int) (s, c *big.Int) {
	const guard = 8
	unit := power10(digits + guard)
	x := new(big.Int).Mul(pi(digits+guard), deg.Num())
	x.Quo(x, new(big.Int).Mul(deg.Denom(), big.NewInt(180)))
	square := new(big.Int).Mul(x, x)
	square.Quo(square, unit)
	series := func(term *big.Int, n int64) *big.Int {
		sum := new(big.Int)
		for term = new(big.Int).Set(term); term.Sign() != 0; n += 2 {
			sum.Add(sum, term)
			term.Mul(term, square)
			term.Quo(term, unit)
			term.Quo(term, big.NewInt(-(n+1)*(n+2)))
		}
		return sum.Quo(sum, power10(guard))
	}
	return series(x, 1), series(unit, 0)
}

// pi is π scaled by 10^digits, a unit or two off, by Machin's formula
// π = 16 arctan(1/5) - 4 arctan(1/239).
func pi(digits int) *big.Int {
	unit := power10(digits)
	arctan := func(n int64) *big.Int {
		sum, square := new(big.Int), big.NewInt(-n*n)
		power := new(big.Int).Quo(unit, big.NewInt(n))
		for k := int64(1); power.Sign() != 0; k += 2 {
			sum.Add(sum, new(big.Int).Quo(power, big.NewInt(k)))
			power.Quo(power, square)
		}
		return sum
	}
	a, b := arctan(5), arctan(239)
	a.Mul(a, big.NewInt(16))
	return a.Sub(a, b.Mul(b, big.NewInt(4)))
}

func power10(n int) *big.Int { return new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(n)), nil) }

// settle rounds a number to decimals. Near gives, for some digits, two whole
// numbers between which the number scaled by 10^digits lies; it is asked for
// more digits until both round alike. The number is irrational, so they will.
func settle(decimals int, near func(digits int) (low, high *big.Int)) (*big.Rat, bool) {
	for digits := decimals + 10; digits <= 4000; digits *= 2 {
		low, high := near(digits)
		a, b := roundOff(low, digits-decimals), roundOff(high, digits-decimals)
		if a.Cmp(b) == 0 {
			return new(big.Rat).SetFrac(a, power10(decimals)), true
		}
	}
	return nil, false
}

// roundOff drops n digits, half up: a tie cannot be, or the next digits decide it.
func roundOff(v *big.Int, n int) *big.Int {
	unit := power10(n)
	v = new(big.Int).Add(v, new(big.Int).Quo(unit, big.NewInt(2)))
	return v.Div(v, unit)
}

// halves rounds n/2 to decimals, half to even: at 0 decimals a half is 0.
func halves(n int64, decimals int) *big.Rat {
	if decimals == 0 && n%2 != 0 {
		return new(big.Rat)
	}
	return big.NewRat(n, 2)
}

// sine is the sine of an angle in degrees, rounded to decimals.
func sine(deg *big.Rat, decimals int) (*big.Rat, bool) {
	quarters, rest := quarterTurn(deg)
	sign := int64(1)
	if quarters >= 2 {
		sign = -1
	}
	if quarters%2 == 1 { // sin(90° + x) = sin(90° - x)
		rest = new(big.Rat).Sub(ninety, rest)
	}
	if n, ok := rationalSine(rest); ok {
		return halves(sign*n, decimals), true
	}
	r, ok := settle(decimals, func(digits int) (low, high *big.Int) {
		s, _ := sinCos(rest, digits)
		return around(s)
	})
	if !ok {
		return nil, false
	}
	return r.Mul(r, big.NewRat(sign, 1)), true
}

// rationalSine is twice the sine of 0°, 30° and 90°. Within a quarter turn no
// other rational angle has a rational sine (Niven's theorem).
func rationalSine(deg *big.Rat) (twice int64, ok bool) {
	switch {
	case deg.Sign() == 0:
		return 0, true
	case deg.Cmp(big.NewRat(30, 1)) == 0:
		return 1, true
	case deg.Cmp(ninety) == 0:
		return 2, true
	}
	return 0, false
}

// tangent is that of an angle in degrees, rounded to decimals; pole where it has none.
func tangent(deg *big.Rat, decimals int) (r *big.Rat, pole, ok bool) {
	quarters, rest := quarterTurn(deg)
	sign := int64(1)
	if quarters%2 == 1 { // tan(90° + x) = -tan(90° - x)
		rest = new(big.Rat).Sub(ninety, rest)
		sign = -1
	}
	switch {
	case rest.Sign() == 0:
		return new(big.Rat), false, true
	case rest.Cmp(ninety) == 0:
		return nil, true, false
	case rest.Cmp(big.NewRat(45, 1)) == 0:
		return big.NewRat(sign, 1), false, true
	}
	r, ok = settle(decimals, func(digits int) (low, high *big.Int) {
		s, c := sinCos(rest, digits)
		sLow, sHigh := around(s)
		cLow, cHigh := around(c)
		if cLow.Sign() <= 0 { // too near 90° for these digits
			return new(big.Int), power10(digits + 1)
		}
		unit := power10(digits)
		low = new(big.Int).Quo(sLow.Mul(sLow, unit), cHigh)
		high = new(big.Int).Quo(sHigh.Mul(sHigh, unit), cLow)
		return low, high.Add(high, big.NewInt(1))
	})
	if !ok {
		return nil, false, false
	}
	return r.Mul(r, big.NewRat(sign, 1)), false, true
}

func around(v *big.Int) (low, high *big.Int) {
	return new(big.Int).Sub(v, big.NewInt(2)), new(big.Int).Add(v, big.NewInt(2))
}

// trig makes a function's Exact of the sine or another.
func trig(of func(deg *big.Rat, decimals int) (*big.Rat, *calc.Problem)) func([]calc.Value) (calc.Value, *calc.Problem) {
	return func(args []calc.Value) (calc.Value, *calc.Problem) {
		d := args[1].(calc.Quantity).Base()
		if !d.IsInt() || d.Sign() < 0 || d.Cmp(big.NewRat(maxTrigDecimals, 1)) > 0 {
			return nil, refused("The decimals must be a whole number from 0 to 40.",
				"An angle's function has no end of decimals, so their number must be said.", "Write a whole number such as 4.")
		}
		decimals := int(d.Num().Int64())
		r, p := of(args[0].(calc.Quantity).Base(), decimals)
		if p != nil {
			return nil, p
		}
		return calc.NewQuantity(r, calc.One, decimals), nil
	}
}

// unsure is the problem of an angle so near a tie or a pole that the digits run out.
func unsure() *calc.Problem {
	p := refused("The angle is too near a turning point to be worked out.", "More digits than can be had decide the result.", "Write the angle with fewer digits.")
	p.Rule = calc.RuleOutOfReach
	return p
}

// monotone is the range of a function that only rises (or only falls) on the
// angles from low to high degrees; elsewhere it is everywhere.
func monotone(args []calc.Interval, low, high int64, everywhere calc.Interval, at func(deg *big.Rat, decimals int) (*big.Rat, bool)) calc.Interval {
	a, d := args[0], args[1]
	inside := calc.Interval{Lo: big.NewRat(low, 1), Hi: big.NewRat(high, 1)}
	if !d.IsPoint() || !d.Lo.IsInt() || d.Lo.Sign() < 0 || d.Lo.Cmp(big.NewRat(maxTrigDecimals, 1)) > 0 ||
		a.Lo == nil || a.Hi == nil || !a.IsPoint() && !(inside.Contains(a.Lo) && inside.Contains(a.Hi)) {
		return everywhere
	}
	x, ok := at(a.Lo, int(d.Lo.Num().Int64()))
	y, ok2 := at(a.Hi, int(d.Lo.Num().Int64()))
	if !ok || !ok2 {
		return everywhere
	}
	return calc.PointInterval(x).Hull(calc.PointInterval(y))
}

var minusOneToOne = calc.Interval{Lo: big.NewRat(-1, 1), Hi: big.NewRat(1, 1)}
