package mutation

import (
	"fmt"
	"slices"

	"fettle/lang/kind"
	"fettle/lang/model"
)

var holding = []*Class{
	{"hold", "critical covered before accepted and held", []string{"hold/covered-before-accepted", "hold/covered-before-held"}, coveredUnheld},
	{"hold", "first run of a kind without a hold", []string{"hold/run-unheld", "hold/after-its-step"}, runUnheld},
	{"hold", "irreversible step without a hold", []string{"hold/irreversible-unheld", "hold/after-its-step"}, irreversibleUnheld},
	{"hold", "critical torque without a check", []string{"hold/torque-unchecked"}, torqueUnchecked},
	{"hold", "hold checks later, nothing, or what is left out", []string{"hold/checks-later", "hold/checks-nothing", "hold/checks-left-out"}, holdChecks},
	{"hold", "release by a signatory nobody named", []string{"hold/unknown-releaser"}, releaser},
}

// protects reports whether fitting a part takes away what a step accepted: what
// it looked at, or a fastening that holds that.
func (s *Sound) protects(judge *model.Step, part *model.Node) bool {
	for _, c := range part.AllRefs("covers") {
		for _, o := range judge.AllRefs("on") {
			if c.To == o.To && (c.Sub == "" || c.Address() == o.Address()) || c.To.Def.Name == "fastening" && holds(c.To, o.To) && s.tightAt(c.To, s.Pos(judge)) {
				return true
			}
		}
	}
	return false
}

// holds reports whether a fastening keeps a part where it is: one of its stack,
// and not the one at the bottom, which carries the others.
func holds(f, part *model.Node) bool {
	i := slices.IndexFunc(f.AllRefs("stack"), func(r model.Ref) bool { return r.To == part })
	return i >= 0 && (i < len(f.AllRefs("stack"))-1 || f.Word("does") == "set bearing")
}

// tightAt reports whether a fastening is tight when the work reaches a place.
func (s *Sound) tightAt(f *model.Node, pos int) bool {
	tight := false
	for _, st := range s.fate(f) {
		if s.Pos(st) < pos {
			tight = does(st, kind.Tightens, f) || tight && does(st, kind.Locks, f)
		}
	}
	return tight
}

// critical reports whether a step's acceptance is critical.
func critical(s *model.Step) bool {
	if s.Flag("critical") {
		return true
	}
	if f := s.Formula("accept", ""); f != nil {
		return slices.ContainsFunc(f.Refs, func(r model.Ref) bool { return r.To.Def.Name == "limit" && r.To.Flag("critical") })
	}
	return false
}

func coveredUnheld(w *Workshop) {
	for _, h := range w.Doing(kind.Stops) {
		checks := h.AllRefs("checks")
		for _, r := range checks {
			j := r.To.Step
			if j == nil || !critical(j) || len(j.AllRefs("on")) == 0 || optional(j) {
				continue
			}
			var cover *model.Step
			for _, s := range w.After(j) {
				for _, p := range Does(s, kind.Joins) {
					if cover == nil && w.protects(j, p) && w.Pos(s) > w.Pos(h) {
						cover = s
					}
				}
			}
			other := slices.ContainsFunc(w.Doing(kind.Stops), func(o *model.Step) bool { return o != h && names(o.Node, "checks", j.Node) })
			if cover == nil || other {
				continue
			}
			where := []*model.Node{h.Node, j.Node, cover.Node}
			drives := slices.ContainsFunc(w.drives(), func(r *model.Step) bool { return r.Procedure == h.Procedure && w.Pos(r) > w.Pos(h) })
			if !drives {
				w.Put(w.Drop(h.Node).At(where...), "drop %q", h.Title())
			}
			if len(checks) > 1 {
				w.Put(DropRef(h.Node, "checks", j.Node).At(where...), "%q leaves out %q", h.Title(), j.Title())
			}
			if cover.Procedure == h.Procedure && w.Uses(h.Node) == 0 {
				rules := append([]string{"hold/after-its-step"}, w.class.Rules...)
				w.PutFor(rules, MoveAfter(h.Node, cover.Node).At(where...), "%q after %q", h.Title(), cover.Title())
			}
		}
	}
	for _, j := range w.steps { // accepted by no hold, and said to be critical
		if j.Def.Name != "inspect" && j.Kind.Yields != kind.Reading || critical(j) || !j.Has("criterion") && !j.Has("accept") || optional(j) {
			continue
		}
		if slices.ContainsFunc(w.Doing(kind.Stops), func(o *model.Step) bool { return names(o.Node, "checks", j.Node) }) {
			continue
		}
		var covers []*model.Node
		for _, s := range w.After(j) {
			if slices.ContainsFunc(Does(s, kind.Joins), func(p *model.Node) bool { return w.protects(j, p) && !optional(s) }) {
				covers = append(covers, s.Node)
			}
		}
		if len(covers) > 0 {
			w.Put(Set(j.Node, "critical", "true").At(covers...), "%q is critical and nobody holds", j.Title())
		}
	}
}

