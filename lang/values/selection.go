package values

import (
	"errors"
	"math/big"
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// Selection is one choice at one place as a problem for the solver.
type Selection struct {
	Step    *model.Step
	Place   string
	Part    *model.Node
	Sizes   []*model.Node // the grades, parallel to Problem.Sizes
	Unit    *calc.Unit    // of every number of Problem
	Problem calc.FitProblem
	Fit     *calc.Fit // nil where Err is set
	Err     error     // of calc.NewFit

	Measured calc.Expr // the gap, or what is built up on
	key      string    // equal for equal problems
	decimals int       // of the sizes, in Unit; calc.Exact where all are exact
}

// What can keep a choice from being put to the solver at all.
var (
	ErrNotGraded  = errors.New("the part has no sizes")
	ErrNoReading  = errors.New("neither gap nor base is stated")
	ErrNoLimits   = errors.New("the limits of the result are not stated")
	ErrOpenLimits = errors.New("the limits of the result rest on a reading or an option")
	ErrSizes      = errors.New("a size has no value in the unit of the limits")
)

// Selection is the choice of a step at a place, with all that the kit holds.
// Where the error is set there is no problem to solve.
func (p *Plan) Selection(s *model.Step, place string) (*Selection, error) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if sel, ok := p.selections[target{s, place}]; ok {
		return sel, sel.Err
	}
	l, err := constantLimits(s, place)
	sel := &Selection{Step: s, Place: place, Err: err}
	if err == nil {
		sel = newSelection(s, place, l, p.fit)
	}
	p.selections[target{s, place}] = sel
	return sel, sel.Err
}

// judged is the attribute that limits the result of a choice.
func judged(s *model.Step) string {
	if s.Has("base") || s.Has("makes") {
		return "makes"
	}
	return "leaves"
}

func constantLimits(s *model.Step, place string) (calc.Limits, error) {
	f := s.Formula(judged(s), place)
	if f == nil {
		return calc.Limits{}, ErrNoLimits
	}
	l, ok := f.Limits()
	if !ok {
		return l, ErrOpenLimits
	}
	return l, nil
}

// fit prepares a problem; problems that are alike share what they work out. The
// caller holds p.mu.
func (p *Plan) fit(key string, problem calc.FitProblem) (*calc.Fit, error) {
	if f := p.fits[key]; f != nil {
		return f, nil
	}
	f, err := calc.NewFit(problem)
	if err == nil {
		p.fits[key] = f
	}
	return f, err
}

func newSelection(s *model.Step, place string, l calc.Limits, fit func(string, calc.FitProblem) (*calc.Fit, error)) *Selection {
	sel := &Selection{Step: s, Place: place, Part: s.Ref("from"), decimals: calc.Exact}
	sel.Err = sel.fill(l)
	if sel.Err == nil {
		sel.key = problemKey(&sel.Problem)
		sel.Fit, sel.Err = fit(sel.key, sel.Problem)
	}
	return sel
}

func (sel *Selection) fill(l calc.Limits) error {
	s := sel.Step
	if sel.Part == nil {
		return ErrNotGraded
	}
	sel.Sizes = sel.Part.Nested(entry.Size)
	if len(sel.Sizes) == 0 {
		return ErrNotGraded
	}
	f := s.Formula("gap", sel.Place)
	if sel.Problem.BuildUp = judged(s) == "makes"; sel.Problem.BuildUp {
		f = s.Formula("base", sel.Place)
	}
	if f == nil {
		return ErrNoReading
	}
	sel.Measured = localize(f.Expr, sel.Place)
	switch {
	case l.Low != nil:
		sel.Unit = l.Low.Unit
	case l.High != nil:
		sel.Unit = l.High.Unit
	default:
		return ErrNoLimits
	}
	number := func(q *calc.Quantity) *big.Rat {
		if q == nil {
			return nil
		}
		return q.In(sel.Unit).Num()
	}
	sel.Problem.Low, sel.Problem.High, sel.Problem.Target = number(l.Low), number(l.High), number(l.Target)
	sel.Problem.Nearest = s.Word("prefer") == "nearest"
	held := 0
	for _, n := range sel.Sizes {
		size, ok := sel.size(n)
		if !ok {
			return ErrSizes
		}
		held += size.Stock
		sel.Problem.Sizes = append(sel.Problem.Sizes, size)
	}
	sel.Problem.MinPieces, sel.Problem.MaxPieces = pieces(s, sel.Place, held)
	return nil
}

// size is one grade for the solver.
func (sel *Selection) size(n *model.Node) (calc.FitSize, bool) {
	size := calc.FitSize{Label: n.ID, Stock: n.Whole("in_kit", "", 0)}
	f := n.Formula("is", "")
	if f == nil {
		return size, false
	}
	l, ok := f.Limits()
	if !ok {
		return size, false
	}
	for _, part := range []struct {
		from *calc.Quantity
		to   **big.Rat
	}{{l.Low, &size.Low}, {l.High, &size.High}, {l.Target, &size.Nominal}} {
		if part.from == nil {
			continue
		}
		if !part.from.Dim().Fits(sel.Unit.Dim) {
			return size, false
		}
		q := part.from.In(sel.Unit)
		*part.to = q.Num()
		sel.decimals = max(sel.decimals, q.Decimals)
	}
	return size, size.Nominal != nil || size.Low != nil && size.High != nil
}

// pieces are the fewest and the most pieces of a pack; held is what the kit
// holds. One alone is meant where nothing is said.
func pieces(s *model.Step, place string, held int) (least, most int) {
	f := s.Formula("pieces", place)
	if f == nil {
		return 1, 1
	}
	l, ok := f.Limits()
	if !ok {
		return 1, 1
	}
	least, most = 0, held
	if l.Low != nil {
		least = whole(l.Low.Num(), true)
	}
	if l.High != nil {
		most = whole(l.High.Num(), false)
	}
	return least, most
}

// whole rounds r up or down to a number of pieces, within what can be counted.
func whole(r *big.Rat, up bool) int {
	n := new(big.Int)
	rest := new(big.Int)
	n.DivMod(r.Num(), r.Denom(), rest)
	if up && rest.Sign() != 0 {
		n.Add(n, big.NewInt(1))
	}
	const most = 1_000_000
	if !n.IsInt64() || n.Int64() > most {
		return most
	}
	return int(max(n.Int64(), -1))
}

// Quantity is a number of the problem as a quantity, at the decimals that the
// sizes and the limits are written with.
func (sel *Selection) Quantity(r *big.Rat) calc.Quantity {
	return calc.NewQuantity(r, sel.Unit, sel.decimals)
}

// Pack is what is picked for a reading.
type Pack struct {
	Selection *Selection
	Lines     []Line // thickest first
	Count     int
	Total     calc.Quantity
	Result    calc.Quantity // what is left of the gap, or what is built up
	Tentative bool          // a choice that draws on the kit before this one is not known yet
}

// Line is a number of equal pieces.
type Line struct {
	Size  *model.Node
	Label string
	Count int
	Is    calc.Quantity // of one piece; of a band the middle
}

// String lists the pieces: "2 × 0.30 mm, 1 × 0.20 mm".
func (p *Pack) String() string {
	if p.Count == 0 {
		return "no pieces"
	}
	parts := make([]string, len(p.Lines))
	for i, l := range p.Lines {
		parts[i] = strconv.Itoa(l.Count) + " × " + l.Label
	}
	return strings.Join(parts, ", ")
}

// alone prepares a problem of one build, which nobody shares.
func alone(_ string, problem calc.FitProblem) (*calc.Fit, error) { return calc.NewFit(problem) }
