package measure

import (
	"math/big"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// readings calls visit for every step that takes a reading.
func readings(p *rule.Pass, visit func(s *model.Step)) {
	for _, s := range p.Steps() {
		if s.Kind.Yields == kind.Reading {
			visit(s)
		}
	}
}

// places are the places whose limits a step writes one by one, or "".
func places(s *model.Step) []string {
	for i := range s.Attrs {
		if _, by := s.Attrs[i].Value.(model.ByPlace); by && s.Places != nil {
			return s.Places.Names("names")
		}
	}
	return []string{""}
}

// dimension is what a step reads, by what it expects or accepts.
func dimension(s *model.Step) (calc.Dim, bool) {
	for _, attr := range [...]string{"likely", "accept"} {
		f := s.Formula(attr, "")
		if f == nil || f.Expr == nil {
			continue
		}
		if t := f.Expr.Type(); t.Shape == calc.LimitsShape || t.Shape == calc.NumberShape {
			return t.Dim, true
		}
	}
	return calc.Dim{}, false
}

// use is one tolerance that a reading serves.
type use struct {
	node        *model.Node
	attr, place string
	own         bool // the limits of the reading itself
}

// width is the width of the limits, as printed.
func (u use) width() string {
	l, _ := u.node.Limits(u.attr, u.place)
	decimals, low := l.High.Decimals, new(big.Rat)
	if l.Low != nil {
		decimals, low = max(decimals, l.Low.Decimals), l.Low.Base()
	}
	return calc.FromBase(new(big.Rat).Sub(l.High.Base(), low), l.High.Unit.Difference(), decimals).String()
}

// through names the step through which the reading serves them, or "".
func (u use) through() string {
	if u.own {
		return ""
	}
	return " through " + rule.Called(u.node)
}

// served finds for every reading the narrowest tolerance that it serves: its own,
// or that of a calculation or a choice, divided by how much of an error in the
// reading reaches it. The width is in base units, nil where no tolerance has two ends.
func served(p *rule.Pass) func(s *model.Step) (*big.Rat, use) {
	type best struct {
		width *big.Rat
		use   use
	}
	narrowest := map[*model.Node]best{}
	offer := func(s *model.Node, width *big.Rat, u use) {
		if b, ok := narrowest[s]; !ok || width.Cmp(b.width) < 0 {
			narrowest[s] = best{width, u}
		}
	}
	ranges := lazily(func() *values.Ranges { return p.Plan().Ranges() })
	for _, s := range p.Steps() {
		limits, formula := tolerance(s)
		if limits == "" {
			continue
		}
		for _, place := range places(s) {
			width := widthOf(s, limits, place)
			if width == nil {
				continue
			}
			u := use{node: s.Node, attr: limits, place: place, own: formula == ""}
			if formula == "" {
				offer(s.Node, width, u)
				continue
			}
			errors := &spread{pass: p, ranges: ranges}
			if f := s.Formula(formula, place); f != nil {
				errors.follow(f.Expr, big.NewRat(1, 1))
			}
			for _, r := range errors.reached {
				if f := r.factor(); f.Sign() > 0 {
					offer(r.reading, new(big.Rat).Quo(width, f), u)
				}
			}
		}
	}
	return func(s *model.Step) (*big.Rat, use) {
		b := narrowest[s.Node]
		return b.width, b.use
	}
}

// tolerance is the attribute with the limits that a step judges or chooses by,
// and the one with the formula that they judge; "" for the reading itself.
func tolerance(s *model.Step) (limits, formula string) {
	switch s.Kind.Yields {
	case kind.Reading:
		return "accept", ""
	case kind.Number:
		return "accept", tooling.Does(s.Kind, kind.WorksOut)
	case kind.Pack:
		if s.Has("gap") {
			return "leaves", "gap"
		}
		return "makes", "base"
	}
	return "", ""
}

// widthOf is the width of limits with two ends, in base units. Limits from zero
// up to a most, such as a run-out, count from zero.
func widthOf(s *model.Step, attr, place string) *big.Rat {
	l, ok := s.Limits(attr, place)
	if !ok || l.High == nil || l.High.Dim() == calc.Plain {
		return nil
	}
	low := new(big.Rat)
	switch {
	case l.Low != nil:
		low = l.Low.Base()
	case attr != "accept" || s.Kind.Yields != kind.Reading || l.High.Dim().IsPoint():
		return nil
	}
	width := new(big.Rat).Sub(l.High.Base(), low)
	if width.Sign() <= 0 {
		return nil
	}
	return width
}

// spread is how much of an error in each reading reaches a formula: exact for
// formulas that are linear in their readings.
type spread struct {
	pass    *rule.Pass
	ranges  func() *values.Ranges
	reached []reached
	depth   int
}

// reached is what reaches a formula from one reading at one place: in step with
// all else of it, and by ways of which only one is taken at a time, such as the
// largest of several.
type reached struct {
	reading *model.Node
	place   string
	linear  *big.Rat
	other   *big.Rat
}

// factor is the size of what reaches the formula.
func (r reached) factor() *big.Rat {
	size := new(big.Rat).Abs(r.linear)
	if r.other.Cmp(size) > 0 {
		return r.other
	}
	return size
}

func (s *spread) of(n *model.Node, place string) *reached {
	for i := range s.reached {
		if s.reached[i].reading == n && s.reached[i].place == place {
			return &s.reached[i]
		}
	}
	s.reached = append(s.reached, reached{n, place, new(big.Rat), new(big.Rat)})
	return &s.reached[len(s.reached)-1]
}

// follow adds what reaches the formula through e, which reaches it with a factor.
// What it cannot follow it leaves out: then the reading is not judged by this.
func (s *spread) follow(e calc.Expr, factor *big.Rat) {
	if factor.Sign() == 0 || s.depth > 64 {
		return
	}
	s.depth++
	defer func() { s.depth-- }()
	switch e := e.(type) {
	case *calc.Var:
		s.variable(e, factor)
	case *calc.Unary:
		s.follow(e.X, new(big.Rat).Neg(factor))
	case *calc.Cond:
		s.oneOf(factor, e.Then, e.Else)
	case *calc.Binary:
		s.binary(e, factor)
	case *calc.Call:
		s.call(e, factor)
	}
}

func (s *spread) variable(v *calc.Var, factor *big.Rat) {
	n := s.pass.Find(v.Name)
	if n == nil || n.Step == nil {
		return
	}
	switch n.Step.Kind.Yields {
	case kind.Reading:
		r := s.of(n, v.Place)
		r.linear = new(big.Rat).Add(r.linear, factor)
	case kind.Number:
		if f := n.Formula(tooling.Does(n.Step.Kind, kind.WorksOut), v.Place); f != nil {
			s.follow(f.Expr, factor)
		}
	}
}

func (s *spread) binary(e *calc.Binary, factor *big.Rat) {
	switch e.Op {
	case calc.Add:
		s.follow(e.X, factor)
		s.follow(e.Y, factor)
	case calc.Sub:
		s.follow(e.X, factor)
		s.follow(e.Y, new(big.Rat).Neg(factor))
	case calc.Mul:
		if y := s.middle(e.Y); y != nil {
			s.follow(e.X, new(big.Rat).Mul(factor, y))
		}
		if x := s.middle(e.X); x != nil {
			s.follow(e.Y, new(big.Rat).Mul(factor, x))
		}
	case calc.Div:
		if y := s.middle(e.Y); y != nil && y.Sign() != 0 && !s.mayBeZero(e.Y) {
			s.follow(e.X, new(big.Rat).Quo(factor, y))
		}
	}
}

func (s *spread) call(e *calc.Call, factor *big.Rat) {
	if e.Body != nil {
		s.follow(e.Body, factor)
		return
	}
	var args []calc.Expr
	for _, a := range e.Args {
		if l, ok := a.(*calc.List); ok {
			args = append(args, l.Items...)
		} else {
			args = append(args, a)
		}
	}
	switch e.Function.Name {
	case "mean":
		share := new(big.Rat).Quo(factor, big.NewRat(int64(max(len(args), 1)), 1))
		for _, a := range args {
			s.follow(a, share)
		}
	case "sum":
		for _, a := range args {
			s.follow(a, factor)
		}
	case "max", "min", "spread", "abs":
		s.oneOf(factor, args...)
	case "round", "round_up", "round_down":
		s.oneOf(factor, args[0])
	}
}

// oneOf follows expressions of which only one counts at a time.
func (s *spread) oneOf(factor *big.Rat, all ...calc.Expr) {
	for _, e := range all {
		way := &spread{pass: s.pass, ranges: s.ranges, depth: s.depth}
		way.follow(e, factor)
		for _, w := range way.reached {
			r := s.of(w.reading, w.place)
			if f := w.factor(); f.Cmp(r.other) > 0 {
				r.other = f
			}
		}
	}
}

// mayBeZero reports a divisor that may be zero, about which another rule speaks.
func (s *spread) mayBeZero(e calc.Expr) bool {
	if _, ok := e.(*calc.Const); ok {
		return false
	}
	in := calc.RangeOf(e, s.ranges()).Number
	return in.Lo != nil && in.Hi != nil && in.Lo.Sign() <= 0 && in.Hi.Sign() >= 0
}

// middle is a value, or the middle of all that it may be, in base units; nil
// where nobody says what is likely.
func (s *spread) middle(e calc.Expr) *big.Rat {
	if c, ok := e.(*calc.Const); ok {
		if q, ok := c.Value.(calc.Quantity); ok {
			return q.Base()
		}
		return nil
	}
	in := calc.RangeOf(e, s.ranges()).Number
	if in.Lo == nil || in.Hi == nil {
		return nil
	}
	sum := new(big.Rat).Add(in.Lo, in.Hi)
	return sum.Quo(sum, big.NewRat(2, 1))
}
