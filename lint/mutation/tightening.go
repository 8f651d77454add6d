package mutation

import (
	"slices"
	"strings"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// The faults of tightening that have to do with what is used besides the bolt:
// oil, sockets, adapters, locks, somebody to hold the part.

func lubricantDiffers(w *Workshop) {
	for _, f := range w.Own("fastening") {
		lub := f.Ref("lubricant")
		ts := w.Doing(kind.Tightens, f)
		if lub == nil || len(ts) == 0 {
			continue
		}
		for _, c := range w.Doing(kind.Wets) {
			if !names(c.Node, "on", f) || !names(c.Node, "supplies", lub) {
				continue
			}
			// the coat that the last tightening rests on
			later := slices.ContainsFunc(w.After(c), func(s *model.Step) bool { return Is(s, kind.Wets) && names(s.Node, "on", f) })
			t := ts[len(ts)-1]
			if later || w.Pos(c) > w.Pos(t) || !slices.ContainsFunc(w.After(c), func(s *model.Step) bool { return does(s, kind.Tightens, f) && s.Word("from") == "hand" }) {
				continue
			}
			where := append(nodes(ts), f)
			if len(c.AllRefs("on")) == 1 {
				if w.Spared(lub) {
					w.Put(w.Drop(c.Node).At(where...), "drop %q", c.Title())
				}
			} else {
				w.Put(DropRef(c.Node, "on", f).At(where...), "%q leaves out %q", c.Title(), f.Title())
			}
			if !f.Has("locked_by") && f.Has("nut_factor") {
				w.Put(Set(f, "lubricant", `"dry"`).At(append(where, c.Node)...), "%q said to be dry", f.Title())
			}
			for _, other := range w.Of("supply") {
				if k := other.Plain("kind"); w.Spared(lub) && other != lub && k != lub.Plain("kind") && (k == "oil" || k == "grease" || k == "anti-seize" || k == "engine oil" || k == "gear oil") {
					w.Put(SwapRef(c.Node, "supplies", lub, "supply."+other.ID).At(where...), "%q with %q", c.Title(), other.Title())
					break
				}
			}
		}
	}
	for _, f := range w.Own("fastening") {
		if ts := w.Doing(kind.Tightens, f); f.Plain("lubricant") == "dry" && f.Has("nut_factor") && len(ts) > 0 && !f.Has("locked_by") {
			for _, other := range w.Of("supply") {
				if other.Plain("kind") == "oil" || other.Plain("kind") == "engine oil" {
					w.Put(Set(f, "lubricant", "supply."+other.ID).At(nodes(ts)...), "%q said to be oiled", f.Title())
					break
				}
			}
		}
	}
}

func isSocket(t *model.Node) bool {
	return t.Has("size") && t.Has("drive") && (t.Plain("kind") == "socket" || t.Plain("kind") == "bit")
}

func socketWrong(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		if !f.Has("across_flats") {
			continue
		}
		for _, s := range toolsThat(t, isSocket) {
			for _, other := range w.Of("tool") {
				if isSocket(other) && other.Plain("size") != s.Plain("size") && other.Plain("drive") == s.Plain("drive") && w.Spared(s) {
					w.Put(SwapRef(t.Node, "tools", s, "tool."+other.ID).At(f), "%q with %q", t.Title(), other.Title())
					break
				}
			}
			number := strings.Replace(s.Plain("size"), "1", "2", 1)
			if number == s.Plain("size") {
				number = strings.Replace(strings.Replace(number, "4", "6", 1), "9", "8", 1)
			}
			if number != s.Plain("size") {
				w.Put(w.Variant(t.Node, "tools", s, Set(s, "size", quote(number))).At(f), "%q with a socket of %s", t.Title(), number)
			}
			if len(wrenches(t)) == 1 {
				drive := "3/4 in"
				w.Put(w.Variant(t.Node, "tools", s, Set(s, "drive", quote(drive))).At(f), "%q with a socket of %s drive", t.Title(), drive)
			}
		}
		if ts := w.Doing(kind.Tightens, f); len(ts) == 1 && len(toolsThat(t, isSocket)) == 1 && !f.Shared && len(w.Doing(kind.Opens, f))+len(w.Doing(kind.Slackens, f)) == 0 && !t.Has("held_by") {
			if other := strings.Replace(strings.Replace(f.Plain("across_flats"), "1", "3", 1), "7", "8", 1); other != f.Plain("across_flats") {
				w.Put(Set(f, "across_flats", quote(other)).At(t.Node), "%q: a head of %s", f.Title(), other)
			}
		}
	}
}

