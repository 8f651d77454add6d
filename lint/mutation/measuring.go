package mutation

import (
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

var measuring = []*Class{
	{"measure", "no instrument", []string{"measure/no-instrument"}, noInstrument},
	{"measure", "instrument too coarse", []string{"measure/instrument-too-coarse"}, tooCoarse},
	{"measure", "outside the instrument's range", []string{"measure/outside-instrument-range"}, outsideInstrument},
	{"measure", "wrong kind of instrument", []string{"measure/wrong-instrument", "units/wrong-dimension"}, wrongInstrument},
	{"measure", "likely readings never accepted", []string{"measure/never-accepted"}, neverAccepted},
	{"measure", "acceptance with no otherwise", []string{"measure/no-otherwise"}, noOtherwise},
	{"measure", "several spots measured as one", []string{"measure/spots-measured-as-one"}, spotsAsOne},
	{"measure", "repeated reading with no take", []string{"measure/no-take"}, noTake},
	{"measure", "setting disturbed by its lock", []string{"measure/setting-disturbed"}, settingDisturbed},
}

// instruments lists the tools of a step that read something.
func instruments(s *model.Step) []*model.Node {
	return toolsThat(s, func(t *model.Node) bool {
		_, known := entry.Instrument(t.Plain("kind"))
		return (known || t.Has("reads")) && t.Has("resolution")
	})
}

// readings calls visit for each step that reads with exactly one instrument.
func (s *Sound) readings(visit func(st *model.Step, with *model.Node)) {
	for _, st := range s.steps {
		if st.Kind.Yields == kind.Reading {
			if all := instruments(st); len(all) == 1 {
				visit(st, all[0])
			}
		}
	}
}

// serves is the width of the limits that a reading serves in the end: its own,
// or those of what is worked out or chosen from it.
func (s *Sound) serves(st *model.Step) (calc.Quantity, []*model.Node) {
	if l, ok := limitsOf(st.Node, "accept"); ok {
		return width(l), []*model.Node{st.Node}
	}
	for _, by := range s.steps {
		for _, r := range reads(by) {
			if r != st {
				continue
			}
			for _, attr := range []string{"accept", "leaves", "makes"} {
				if l, ok := limitsOf(by.Node, attr); ok {
					return width(l), []*model.Node{st.Node, by.Node}
				}
			}
		}
	}
	return calc.Quantity{}, nil
}

func noInstrument(w *Workshop) {
	w.readings(func(s *model.Step, with *model.Node) {
		if !w.Spared(with) {
			return
		}
		w.Put(DropRef(s.Node, "tools", with), "%q without %q", s.Title(), with.Title())
		all := true
		for _, r := range s.AllRefs("tools") {
			all = all && w.Spared(r.To)
		}
		if len(s.AllRefs("tools")) > 1 && all {
			w.Put(Unset(s.Node, "tools"), "%q without tools", s.Title())
		}
	})
}

func tooCoarse(w *Workshop) {
	w.readings(func(s *model.Step, with *model.Node) {
		wide, where := w.serves(s)
		if !wide.Valid() || wide.Sign() <= 0 || wide.Dim() != calc.Length {
			return
		}
		w.Put(w.Variant(s.Node, "tools", with, Set(with, "resolution", quote(wide.String()))).At(where...), "%q read to %s", s.Title(), wide)
		w.Put(w.Variant(s.Node, "tools", with, Set(with, "accuracy", quote(wide.String()))).At(where...), "%q read within %s", s.Title(), wide)
		half := times(wide, 0.5)
		w.Put(w.Variant(s.Node, "tools", with, Set(with, "resolution", quote(half.String())).And(Set(with, "accuracy", quote(half.String())))).At(where...), "%q read to %s", s.Title(), half)
	})
}

func outsideInstrument(w *Workshop) {
	w.readings(func(s *model.Step, with *model.Node) {
		l, ok := limitsOf(s.Node, "likely")
		if !ok {
			l, ok = limitsOf(s.Node, "accept")
		}
		r, stated := with.Limits("range", "")
		if !ok || !stated || r.Low == nil || r.High == nil || l.High.Dim() != r.High.Dim() || l.High.Sign() <= 0 {
			return
		}
		far := plus(*l.High, width(l), 5)
		ranges := []string{
			band(far, plus(far, far, 2)),
			"0.." + plus(*l.Low, times(width(l), 0.5), 1).String(),
		}
		for i, text := range ranges {
			if i == 1 && l.Low.Sign() <= 0 || i == 0 && (strings.Contains(with.Plain("kind"), "dial") || strings.Contains(with.Plain("kind"), "indicator")) {
				continue
			}
			w.Put(w.Variant(s.Node, "tools", with, Set(with, "range", quote(text))), "%q with an instrument of %s", s.Title(), text)
		}
	})
}

func wrongInstrument(w *Workshop) {
	others := []string{
		"tool \"thermometer_b\" {\n  name       = \"Probe thermometer\"\n  kind       = \"thermometer\"\n  range      = \"-20..300 °C\"\n  resolution = \"0.1 °C\"\n  accuracy   = \"0.2 °C\"\n}\n",
		"tool \"scales_b\" {\n  name       = \"Bench scales\"\n  kind       = \"scales\"\n  range      = \"0..30 kg\"\n  resolution = \"0.001 kg\"\n  accuracy   = \"0.002 kg\"\n}\n",
		"tool \"pressure_b\" {\n  name       = \"Test pressure gauge\"\n  kind       = \"pressure gauge\"\n  range      = \"0..16 bar\"\n  resolution = \"0.01 bar\"\n  accuracy   = \"0.02 bar\"\n}\n",
	}
	i := 0
	w.readings(func(s *model.Step, with *model.Node) {
		l, ok := limitsOf(s.Node, "accept")
		if !ok {
			l, ok = limitsOf(s.Node, "likely")
		}
		if !ok || !w.Spared(with) || l.Low.Dim() != calc.Length {
			return
		}
		text := others[i%len(others)]
		label := quoted.FindStringSubmatch(text)[1]
		i++
		w.Put(InsertAfter(w.Node, text).And(SwapRef(s.Node, "tools", with, "tool."+label)).At(s.Node), "%q with %s", s.Title(), label)
		title := strings.ToLower(s.Title())
		if k := with.Plain("kind"); strings.Contains(title, "bore") && strings.Contains(k, "bore gauge") {
			w.Put(w.Variant(s.Node, "tools", with, Set(with, "kind", `"outside micrometer"`)), "%q, a bore, with an outside micrometer", s.Title())
		} else if (k == "micrometer" || k == "outside micrometer") && (strings.Contains(title, "journal") || strings.Contains(title, "shaft") || strings.Contains(title, "pin")) {
			w.Put(w.Variant(s.Node, "tools", with, Set(with, "kind", `"bore gauge"`)), "%q, an outside, with a bore gauge", s.Title())
		}
	})
}

func neverAccepted(w *Workshop) {
	for _, s := range w.steps {
		l, ok := limitsOf(s.Node, "accept")
		if s.Kind.Yields != kind.Reading || !ok || !constant(s.Node, "accept") {
			continue
		}
		above := plus(*l.High, width(l), 1)
		text := band(above, plus(above, width(l), 1))
		if strings.HasSuffix(above.String(), "°") {
			continue
		}
		w.Put(Set(s.Node, "likely", quote(text)).At(s.Node), "%q: likely %s", s.Title(), text)
		if l.Low.Sign() > 0 && float(*l.Low) > float(width(l)) {
			text := "0.." + plus(*l.Low, times(width(l), 0.25), -1).String()
			w.Put(Set(s.Node, "likely", quote(text)).At(s.Node), "%q: likely %s", s.Title(), text)
		}
		if k, stated := s.Limits("likely", ""); stated && k.Low != nil && k.High != nil && s.Formula("accept", "").Literal != nil {
			over := plus(*k.High, width(k), 1)
			text := band(over, plus(over, width(l), 1))
			w.Put(Set(s.Node, "accept", quote(text)), "%q: accepts %s", s.Title(), text)
		}
	}
}

func noOtherwise(w *Workshop) {
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Reading && s.Def.Name != "inspect" || !s.Has("accept") && !s.Has("criterion") {
			continue
		}
		if s.Has("otherwise") {
			w.Put(Unset(s.Node, "otherwise"), "%q: no way out", s.Title())
			if !strings.Contains(s.ValueSpan(s.Attr("otherwise")).Text(), "${") {
				w.Put(Set(s.Node, "otherwise", `""`), "%q: an empty way out", s.Title())
			}
		} else if d := DropBlocks(s.Node, "otherwise"); d != nil && spares(w, s) {
			w.Put(d, "%q: no way out", s.Title())
		}
	}
}

