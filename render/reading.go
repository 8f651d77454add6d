package render

import (
	"strconv"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/values"
	"fettle/render/words"
)

// readings are the boxes of a step that reads a value: one set for each place.
func (w *stepWriter) readings() {
	places := []string{w.sc.place}
	if w.out.Visits != nil {
		places = w.out.Visits
	}
	for _, place := range places {
		w.out.Readings = append(w.out.Readings, w.reading(&scope{w.lowering, place}))
	}
}

func (w *stepWriter) reading(sc *scope) Reading {
	s := w.s
	r := Reading{Key: values.Key(s, sc.keyPlace(s))}
	if w.out.Visits != nil {
		r.Place = sc.place
	}
	if f := s.Formula("likely", sc.place); f != nil {
		r.Likely = w.one(f, sc)
	}
	judge := s.Formula("accept", sc.place)
	r.Accept, r.Judge = w.limit(judge, sc)
	if f := s.Formula("agree_within", sc.place); f != nil {
		r.Agree = w.one(f, sc)
	}
	unit := w.readIn(sc)
	r.Unit = label(unit)
	if unit != nil {
		r.Code = unit.UCUM
	}

	spots := s.Names("spots")
	if n := s.Whole("spots", sc.place, 0); n > 0 && spots == nil {
		for i := range n {
			spots = append(spots, words.Spot(i+1))
		}
	}
	each := s.Places == nil && s.Word("take") == "each" && len(s.Names("spots")) > 0
	labels := w.boxes(spots, s.Whole("repeat", sc.place, 1))
	r.Boxes = make([]Box, len(labels))
	taken := w.o.Given.Readings[r.Key]
	if each {
		for _, spot := range spots {
			taken = append(taken, w.o.Given.Readings[values.Key(s, spot)]...)
		}
	}
	for i, name := range labels {
		r.Boxes[i].Label = name
		if each {
			r.Boxes[i].Key = values.Key(s, spots[i/max(1, len(labels)/len(spots))])
		}
		if i < len(taken) {
			r.Boxes[i].Value = shownIn(taken[i], unit)
		}
	}
	v := w.env.Of(s, sc.keyPlace(s))
	if len(labels) > 1 && !each {
		r.Result = &Box{Label: words.Taken(s.Word("take"))}
		if q, ok := v.(calc.Quantity); ok {
			r.Result.Value = shownIn(q, unit)
		}
	}
	r.Verdict = w.verdict(s, sc)
	return r
}

// boxes label every single reading: spot by spot, and each as often as it is repeated.
func (w *stepWriter) boxes(spots []string, repeat int) []string {
	repeat = min(max(repeat, 1), 100)
	if len(spots) == 0 {
		if repeat == 1 {
			return []string{words.ReadingWord}
		}
		spots = []string{""}
	}
	var labels []string
	for _, spot := range spots {
		for i := range repeat {
			switch {
			case repeat == 1:
				labels = append(labels, spot)
			case spot == "":
				labels = append(labels, words.ReadingNumber(i+1))
			default:
				labels = append(labels, spot+", "+strconv.Itoa(i+1))
			}
		}
	}
	return labels
}

// readIn is the unit that the boxes are filled in: that of the limits or the
// likely readings, else that of the instrument. nil where nobody can tell.
func (w *stepWriter) readIn(sc *scope) *calc.Unit {
	for _, name := range [...]string{"accept", "likely"} {
		if u := w.unitOf(w.value(w.s.Formula(name, sc.place), sc)); u != nil {
			return u
		}
	}
	for _, r := range w.refs(schema.Tool) {
		if _, measures := entry.Instrument(r.To.Plain("kind")); !measures && !r.To.Has("reads") {
			continue
		}
		for _, a := range r.To.ByRole(schema.Property) {
			if f, ok := a.Value.(*model.Formula); ok && (a.Def.Name == "range" || a.Def.Name == "resolution") {
				if u := w.unitOf(w.value(f, sc)); u != nil {
					return u
				}
			}
		}
	}
	return nil
}

func (w *stepWriter) unitOf(v calc.Value) *calc.Unit {
	switch v := v.(type) {
	case calc.Quantity:
		return w.unit(v)
	case calc.Limits:
		for _, q := range [...]*calc.Quantity{v.High, v.Low} {
			if q != nil {
				return w.unit(*q)
			}
		}
	}
	return nil
}

// shownIn is a reading as a number in the unit beside its box.
func shownIn(q calc.Quantity, u *calc.Unit) string {
	if u == nil || !u.Dim.Fits(q.Dim()) {
		return q.String()
	}
	return q.In(u).Rounded().Value()
}
