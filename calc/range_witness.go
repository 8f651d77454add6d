package calc

import (
	"math/big"
	"slices"
	"strings"
)

// Reading is one variable and a value that it may have.
type Reading struct {
	Var   *Var
	Value Value
}

// Found is a set of readings, each possible, and what an expression comes to.
type Found struct {
	Readings []Reading // by name
	Value    Value     // nil where Problem is set
	Problem  *Problem  // a division by zero
}

// Witness looks for possible readings for which e divides by zero, or for which
// outside holds of its exact value; outside may be nil, to look for a division
// by zero only. The search is small and always takes the same way: ends and
// middles of the ranges, readings where a comparison turns or a divisor
// vanishes, and steps from the best of these. Every answer was evaluated
// exactly; nil means that none was found, not that there is none.
func Witness(e Expr, d Domain, outside func(Value) bool) *Found {
	s := &search{root: e, domain: d, outside: outside, now: map[string]Value{}, derived: map[string]Value{}}
	s.collect(e, map[string]bool{})
	s.cost = 1 + s.size/largeSize
	if !s.ready {
		return nil
	}
	slices.SortFunc(s.free, func(a, b *freeVar) int { return strings.Compare(a.v.Key(), b.v.Key()) })
	s.run()
	return s.found
}

// budget bounds the exact evaluations of one search. A large expression counts
// for several, and so does a Work, which may solve a selective fit.
const (
	budget    = 3000
	largeSize = 16
	workCost  = 20
)

type search struct {
	root    Expr
	domain  Domain
	outside func(Value) bool
	free    []*freeVar
	turns   []Expr           // differences and divisors: what happens changes where they are zero
	ready   bool             // every free variable has a value to try
	size    int              // nodes of the root and of what it rests on
	now     map[string]Value // of the free variables
	derived map[string]Value // of the others, as long as now stands
	cost    int              // of one evaluation
	spent   int
	found   *Found
}

// freeVar is a reading or an option, and the values to try first.
type freeVar struct {
	v      *Var
	p      Possible
	lo, hi Quantity // of a number, in one unit
	fewest int      // decimals of a usual reading
	try    []Value
}

// finer is how many decimals more than usual a reading may have.
const finerReading = 2

// collect finds the free variables, through the formulas of those worked out.
func (s *search) collect(e Expr, seen map[string]bool) {
	s.ready = true
	var into func(e Expr)
	into = func(e Expr) {
		Walk(e, func(e Expr) bool {
			s.size++
			switch e := e.(type) {
			case *Binary:
				s.turn(e)
			case *Call:
				if e.Body != nil {
					into(e.Body)
					return false
				}
			case *Between:
				for _, x := range []Expr{e.Low, e.High} {
					if x != nil {
						into(x)
					}
				}
			case *Var:
				if seen[e.Key()] {
					return false
				}
				seen[e.Key()] = true
				p := s.domain.Possible(e)
				if p.Free() {
					s.add(e, p)
				}
				for _, x := range p.Rests {
					into(x)
				}
				if p.Is != nil && p.Work == nil {
					into(p.Is)
				}
			}
			return true
		})
	}
	into(e)
}

// turn keeps a place where the expression may change its course.
func (s *search) turn(e *Binary) {
	switch {
	case e.Op == Div:
		s.turns = append(s.turns, e.Y)
	case e.Op >= Less && e.Op <= NotEqual && e.X.Type().Shape == NumberShape:
		if d, p := NewBinary(Sub, e.X, e.Y, e.At); p == nil {
			s.turns = append(s.turns, d)
		}
	}
}

func (s *search) add(v *Var, p Possible) {
	f := &freeVar{v: v, p: p}
	switch v.Of.Shape {
	case TruthShape:
		f.try = []Value{Truth(true), Truth(false)}
	case WordShape:
		for _, w := range p.Words {
			f.try = append(f.try, Word(w))
		}
	case NumberShape:
		f.numbers()
	}
	s.ready = s.ready && len(f.try) > 0
	s.free = append(s.free, f)
}

// numbers tries the ends first, then the middle and zero. Beyond an end that is
// open nothing is tried: what is likely there, nobody has said.
func (f *freeVar) numbers() {
	low, high := f.p.Low, f.p.High
	if low == nil {
		low = high
	}
	if high == nil {
		high = low
	}
	if low == nil || low.Cmp(*high) > 0 {
		return
	}
	f.lo, f.hi = *low, high.In(low.Unit)
	f.fewest = max(f.lo.Decimals, f.hi.Decimals, 0)
	f.try = []Value{f.lo, f.hi}
	half := new(big.Rat).Add(f.lo.num, f.hi.num)
	half.Quo(half, big.NewRat(2, 1))
	for _, r := range []*big.Rat{half, new(big.Rat)} {
		if q, ok := f.reading(r); ok {
			f.try = append(f.try, q)
		}
	}
}

// reading is the possible reading nearest to r, with as few decimals as will do.
func (f *freeVar) reading(r *big.Rat) (Quantity, bool) {
	for d := f.fewest; d <= f.fewest+finerReading; d++ {
		n := roundRat(r, d, halfEven)
		if (d == f.fewest+finerReading || n.Cmp(r) == 0) && f.lo.num.Cmp(n) <= 0 && n.Cmp(f.hi.num) <= 0 {
			return NewQuantity(n, f.lo.Unit, d), true
		}
	}
	return Quantity{}, false
}

