package values

import (
	"errors"
	"math/big"
	"slices"
	"strconv"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// ErrNoRange says that nobody says which readings of a choice are likely.
var ErrNoRange = errors.New("the range of likely readings has no ends")

// Cover is what the kit does for all likely readings of one choice at one place.
type Cover struct {
	*Selection
	calc.FitCover
	Low, High calc.Quantity // the likely readings of what is measured, in Unit
}

// Cover works out what the whole kit does for all likely readings of a choice,
// once. Errors are those of Selection, of calc's Coverage, and ErrNoRange.
func (p *Plan) Cover(s *model.Step, place string) (*Cover, error) {
	sel, err := p.Selection(s, place)
	if err != nil {
		return nil, err
	}
	p.coverMu.Lock()
	defer p.coverMu.Unlock()
	at := target{s, place}
	if k, ok := p.covers[at]; ok {
		return k.cover, k.err
	}
	c, err := p.cover(sel)
	p.covers[at] = answer{c, err}
	return c, err
}

func (p *Plan) cover(sel *Selection) (*Cover, error) {
	low, high, ok := p.coverRanges().Measured(sel)
	if !ok {
		return nil, ErrNoRange
	}
	key := rangeKey(sel.key, low, high)
	known, ok := p.covered[key]
	if !ok {
		known.FitCover, known.err = sel.Fit.Coverage(low.In(sel.Unit).Num(), high.In(sel.Unit).Num())
		p.covered[key] = known
	}
	if known.err != nil {
		return nil, known.err
	}
	return &Cover{sel, known.FitCover, low, high}, nil
}

// coverRanges is the domain of all covers, under coverMu.
func (p *Plan) coverRanges() *Ranges {
	if p.ranges == nil {
		p.ranges = p.Ranges()
	}
	return p.ranges
}

// covered and proven keep what is worked out once for equal problems: a manual of many
// like machines asks the same again and again.
type covered struct {
	calc.FitCover
	err error
}

type proven struct {
	calc.HeapProof
	err error
}

type answer struct {
	cover *Cover
	err   error
}

// problemKey is equal for equal problems.
func problemKey(f *calc.FitProblem) string {
	b := make([]byte, 0, 64*len(f.Sizes))
	for i := range f.Sizes {
		s := &f.Sizes[i]
		b = appendRats(b, s.Low, s.Nominal, s.High)
		b = strconv.AppendInt(b, int64(s.Stock), 10)
		b = append(b, ';')
	}
	b = appendRats(b, f.Low, f.High, f.Target)
	for _, n := range [...]int{f.MinPieces, f.MaxPieces} {
		b = append(strconv.AppendInt(b, int64(n), 10), ' ')
	}
	b = strconv.AppendBool(b, f.BuildUp)
	b = strconv.AppendBool(b, f.Nearest)
	return string(b)
}

func rangeKey(problem string, low, high calc.Quantity) string {
	return string(appendRats(append([]byte(problem), '|'), low.Base(), high.Base()))
}

func appendRats(b []byte, rats ...*big.Rat) []byte {
	for _, r := range rats {
		if r != nil {
			b = r.Num().Append(b, 36)
			b = append(b, '/')
			b = r.Denom().Append(b, 36)
		}
		b = append(b, ' ')
	}
	return b
}

// Heap is choices that draw on the kit at one time, in the order of work.
type Heap struct {
	Part   *model.Node
	Covers []*Cover
	Proof  calc.HeapProof
	Err    error // of calc.HeapCoverage
}

// Heaps are the choices of a part that can be in need of its pieces at one time,
// under every choice of options. A choice whose own cover cannot be worked out is
// left out; so are heaps of one.
func (p *Plan) Heaps(part *model.Node) []Heap {
	p.heapMu.Lock()
	defer p.heapMu.Unlock()
	heaps, ok := p.heaps[part]
	if !ok {
		heaps = p.findHeaps(part)
		p.heaps[part] = heaps
	}
	return heaps
}

func (p *Plan) findHeaps(part *model.Node) []Heap {
	var heaps []Heap
	for _, together := range p.together(part) {
		var covers []*Cover
		var places []calc.FitPlace
		key := ""
		for _, d := range together {
			c, err := p.Cover(d.step, d.place)
			if err != nil {
				continue
			}
			covers = append(covers, c)
			places = append(places, calc.FitPlace{Problem: c.Problem, Low: c.Low.In(c.Unit).Num(), High: c.High.In(c.Unit).Num()})
			key += rangeKey(c.key, c.Low, c.High) + "\n"
		}
		if len(covers) < 2 {
			continue
		}
		sameUnit(covers, places)
		known, ok := p.proofs[key]
		if !ok {
			known.HeapProof, known.err = calc.HeapCoverage(places)
			p.proofs[key] = known
		}
		heaps = append(heaps, Heap{part, covers, known.HeapProof, known.err})
	}
	return heaps
}

// sameUnit counts all problems of a heap in the unit of the first.
func sameUnit(covers []*Cover, places []calc.FitPlace) {
	for i, c := range covers {
		if c.Unit != covers[0].Unit {
			converted := &Selection{Step: c.Step, Place: c.Place, Part: c.Part}
			l, _ := constantLimits(c.Step, c.Place)
			u := covers[0].Unit
			for _, q := range []**calc.Quantity{&l.Low, &l.High, &l.Target} {
				if *q != nil {
					v := (*q).In(u)
					*q = &v
				}
			}
			if converted.fill(l) == nil {
				places[i] = calc.FitPlace{Problem: converted.Problem, Low: c.Low.In(u).Num(), High: c.High.In(u).Num()}
			}
		}
	}
}

// together are the greatest sets of choices of a part whose pieces are out of the
// kit at one time.
func (p *Plan) together(part *model.Node) [][]draw {
	var sets [][]draw
	for _, done := range p.underOptions(p.draws[part]) {
		if !slices.ContainsFunc(done, func(d draw) bool { return d.back != 0 }) {
			sets = append(sets, done)
			continue
		}
		for i, d := range done {
			var set []draw
			for _, earlier := range done[:i] {
				if earlier.back == 0 || earlier.back > d.at {
					set = append(set, earlier)
				}
			}
			sets = append(sets, append(set, d))
		}
	}
	var greatest [][]draw
	for i, set := range sets {
		if !slices.ContainsFunc(sets[i+1:], func(other []draw) bool { return within(set, other) }) &&
			!slices.ContainsFunc(greatest, func(other []draw) bool { return within(set, other) }) {
			greatest = append(greatest, set)
		}
	}
	return greatest
}

func within(set, other []draw) bool {
	for _, d := range set {
		if !slices.Contains(other, d) {
			return false
		}
	}
	return true
}

// underOptions are the draws that are made under each choice of the options that
// they look at.
func (p *Plan) underOptions(all []draw) [][]draw {
	var options []*model.Node
	for _, d := range all {
		for _, n := range []*model.Node{d.step.Procedure, d.step.Node} {
			if f := n.Formula("when", d.place); f != nil {
				for _, r := range f.Refs {
					if r.To != nil && r.To.Def.Name == "option" && !slices.Contains(options, r.To) {
						options = append(options, r.To)
					}
				}
			}
		}
	}
	const most = 6 // options; beyond that all draws are taken together
	if len(options) == 0 || len(options) > most {
		return [][]draw{all}
	}
	var sets [][]draw
	try := map[string]string{}
	var next func(i int)
	next = func(i int) {
		if i < len(options) {
			for _, choice := range options[i].Names("choices") {
				try[options[i].ID] = choice
				next(i + 1)
			}
			return
		}
		env := p.With(Given{Options: try})
		var set []draw
		for _, d := range all {
			if done, known := env.Done(d.step, d.place); done || !known {
				set = append(set, d)
			}
		}
		sets = append(sets, set)
	}
	next(0)
	return sets
}

// Draws are the choices that take pieces of a part, with their places, in the order of work.
func (p *Plan) Draws(part *model.Node, visit func(s *model.Step, place string)) {
	for _, d := range p.draws[part] {
		visit(d.step, d.place)
	}
}

// Graded lists the parts that choices draw on, in the order of their declaration.
func (p *Plan) Graded() []*model.Node {
	var parts []*model.Node
	for _, n := range p.Entries {
		if len(p.draws[n]) > 0 {
			parts = append(parts, n)
		}
	}
	return parts
}

// Chooses reports whether a step picks pieces.
func Chooses(s *model.Step) bool { return s != nil && s.Kind.Yields == kind.Pack }
