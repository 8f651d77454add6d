package values

import (
	"errors"
	"math/big"
	"slices"

	"fettle/calc"
	"fettle/lang/model"
)

func count(n int) calc.Quantity { return calc.PlainNumber(big.NewRat(int64(n), 1)) }

// choose picks the pack of a step at a place from what earlier choices have left.
func (e *Env) choose(s *model.Step, place string) (*Pack, *Problem) {
	fail := func(message, remedy string) (*Pack, *Problem) {
		return nil, &Problem{s, place, message, "Nothing can be picked.", remedy}
	}
	if done, known := e.Done(s, place); !done || !known {
		return nil, nil
	}
	sel, err := e.selection(s, place)
	if err != nil {
		return nil, nil // a rule says why
	}
	v, p := calc.Eval(sel.Measured, e.At(place))
	if p != nil {
		if p.Unknown == nil {
			return fail(p.Message, p.Remedy)
		}
		return nil, nil
	}
	reading := v.(calc.Quantity)
	problem, lines, tentative := e.stock(sel)
	fit := sel.Fit
	if !slices.EqualFunc(problem.Sizes, sel.Problem.Sizes, sameSize) {
		if fit, err = calc.NewFit(problem); err != nil {
			return fail("The kit no longer holds enough pieces: earlier choices took them.", "Order more pieces, and say which: "+sel.Part.Title()+".")
		}
	}
	number := reading.In(sel.Unit).Num()
	best, err := fit.Solve(number)
	if errors.Is(err, calc.ErrNoPack) {
		return nil, e.noPack(sel, fit, reading)
	}
	if err != nil {
		return fail("This cannot be picked: "+err.Error()+".", "Hold fewer sizes or allow fewer pieces.")
	}
	pack := &Pack{Selection: sel, Count: best.Pieces, Tentative: tentative}
	for i, n := range best.Counts {
		if n > 0 {
			l := lines[i]
			l.Count = n
			pack.Lines = append(pack.Lines, l)
		}
	}
	slices.SortStableFunc(pack.Lines, func(a, b Line) int { return b.Is.Cmp(a.Is) })
	pack.Total = calc.NewQuantity(best.Total, sel.Unit, sel.decimals)
	pack.Result = calc.NewQuantity(best.Result, sel.Unit, max(sel.decimals, reading.In(sel.Unit).Decimals))
	return pack, nil
}

func sameSize(a, b calc.FitSize) bool { return a.Label == b.Label && a.Stock == b.Stock }

// selection is the problem with the limits as they stand in this build.
func (e *Env) selection(s *model.Step, place string) (*Selection, error) {
	sel, err := e.plan.Selection(s, place)
	if !errors.Is(err, ErrOpenLimits) {
		return sel, err
	}
	v, p := calc.Eval(s.Formula(judged(s), place).Expr, e.At(place))
	if p != nil {
		return nil, p
	}
	switch v := v.(type) {
	case calc.Limits:
		sel = newSelection(s, place, v, alone)
	case calc.Quantity:
		sel = newSelection(s, place, calc.Limits{Low: &v, High: &v, Target: &v}, alone)
	}
	return sel, sel.Err
}

// stock is the problem with the pieces that are left, measured ones by
// themselves, and the line that stands for each size.
func (e *Env) stock(sel *Selection) (calc.FitProblem, []Line, bool) {
	problem := sel.Problem
	problem.Sizes = slices.Clone(problem.Sizes)
	lines := make([]Line, len(problem.Sizes))
	for i, n := range sel.Sizes {
		size := &problem.Sizes[i]
		is := size.Nominal
		if is == nil {
			is = new(big.Rat).Add(size.Low, size.High)
			is.Quo(is, big.NewRat(2, 1))
		}
		lines[i] = Line{Size: n, Label: n.ID, Is: sel.Quantity(is)}
	}
	for _, piece := range e.given.Pieces[sel.Part.ID] {
		for i, n := range sel.Sizes {
			if n.ID != piece.Size || problem.Sizes[i].Stock == 0 || !piece.Is.Dim().Fits(sel.Unit.Dim) {
				continue
			}
			problem.Sizes[i].Stock--
			label := n.ID + " (measured " + piece.Is.String() + ")"
			problem.Sizes = append(problem.Sizes, calc.FitSize{Label: label, Nominal: piece.Is.In(sel.Unit).Num(), Stock: 1})
			lines = append(lines, Line{Size: n, Label: label, Is: piece.Is.In(sel.Unit)})
			break
		}
	}
	tentative := false
	for _, d := range e.plan.before(sel) {
		pack := e.Pack(d.step, d.place)
		if pack == nil {
			if done, known := e.Done(d.step, d.place); done || !known {
				tentative = true
			}
			continue
		}
		for _, l := range pack.Lines {
			for i := range problem.Sizes {
				if problem.Sizes[i].Label == l.Label {
					problem.Sizes[i].Stock -= min(l.Count, problem.Sizes[i].Stock)
					break
				}
			}
		}
	}
	return problem, lines, tentative
}

// before are the choices whose pieces are out of the kit when sel is made.
func (p *Plan) before(sel *Selection) []draw {
	all := p.draws[sel.Part]
	i := slices.IndexFunc(all, func(d draw) bool { return d.step == sel.Step && d.place == sel.Place })
	if i < 0 {
		return nil
	}
	var out []draw
	for _, d := range all[:i] {
		if d.back == 0 || d.back > all[i].at {
			out = append(out, d)
		}
	}
	return out
}

// noPack says what was needed and what comes nearest.
func (e *Env) noPack(sel *Selection, fit *calc.Fit, reading calc.Quantity) *Problem {
	p := &Problem{Step: sel.Step, Place: sel.Place,
		Message: "No pack of " + sel.Part.Title() + " fits " + reading.String() + ".",
		Reason:  "Every pack that is allowed leaves the result outside its limit.",
		Remedy:  sel.Step.Plain("otherwise")}
	if p.Remedy == "" {
		p.Remedy = "Stop, measure again, and ask the supplier for other sizes."
	}
	number := reading.In(sel.Unit).Num()
	thinner, thicker, err := fit.Neighbours(number)
	if err != nil {
		return p
	}
	verb := "leaves"
	if sel.Problem.BuildUp {
		verb = "makes"
	}
	say := func(pack *calc.Pack) string {
		return sel.Quantity(pack.Total).String() + ", which " + verb + " " + sel.Quantity(pack.Result).String()
	}
	switch {
	case thinner != nil && thicker != nil:
		p.Reason = "The nearest packs are " + say(thinner) + ", and " + say(thicker) + "."
	case thinner != nil:
		p.Reason = "The thickest pack is " + say(thinner) + "."
	case thicker != nil:
		p.Reason = "The thinnest pack is " + say(thicker) + "."
	}
	return p
}