func runUnheld(w *Workshop) {
	seen := map[string]bool{}
	for _, r := range w.drives() {
		by := r.Plain("by")
		first := !seen[by]
		seen[by] = true
		if !first {
			continue
		}
		var holds []*model.Step
		for _, h := range w.Doing(kind.Stops) {
			if names(h.Node, "before", r.Node) || h.Procedure == r.Procedure && w.Pos(h) < w.Pos(r) {
				holds = append(holds, h)
			}
		}
		if len(holds) != 1 {
			continue
		}
		h := holds[0]
		where := []*model.Node{h.Node, r.Node}
		for _, c := range h.AllRefs("checks") {
			where = append(where, c.To)
		}
		w.Put(w.Drop(h.Node).At(where...), "drop %q", h.Title())
		if h.Procedure == r.Procedure && w.Uses(h.Node) == 0 {
			w.Put(MoveAfter(h.Node, r.Node).At(where...), "%q after %q", h.Title(), r.Title())
		}
		w.Put(w.sometimes(h).At(where...), "%q under an option only", h.Title())
	}
	for _, r := range w.Doing(kind.Drives) { // a drive of another kind, which nobody holds
		if r.Plain("by") == "hand" || optional(r) {
			continue
		}
		for _, by := range []string{"fluid", "pressure", "electric", "power"} {
			if !seen[by] && !slices.ContainsFunc(r.Procedure.Steps, func(h *model.Step) bool { return Is(h, kind.Stops) }) && len(r.AllRefs("after")) == 0 && w.Pos(r) == w.Pos(w.drives()[len(w.drives())-1]) {
				last := r.Procedure.Steps[len(r.Procedure.Steps)-1]
				text := Copy(r.Node, r.ID+"_"+by, without(r.Node, "was"), Set(r.Node, "by", quote(by)))
				w.Put(InsertAfter(last.Node, text), "a first run by %s, without a hold", by)
			}
		}
	}
}

func irreversibleUnheld(w *Workshop) {
	for _, s := range w.steps {
		before := func() (all []*model.Step) {
			for _, h := range w.Doing(kind.Stops) {
				if names(h.Node, "before", s.Node) || h.Procedure == s.Procedure && w.Pos(h) < w.Pos(s) {
					all = append(all, h)
				}
			}
			return all
		}
		if s.Flag("irreversible") {
			if all := before(); len(all) == 1 {
				h := all[0]
				where := []*model.Node{h.Node, s.Node}
				w.Put(w.Drop(h.Node).At(where...), "drop %q", h.Title())
				w.Put(w.sometimes(h).At(where...), "%q under an option only", h.Title())
				if h.Procedure == s.Procedure && w.Uses(h.Node) == 0 {
					w.Put(MoveAfter(h.Node, s.Node).At(where...), "%q after %q", h.Title(), s.Title())
				}
			}
			continue
		}
		gone := slices.ContainsFunc(w.After(s), func(x *model.Step) bool {
			return slices.ContainsFunc(Does(s, kind.Joins), func(p *model.Node) bool { return does(x, kind.Takes, p) })
		})
		if (Is(s, kind.Joins) || Is(s, kind.Locks)) && !s.Flag("trial") && !gone && len(before()) == 0 && !goesBack(s.Procedure) {
			w.Put(Set(s.Node, "irreversible", "true"), "%q cannot be undone", s.Title())
		}
	}
}

