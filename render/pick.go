package render

import (
	"math/big"
	"strconv"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/render/words"
)

var two = big.NewRat(2, 1)

// longestTable is the most rows of a table of packs in which a builder finds a
// line. Common practice, no source.
const longestTable = 40

// pick is the choice of a pack: the sizes that there are, and what was chosen.
func (w *stepWriter) pick() {
	s, place := w.s, w.sc.keyPlace(w.s)
	from := s.Ref("from")
	if from == nil {
		return
	}
	start, judge := "base", s.Formula("makes", place)
	p := &Pick{Key: values.Key(s, place), From: w.item(from), Prefer: words.Preferred(s.Word("prefer")),
		Pieces: w.pieces(), Fills: !s.Has("base")}
	if p.Fills {
		start, judge = "gap", s.Formula("leaves", place)
	}
	p.Start = w.computed(start)
	p.Start.Key = ""
	p.Limit, p.Start.Judge = w.limit(judge, w.sc)
	unit := w.unitOf(w.value(judge, w.sc))
	p.Unit = label(unit)
	pack := w.env.Pack(s, place)
	for i, size := range w.sizes(from) {
		sized := Sized{Size: size}
		if pack != nil {
			sized.Take = strconv.Itoa(takenOf(pack, from.Nested(entry.Size)[i]))
		}
		p.Sizes = append(p.Sizes, sized)
	}
	if pack != nil {
		p.Pack = pack.String()
		p.Total, p.Result = shownIn(pack.Total, unit), shownIn(pack.Result, unit)
	}
	if problem := w.env.Problem(s, place); problem != nil {
		p.Problem = problem.Message + " " + problem.Reason
	}
	p.Served = w.served(s, place)
	w.out.Pick = p
	if w.draws[from] == 1 { // another choice would take pieces that the table counts on
		p.Table, p.By = w.table(s, place)
	}
}

func takenOf(p *values.Pack, size *model.Node) int {
	n := 0
	for _, l := range p.Lines {
		if l.Size == size {
			n += l.Count
		}
	}
	return n
}

// pieces are how many pieces a pack may have, in words.
func (w *stepWriter) pieces() string {
	f := w.s.Formula("pieces", w.sc.place)
	l, ok := f.Limits()
	switch {
	case !ok:
		return "1"
	case l.Low != nil && l.High != nil && l.Low.Cmp(*l.High) == 0:
		return l.Low.String()
	}
	return calc.Style{}.Limits(l.Low, l.High).First
}

// sizes are the grades of a part.
func (l *lowering) sizes(part *model.Node) []Size {
	var all []Size
	for _, n := range part.Nested(entry.Size) {
		size := Size{Label: n.ID, Held: n.Whole("in_kit", "", 0), Number: n.Plain("number"), Mark: n.Plain("mark")}
		f := n.Formula("is", "")
		set, allowed := l.amount(f, &scope{lowering: l})
		switch {
		case set == nil:
		case n.At("is") == n.Name: // the label is the value: print it in both systems
			size.Label = set.String()
		case allowed != nil:
			size.Is = allowed
		default:
			size.Is = set
		}
		all = append(all, size)
	}
	return all
}

// countDraws counts the choices that draw on each graded part.
func (l *lowering) countDraws() {
	values.Work(l.m, func(s *model.Step, place string) {
		if from := s.Ref("from"); s.Kind.Yields == kind.Pack && from != nil {
			if done, known := l.env.Done(s, place); done || !known {
				l.draws[from]++
			}
		}
	})
}

// served is which starts the kit serves, nil where nobody says which are likely.
func (w *stepWriter) served(s *model.Step, place string) *Served {
	cover, err := w.plan.Cover(s, place)
	if err != nil {
		return nil
	}
	amount := func(low, high *big.Rat) Amount {
		d := decimalsOf([]calc.FitRegion{{FitInterval: calc.FitInterval{Low: low, High: high}}})
		from, to := calc.NewQuantity(low, cover.Unit, d), calc.NewQuantity(high, cover.Unit, d)
		return *w.limits(calc.Limits{Low: &from, High: &to})
	}
	low, high := cover.Low.In(cover.Unit).Num(), cover.High.In(cover.Unit).Num()
	width := new(big.Rat).Sub(high, low)
	if width.Sign() <= 0 {
		return nil
	}
	part := func(r *big.Rat) float64 {
		f, _ := new(big.Rat).Quo(new(big.Rat).Sub(r, low), width).Float64()
		return f
	}
	out := &Served{Range: amount(low, high)}
	for _, g := range cover.Gaps {
		out.Gaps = append(out.Gaps, Gap{amount(g.Low, g.High), part(g.Low), part(g.High)})
	}
	return out
}

