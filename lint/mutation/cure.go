package mutation

import (
	"fmt"
	"slices"

	"fettle/lang/kind"
	"fettle/lang/model"
)

// The faults of curing and of heat.

// drives lists the runs that are not by hand.
func (s *Sound) drives() []*model.Step {
	var all []*model.Step
	for _, r := range s.Doing(kind.Drives) {
		if r.Plain("by") != "hand" {
			all = append(all, r)
		}
	}
	return all
}

func waitTooShort(w *Workshop) {
	runs := w.drives()
	if len(runs) == 0 {
		return
	}
	for _, s := range w.Doing(kind.Waits) {
		refs := s.AllRefs("until")
		var names []string
		for _, r := range refs {
			names = append(names, r.Span(s.Node).Text())
		}
		where := []*model.Node{s.Node}
		for _, r := range runs {
			if w.Pos(r) > w.Pos(s) {
				where = append(where, r.Node)
			}
		}
		if len(where) == 1 {
			continue
		}
		for i, r := range refs {
			if len(refs) > 1 && r.To != nil && r.To.Step != nil && w.last(r.To.Step, refs) {
				w.Put(Set(s.Node, "until", "["+join(slices.Delete(slices.Clone(names), i, i+1))+"]").At(append(where, r.To)...), "%q without %q", s.Title(), r.To.Title())
			}
		}
		cure := slices.ContainsFunc(refs, func(r model.Ref) bool { return r.To != nil && r.To.Step != nil && !Is(r.To.Step, kind.Heats) })
		slow := slices.ContainsFunc(w.After(s), func(x *model.Step) bool { return Is(x, kind.Waits) })
		if cure && !slow {
			for _, long := range []string{"10 min", "1 h"} {
				w.Put(Unset(s.Node, "until").And(Set(s.Node, "for", quote(long))).At(append(where, refNodes(refs)...)...), "%q for %s", s.Title(), long)
			}
		}
	}
}

func refNodes(refs []model.Ref) []*model.Node {
	var all []*model.Node
	for _, r := range refs {
		all = append(all, r.To)
	}
	return all
}

// last reports whether a seal is the last of those waited for to be done curing:
// the last to be laid, of supplies that cure alike.
func (s *Sound) last(st *model.Step, refs []model.Ref) bool {
	for _, r := range refs {
		if r.To == nil || r.To.Step == nil || r.To.Step == st {
			continue
		}
		if s.Pos(r.To.Step) > s.Pos(st) || r.To.Ref("supplies") == nil || st.Ref("supplies") == nil || r.To.Ref("supplies").Plain("kind") != st.Ref("supplies").Plain("kind") {
			return false
		}
	}
	return true
}

func runUncured(w *Workshop) {
	runs := w.drives()
	for _, s := range w.Doing(kind.Waits) {
		refs := s.AllRefs("until")
		cure := len(refs) > 0 && !slices.ContainsFunc(refs, func(r model.Ref) bool { return r.To == nil || r.To.Step == nil || Is(r.To.Step, kind.Heats) })
		i := slices.IndexFunc(runs, func(r *model.Step) bool { return w.Pos(r) > w.Pos(s) })
		slow := slices.ContainsFunc(w.After(s), func(x *model.Step) bool { return Is(x, kind.Waits) && i >= 0 && w.Pos(x) < w.Pos(runs[i]) })
		if !cure || i < 0 || slow {
			continue
		}
		where := append(append(nodes(runs), refNodes(refs)...), s.Node)
		if w.Uses(s.Node) == 0 {
			w.Put(w.Drop(s.Node).At(where...), "drop %q", s.Title())
			if runs[i].Procedure == s.Procedure {
				w.Put(MoveAfter(s.Node, runs[i].Node).At(where...), "%q after %q", s.Title(), runs[i].Title())
			}
			w.Put(w.sometimes(s).At(where...), "%q under an option only", s.Title())
		}
	}
}

func outsideService(w *Workshop) {
	for _, s := range w.Doing(kind.Seals) {
		shut, glue := closing(s), s.Ref("supplies")
		all := faces(s)
		if shut == nil || glue == nil || !glue.Has("service") || len(all) == 0 || s.Has("at_each") || s.Procedure.Has("at_each") {
			continue
		}
		last := s.Procedure.Steps[len(s.Procedure.Steps)-1]
		if slices.ContainsFunc(w.After(shut), func(x *model.Step) bool {
			return slices.ContainsFunc(all, func(f model.Ref) bool { return does(x, kind.Takes, f.To) })
		}) {
			continue // parted again
		}
		for _, to := range []string{"340..360 °C", "400 °C"} {
			ppe, gloves := "    ppe   = [ppe.oven_gloves]\n", "ppe \"oven_gloves\" {\n  name     = \"Heat-resistant gloves\"\n  standard = \"EN 407\"\n}\n"
			text := fmt.Sprintf("  heat \"%s_bake\" {\n    title = \"Bake the paint\"\n    on    = [part.%s]\n%s    to    = %q\n    takes = \"30 min\"\n\n    warning {\n      hazard = \"The part is hot enough to burn to the bone.\"\n      result = \"Deep burns.\"\n      avoid  = \"Wear heat-resistant gloves, and let nobody near it until it is cold.\"\n    }\n  }\n", s.ID, all[0].To.ID, ppe, to)
			w.Put(InsertAfter(last.Node, text).And(InsertAfter(w.Node, gloves)).At(s.Node, glue), "%q baked at %s", all[0].To.Title(), to)
		}
	}
	for _, s := range w.Doing(kind.Seals) { // a sealant that the machine's heat is too much for
		glue := s.Ref("supplies")
		if glue == nil || glue.Shared || !glue.Has("service") {
			continue
		}
		for _, h := range w.After(s) {
			if l, ok := h.Limits("to", ""); Is(h, kind.Heats) && ok && l.High != nil && slices.ContainsFunc(faces(s), func(r model.Ref) bool { return names(h.Node, "on", r.To) }) {
				w.Put(Set(glue, "service", quote("-50..40 °C")).At(h.Node, s.Node), "%q stands 40 °C", glue.Title())
			}
		}
	}
}