func adapterWrong(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		for _, a := range toolsThat(t, func(n *model.Node) bool { return n.Plain("kind") == "adapter" }) {
			if a.Has("length") {
				w.Put(w.Variant(t.Node, "tools", a, Unset(a, "length")).At(f), "%q: an adapter without a length", t.Title())
			}
			for _, wr := range wrenches(t) {
				if wr.Has("length") {
					w.Put(w.Variant(t.Node, "tools", wr, Unset(wr, "length")).At(f, a), "%q: a wrench without a length", t.Title())
				}
			}
			if q := f.Quantity("torque", ""); q != nil {
				w.Put(Say(t.Node, "text", "Set the wrench to "+times(*q, 1.5).String()+"."), "%q: a written setting, wrong", t.Title())
			}
		}
	}
}

func angleAlone(w *Workshop) {
	w.clamps(func(f *model.Node, ts []*model.Step) {
		if f.Has("stages") || f.Has("to_slot") || f.Has("drag") || f.Has("angle") || len(ts) != 1 || ts[0].Has("to") {
			return
		}
		for _, by := range []string{"90°", "1/4 turn"} {
			w.Put(Unset(f, "torque").And(Set(f, "angle", quote(by))).At(ts[0].Node), "%q: %s and no torque", f.Title(), by)
		}
	})
	for _, f := range w.Own("fastening") {
		if f.Has("angle") && f.Has("torque") {
			w.Put(without(f, "torque", "stages").At(nodes(w.Doing(kind.Tightens, f))...), "%q: the angle alone", f.Title())
		}
	}
}

func slotTooWide(w *Workshop) {
	for _, f := range w.Own("fastening") {
		l, ok := f.Limits("torque", "")
		if !f.Flag("to_slot") || f.Has("stages") || !ok || l.Low == nil || l.High == nil {
			continue
		}
		mid := plus(*l.Low, times(width(l), 0.5), 1)
		for _, by := range []string{"± 1 %", "± 0.5 %", "± 2 %"} {
			w.Put(Set(f, "torque", quote(mid.String()+" "+by)).At(nodes(w.Doing(kind.Tightens, f))...), "%q: a band of %s", f.Title(), by)
		}
	}
}

func lockMissing(w *Workshop) {
	for _, f := range w.Own("fastening") {
		by := f.Ref("locked_by")
		if by == nil {
			continue
		}
		ts := nodes(w.Doing(kind.Tightens, f))
		locks := w.Doing(kind.Locks, f)
		for _, l := range locks {
			if len(locks) == 1 {
				if by.Def.Name == "part" || w.Spared(by) {
					w.Put(w.Drop(l.Node).At(append(ts, f, by)...), "drop %q", l.Title())
				}
				w.Put(w.only(l).At(append(ts, f, by)...), "%q at one place only", l.Title())
				w.Put(w.sometimes(l).At(append(ts, f, by)...), "%q under an option only", l.Title())
			}
		}
		if by.Def.Name == "supply" && len(locks) == 0 {
			for _, c := range w.Doing(kind.Wets) {
				if names(c.Node, "on", f) && len(c.AllRefs("on")) == 1 && names(c.Node, "supplies", by) && w.Spared(by) {
					w.Put(w.Drop(c.Node).At(append(ts, f)...), "drop %q", c.Title())
				}
			}
		}
	}
	for _, f := range w.Own("fastening") { // declared, and no step sets it
		ts := w.Doing(kind.Tightens, f)
		if f.Has("locked_by") || len(ts) == 0 || f.Word("does") != "clamp" || len(w.Doing(kind.Starts, f)) == 0 {
			continue
		}
		for _, s := range w.Of("supply") {
			if s.Plain("kind") == "threadlocker" && f.Ref("lubricant") != s {
				w.Put(Set(f, "locked_by", "supply."+s.ID).At(nodes(ts)...), "%q locked by what no step puts on", f.Title())
				break
			}
		}
	}
}

