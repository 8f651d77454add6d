package mutation

import (
	"fmt"
	"slices"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// The faults of trial fits, and of what comes off and goes on again.

// trial is a trial fit with the steps that undo it.
type trial struct {
	on, off, again *model.Step
	part           *model.Node
}

func (s *Sound) trials() []trial {
	var all []trial
	for _, on := range s.Doing(kind.Joins) {
		if !on.Flag("trial") {
			continue
		}
		p := Does(on, kind.Joins)[0]
		t := trial{on: on, part: p}
		for _, x := range s.After(on) {
			switch {
			case t.off == nil && does(x, kind.Takes, p):
				t.off = x
			case t.off != nil && t.again == nil && does(x, kind.Joins, p):
				t.again = x
			}
		}
		if t.off != nil {
			all = append(all, t)
		}
	}
	return all
}

func trialLeft(w *Workshop) {
	for _, t := range w.trials() {
		where := []*model.Node{t.on.Node, t.part}
		if t.again != nil {
			where = append(where, t.again.Node)
		}
		w.Put(w.Drop(t.off.Node).At(where...), "drop %q", t.off.Title())
		w.Put(w.sometimes(t.off).At(append(where, t.off.Node)...), "%q under an option only", t.off.Title())
		if t.again != nil && t.again.Procedure == t.off.Procedure && w.Uses(t.off.Node) == 0 && w.Uses(t.again.Node) == 0 && t.off.Procedure == t.on.Procedure {
			if quietTrial(w.Between(t.off, t.again)) {
				w.Put(w.Drop(t.off.Node).And(w.Drop(t.again.Node)).At(append(where, t.off.Node)...), "drop %q and %q", t.off.Title(), t.again.Title())
			}
		}
	}
}

func quietTrial(steps []*model.Step) bool {
	return !slices.ContainsFunc(steps, func(s *model.Step) bool { return Is(s, kind.Joins) || Is(s, kind.Opens) || s.Has("on") })
}

func trialAsFinal(w *Workshop) {
	for _, s := range w.Doing(kind.Joins) {
		p := Does(s, kind.Joins)
		if len(p) != 1 || s.Flag("trial") || s.Ref("part") == nil || s.Ref("part").Def.Name != "part" || p[0].Flag("spare") || s.Has("quantity") {
			continue
		}
		later := slices.ContainsFunc(w.After(s), func(x *model.Step) bool { return does(x, kind.Takes, p[0]) })
		if later {
			continue
		}
		where := append(nodes(w.After(s)), s.Node, p[0])
		w.Put(Set(s.Node, "trial", "true").At(where...), "%q for trial, and left on", s.Title())
	}
}

func neverRefitted(w *Workshop) {
	for _, off := range w.Doing(kind.Takes) {
		p := Does(off, kind.Takes)[0]
		back := slices.ContainsFunc(w.After(off), func(s *model.Step) bool { return does(s, kind.Joins, p) })
		if off.Flag("for_good") && !back {
			w.Put(Unset(off.Node, "for_good").At(p), "%q not said to be for good", off.Title())
		}
		if off.Flag("for_good") {
			continue
		}
		var again []*model.Step
		for _, s := range w.After(off) {
			if does(s, kind.Joins, p) {
				again = append(again, s)
			}
		}
		first := w.Doing(kind.Joins, p)
		if len(again) == 1 && w.Uses(again[0].Node) == 0 && len(first) > 0 && !first[0].Flag("trial") && leaf(w, p) {
			w.Put(w.Drop(again[0].Node).At(off.Node, p), "drop %q", again[0].Title())
			w.Put(w.sometimes(again[0]).At(off.Node, p), "%q under an option only", again[0].Title())
		}
	}
	for _, s := range w.Doing(kind.Joins) {
		p := Does(s, kind.Joins)[0]
		if s.Flag("trial") || s.Has("quantity") || len(w.Doing(kind.Joins, p)) != 1 || len(w.Doing(kind.Takes, p)) > 0 || !leaf(w, p) || p.Def.Name != "part" || s.Ref("part") != p || p.Word("fits_by") != "hand" || s.Flag("irreversible") || p.Has("stores") || p.Has("when") {
			continue
		}
		text := fmt.Sprintf("  remove \"%s_again\" {\n    title = \"Take it off again\"\n    part  = part.%s\n    takes = \"1 min\"\n  }\n", s.ID, p.ID)
		if s.Has("at_each") {
			continue
		}
		w.Put(InsertAfter(s.Node, text).At(s.Node, p), "taken off again after %q", s.Title())
	}
}

// leaf reports whether nothing hangs on a part: no stack, seat, lock or cover.
func leaf(w *Workshop, p *model.Node) bool {
	ok := true
	w.EachNode(func(n *model.Node) {
		for _, attr := range []string{"stack", "sits_on", "held_by", "covers", "locked_by", "fasteners", "by", "lifts", "between"} {
			ok = ok && !names(n, attr, p)
		}
	})
	for _, s := range w.steps {
		for _, r := range s.AllRefs("on") {
			ok = ok && (r.To != p || len(w.Doing(kind.Joins, p)) > 0 && w.Pos(s) < w.Pos(w.Doing(kind.Joins, p)[0]))
		}
	}
	return ok && !p.Has("covers") && len(p.Names("ports")) == 0
}
