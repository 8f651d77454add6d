package mutation

import (
	"slices"
	"strings"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// The faults of the torque itself: its amount, its stages, its pattern, its wrench.

// scaled gives a fastening another torque, its stages with it.
func scaled(f *model.Node, by float64) *Change {
	torque := scale(literal(f, "torque"), by)
	if torque == "" {
		return nil
	}
	c := Set(f, "torque", quote(torque))
	if a := f.Attr("stages"); a != nil {
		c = c.And(Set(f, "stages", scale(f.ValueSpan(a).Text(), by)))
	}
	return c
}

// wrenches lists the torque tools of a step.
func wrenches(st *model.Step) []*model.Node {
	return toolsThat(st, func(t *model.Node) bool {
		k := t.Plain("kind")
		return strings.Contains(k, "torque")
	})
}

// clamps are the fastenings that a class and K screen, with their tightenings.
func (s *Sound) clamps(visit func(f *model.Node, ts []*model.Step)) {
	for _, f := range s.Own("fastening") {
		ts := s.Doing(kind.Tightens, f)
		if f.Word("does") == "clamp" && f.Has("thread") && f.Has("bolt_class") && literal(f, "torque") != "" && len(ts) > 0 {
			visit(f, ts)
		}
	}
}

// reach reports whether all wrenches of the steps still serve a torque.
func reach(f *model.Node, ts []*model.Step, by float64) bool {
	l, ok := f.Limits("torque", "")
	if !ok || l.Low == nil || l.High == nil {
		return false
	}
	low, high := float(*l.Low)*by, float(*l.High)*by
	for _, st := range f.Formulas("stages", "") {
		if q := st.Quantity(); q != nil {
			low = min(low, float(*q)*by)
		}
	}
	for _, t := range ts {
		if t.Has("to") {
			return false
		}
		for _, wr := range wrenches(t) {
			r, ok := wr.Limits("range", "")
			if !ok || r.Low == nil || r.High == nil || low < float(*r.Low) || low < 0.2*float(*r.High) || high > float(*r.High) {
				return false
			}
		}
	}
	return true
}

func held60(ts []*model.Step) bool {
	for _, t := range ts {
		if !t.Has("held_by") && !t.Has("turning") {
			return false
		}
	}
	return true
}

// saysTorque reports a step whose prose gives a torque.
func saysTorque(t *model.Step) bool {
	return strings.Contains(t.Plain("text"), "N·m") || strings.Contains(t.Plain("text"), "lb·") || strings.Contains(t.Plain("title"), "N·m")
}

func highPreload(w *Workshop) {
	w.clamps(func(f *model.Node, ts []*model.Step) {
		l, _ := f.Limits("torque", "")
		if l.High == nil {
			return
		}
		for _, by := range []float64{1.7, 2.5} {
			if reach(f, ts, by) && !f.Has("angle") && !slices.ContainsFunc(ts, saysTorque) && (float(*l.High)*by < 60 || held60(ts)) && !soft(f) {
				w.Put(scaled(f, by).At(nodes(ts)...), "%q: torque × %v", f.Title(), by)
			}
		}
		if slices.ContainsFunc(ts, func(t *model.Step) bool { return t.Has("to") }) {
			return // which would be too much as well
		}
		if class := map[string]string{"8.8": "4.6", "10.9": "5.8", "grade 5": "grade 1"}[f.Plain("bolt_class")]; class != "" && !f.Has("nut_class") && !soft(f) {
			w.Put(Set(f, "bolt_class", quote(class)).At(nodes(ts)...), "%q: class %s", f.Title(), class)
		}
		if f.Has("nut_factor") && !soft(f) {
			w.Put(Set(f, "nut_factor", quote("0.07..0.09")).At(nodes(ts)...), "%q: a slippery thread", f.Title())
		}
	})
}

// soft reports a joint whose torque something weaker than the bolt sets.
func soft(f *model.Node) bool {
	about := f.Plain("basis")
	for _, r := range f.AllRefs("stack") {
		about += " " + r.To.Plain("material") + " " + r.To.Title()
	}
	about = strings.ToLower(about)
	return slices.ContainsFunc([]string{"rubber", "cork", "paper", "leather", "wood", "plastic", "glass"}, func(w string) bool { return strings.Contains(about, w) })
}

func nodes(steps []*model.Step) []*model.Node {
	var all []*model.Node
	for _, s := range steps {
		all = append(all, s.Node)
	}
	return all
}

func lowPreload(w *Workshop) {
	w.clamps(func(f *model.Node, ts []*model.Step) {
		if soft(f) {
			return
		}
		for _, by := range []float64{0.3, 0.4} {
			if reach(f, ts, by) {
				w.Put(scaled(f, by).At(nodes(ts)...), "%q: torque × %v", f.Title(), by)
			}
		}
		if f.Has("nut_factor") {
			w.Put(Set(f, "nut_factor", quote("0.50..0.60")).At(nodes(ts)...), "%q: a rough thread", f.Title())
		}
	})
}

func stripsFirst(w *Workshop) {
	w.clamps(func(f *model.Node, ts []*model.Step) {
		if f.Has("nut_class") || soft(f) {
			return
		}
		size := strings.TrimLeft(f.Plain("thread"), "M")
		short := map[byte]string{'5': "1.5 mm", '6': "2 mm", '8': "2.5 mm", '1': "3 mm"}[size[0]]
		if strings.Contains(size, "/") {
			short = "0.08 in"
		}
		if f.Has("thread_length") && short != "" {
			w.Put(Set(f, "thread_length", quote(short)).At(nodes(ts)...), "%q: %s of thread", f.Title(), short)
			if f.Plain("thread_material") == "steel" || f.Plain("thread_material") == "cast iron" {
				w.Put(Set(f, "thread_length", quote(short)).And(Set(f, "thread_material", `"aluminium"`)).At(nodes(ts)...), "%q: %s of thread in aluminium", f.Title(), short)
			}
		}
	})
}

func outsideWrench(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		l, ok := f.Limits("torque", "")
		if to, stated := t.Limits("to", ""); stated {
			l, ok = to, true
		}
		if !ok || l.Low == nil || l.High == nil || !constant(f, "torque") {
			continue
		}
		for _, wr := range wrenches(t) {
			if !wr.Has("range") || len(wrenches(t)) > 1 || slices.ContainsFunc(t.AllRefs("tools"), func(r model.Ref) bool { return r.To.Plain("kind") == "adapter" }) {
				continue
			}
			v := func(low, high float64) string { return quote(band(times(*l.High, low), times(*l.High, high))) }
			w.Put(w.Variant(t.Node, "tools", wr, Set(wr, "range", v(0.2, 0.8))).At(f), "%q: a wrench that ends below the torque", t.Title())
			w.Put(w.Variant(t.Node, "tools", wr, Set(wr, "range", v(1.5, 8))).At(f), "%q: a wrench that begins above the torque", t.Title())
			w.Put(w.Variant(t.Node, "tools", wr, Set(wr, "range", v(0.05, 7))).At(f), "%q: the first seventh of a wrench", t.Title())
			if st := f.Formulas("stages", ""); len(st) > 1 && !t.Has("to") && st[0].Quantity() != nil && float(*st[0].Quantity()) < 0.55*float(*l.Low) {
				w.Put(w.Variant(t.Node, "tools", wr, Set(wr, "range", v(0.75, 3))).At(f), "%q: a wrench that begins above the first stage", t.Title())
			}
		}
	}
}