func (s *search) run() {
	for _, f := range s.free {
		s.set(f, f.try[0])
	}
	s.corners()
	for _, start := range [][2]int{{0, 0}, {1, 1}, {2, 2}, {0, 1}, {1, 0}} {
		for i, f := range s.free {
			s.set(f, f.try[min(start[i%2], len(f.try)-1)])
		}
		s.vanish()
		for _, goal := range s.goals() {
			s.climb(goal, 1)
			s.climb(goal, -1)
		}
	}
}

func (s *search) set(f *freeVar, v Value) {
	s.now[f.v.Key()] = v
	clear(s.derived)
}

func (s *search) over() bool { return s.found != nil || s.spent >= budget }

// corners tries the first values in every combination, as long as they are few.
func (s *search) corners() {
	total := 1
	for _, f := range s.free {
		if total *= len(f.try); total > budget/3 {
			break
		}
	}
	for n := 0; n < min(total, budget/3) && !s.over(); n++ {
		rest := n
		for _, f := range s.free {
			s.set(f, f.try[rest%len(f.try)])
			rest /= len(f.try)
		}
		s.test()
	}
}

// vanish moves one variable at a time to where a turn is zero, and to both sides.
func (s *search) vanish() {
	for _, t := range s.turns {
		for _, f := range s.free {
			if s.over() || f.v.Of.Shape != NumberShape {
				continue
			}
			was := s.now[f.v.Key()]
			root, ok := s.zero(t, f)
			if !ok {
				continue
			}
			step := pow10(-f.fewest)
			for _, r := range []*big.Rat{root, new(big.Rat).Sub(root, step), new(big.Rat).Add(root, step)} {
				if q, ok := f.reading(r); ok {
					s.set(f, q)
					s.test()
					if s.over() {
						return
					}
				}
			}
			s.set(f, was)
		}
	}
}

// zero is where t would be zero if it were linear in f.
func (s *search) zero(t Expr, f *freeVar) (*big.Rat, bool) {
	was := s.now[f.v.Key()]
	defer s.set(f, was)
	at := func(q Quantity) *big.Rat {
		s.set(f, q)
		s.spent += s.cost
		if v, p := Eval(t, s); p == nil {
			return v.(Quantity).num
		}
		return nil
	}
	a, b := at(f.lo), at(f.hi)
	if a == nil || b == nil || a.Cmp(b) == 0 {
		return nil, false
	}
	// lo - a (hi - lo) / (b - a)
	r := new(big.Rat).Sub(f.hi.num, f.lo.num)
	r.Mul(r, a).Quo(r, new(big.Rat).Sub(b, a))
	return r.Sub(f.lo.num, r), true
}

// goals are the numbers to raise and lower: the value, or what a truth turns on.
func (s *search) goals() []Expr {
	if s.root.Type().Shape == NumberShape {
		return []Expr{s.root}
	}
	return s.turns
}

// climb raises (or lowers) a number, one variable at a time, until it stands.
func (s *search) climb(goal Expr, sign int) {
	best := s.score(goal)
	for range 4 {
		moved := false
		for _, f := range s.free {
			was := s.now[f.v.Key()]
			for _, v := range f.around(was) {
				if s.over() {
					return
				}
				s.set(f, v)
				if got := s.score(goal); got != nil && (best == nil || got.Cmp(best)*sign > 0) {
					best, was, moved = got, v, true
				}
			}
			s.set(f, was)
		}
		if !moved {
			return
		}
	}
}

// score tests the readings as they stand and gives the value of goal, nil if it has none.
func (s *search) score(goal Expr) *big.Rat {
	v := s.test()
	if goal != s.root {
		s.spent += s.cost
		v, _ = Eval(goal, s)
	}
	if q, ok := v.(Quantity); ok {
		return q.Base()
	}
	return nil
}

// around is the values to try from v: those tried first, and points between.
func (f *freeVar) around(v Value) []Value {
	q, ok := v.(Quantity)
	if !ok || f.v.Of.Shape != NumberShape {
		return f.try
	}
	values := slices.Clone(f.try)
	for _, e := range []Quantity{f.lo, f.hi} {
		mid := new(big.Rat).Add(q.num, e.num)
		if r, ok := f.reading(mid.Quo(mid, big.NewRat(2, 1))); ok {
			values = append(values, r)
		}
	}
	return values
}

// test evaluates the root, and keeps what was looked for. The value is nil where there is none.
func (s *search) test() Value {
	s.spent += s.cost
	v, p := Eval(s.root, s)
	wanted := p == nil && s.outside != nil && s.outside(v) || p != nil && p.Rule == RuleDivisionByZero
	if wanted && s.found == nil {
		s.found = &Found{Value: v, Problem: p}
		for _, f := range s.free {
			s.found.Readings = append(s.found.Readings, Reading{f.v, s.now[f.v.Key()]})
		}
	}
	return v
}

// Value makes the search an Env: readings as they stand, and what follows from
// them. A value beyond its own ends has none: a build does not get past it.
func (s *search) Value(v *Var) Value {
	key := v.Key()
	if val, ok := s.now[key]; ok {
		return val
	}
	if val, ok := s.derived[key]; ok {
		return val
	}
	s.derived[key] = nil // ends a ring
	p := s.domain.Possible(v)
	var val Value
	var problem *Problem
	switch {
	case p.Work != nil:
		s.spent += workCost
		val, problem = p.Work(s)
	case p.Is != nil:
		val, problem = Eval(p.Is, s)
	}
	if problem != nil {
		return nil
	}
	if q, ok := val.(Quantity); ok && !(Limits{Low: p.Low, High: p.High}).Contain(q) {
		return nil
	}
	s.derived[key] = val
	return val
}