// spares reports whether the tools of a step's branches are used elsewhere too.
func spares(w *Workshop, s *model.Step) bool {
	for _, b := range s.Nested(kind.Otherwise) {
		for _, st := range b.Steps {
			for _, attr := range []string{"tools", "supplies", "ppe"} {
				for _, r := range st.AllRefs(attr) {
					if !w.Spared(r.To) {
						return false
					}
				}
			}
		}
	}
	return true
}

func spotsAsOne(w *Workshop) {
	says := []string{
		"Measure at three points round the edge.",
		"Measure at the top, in the middle and at the bottom.",
		"Take readings at four places.",
		"Measure at both ends.",
	}
	i := 0
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Reading || s.Def.Name != "measure" || s.Has("spots") || s.Has("repeat") {
			continue
		}
		if s.Places != nil && len(s.Places.Names("names")) == 2 && strings.Contains(says[i%len(says)], "both") {
			i++ // which may mean the two places
		}
		w.Put(Say(s.Node, "text", says[i%len(says)]), "%q: %s", s.Title(), says[i%len(says)])
		i++
	}
	for _, s := range w.steps {
		if s.Has("spots") && !s.Has("repeat") {
			n := len(s.Names("spots"))
			if n >= 2 && n <= 5 && (s.Places == nil || len(s.Places.Names("names")) != n) {
				number := []string{"two", "three", "four", "five"}[n-2]
				w.Put(without(s.Node, "spots", "take", "agree_within").And(Say(s.Node, "text", "Measure at "+number+" places.")), "%q: the spots in the prose only", s.Title())
			}
		}
	}
}