func noWrench(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		all := wrenches(t)
		if len(all) == 0 {
			continue
		}
		spared := true
		kept := t.AllRefs("tools")
		for _, wr := range all {
			spared = spared && w.Spared(wr)
		}
		if !spared || len(all) > 1 {
			continue
		}
		w.Put(DropRef(t.Node, "tools", all[0]).At(f), "%q without %q", t.Title(), all[0].Title())
		for _, r := range kept {
			spared = spared && w.Spared(r.To)
		}
		if spared && !t.Has("held_by") {
			w.Put(Unset(t.Node, "tools").At(f), "%q without tools", t.Title())
		}
	}
}

func stagesWrong(w *Workshop) {
	for _, f := range w.Own("fastening") {
		torque := literal(f, "torque")
		l, ok := f.Limits("torque", "")
		if !ok || torque == "" || l.Low == nil || l.High == nil || l.Low.Cmp(*l.High) == 0 || len(w.Doing(kind.Tightens, f)) == 0 {
			continue
		}
		u := unitOf(torque)
		mid := scale(strings.SplitN(strings.SplitN(torque, "±", 2)[0], "..", 2)[0], 0.9)
		falls := []string{quote(times(*l.Low, 0.8).String()), quote(times(*l.Low, 0.7).String()), quote(torque)}
		misses := []string{quote(times(*l.Low, 0.6).String()), quote(times(*l.Low, 0.8).String())}
		if mid == "" || u == "" || !reach(f, w.Doing(kind.Tightens, f), 0.55) {
			continue
		}
		ts := nodes(w.Doing(kind.Tightens, f))
		w.Put(Set(f, "stages", "["+strings.Join(falls, ", ")+"]").At(ts...), "%q: stages fall", f.Title())
		w.Put(Set(f, "stages", "["+strings.Join(misses, ", ")+"]").At(ts...), "%q: stages end below the torque", f.Title())
	}
	for _, f := range w.Own("fastening") {
		st, ok := f.Get("stages", "").(model.List)
		if !ok || len(st) < 2 {
			continue
		}
		all := quoted.FindAllString(f.ValueSpan(f.Attr("stages")).Text(), -1)
		ts := nodes(w.Doing(kind.Tightens, f))
		if len(all) > 2 {
			all[0], all[1] = all[1], all[0]
			w.Put(Set(f, "stages", "["+strings.Join(all, ", ")+"]").At(ts...), "%q: two stages change places", f.Title())
			all[0], all[1] = all[1], all[0]
		}
		slices.Reverse(all)
		w.Put(Set(f, "stages", "["+strings.Join(all, ", ")+"]").At(ts...), "%q: stages backwards", f.Title())
		slices.Reverse(all)
		w.Put(Set(f, "stages", "["+strings.Join(all[:len(all)-1], ", ")+"]").At(ts...), "%q: the last stage is missing", f.Title())
	}
}

