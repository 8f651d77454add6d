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
			for i, r := range errors.readings {
				offer(r, new(big.Rat).Quo(width, errors.factors[i]), u)
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

// spread is how much of an error in each reading reaches a formula: the size of
// its factor, exact for formulas that are linear in their readings.
type spread struct {
	pass     *rule.Pass
	ranges   func() *values.Ranges
	readings []*model.Node
	factors  []*big.Rat
	depth    int
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
		s.follow(e.X, factor)
	case *calc.List:
		for _, x := range e.Items {
			s.follow(x, factor)
		}
	case *calc.Cond:
		s.follow(e.Then, factor)
		s.follow(e.Else, factor)
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
		for i, r := range s.readings {
			if r == n {
				if factor.Cmp(s.factors[i]) > 0 {
					s.factors[i] = factor
				}
				return
			}
		}
		s.readings = append(s.readings, n)
		s.factors = append(s.factors, factor)
	case kind.Number:
		if f := n.Formula(tooling.Does(n.Step.Kind, kind.WorksOut), v.Place); f != nil {
			s.follow(f.Expr, factor)
		}
	}
}

func (s *spread) binary(e *calc.Binary, factor *big.Rat) {
	switch e.Op {
	case calc.Add, calc.Sub:
		s.follow(e.X, factor)
		s.follow(e.Y, factor)
	case calc.Mul:
		if y := s.middle(e.Y); y != nil {
			s.follow(e.X, scaled(factor, y))
		}
		if x := s.middle(e.X); x != nil {
			s.follow(e.Y, scaled(factor, x))
		}
	case calc.Div:
		if y := s.middle(e.Y); y != nil && y.Sign() != 0 {
			s.follow(e.X, scaled(factor, new(big.Rat).Inv(y)))
		}
	}
}

func (s *spread) call(e *calc.Call, factor *big.Rat) {
	if e.Body != nil {
		s.follow(e.Body, factor)
		return
	}
	switch e.Function.Name {
	case "mean":
		n := 0
		for _, a := range e.Args {
			if l, ok := a.(*calc.List); ok {
				n += len(l.Items)
			} else {
				n++
			}
		}
		factor = scaled(factor, big.NewRat(1, int64(max(n, 1))))
	case "max", "min", "sum", "spread", "abs", "round", "round_up", "round_down":
	default:
		return
	}
	for _, a := range e.Args {
		s.follow(a, factor)
	}
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

// scaled is the size of a factor times k.
func scaled(factor, k *big.Rat) *big.Rat {
	f := new(big.Rat).Mul(factor, k)
	return f.Abs(f)
}