func nothingHolds(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		l, ok := f.Limits("torque", "")
		if !ok || l.Low == nil || float(*l.Low) < 60 {
			continue
		}
		if t.Has("held_by") {
			if h := t.Ref("held_by"); h == nil || h.Def.Name == "part" || w.Spared(h) {
				w.Put(Unset(t.Node, "held_by").At(f), "%q with nothing to hold it", t.Title())
			}
		}
		if t.Has("turning") {
			w.Put(Unset(t.Node, "turning").At(f), "%q not said to turn", t.Title())
		}
	}
	// A plug or nut that is tightened four times as much, with a wrench to suit.
	const by = 4
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		l, ok := f.Limits("torque", "")
		if !ok || l.Low == nil || l.High == nil || t.Has("held_by") || t.Has("turning") || t.Has("to") || len(w.Doing(kind.Tightens, f)) > 1 {
			continue
		}
		if float(*l.Low)*by > 62 && f.Word("does") != "clamp" && !f.Shared && len(wrenches(t)) == 1 && literal(f, "torque") != "" {
			wr := wrenches(t)[0]
			wide := quote(band(times(*l.High, by*0.3), times(*l.High, by*1.2)))
			w.Put(scaled(f, by).And(w.Variant(t.Node, "tools", wr, Set(wr, "range", wide))).At(t.Node), "%q: torque × %v by hand", t.Title(), by)
		}
	}
}

func spentAgain(w *Workshop) {
	for _, f := range w.Own("fastening") {
		all := w.fate(f)
		// taken out and started again with the same pieces
		for i, st := range all {
			if !does(st, kind.Opens, f) || i+1 >= len(all) || !slices.ContainsFunc(all[i+1:], func(s *model.Step) bool { return does(s, kind.Starts, f) }) {
				continue
			}
			for _, r := range f.AllRefs("fasteners") {
				if !r.To.Flag("use_once") && r.To.Whole("quantity", "", 1) == f.Whole("quantity", "", 1) && !r.To.Has("spare") && !goesBack(st.Procedure) {
					again := all[i+1]
					w.Put(Set(r.To, "use_once", "true").At(f, st.Node, again.Node), "%q are used once, and used again", r.To.Title())
				}
			}
			break
		}
	}
	for _, p := range w.Own("part") {
		if !p.Has("sits_on") || p.Flag("use_once") || p.Whole("quantity", "", 1) != 1 || len(p.Nested(entry.Size)) > 0 {
			continue
		}
		on, off := w.Doing(kind.Joins, p), w.Doing(kind.Takes, p)
		if len(off) == 1 && len(on) == 2 && w.Pos(on[0]) < w.Pos(off[0]) && w.Pos(off[0]) < w.Pos(on[1]) && !goesBack(off[0].Procedure) {
			w.Put(Set(p, "use_once", "true").At(off[0].Node, on[1].Node), "%q is used once, and used again", p.Title())
		}
	}
	for _, p := range w.Own("part") {
		if q := p.Whole("quantity", "", 1); p.Flag("use_once") && q > 1 && len(w.Doing(kind.Takes, p)) > 0 {
			w.Put(Set(p, "quantity", "1").At(nodes(w.Doing(kind.Joins, p))...), "one %q in the kit", p.Title())
		}
	}
}

func wrongWay(w *Workshop) {
	for i, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		if !f.Has("thread") || !constant(f, "thread") {
			continue
		}
		way := "anticlockwise"
		if strings.HasSuffix(f.Plain("thread"), "LH") {
			way = "clockwise"
		}
		w.Put(Say(t.Node, "text", []string{"Turn it " + way + " to tighten it.", "Tighten it " + way + "."}[i%2]).At(f), "%q: %s", t.Title(), way)
	}
	for _, v := range []kind.Verb{kind.Slackens, kind.Opens} {
		for _, t := range w.Doing(v) {
			f := Does(t, v)[0]
			if !f.Has("thread") || !constant(f, "thread") || !t.Has("fastening") {
				continue
			}
			way := "clockwise"
			if strings.HasSuffix(f.Plain("thread"), "LH") {
				way = "anticlockwise"
			}
			w.Put(Say(t.Node, "text", "Turn it "+way+" to undo it.").At(f), "%q: %s", t.Title(), way)
		}
	}
}