// table is the pack for each likely start, so that a builder without a computer
// finds the pack in a line; none where it would be too long to search. Where the
// start is one reading and a constant, the rows go by the reading itself, and by
// says which.
func (w *stepWriter) table(s *model.Step, place string) (rows []Serve, by string) {
	sel, err := w.plan.Selection(s, place)
	if err != nil {
		return nil, ""
	}
	low, high, ok := w.ranges.Measured(sel)
	if !ok {
		return nil, ""
	}
	cover, err := sel.Fit.Coverage(low.In(sel.Unit).Num(), high.In(sel.Unit).Num())
	if err != nil {
		return nil, ""
	}
	regions := wider(cover.Regions)
	if len(regions) > longestTable {
		return nil, ""
	}
	reading, added := shifted(sel.Measured, sel.Unit)
	if reading != nil {
		by = calc.Formula(reading)
		if n := w.m.Find("procedure." + reading.Name); n != nil && n.Step != nil {
			by = words.InStep(by, n.Step.Number)
		}
		back := added.In(sel.Unit).Num()
		for i := range regions {
			r := &regions[i]
			r.Low, r.High = new(big.Rat).Sub(r.Low, back), new(big.Rat).Sub(r.High, back)
		}
	}
	rows = make([]Serve, len(regions))
	decimals := decimalsOf(regions)
	for i, r := range regions {
		from, to := calc.NewQuantity(r.Low, sel.Unit, decimals), calc.NewQuantity(r.High, sel.Unit, decimals)
		rows[i].Start = *w.limits(calc.Limits{Low: &from, High: &to})
		if r.Pack != nil {
			rows[i].fill(r.Pack, sel)
			rows[i].Total = w.style.Quantity(sel.Quantity(r.Pack.Total)).First
		}
	}
	return rows, by
}

// fill says which pieces a pack is made of.
func (r *Serve) fill(p *calc.Pack, sel *values.Selection) {
	r.Take = p.Counts
	for k, n := range p.Counts {
		if n == 0 {
			continue
		}
		if r.Pack != "" {
			r.Pack += ", "
		}
		r.Pack += strconv.Itoa(n) + " × " + sel.Sizes[k].ID
	}
	if p.Pieces == 0 {
		r.Pack = words.NoPieces
	}
}

// shifted takes a formula apart that is a reading, or a reading with a constant
// added or taken off. Of all else the reading is nil.
func shifted(e calc.Expr, unit *calc.Unit) (reading *calc.Var, added calc.Quantity) {
	if v, ok := e.(*calc.Var); ok {
		return v, calc.NewQuantity(new(big.Rat), unit, calc.Exact)
	}
	b, ok := e.(*calc.Binary)
	if !ok || b.Op != calc.Add && b.Op != calc.Sub {
		return nil, added
	}
	v, ok := b.X.(*calc.Var)
	if !ok || len(calc.Vars(b.Y)) > 0 {
		return nil, added
	}
	y, problem := calc.Eval(b.Y, calc.Readings{})
	q, isOne := y.(calc.Quantity)
	if problem != nil || !isOne {
		return nil, added
	}
	if b.Op == calc.Sub {
		q = calc.NewQuantity(new(big.Rat).Neg(q.Num()), q.Unit, q.Decimals)
	}
	return v, q
}

// wider joins neighbouring regions with one pick, and leaves out single readings
// between two served ones: limits include their ends, so the packs on both sides
// serve such a reading too.
func wider(all []calc.FitRegion) []calc.FitRegion {
	var out []calc.FitRegion
	for i, r := range all {
		k := len(out) - 1
		switch {
		case r.Low.Cmp(r.High) == 0 && r.Pack != nil && k >= 0 && out[k].Pack != nil && i+1 < len(all) && all[i+1].Pack != nil:
		case k >= 0 && out[k].Pack == r.Pack:
			out[k].High = r.High
		default:
			out = append(out, r)
		}
	}
	return out
}

// decimalsOf is how many decimals write the ends of all regions without loss, as
// far as a reading can have them.
func decimalsOf(all []calc.FitRegion) int {
	const most = 6
	d, ten := 0, big.NewRat(10, 1)
	for _, r := range all {
		for _, end := range [...]*big.Rat{r.Low, r.High} {
			x := new(big.Rat).Set(end)
			n := 0
			for ; n < most && !x.IsInt(); n++ {
				x.Mul(x, ten)
			}
			d = max(d, n)
		}
	}
	return d
}
