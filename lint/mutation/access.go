package mutation

import (
	"fmt"
	"slices"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

var access = []*Class{
	{"access", "work on something covered", []string{"access/covered"}, workCovered},
	{"access", "mark covered or wiped before use", []string{"access/mark-covered", "access/mark-wiped", "access/covered"}, markGone},
	{"access", "removed from under, or before what holds it", []string{"access/removed-from-under", "access/removed-while-held"}, removedUnder},
	{"access", "trial fit never undone", []string{"access/trial-never-undone", "access/trial-as-final", "access/fitted-twice"}, trialLeft},
	{"access", "trial fit carried on as final", []string{"access/trial-as-final", "access/trial-never-undone"}, trialAsFinal},
	{"access", "removed part never refitted", []string{"access/never-refitted"}, neverRefitted},
	{"access", "tool left on", []string{"access/tool-left-on"}, toolLeftOn},
	{"access", "fitted twice, or more than the kit holds", []string{"access/fitted-twice", "access/more-than-kit"}, fittedTwice},
	{"access", "part in the kit never fitted", []string{"access/never-fitted"}, neverFitted},
	{"access", "group that never joins", []string{"access/never-joins", "access/never-fitted"}, neverJoins},
	{"access", "filled through what is closed", []string{"access/filled-through-closed"}, filledClosed},
	{"access", "opened below the liquid", []string{"access/opened-below-liquid"}, openedBelow},
}

// look is a step that looks at something, for putting in where it is out of sight.
func look(id, on string) string {
	return fmt.Sprintf("  inspect \"%s_seen\" {\n    title     = \"Look at it once more\"\n    on        = [%s]\n    criterion = \"It is whole and lies where it was put.\"\n    takes     = \"1 min\"\n    otherwise = \"Stop, and ask the supplier.\"\n  }\n", id, on)
}

// covered is one thing that a part covers once it is on for good.
type covered struct {
	step *model.Step // the fit
	by   *model.Node
	ref  model.Ref
}

// closed lists what is out of reach at the end of the procedure that covers it.
func (s *Sound) closed() []covered {
	var all []covered
	for _, st := range s.steps {
		for _, p := range Does(st, kind.Joins) {
			if st.Flag("trial") || len(s.Doing(kind.Takes, p)) > 0 && s.Pos(s.Doing(kind.Takes, p)[len(s.Doing(kind.Takes, p))-1]) > s.Pos(st) {
				continue
			}
			for _, r := range p.AllRefs("covers") {
				owner := r.To
				if owner.Def.Name == "fastening" {
					if len(owner.AllRefs("stack")) == 0 {
						continue
					}
					owner = owner.AllRefs("stack")[len(owner.AllRefs("stack"))-1].To
				}
				if owner.Def.Name != "part" || owner.Has("when") != p.Has("when") {
					continue
				}
				after := s.Pos(st) + 1
				if s.On(owner, after) && s.Root(owner, after) == s.Root(p, after) {
					all = append(all, covered{st, p, r})
				}
			}
		}
	}
	return all
}

func workCovered(w *Workshop) {
	for _, c := range w.closed() {
		address := c.ref.Address()
		c0 := c.step
		if w.lateIn(c0) {
			continue
		}
		w.Put(InsertAfter(c0.Node, look(c.by.ID, address)).At(), "look at %s after %q", address, c0.Title())
		if c.ref.Sub != "" {
			text := fmt.Sprintf("  clean \"%s_again\" {\n    title = \"Wipe it once more\"\n    on    = [%s]\n    takes = \"1 min\"\n  }\n", c.by.ID, address)
			w.Put(InsertAfter(c0.Node, text), "wipe %s after %q", address, c0.Title())
		}
		for _, s := range w.steps[:w.Pos(c0)] { // what was done to it comes too late
			if s.Procedure != c0.Procedure || len(s.AllRefs("on")) != 1 || s.AllRefs("on")[0].Address() != address || w.Uses(s.Node) > 0 || s.Has("after") {
				continue
			}
			gentle := s.Def.Name == "inspect" && !s.Has("critical") || s.Def.Name == "coat" && c.ref.To.Def.Name == "part"
			if gentle {
				w.Put(MoveAfter(s.Node, c0.Node).At(s.Node), "%q after %q", s.Title(), c0.Title())
			}
		}
	}
}

// lateIn reports whether a step is done place by place with others, so that what
// it covers at one place is open at the next.
func (s *Sound) lateIn(st *model.Step) bool { return st.Has("at_each") }

func markGone(w *Workshop) {
	for _, m := range w.Doing(kind.MakesMark) {
		var users []*model.Step
		for _, s := range w.After(m) {
			if names(s.Node, "marks", m.Node) || names(s.Node, "align", m.Node) {
				users = append(users, s)
			}
		}
		alone := !slices.ContainsFunc(w.Doing(kind.MakesMark), func(o *model.Step) bool {
			return o != m && o.AllRefs("on")[0].Address() == m.AllRefs("on")[0].Address()
		})
		for _, u := range users {
			if alone && u.Procedure == m.Procedure {
				text := fmt.Sprintf("  clean \"%s_wiped\" {\n    title = \"Wipe it down\"\n    on    = [%s]\n    takes = \"1 min\"\n  }\n", m.ID, m.AllRefs("on")[0].Address())
				if how := m.Plain("how"); (how == "pen" || how == "paint") && !Is(u, kind.Joins) {
					w.Put(InsertBefore(u.Node, text).At(u.Node, m.Node), "wiped before %q", u.Title())
				}
				if how := m.Plain("how"); how == "punch" || how == "scribe" {
					w.Put(InsertBefore(u.Node, text).And(Set(m.Node, "how", `"pen"`)).At(u.Node, m.Node), "a pen mark wiped before %q", u.Title())
				}
			}
			for _, s := range w.Between(m, u) {
				if s.Def.Name == "clean" && m.Plain("how") != "pen" && m.Plain("how") != "paint" && slices.ContainsFunc(s.AllRefs("on"), func(r model.Ref) bool { return r.Address() == m.AllRefs("on")[0].Address() }) {
					w.Put(Set(m.Node, "how", `"pen"`).At(u.Node, s.Node), "%q in pen", m.Title())
					w.Put(Set(m.Node, "how", `"paint"`).At(u.Node, s.Node), "%q in paint", m.Title())
				}
			}
		}
		face := m.AllRefs("on")[0].Address()
		for _, c := range w.closed() { // gone by when it is out of sight
			if c.ref.Address() == face && w.Pos(c.step) > w.Pos(m) && !w.lateIn(c.step) {
				text := fmt.Sprintf("  run \"%s_line\" {\n    title     = \"Turn it to the mark\"\n    on        = [part.%s]\n    by        = \"hand\"\n    marks     = [%s]\n    criterion = \"It stands at the mark.\"\n    takes     = \"1 min\"\n    otherwise = \"Turn it once more.\"\n  }\n",
					m.ID, c.by.ID, m.Address)
				w.Put(InsertAfter(c.step.Node, text), "%q gone by after %q", m.Title(), c.step.Title())
			}
		}
	}
	for _, c := range w.closed() { // a pen mark of its own, covered
		if c.ref.Sub != "face" || w.lateIn(c.step) || c.ref.To.Def.Name != "part" || c.step.Places != nil {
			continue
		}
		text := fmt.Sprintf("  mark \"%s_line\" {\n    title = \"Draw a line on it\"\n    on    = [%s]\n    how   = \"pen\"\n    takes = \"1 min\"\n  }\n", c.by.ID, c.ref.Address())
		use := fmt.Sprintf("  run \"%s_line\" {\n    title     = \"Turn it to the line\"\n    on        = [part.%s]\n    by        = \"hand\"\n    marks     = [mark.%s_line]\n    criterion = \"It stands at the line.\"\n    takes     = \"1 min\"\n    otherwise = \"Turn it once more.\"\n  }\n", c.by.ID, c.by.ID, c.by.ID)
		w.Put(InsertBefore(c.step.Node, text).And(InsertAfter(c.step.Node, use)), "a line on %s gone by after %q", c.ref.Address(), c.step.Title())
	}
}

func removedUnder(w *Workshop) {
	offs := w.Doing(kind.Takes)
	for _, s := range offs {
		p := Does(s, kind.Takes)
		if len(p) != 1 {
			continue
		}
		for _, t := range offs {
			q := Does(t, kind.Takes)
			if len(q) != 1 || t.Procedure != s.Procedure || t.Index <= s.Index || w.Uses(s.Node) > 0 || w.Uses(t.Node) > 0 {
				continue
			}
			held := names(q[0], "held_by", p[0]) || names(p[0], "covers", q[0])
			onlyParts := !slices.ContainsFunc(w.Between(s, t), func(b *model.Step) bool { return !Is(b, kind.Takes) && !Is(b, kind.Opens) })
			other := slices.ContainsFunc(w.Between(s, t), func(b *model.Step) bool {
				return slices.ContainsFunc(Does(b, kind.Takes), func(x *model.Node) bool { return names(q[0], "held_by", x) || names(x, "sits_on", q[0]) })
			})
			if held && onlyParts && !other {
				w.Put(MoveBefore(t.Node, s.Node).At(t.Node, s.Node), "%q before %q", t.Title(), s.Title())
			}
			if held && names(q[0], "held_by", p[0]) && slices.ContainsFunc(w.After(t), func(b *model.Step) bool { return does(b, kind.Joins, p[0]) }) {
				var again *model.Step
				for _, b := range w.After(t) {
					if does(b, kind.Joins, p[0]) {
						again = b
						break
					}
				}
				if w.Uses(again.Node) == 0 {
					w.Put(w.Drop(s.Node).And(w.Drop(again.Node)).At(t.Node), "drop %q and %q", s.Title(), again.Title())
				}
			}
		}
		// Something that is still on is said to hold it.
		for _, r := range w.Own("part") {
			if w.On(r, w.Pos(s)) && r != p[0] && names(r, "sits_on", p[0].Ref("sits_on")) && r.Has("sits_on") && !p[0].Has("held_by") && !p[0].Shared &&
				!names(r, "sits_on", p[0]) && len(w.Doing(kind.Takes, r)) == 0 && len(w.Doing(kind.Joins, r)) > 0 && len(w.Doing(kind.Takes, p[0])) == 1 && !r.Has("when") && !optional(s) {
				first := w.Doing(kind.Joins, p[0])
				if len(first) > 0 && w.Pos(first[0]) >= w.Pos(w.Doing(kind.Joins, r)[0]) {
					continue
				}
				w.Put(Set(p[0], "held_by", "part."+r.ID).At(s.Node), "%q is held by %q, which is on", p[0].Title(), r.Title())
				break
			}
		}
	}
}

func toolLeftOn(w *Workshop) {
	for _, off := range w.Doing(kind.PutsAway) {
		t := Does(off, kind.PutsAway)[0]
		where := []*model.Node{t}
		for _, on := range w.Doing(kind.PutsOn, t) {
			if w.Pos(on) < w.Pos(off) {
				where = append(where, on.Node)
			}
		}
		if len(where) > 1 && !slices.ContainsFunc(w.After(off), func(s *model.Step) bool { return does(s, kind.PutsOn, t) }) {
			w.Put(w.Drop(off.Node).At(append(where, nodes(w.After(off))...)...), "drop %q", off.Title())
			w.Put(w.sometimes(off).At(append(where, nodes(w.After(off))...)...), "%q under an option only", off.Title())
		}
	}
	for _, t := range w.Own("tool") { // a tool that is not put away by itself
		on, used := w.Doing(kind.PutsOn, t), 0
		for _, s := range w.steps {
			if names(s.Node, "tools", t) {
				used++
			}
		}
		if len(on) == 0 && used == 1 && t.Plain("kind") == "spanner" {
			for _, s := range w.steps {
				if names(s.Node, "tools", t) && !s.Has("at_each") && s.Places == nil {
					text := fmt.Sprintf("  fit \"%s_on\" {\n    title = \"Put it on\"\n    tool  = tool.%s\n    takes = \"1 min\"\n  }\n", t.ID, t.ID)
					w.Put(DropRef(s.Node, "tools", t).And(Set(t, "stays_on", "true"), InsertBefore(s.Node, text)).At(t), "%q put on and not taken off", t.Title())
				}
			}
		}
	}
}

func fittedTwice(w *Workshop) {
	for _, s := range w.Doing(kind.Joins) {
		p := Does(s, kind.Joins)
		if len(p) != 1 || s.Flag("trial") || s.Ref("part") == nil || s.Ref("part").Def.Name != "part" || p[0].Flag("spare") || len(w.Doing(kind.Takes, p[0])) > 0 {
			continue
		}
		if !s.Flag("irreversible") {
			again := Copy(s.Node, s.ID+"_again", without(s.Node, "was", "after", "within", "warning", "caution", "danger"))
			w.Put(InsertAfter(s.Node, again).At(s.Node, p[0]), "%q twice", s.Title())
		}
		if len(w.Doing(kind.Joins, p[0])) == 1 && !p[0].Shared && !s.Has("quantity") && len(p[0].Nested(entry.Size)) == 0 {
			n := p[0].Whole("quantity", "", 1)
			w.Put(Set(s.Node, "quantity", fmt.Sprint(n+2)).At(p[0]), "%q: %d of %d", s.Title(), n+2, n)
		}
	}
	for _, f := range w.Own("fastening") {
		n := f.Whole("quantity", "", 1)
		for _, r := range f.AllRefs("fasteners") {
			if n > 1 && len(f.AllRefs("fasteners")) == 1 && r.To.Whole("quantity", "", 1) == n && !r.To.Shared && len(w.Doing(kind.Starts, f)) > 0 {
				w.Put(Set(r.To, "quantity", fmt.Sprint(n-1)).At(append(nodes(w.Doing(kind.Starts, f)), f)...), "%q: %d for %d", r.To.Title(), n-1, n)
			}
		}
	}
}

func neverFitted(w *Workshop) {
	for _, s := range w.Doing(kind.Joins) {
		p := Does(s, kind.Joins)
		if len(p) != 1 || len(w.Doing(kind.Joins, p[0])) != 1 || !leaf(w, p[0]) || p[0].Flag("spare") || s.Ref("part") != p[0] {
			continue
		}
		w.Put(w.Drop(s.Node).At(p[0]), "drop %q", s.Title())
		w.Put(w.only(s).At(p[0]), "%q at one place only", s.Title())
		if !p[0].Has("when") {
			w.Put(w.sometimes(s).At(p[0]), "%q under an option only", s.Title())
		}
	}
	for i, p := range w.Own("part") {
		if seat := p.Ref("sits_on"); i%4 == 0 && seat != nil && seat.Def.Name == "part" && !p.Has("at_each") && !p.Has("when") {
			text := fmt.Sprintf("part \"extra_cover\" {\n  name    = \"Dust cover\"\n  sits_on = part.%s\n}\n", seat.ID)
			w.PutFor([]string{"access/never-fitted", "kit/unused-entry"}, InsertAfter(p, text), "a part that no step fits, behind %q", p.Title())
		}
	}
}

func neverJoins(w *Workshop) {
	fitted := map[*model.Node]bool{}
	for _, s := range w.Doing(kind.Joins) {
		for _, p := range Does(s, kind.Joins) {
			fitted[p] = true
		}
	}
	if len(fitted) < 3 {
		return // of so little neither half is the machine
	}
	var bases []*model.Node
	for _, p := range w.Own("part") {
		if !p.Has("sits_on") {
			bases = append(bases, p)
		}
	}
	board := "part \"side_board\" {\n  name = \"Side board\"\n}\n"
	for _, s := range w.Doing(kind.Joins) {
		p := Does(s, kind.Joins)
		if len(p) != 1 || len(w.Doing(kind.Joins, p[0])) != 1 || p[0].Shared || s.Ref("part") != p[0] {
			continue
		}
		if leaf(w, p[0]) && !p[0].Has("at_each") && len(p[0].AllRefs("sits_on")) == 1 && constant(p[0], "sits_on") && !p[0].Has("when") {
			w.Put(Set(p[0], "sits_on", "part.side_board").And(InsertBefore(p[0], board)).At(append(bases, p[0], s.Node)...), "%q goes on a board beside the machine", p[0].Title())
		}
		// The step that brings a sub-assembly onto the machine is left out.
		loaded := false
		for _, q := range w.Own("part") {
			loaded = loaded || names(q, "sits_on", p[0]) && w.On(q, w.Pos(s)) && !q.Has("in_place")
		}
		if loaded && p[0].Has("sits_on") && w.Uses(s.Node) == 0 {
			where := []*model.Node{p[0]}
			where = append(where, w.Own("part")...)
			w.PutFor(append([]string{"fastening/stack-not-on"}, w.class.Rules...), w.Drop(s.Node).At(append(where, nodes(w.After(s))...)...), "drop %q", s.Title())
		}
	}
}

func filledClosed(w *Workshop) {
	for _, verb := range []kind.Verb{kind.Fills, kind.Drains} {
		for _, s := range w.Doing(verb) {
			refs := s.AllRefs("through")
			if len(refs) != 1 {
				continue
			}
			r := refs[0]
			if r.To.Def.Name == "fastening" {
				for _, t := range w.Doing(kind.Tightens, r.To) {
					if t.Procedure == s.Procedure && t.Index > s.Index && w.Uses(s.Node) == 0 {
						w.Put(MoveAfter(s.Node, t.Node).At(s.Node, r.To), "%q after %q", s.Title(), t.Title())
					}
				}
				continue
			}
			for _, p := range w.Own("part") {
				if !p.Has("sits_on") || p == r.To || len(w.Doing(kind.Joins, p)) == 0 || p.Has("when") || p.Has("at_each") {
					continue
				}
				on := w.On(p, w.Pos(s)) && w.Root(p, w.Pos(s)) == w.Root(r.To, w.Pos(s))
				if covers := slices.ContainsFunc(p.AllRefs("covers"), func(c model.Ref) bool { return c.Address() == r.Address() }); covers {
					for _, j := range w.Doing(kind.Joins, p) {
						if j.Procedure == s.Procedure && j.Index > s.Index && w.Uses(s.Node) == 0 {
							w.Put(MoveAfter(s.Node, j.Node).At(s.Node), "%q after %q", s.Title(), j.Title())
						}
					}
				} else if on && w.firstUse(r.Address(), p, s) {
					w.Put(AddRef(p, "covers", r.Address()).At(s.Node), "%q covers %s", p.Title(), r.Address())
				}
			}
		}
	}
}

// firstUse reports whether s is the only step that needs an opening while a part is on.
func (s *Sound) firstUse(address string, p *model.Node, st *model.Step) bool {
	for _, o := range s.steps {
		if o == st || !s.On(p, s.Pos(o)) {
			continue
		}
		for _, attr := range []string{"through", "on", "keep_clear"} {
			for _, r := range o.AllRefs(attr) {
				if r.Address() == address {
					return false
				}
			}
		}
	}
	return true
}

func openedBelow(w *Workshop) {
	for _, fill := range w.Doing(kind.Fills) {
		through := fill.AllRefs("through")
		for _, part := range fill.AllRefs("on") {
			for _, f := range w.Of("fastening") {
				does := f.Word("does")
				stack := f.AllRefs("stack")
				if does != "plug" && does != "pipe" || len(w.Doing(kind.Tightens, f)) == 0 || f.Has("when") || f.Has("at_each") || f.Has("locked_by") {
					continue
				}
				var on *model.Node
				if len(stack) > 0 {
					on = stack[len(stack)-1].To
				} else if fs := f.AllRefs("fasteners"); len(fs) > 0 {
					on = fs[0].To.Ref("sits_on")
				}
				if on != part.To || len(through) == 1 && through[0].To == f || optional(fill) {
					continue
				}
				t := w.Doing(kind.Tightens, f)[len(w.Doing(kind.Tightens, f))-1]
				if w.Pos(t) > w.Pos(fill) {
					continue
				}
				text := fmt.Sprintf("  loosen \"%s_below\" {\n    title     = \"Slacken it by half a turn\"\n    fastening = fastening.%s\n    by        = \"1/2 turn\"\n    takes     = \"1 min\"\n  }\n\n", f.ID, f.ID) +
					Copy(t.Node, t.ID+"_below", without(t.Node, "was", "after", "within"), Set(t.Node, "from", `"loosened"`))
				w.Put(InsertAfter(fill.Node, text).At(f), "%q slackened after %q", f.Title(), fill.Title())
			}
		}
	}
	for _, d := range w.Doing(kind.Drains) { // nobody lets it out first
		for _, s := range w.After(d) {
			f := append(Does(s, kind.Opens), Does(s, kind.Slackens)...)
			if len(f) == 1 && (f[0].Word("does") == "plug" || f[0].Word("does") == "pipe") && w.Spared(d.Node) {
				w.Put(w.Drop(d.Node).At(s.Node, f[0]), "drop %q", d.Title())
				break
			}
		}
	}
}