func torqueUnchecked(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		checked := slices.ContainsFunc(w.steps, func(s *model.Step) bool {
			return names(s.Node, "checks", t.Node) || w.Pos(s) > w.Pos(t) && names(s.Node, "on", f)
		})
		if t.Flag("critical") {
			var by []*model.Step
			for _, h := range w.Doing(kind.Stops) {
				if names(h.Node, "checks", t.Node) {
					by = append(by, h)
				}
			}
			looked := slices.ContainsFunc(w.After(t), func(s *model.Step) bool {
				return names(s.Node, "on", f) && (s.Def.Name == "inspect" || s.Kind.Yields == kind.Reading)
			})
			if len(by) == 1 && !looked {
				h := by[0]
				where := []*model.Node{t.Node, h.Node, f}
				if len(h.AllRefs("checks")) > 1 {
					w.Put(DropRef(h.Node, "checks", t.Node).At(where...), "%q leaves out %q", h.Title(), t.Title())
				}
				others := slices.ContainsFunc(h.AllRefs("checks"), func(r model.Ref) bool { return r.To != t.Node })
				if !others {
					w.Put(w.Drop(h.Node).At(where...), "drop %q", h.Title())
				}
			}
			continue
		}
		trial := slices.ContainsFunc(w.After(t), func(s *model.Step) bool { return does(s, kind.Opens, f) })
		if !checked && !trial && !optional(t) && len(w.Doing(kind.Tightens, f)) == 1 {
			w.Put(Set(t.Node, "critical", "true").At(f), "%q is critical, and nobody checks", t.Title())
		}
	}
}

func holdChecks(w *Workshop) {
	for _, h := range w.Doing(kind.Stops) {
		checks := h.AllRefs("checks")
		if len(checks) == 0 {
			continue
		}
		w.Put(Unset(h.Node, "checks"), "%q checks nothing", h.Title())
		for _, s := range w.After(h) {
			if s.Kind.Judges && s.Procedure == h.Procedure && (s.Has("accept") || s.Has("criterion")) {
				w.Put(AddRef(h.Node, "checks", s.Def.Name+"."+s.ID).At(s.Node), "%q checks %q, which comes later", h.Title(), s.Title())
				break
			}
		}
		for _, r := range checks {
			j := r.To.Step
			if j == nil || optional(h) || optional(j) {
				continue
			}
			used := false
			w.formulas(func(_ *model.Node, _ string, f *model.Formula) {
				used = used || slices.ContainsFunc(f.Refs, func(x model.Ref) bool { return x.To == j.Node })
			})
			holds := slices.DeleteFunc(w.Doing(kind.Stops), func(o *model.Step) bool { return !names(o.Node, "checks", j.Node) })
			resets := slices.ContainsFunc(w.Doing(kind.Sets), func(a *model.Step) bool { return a != j && a.Has("locks_with") && overlaps(j, a) })
			if len(holds) > 1 || resets {
				continue
			}
			if j.Def.Name == "inspect" || j.Kind.Yields == kind.Reading && !used {
				rules := append([]string{"hold/covered-before-accepted"}, w.class.Rules...)
				w.PutFor(rules, w.forExtra(j).At(h.Node), "%q, which %q checks, under an option only", j.Title(), h.Title())
			}
			if len(checks) == 1 && j.Procedure == h.Procedure && j.Def.Name == "inspect" && w.Uses(h.Node) == 0 && !slices.ContainsFunc(w.Between(j, h), func(s *model.Step) bool { return !s.Kind.Judges }) {
				w.Put(MoveBefore(h.Node, j.Node).At(h.Node, j.Node), "%q before %q", h.Title(), j.Title())
			}
		}
	}
}

func releaser(w *Workshop) {
	for i, h := range w.Doing(kind.Stops) {
		who := []string{"harbour master", "the foreman", "quality manager"}[i%3]
		w.Put(Set(h.Node, "release", quote(who)), "%q released by %s", h.Title(), who)
	}
	named := w.Names("signatories")
	for _, name := range named {
		users := 0
		var by []*model.Node
		for _, h := range w.Doing(kind.Stops) {
			if h.Plain("release") == name {
				users++
				by = append(by, h.Node)
			}
		}
		if users == 1 && len(named) == 1 {
			w.Put(Unset(w.Node, "signatories").At(by...), "%s is no longer named", name)
		}
		if users == 1 {
			w.Put(Set(by[0], "release", quote(fmt.Sprintf("%ss", name))), "%ss", name)
		}
	}
}
