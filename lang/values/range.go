package values

import (
	"strings"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// Ranges is everything that the values of a manual may turn out to be, over all
// readings that it calls likely and all options. It is a calc.Domain, for one
// goroutine. Variables must name their places: Localize what is asked about first.
type Ranges struct {
	plan   *Plan
	known  map[string]calc.Possible // by Var.Key
	byName map[string]known
}

// Ranges reads the expressions of the manual over all possible readings.
func (p *Plan) Ranges() *Ranges {
	return &Ranges{plan: p, known: map[string]calc.Possible{}, byName: map[string]known{}}
}

// Localize gives e as it stands at a place, ready for RangeOf and Witness.
func Localize(e calc.Expr, place string) calc.Expr { return localize(e, place) }

// Possible says what v may be: a reading lies in what is likely and accepted, a
// calculation equals its formula inside its limits, and of a pack the result
// lies inside its limits whatever is picked.
func (r *Ranges) Possible(v *calc.Var) calc.Possible {
	key := v.Key()
	if p, ok := r.known[key]; ok {
		return p
	}
	r.known[key] = calc.Possible{} // ends a circle, which is reported where it is read
	p := r.possible(v)
	r.known[key] = p
	return p
}

func (r *Ranges) possible(v *calc.Var) calc.Possible {
	if o := r.plan.Find(v.Name); o != nil && strings.HasPrefix(v.Name, "option.") {
		return calc.Possible{Words: o.Names("choices")}
	}
	k, ok := r.byName[v.Name]
	if !ok {
		k = stepOf(r.plan.Manual, v.Name)
		r.byName[v.Name] = k
	}
	if k.step == nil {
		return calc.Possible{}
	}
	switch k.step.Kind.Yields {
	case kind.Reading:
		return read(k.step, v.Place)
	case kind.Number:
		p := calc.Possible{}
		if l, ok := k.step.Limits("accept", v.Place); ok {
			p.Low, p.High = l.Low, l.High
		}
		if f := k.step.Formula("is", v.Place); f != nil {
			p.Is = localize(f.Expr, v.Place)
		}
		return p
	case kind.Pack:
		return r.pack(v, k)
	}
	return calc.Possible{}
}

// read is what a reading may be once it has been accepted.
func read(s *model.Step, place string) calc.Possible {
	var p calc.Possible
	for _, name := range [...]string{"likely", "accept"} {
		l, ok := s.Limits(name, place)
		if !ok {
			continue
		}
		if l.Low != nil && (p.Low == nil || p.Low.Cmp(*l.Low) < 0) {
			p.Low = l.Low
		}
		if l.High != nil && (p.High == nil || p.High.Cmp(*l.High) > 0) {
			p.High = l.High
		}
	}
	if p.Low != nil && p.High != nil && p.Low.Cmp(*p.High) > 0 { // a rule says so
		return calc.Possible{}
	}
	return p
}

// pack is what a field of a pack may be.
func (r *Ranges) pack(v *calc.Var, k known) calc.Possible {
	sel, err := r.plan.Selection(k.step, v.Place)
	if err != nil {
		return calc.Possible{}
	}
	work := func(env calc.Env) (calc.Value, *calc.Problem) {
		pack, p := sel.solve(env)
		if p != nil {
			return nil, p
		}
		return field(pack, k.field), nil
	}
	p := calc.Possible{Work: work, Rests: []calc.Expr{sel.Measured}}
	switch k.field {
	case "result":
		p.Low, p.High = r.result(sel)
	case "total":
		result := &calc.Var{Name: strings.TrimSuffix(v.Name, ".total") + ".result", Place: v.Place, Of: v.Of, At: v.At}
		x, y := sel.Measured, calc.Expr(result)
		if sel.Problem.BuildUp {
			x, y = y, x
		}
		if is, problem := calc.NewBinary(calc.Sub, x, y, v.At); problem == nil {
			p.Is = is
		}
		low, high, _ := r.Guarantee(sel)
		p.Low, p.High = low, high
	case "count":
		low, high := count(sel.Problem.MinPieces), count(sel.Problem.MaxPieces)
		p.Low, p.High = &low, &high
	}
	return p
}

// result is what the choice promises of its result.
func (r *Ranges) result(sel *Selection) (low, high *calc.Quantity) {
	l, h, ok := r.Measured(sel)
	if ok {
		if _, hull, err := sel.Fit.Guarantee(l.In(sel.Unit).Num(), h.In(sel.Unit).Num()); err == nil {
			a, b := sel.Quantity(hull.Low), sel.Quantity(hull.High)
			return &a, &b
		}
	}
	if sel.Problem.Low != nil {
		q := sel.Quantity(sel.Problem.Low)
		low = &q
	}
	if sel.Problem.High != nil {
		q := sel.Quantity(sel.Problem.High)
		high = &q
	}
	return low, high
}

// Guarantee is the thinnest and the thickest pack that may be picked; ok is
// false where nobody says what is likely.
func (r *Ranges) Guarantee(sel *Selection) (low, high *calc.Quantity, ok bool) {
	l, h, ok := r.Measured(sel)
	if !ok {
		return nil, nil, false
	}
	total, _, err := sel.Fit.Guarantee(l.In(sel.Unit).Num(), h.In(sel.Unit).Num())
	if err != nil {
		return nil, nil, false
	}
	a, b := sel.Quantity(total.Low), sel.Quantity(total.High)
	return &a, &b, true
}

// Measured is the range of what the choice measures: the gap, or what is built
// up on. ok is false where it has no ends.
func (r *Ranges) Measured(sel *Selection) (low, high calc.Quantity, ok bool) {
	in := calc.RangeOf(sel.Measured, r).Number
	if in.Lo == nil || in.Hi == nil {
		return low, high, false
	}
	return sel.fromBase(in, true), sel.fromBase(in, false), true
}

// fromBase is an end of an interval, which counts base units, in the unit of the choice.
func (sel *Selection) fromBase(in calc.Interval, low bool) calc.Quantity {
	end := in.Hi
	if low {
		end = in.Lo
	}
	return calc.FromBase(end, sel.Unit, sel.decimals)
}

// solve picks from a full kit.
func (sel *Selection) solve(env calc.Env) (*Pack, *calc.Problem) {
	v, p := calc.Eval(sel.Measured, env)
	if p != nil {
		return nil, p
	}
	reading := v.(calc.Quantity)
	best, err := sel.Fit.Solve(reading.In(sel.Unit).Num())
	if err != nil {
		return nil, &calc.Problem{Message: "No pack fits."}
	}
	pack := &Pack{Selection: sel, Count: best.Pieces,
		Total:  sel.Quantity(best.Total),
		Result: calc.NewQuantity(best.Result, sel.Unit, max(sel.decimals, reading.In(sel.Unit).Decimals))}
	for i, n := range best.Counts {
		if n > 0 {
			pack.Lines = append(pack.Lines, Line{Size: sel.Sizes[i], Label: sel.Sizes[i].ID, Count: n})
		}
	}
	return pack, nil
}
