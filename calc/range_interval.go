package calc

import "math/big"

// Interval is every number from Lo to Hi, both included, in base units. A nil
// end is unbounded; the zero Interval is every number.
type Interval struct{ Lo, Hi *big.Rat }

// maxBits bounds the size of exact numbers: a range that needs more is
// unbounded, and a value that needs more is a Problem.
const maxBits = 1 << 13

// PointInterval holds r alone.
func PointInterval(r *big.Rat) Interval { return Interval{r, r} }

// IsPoint reports an interval of one number.
func (i Interval) IsPoint() bool { return i.Lo != nil && i.Hi != nil && i.Lo.Cmp(i.Hi) == 0 }

// Contains reports whether r lies in i.
func (i Interval) Contains(r *big.Rat) bool {
	return (i.Lo == nil || i.Lo.Cmp(r) <= 0) && (i.Hi == nil || r.Cmp(i.Hi) <= 0)
}

// Hull is the smallest interval that holds i and j.
func (i Interval) Hull(j Interval) Interval {
	var h Interval
	if i.Lo != nil && j.Lo != nil {
		h.Lo = least(i.Lo, j.Lo)
	}
	if i.Hi != nil && j.Hi != nil {
		h.Hi = most(i.Hi, j.Hi)
	}
	return h
}

// Meet is what i and j have in common; i when that is nothing, which only a
// variable that has no value can bring about.
func (i Interval) Meet(j Interval) Interval {
	m := i
	if m.Lo == nil || j.Lo != nil && j.Lo.Cmp(m.Lo) > 0 {
		m.Lo = j.Lo
	}
	if m.Hi == nil || j.Hi != nil && j.Hi.Cmp(m.Hi) < 0 {
		m.Hi = j.Hi
	}
	if m.Lo != nil && m.Hi != nil && m.Lo.Cmp(m.Hi) > 0 {
		return i
	}
	return m
}

// Add holds every sum.
func (i Interval) Add(j Interval) Interval {
	var s Interval
	if i.Lo != nil && j.Lo != nil {
		s.Lo = new(big.Rat).Add(i.Lo, j.Lo)
	}
	if i.Hi != nil && j.Hi != nil {
		s.Hi = new(big.Rat).Add(i.Hi, j.Hi)
	}
	return s.bounded()
}

// Neg holds every negative.
func (i Interval) Neg() Interval {
	var n Interval
	if i.Hi != nil {
		n.Lo = new(big.Rat).Neg(i.Hi)
	}
	if i.Lo != nil {
		n.Hi = new(big.Rat).Neg(i.Lo)
	}
	return n
}

// Mul holds every product: the extremes lie at the ends.
func (i Interval) Mul(j Interval) Interval {
	var low, high end
	for n, a := range i.ends() {
		for m, b := range j.ends() {
			c := a.mul(b)
			if n+m == 0 || c.cmp(low) < 0 {
				low = c
			}
			if n+m == 0 || c.cmp(high) > 0 {
				high = c
			}
		}
	}
	return Interval{low.r, high.r}.bounded()
}

// end is one end of an interval: r, or beyond every number on the side of inf.
type end struct {
	r   *big.Rat
	inf int
}

func (i Interval) ends() [2]end {
	e := [2]end{{r: i.Lo}, {r: i.Hi}}
	if i.Lo == nil {
		e[0].inf = -1
	}
	if i.Hi == nil {
		e[1].inf = 1
	}
	return e
}

// mul takes nothing times anything for nothing: the factor is some number.
func (e end) mul(f end) end {
	s := sign(e.r, e.inf) * sign(f.r, f.inf)
	switch {
	case s == 0:
		return end{r: new(big.Rat)}
	case e.inf != 0 || f.inf != 0:
		return end{inf: s}
	}
	return end{r: new(big.Rat).Mul(e.r, f.r)}
}

func (e end) cmp(f end) int {
	if e.inf != 0 || f.inf != 0 {
		return e.inf - f.inf
	}
	return e.r.Cmp(f.r)
}

// Inverse holds 1/x for every x of i but zero.
func (i Interval) Inverse() Interval {
	low, high := sign(i.Lo, -1), sign(i.Hi, 1)
	if low < 0 && high > 0 || low == 0 && high == 0 {
		return Interval{}
	}
	// 1/x falls on either side of zero: the ends change places, and an end at
	// zero becomes unbounded, an unbounded end zero.
	var v Interval
	if high != 0 {
		v.Lo = inverse(i.Hi)
	}
	if low != 0 {
		v.Hi = inverse(i.Lo)
	}
	return v
}

// Abs holds every |x|.
func (i Interval) Abs() Interval {
	n := i.Neg()
	switch {
	case sign(i.Lo, -1) >= 0:
		return i
	case sign(i.Hi, 1) <= 0:
		return n
	case i.Hi == nil || n.Hi == nil:
		return Interval{Lo: new(big.Rat)}
	}
	return Interval{new(big.Rat), most(i.Hi, n.Hi)}
}

// bounded gives up ends that take too much room.
func (i Interval) bounded() Interval {
	if tooBig(i.Lo) {
		i.Lo = nil
	}
	if tooBig(i.Hi) {
		i.Hi = nil
	}
	return i
}

func tooBig(r *big.Rat) bool {
	return r != nil && r.Num().BitLen()+r.Denom().BitLen() > maxBits
}

func inverse(r *big.Rat) *big.Rat {
	if r == nil {
		return new(big.Rat)
	}
	return new(big.Rat).Inv(r)
}

// sign is that of an end, where unbounded is the sign of an unbounded one.
func sign(r *big.Rat, unbounded int) int {
	if r == nil {
		return unbounded
	}
	return r.Sign()
}

func least(a, b *big.Rat) *big.Rat {
	if b.Cmp(a) < 0 {
		return b
	}
	return a
}

func most(a, b *big.Rat) *big.Rat {
	if b.Cmp(a) > 0 {
		return b
	}
	return a
}
