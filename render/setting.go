package render

import (
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/render/words"
)

// settings are the numbers to set: those of the step, and those of the
// fastening that it tightens.
func (w *stepWriter) settings() {
	if w.s.Kind.Yields == kind.Number || w.s.Kind.Yields == kind.Pack {
		return
	}
	if f := w.object(kind.Tightens); f != nil {
		w.torque(f)
	}
	for _, a := range w.s.ByRole(schema.Value) {
		f, ok := model.AtPlace(a.Value, w.sc.place).(*model.Formula)
		if ok && !(does(w.s, kind.Tightens) && a.Def.Name == "to") {
			w.set(words.Label(a.Def), f)
		}
	}
	for _, a := range w.s.ByRole(schema.Duration) {
		if f, ok := model.AtPlace(a.Value, w.sc.place).(*model.Formula); ok && a.Def.Name != "takes" {
			w.set(words.Label(a.Def), f)
		}
	}
}

func (w *stepWriter) set(label string, f *model.Formula) {
	if f == nil {
		return
	}
	set, allowed := w.amount(f, w.sc)
	s := Setting{Label: label, Allowed: allowed}
	if set != nil {
		s.Amount = *set
	}
	if f.Const == nil {
		s.Formula, s.Live = calc.FormulaWith(f.Expr, w.sc), w.live.say(f, w.sc.place)
	}
	w.out.Settings = append(w.out.Settings, s)
}

// torque prints the torque of a fastening with its stages, what the wrench is
// set to where an adapter is on it, the angle, and the order of tightening.
func (w *stepWriter) torque(n *model.Node) {
	place := w.sc.place
	f := w.s.Formula("to", place)
	var stages []*model.Formula
	if f == nil {
		stages = n.Formulas("stages", place)
		if f = n.Formula("torque", place); f == nil && len(stages) > 0 {
			f = stages[len(stages)-1]
		}
	}
	if f != nil {
		var steps []Amount
		if len(stages) > 1 {
			for _, st := range stages {
				if a := w.one(st, w.sc); a != nil {
					steps = append(steps, *a)
				}
			}
		}
		w.set(words.TightenTo, f)
		s := &w.out.Settings[len(w.out.Settings)-1]
		s.Stages = steps
		w.adapter(f, stages)
	}
	for _, a := range n.ByRole(schema.Value) {
		switch v := model.AtPlace(a.Value, place).(type) {
		case *model.Formula:
			if a.Def.Name != "torque" && a.Def.Name != "stages" {
				w.set(words.Label(a.Def), v)
			}
		case model.Flag:
			switch s := words.Flag(a.Def.Name); {
			case bool(v) && s != "":
				w.say("", Words(s))
			case !bool(v) && a.Def.Name == "drag_included":
				w.say("", Words(words.DragExcluded))
			}
		}
	}
	w.pattern(n)
}

// adapter puts the setting of the wrench before the torque, where one of the
// tools is an adapter with a length of its own.
func (w *stepWriter) adapter(f *model.Formula, stages []*model.Formula) {
	var wrench, arm *model.Node
	for _, r := range w.refs(schema.Tool) {
		reads, _ := entry.Instrument(r.To.Plain("kind"))
		isWrench := contains(reads, "torque") || r.To.Plain("reads") == "torque"
		switch {
		case isWrench:
			wrench = r.To
		case r.To.Has("length"):
			arm = r.To
		}
	}
	if wrench == nil || arm == nil {
		return
	}
	long, short := wrench.Quantity("length", ""), arm.Quantity("length", "")
	if long == nil || short == nil {
		return
	}
	var angle calc.Quantity // straight on where none is given
	if q := arm.Quantity("offset", ""); q != nil {
		angle = *q
	}
	setting := func(f *model.Formula) *Amount {
		q := f.Quantity()
		if q == nil {
			q = middleOf(f)
		}
		if q == nil {
			return nil
		}
		s, problem := joint.WrenchSetting(*q, *long, *short, angle)
		if problem != nil {
			return nil
		}
		if s.Decimals != calc.Exact { // the lever divides: one decimal more keeps the rounding small
			s = calc.NewQuantity(s.Num(), s.Unit, q.Decimals+1)
		}
		return w.quantity(s)
	}
	set := setting(f)
	if set == nil {
		return
	}
	// The stages are set on the wrench; the torque they give stands beside it.
	s := Setting{Label: words.SetWrench, Amount: *set, Note: words.WithAdapter(arm.Title(), angle)}
	if len(stages) > 1 {
		for _, st := range stages {
			if a := setting(st); a != nil {
				s.Stages = append(s.Stages, *a)
			}
		}
	}
	k := len(w.out.Settings) - 1
	w.out.Settings[k].Label, w.out.Settings[k].Aside = words.AtFastening, true
	w.out.Settings = append(w.out.Settings[:k:k], s, w.out.Settings[k])
}

// middleOf is the middle of a torque that is given as a range.
func middleOf(f *model.Formula) *calc.Quantity {
	l, ok := f.Limits()
	if !ok || l.Low == nil || l.High == nil {
		return nil
	}
	sum, err := l.Low.Add(*l.High)
	if err != nil {
		return nil
	}
	half, err := sum.Div(calc.PlainNumber(two))
	if err != nil {
		return nil
	}
	return &half
}

// pattern is the order in which the fasteners of a fastening are tightened.
func (w *stepWriter) pattern(n *model.Node) {
	names := n.Names("pattern")
	if len(names) == 0 {
		return
	}
	p := &Pattern{Layout: n.Plain("layout"), Order: names}
	if len(names) == 1 && names[0] == "criss-cross" {
		p.Layout, p.Order = crissCross(p.Layout, n.Whole("quantity", w.sc.place, 1))
	}
	if len(p.Order) > 1 {
		w.out.Pattern = p
	}
}

// crissCross works the order out; the layout is given back with its numbers.
func crissCross(layout string, count int) (string, []string) {
	var l joint.Layout
	word, size, _ := strings.Cut(layout, " ")
	rows, columns, sized := strings.Cut(size, "x")
	r, errR := strconv.Atoi(rows)
	c, errC := strconv.Atoi(columns)
	switch {
	case word == "row":
		l = joint.Row(count)
	case word == "grid" && sized && errR == nil && errC == nil && r*c == count:
		l = joint.Grid(r, c)
	case word == "grid" && count%2 == 0:
		l, layout = joint.Grid(2, count/2), "grid 2x"+strconv.Itoa(count/2)
	default:
		l, layout = joint.Circle(count), "circle"
	}
	order, problem := joint.CrissCross(l)
	if problem != nil {
		return layout, nil
	}
	all := make([]string, len(order))
	for i, n := range order {
		all[i] = strconv.Itoa(n)
	}
	return layout, all
}