func noPattern(w *Workshop) {
	for _, f := range w.Own("fastening") {
		ts := w.Doing(kind.Tightens, f)
		if f.Whole("quantity", "", 1) < 4 || !f.Has("pattern") || len(ts) == 0 {
			continue
		}
		w.Put(Unset(f, "pattern").At(nodes(ts)...), "%q without a pattern", f.Title())
		if f.Has("layout") {
			w.Put(Unset(f, "pattern").And(Unset(f, "layout")).At(nodes(ts)...), "%q without layout and pattern", f.Title())
		}
	}
}

func unsoundPattern(w *Workshop) {
	for _, f := range w.Own("fastening") {
		n := f.Whole("quantity", "", 1)
		layout := f.Plain("layout")
		if n < 4 || !f.Has("pattern") || layout == "row" || layout == "grid" {
			continue
		}
		var round, again, short []string
		for i := range n {
			name := quote(string(rune('0'+(i+1)/10)) + string(rune('0'+(i+1)%10)))
			name = strings.Replace(name, `"0`, `"`, 1)
			round = append(round, name)
		}
		again = append(slices.Clone(round[:n-1]), round[0])
		short = slices.Clone(round[:n-1])
		ts := nodes(w.Doing(kind.Tightens, f))
		for _, c := range []struct {
			order []string
			what  string
		}{{round, "round and round"}, {again, "one twice"}, {short, "one left out"}} {
			w.Put(Set(f, "pattern", "["+strings.Join(c.order, ", ")+"]").At(ts...), "%q: %s", f.Title(), c.what)
		}
	}
}