func noTake(w *Workshop) {
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Reading {
			continue
		}
		if s.Has("take") && (s.Has("repeat") || s.Has("spots")) {
			w.Put(Unset(s.Node, "take"), "%q: which of them counts is not said", s.Title())
		}
		if !s.Has("take") && s.Def.Name == "measure" {
			w.Put(Set(s.Node, "repeat", "3"), "%q three times", s.Title())
			w.Put(Set(s.Node, "spots", `["near end", "far end"]`), "%q at two spots", s.Title())
		}
	}
}

// overlaps reports whether a step reads or looks at what another touches.
func overlaps(s, a *model.Step) bool {
	return (s.Kind.Yields == kind.Reading || s.Def.Name == "inspect") &&
		slices.ContainsFunc(s.AllRefs("on"), func(r model.Ref) bool { return names(a.Node, "on", r.To) })
}

func settingDisturbed(w *Workshop) {
	for _, a := range w.Doing(kind.Sets) {
		nut := a.Ref("locks_with")
		if nut == nil {
			continue
		}
		var lock *model.Step
		var again []*model.Step // the readings behind the lock
		for _, s := range w.After(a) {
			if lock == nil && does(s, kind.Tightens, nut) {
				lock = s
			} else if lock != nil && overlaps(s, a) {
				again = append(again, s)
			}
		}
		if lock == nil {
			continue
		}
		if len(again) == 1 && w.Uses(again[0].Node) == 0 {
			s := again[0]
			w.Put(w.Drop(s.Node).At(a.Node, lock.Node), "drop %q", s.Title())
			w.Put(w.sometimes(s).At(a.Node, lock.Node), "%q under an option only", s.Title())
			if lock.Procedure == s.Procedure {
				w.Put(MoveBefore(s.Node, lock.Node).At(a.Node, lock.Node), "%q before %q", s.Title(), lock.Title())
			}
		}
		if len(again) > 0 && again[len(again)-1].Procedure == lock.Procedure && !lock.Has("from") && !w.inBranch(kind.Slackens, nut) {
			text := "  loosen \"" + a.ID + "_again\" {\n    title     = \"Slacken the lock nut again\"\n    fastening = fastening." + nut.ID + "\n    by        = \"1/4 turn\"\n    takes     = \"1 min\"\n  }\n\n" +
				Copy(lock.Node, lock.ID+"_twice", without(lock.Node, "was"), Set(lock.Node, "from", `"loosened"`))
			w.Put(InsertAfter(again[len(again)-1].Node, text).At(a.Node), "the lock of %q tightened once more", a.Title())
		}
	}
	// A setting that was locked by nothing, and is now said to be.
	for _, a := range w.Doing(kind.Sets) {
		if a.Has("locks_with") {
			continue
		}
		for _, s := range w.After(a) {
			if len(Does(s, kind.Tightens)) == 1 && s.Procedure == a.Procedure && !optional(s) {
				w.Put(Set(a.Node, "locks_with", "fastening."+Does(s, kind.Tightens)[0].ID).At(s.Node), "%q is kept by %q", a.Title(), s.Title())
				break
			}
		}
	}
}
