package mutation

import (
	"fmt"
	"slices"

	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
)

var sealing = []*Class{
	{"seal", "face not cleaned, or dirtied since", []string{"seal/not-cleaned", "seal/dirtied"}, notClean},
	{"seal", "open time shorter than the work", []string{"seal/closed-too-late", "seal/tightened-too-late"}, openTime},
	{"seal", "wait that covers one of several cures", []string{"seal/wait-too-short", "seal/run-before-cure"}, waitTooShort},
	{"seal", "run before cure", []string{"seal/run-before-cure", "seal/wait-too-short"}, runUncured},
	{"seal", "sealant over what must stay clear", []string{"seal/over-what-stays-clear"}, overClear},
	{"seal", "service temperature outside", []string{"seal/outside-service"}, outsideService},
	{"seal", "seal broken and not made again", []string{"seal/broken"}, sealBroken},
	{"seal", "squeeze-out never cleaned off", []string{"seal/squeeze-out-left"}, squeezeOut},
}

// faces are those that a seal lies on and between.
func faces(s *model.Step) []model.Ref {
	var all []model.Ref
	for _, attr := range []string{"on", "between"} {
		for _, r := range s.AllRefs(attr) {
			if r.Sub == "face" && !slices.ContainsFunc(all, func(o model.Ref) bool { return o.Address() == r.Address() }) {
				all = append(all, r)
			}
		}
	}
	return all
}

// cleans reports whether a step cleans a face, by itself or with its part.
func cleans(s *model.Step, face model.Ref) bool {
	return Is(s, kind.Cleans) && slices.ContainsFunc(s.AllRefs("on"), func(r model.Ref) bool {
		return r.Address() == face.Address() || r.To == face.To && r.Sub == ""
	})
}

func notClean(w *Workshop) {
	for _, s := range w.Doing(kind.Seals) {
		all := faces(s)
		for i, f := range all {
			var cleaned []*model.Step
			for _, c := range w.steps[:w.Pos(s)] {
				if cleans(c, f) {
					cleaned = append(cleaned, c)
				}
			}
			if len(cleaned) != 1 {
				continue
			}
			c := cleaned[0]
			spared := true
			for _, r := range c.AllRefs("supplies") {
				spared = spared && w.Spared(r.To)
			}
			for _, r := range c.AllRefs("tools") {
				spared = spared && w.Spared(r.To)
			}
			if i == 0 && spared {
				w.Put(w.Drop(c.Node).At(s.Node), "drop %q", c.Title())
			}
			if len(c.AllRefs("on")) > 1 {
				var kept []string
				for _, r := range c.AllRefs("on") {
					if r.Address() != f.Address() {
						kept = append(kept, r.Span(c.Node).Text())
					}
				}
				if len(kept) == len(c.AllRefs("on"))-1 {
					w.Put(Set(c.Node, "on", "["+join(kept)+"]").At(s.Node), "%q leaves out %s", c.Title(), f.Address())
				}
			}
		}
		if len(all) == 0 || s.Has("at_each") {
			continue
		}
		for _, o := range w.Of("supply") {
			if k := o.Plain("kind"); (k == "oil" || k == "grease" || k == "engine oil" || k == "gear oil") && (o.Shared || w.Uses(o) > 0) {
				text := fmt.Sprintf("  coat \"%s_oiled\" {\n    title    = \"Oil the face against rust\"\n    on       = [%s]\n    supplies = [supply.%s]\n    takes    = \"1 min\"\n  }\n", s.ID, all[0].Address(), o.ID)
				w.Put(InsertBefore(s.Node, text).At(s.Node), "%s oiled before %q", all[0].Address(), s.Title())
				break
			}
		}
		wait := fmt.Sprintf("  wait \"%s_days\" {\n    title = \"Leave it until another day\"\n    for   = \"60 h\"\n  }\n", s.ID)
		w.Put(InsertBefore(s.Node, wait).At(s.Node), "60 h before %q", s.Title())
	}
}

func join(list []string) string {
	text := ""
	for i, s := range list {
		if i > 0 {
			text += ", "
		}
		text += s
	}
	return text
}

// closing is the step that closes a seal, where it says so.
func closing(s *model.Step) *model.Step {
	if by := s.Ref("closed_by"); by != nil {
		return by.Step
	}
	return nil
}

