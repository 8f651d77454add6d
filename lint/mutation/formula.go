package mutation

import (
	"slices"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// The faults of formulas: circles, divisions by zero, results outside their limits.

func circular(w *Workshop) {
	for _, s := range w.steps {
		is, ok := s.Get("is", "").(*model.Formula)
		if !ok || is == nil {
			continue
		}
		text := s.ValueSpan(s.Attr("is")).Text()
		own := s.Def.Name + "." + s.ID
		w.Put(Set(s.Node, "is", text+" + "+own+" - "+own), "%q rests on itself", s.Title())
		w.Put(Set(s.Node, "is", "max("+text+", "+own+")"), "%q is the larger of itself", s.Title())
		helper := "  calculate \"half\" {\n    title = \"Work out half of it\"\n    is    = " + own + " / 2\n  }\n"
		w.Put(Set(s.Node, "is", text+" + calculate.half - calculate.half").And(InsertBefore(s.Node, helper)), "%q in a ring of two", s.Title())
		for _, c := range w.steps {
			if c.Kind.Yields == kind.Pack && slices.Contains(reads(c), s) {
				pack := "choose." + c.ID + ".total"
				w.Put(Set(s.Node, "is", text+" + "+pack+" - "+pack).At(c.Node), "%q in a ring through a choice", s.Title())
			}
		}
	}
}

func divisionByZero(w *Workshop) {
	w.formulas(func(n *model.Node, attr string, f *model.Formula) {
		if attr != "is" && attr != "gap" && attr != "base" {
			return
		}
		for _, r := range f.Refs {
			s := r.To.Step
			if s == nil || s.Kind.Yields != kind.Reading || r.Place != "" || n.Step == nil || s.Places != n.Step.Places || r.Span(n).Text() != s.Def.Name+"."+s.ID {
				continue
			}
			l, ok := s.Limits("likely", "")
			if !ok {
				l, ok = s.Limits("accept", "")
			}
			if !ok || l.Low == nil || l.High == nil {
				continue
			}
			inside := plus(*l.Low, times(width(l), 0.3125), 1)
			text := n.ValueSpan(n.Attr(attr)).Text()
			apart := "(" + r.Span(n).Text() + ` - "` + inside.String() + `")`
			w.Put(Set(n, attr, "("+text+") * "+apart+" / "+apart), "%s over a difference that may be nothing", attr)
			w.Put(Set(n, attr, "("+text+") / ("+apart+" / "+apart+")"), "%s over a ratio of nothing to nothing", attr)
			if low, high := l.Low.Sign(), l.High.Sign(); low < 0 && high > 0 {
				w.Put(Set(n, attr, "("+text+") * "+r.Span(n).Text()+" / "+r.Span(n).Text()), "%s over a reading that may be nothing", attr)
			}
			return
		}
	})
}

func leavesLimit(w *Workshop) {
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Number || !s.Has("accept") || !s.Has("otherwise") && len(s.Nested(kind.Otherwise)) == 0 {
			continue
		}
		l, ok := s.Limits("accept", "")
		low, high, known := w.spread(s)
		if !ok || !known || (l.Low == nil || low >= float(*l.Low)) && (l.High == nil || high <= float(*l.High)) {
			continue
		}
		w.Put(without(s.Node, "otherwise"), "%q without a way out", s.Title())
		if l.Low != nil && l.High != nil && spareLimit(w, s) {
			narrow := plus(*l.Low, times(width(l), 0.25), 1).String()
			w.Put(without(s.Node, "otherwise").And(Set(s.Node, "accept", quote("≥ "+narrow))), "%q: narrower, without a way out", s.Title())
		}
	}
}

// spread is how far a sum or difference of two readings may go, in base units.
func (s *Sound) spread(st *model.Step) (low, high float64, ok bool) {
	f := st.Formula("is", "")
	if f == nil || len(f.Refs) != 2 {
		return 0, 0, false
	}
	text := st.ValueSpan(st.Attr("is")).Text()
	a, b := f.Refs[0].Span(st.Node).Text(), f.Refs[1].Span(st.Node).Text()
	if text != a+" - "+b {
		return 0, 0, false
	}
	x, okx := expected(f.Refs[0].To)
	y, oky := expected(f.Refs[1].To)
	if !okx || !oky {
		return 0, 0, false
	}
	return float(*x.Low) - float(*y.High), float(*x.High) - float(*y.Low), true
}

// expected is where the readings of a step lie: accepted, or likely.
func expected(n *model.Node) (calc.Limits, bool) {
	for _, attr := range []string{"accept", "likely"} {
		if l, ok := n.Limits(attr, ""); ok && l.Low != nil && l.High != nil {
			return l, true
		}
	}
	return calc.Limits{}, false
}