func openTime(w *Workshop) {
	for _, s := range w.Doing(kind.Seals) {
		shut, glue := closing(s), s.Ref("supplies")
		if shut == nil || glue == nil || !glue.Has("assemble_within") {
			continue
		}
		where := []*model.Node{s.Node, shut.Node}
		for _, t := range w.After(shut)[:min(6, len(w.After(shut)))] {
			if Is(t, kind.Tightens) {
				where = append(where, t.Node)
			}
		}
		w.Put(Set(shut.Node, "takes", `"90 min"`).At(where...), "%q takes 90 min", shut.Title())
		w.Put(Set(s.Node, "takes", `"2 h"`).At(where...), "%q takes 2 h", s.Title())
		rest := fmt.Sprintf("  wait \"%s_rest\" {\n    title = \"Have a rest\"\n    for   = \"45 min\"\n  }\n", s.ID)
		w.Put(InsertAfter(s.Node, rest).At(where...), "a rest of 45 min after %q", s.Title())
		if glue.Has("tighten_within") {
			for _, t := range w.After(shut) {
				if Is(t, kind.Tightens) && names(Does(t, kind.Tightens)[0], "stack", Does(shut, kind.Joins)[0]) {
					w.Put(InsertBefore(t.Node, rest).At(t.Node, s.Node), "a rest of 45 min before %q", t.Title())
					break
				}
			}
		}
		for _, b := range w.Between(s, shut) {
			w.Put(Set(b.Node, "takes", `"3 h"`).At(where...), "%q takes 3 h", b.Title())
		}
	}
}

func overClear(w *Workshop) {
	for _, s := range w.Doing(kind.Seals) {
		for _, r := range faces(s) {
			for _, name := range r.To.Names("ports") {
				port := "part." + r.To.ID + ".port." + name
				if slices.ContainsFunc(w.Of("part"), func(p *model.Node) bool {
					return slices.ContainsFunc(p.AllRefs("covers"), func(c model.Ref) bool { return c.Address() == port })
				}) {
					continue
				}
				if slices.ContainsFunc(s.AllRefs("keep_clear"), func(k model.Ref) bool { return k.Address() == port }) {
					w.Put(AddRef(s.Node, "on", port), "%q on %s, which it keeps clear", s.Title(), port)
				} else {
					w.Put(AddRef(s.Node, "on", port).And(AddRef(s.Node, "keep_clear", port)), "%q on %s, which it keeps clear", s.Title(), port)
				}
				for _, fill := range append(w.Doing(kind.Fills), w.Doing(kind.Drains)...) {
					if t := fill.AllRefs("through"); len(t) == 1 && t[0].Address() == port && w.Pos(fill) > w.Pos(s) && !s.Has("keep_clear") {
						w.Put(AddRef(s.Node, "on", port).At(fill.Node), "%q on %s, which is filled through later", s.Title(), port)
					}
				}
			}
			for _, m := range w.Doing(kind.MakesMark) {
				if w.Pos(m) < w.Pos(s) && m.AllRefs("on")[0].Address() == r.Address() && s.Has("keep_clear") {
					w.Put(Unset(s.Node, "keep_clear").At(m.Node), "%q keeps nothing clear", s.Title())
				}
			}
		}
		// A mark on the sealed face that a later step goes by.
		shut := closing(s)
		if all := faces(s); len(all) > 0 && shut != nil && shut.Def.Name == "fit" && s.Procedure.Ref("at_each") == nil && !s.Has("at_each") && !shut.Has("align") {
			text := fmt.Sprintf("  mark \"%s_line\" {\n    title = \"Scribe a line on the face\"\n    on    = [%s]\n    how   = \"scribe\"\n    takes = \"1 min\"\n  }\n", s.ID, all[0].Address())
			w.PutFor([]string{"seal/over-what-stays-clear"}, InsertBefore(s.Node, text).And(AddRef(shut.Node, "align", "mark."+s.ID+"_line")).At(s.Node), "%q over a line that %q goes by", s.Title(), shut.Title())
		}
	}
}

func sealBroken(w *Workshop) {
	for _, s := range w.Doing(kind.Seals) {
		shut := closing(s)
		if shut == nil || len(Does(shut, kind.Joins)) != 1 || s.Has("at_each") || s.Procedure.Has("at_each") {
			continue
		}
		p := Does(shut, kind.Joins)[0]
		var screws *model.Node
		for _, f := range w.Of("fastening") {
			if names(f, "stack", p) {
				if screws != nil {
					screws = nil
					break
				}
				screws = f
			}
		}
		// Sealed twice: the second time is left out.
		for _, t := range w.Doing(kind.Seals) {
			if w.Pos(t) < w.Pos(s) && len(faces(t)) > 0 && len(faces(s)) > 0 && faces(t)[0].Address() == faces(s)[0].Address() {
				var after *Change = &Change{}
				for _, x := range w.steps {
					if names(x.Node, "until", s.Node) && len(x.AllRefs("until")) == 1 && w.Uses(x.Node) == 0 {
						after = after.And(&Change{Edits: w.dropAll(x.Node)})
					}
				}
				c := &Change{Edits: w.dropAll(s.Node)}
				w.Put(c.And(after).At(shut.Node, t.Node), "drop %q and the wait for it", s.Title())
				for _, x := range w.steps {
					if x.Procedure == s.Procedure && w.Pos(x) > w.Pos(t) && w.Pos(x) < w.Pos(s) && cleans(x, faces(s)[0]) {
						w.Put(c.And(after, &Change{Edits: w.dropAll(x.Node)}).At(shut.Node, t.Node), "drop %q and %q", x.Title(), s.Title())
					}
				}
			}
		}
		if screws == nil || len(w.Doing(kind.Takes, p)) > 0 || screws.Has("locked_by") || screws.Ref("lubricant") != nil {
			continue
		}
		starts, tights := w.Doing(kind.Starts, screws), w.Doing(kind.Tightens, screws)
		if len(starts) != 1 || len(tights) != 1 || tights[0].Procedure != s.Procedure || slices.ContainsFunc(screws.AllRefs("fasteners"), func(r model.Ref) bool { return r.To.Flag("use_once") }) || p.Flag("use_once") || names(p, "held_by", p) {
			continue
		}
		// Opened once more before anything else goes on, and closed dry.
		end := tights[0]
		for n := Next(end); n != nil && Is(n, kind.Cleans); n = Next(n) {
			end = n
		}
		strip := func(n *model.Step) *Change {
			return without(n.Node, "was", "after", "within", "figures", "irreversible")
		}
		text := fmt.Sprintf("  remove \"%s_open\" {\n    title     = \"Take the screws out again\"\n    fastening = fastening.%s\n    takes     = \"2 min\"\n  }\n\n  remove \"%s_off\" {\n    title = \"Lift it off again\"\n    part  = part.%s\n    takes = \"2 min\"\n  }\n\n", screws.ID, screws.ID, p.ID, p.ID) +
			Copy(shut.Node, shut.ID+"_again", strip(shut)) + "\n" + Copy(starts[0].Node, starts[0].ID+"_again", strip(starts[0])) + "\n" + Copy(tights[0].Node, tights[0].ID+"_again", strip(tights[0]))
		w.Put(InsertAfter(end.Node, text).At(s.Node), "%q off and on again", p.Title())
	}
}

// dropAll are the edits that drop a block without care for what names it.
func (s *Sound) dropAll(n *model.Node) []diag.Edit {
	return []diag.Edit{{Span: lines(n.Extent), New: ""}}
}

func squeezeOut(w *Workshop) {
	for _, s := range w.Doing(kind.Seals) {
		shut := closing(s)
		if shut == nil {
			continue
		}
		for _, c := range w.After(shut) {
			wipes := Is(c, kind.Cleans) && slices.ContainsFunc(faces(s), func(f model.Ref) bool {
				return slices.ContainsFunc(c.AllRefs("on"), func(r model.Ref) bool { return r.To == f.To })
			})
			if !wipes {
				continue
			}
			next := false
			for _, x := range w.After(c) {
				if slices.ContainsFunc(faces(s), func(f model.Ref) bool { return does(x, kind.Takes, f.To) }) {
					break
				}
				if !next && Is(x, kind.Cleans) && slices.ContainsFunc(faces(s), func(f model.Ref) bool {
					return slices.ContainsFunc(x.AllRefs("on"), func(r model.Ref) bool { return r.To == f.To })
				}) {
					break // wiped a little later
				}
				next = next || Is(x, kind.Joins) || Is(x, kind.Drives) && x.Plain("by") != "hand"
			}
			if next && toolsSpared(w, c) {
				w.Put(w.Drop(c.Node).At(s.Node, shut.Node), "drop %q", c.Title())
				w.Put(w.sometimes(c).At(s.Node, shut.Node), "%q under an option only", c.Title())
				var later *model.Step
				for _, x := range w.After(c) {
					if Is(x, kind.Joins) && x.Procedure == c.Procedure {
						later = x
						break
					}
				}
				if later != nil && w.Uses(c.Node) == 0 {
					w.Put(MoveAfter(c.Node, later.Node).At(s.Node, shut.Node, later.Node), "%q after %q", c.Title(), later.Title())
				}
			}
			break
		}
	}
}
