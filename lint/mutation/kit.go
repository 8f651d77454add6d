package mutation

import (
	"strings"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

var kit = []*Class{
	{"kit", "unknown part, tool, supply", []string{"kit/unknown-entry", "values/unknown-reference"}, unknownEntry},
	{"kit", "entry that nothing uses", []string{"kit/unused-entry", "access/never-fitted"}, unusedEntry},
	{"kit", "two entries with one number", []string{"kit/number-twice"}, numberTwice},
	{"kit", "one tool needed at two places", []string{"kit/tool-at-two-places"}, toolTwice},
}

func unknownEntry(w *Workshop) {
	i := 0
	w.EachNode(func(n *model.Node) {
		if n.Shared {
			return
		}
		for k := range n.Attrs {
			a := &n.Attrs[k]
			model.EachRef(a.Value, func(r *model.Ref) {
				if r.To == nil || r.To.Step != nil {
					return
				}
				switch r.To.Def.Name {
				case "part", "tool", "supply", "ppe", "fastening", "figure":
				default:
					return
				}
				at := r.Span(n)
				old := r.To.Def.Name + "." + r.To.ID
				if !strings.HasPrefix(at.Text(), old) || !w.Spared(r.To) {
					return
				}
				i++
				wrong := []string{r.To.ID + "_2", strings.ToUpper(r.To.ID[:1]) + r.To.ID[1:], "spare_" + r.To.ID, r.To.ID[:len(r.To.ID)-1] + "z"}[i%4]
				w.Put(replace(n, at, r.To.Def.Name+"."+wrong+strings.TrimPrefix(at.Text(), old)), "%s names %s.%s", a.Def.Name, r.To.Def.Name, wrong)
			})
		}
	})
}

func unusedEntry(w *Workshop) {
	for _, block := range []string{"tool", "supply", "ppe", "limit", "figure", "fastening", "places", "option"} {
		own := w.Own(block)
		for i, n := range own {
			if len(own) > 3 && i%(len(own)/3) != 0 {
				continue
			}
			changes := []*Change{}
			if n.Has("number") {
				changes = append(changes, Unset(n, "number"))
			}
			for _, name := range []string{"name", "title"} {
				if n.Has(name) {
					changes = append(changes, Set(n, name, quote(n.Plain(name)+", the other one")))
				}
			}
			if block == "fastening" || block == "figure" {
				continue // a fastening that is never done is another fault
			}
			w.Put(InsertAfter(n, Copy(n, n.ID+"_unused", changes...)), "a %s that nothing uses", block)
		}
	}
	for _, s := range w.steps { // the one use of an entry is taken out
		for _, attr := range []string{"tools", "ppe"} {
			for _, r := range s.AllRefs(attr) {
				if !r.To.Shared && w.Uses(r.To) == 1 && !r.To.Has("drive") && !r.To.Has("resolution") && !r.To.Flag("hot") && attr == "tools" && !Is(s, kind.Tightens) {
					w.Put(DropRef(s.Node, attr, r.To).At(r.To), "%q no longer uses %q", s.Title(), r.To.Title())
				}
			}
		}
	}
}

func numberTwice(w *Workshop) {
	var with []*model.Node
	w.EachNode(func(n *model.Node) {
		if !n.Shared && n.Has("number") {
			with = append(with, n)
		}
	})
	for i, n := range with {
		if i == 0 {
			continue
		}
		for _, o := range []*model.Node{with[i-1], with[i/2]} {
			if o != n && o.Plain("number") != n.Plain("number") {
				w.Put(Set(n, "number", quote(o.Plain("number"))).At(o), "%q has the number of %q", n.Title(), o.Title())
			}
		}
	}
	for i, n := range w.Own("part") { // numbers where there were none
		if all := w.Own("part"); i > 0 && i < 4 && !n.Has("number") && !all[0].Has("number") && len(n.Nested(entry.Size)) == 0 && len(all[0].Nested(entry.Size)) == 0 {
			w.Put(Set(n, "number", `"XK-100"`).And(Set(all[0], "number", `"XK-100"`)), "%q and %q have one number", n.Title(), all[0].Title())
		}
	}
}

func toolTwice(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		for _, s := range toolsThat(t, func(n *model.Node) bool { return isSocket(n) && n.Whole("quantity", "", 1) == 1 }) {
			if !t.Has("held_by") && !t.Has("turning") {
				w.Put(Set(t.Node, "held_by", "tool."+s.ID).At(s), "%q: %q turns and holds", t.Title(), s.Title())
			} else if h := t.Ref("held_by"); h != nil && h != s && h.Def.Name == "tool" && w.Spared(h) {
				w.Put(Set(t.Node, "held_by", "tool."+s.ID).At(s), "%q: %q turns and holds", t.Title(), s.Title())
			}
		}
	}
	for _, on := range w.Doing(kind.PutsOn) { // used while it is on
		tool := Does(on, kind.PutsOn)[0]
		if tool.Whole("quantity", "", 1) != 1 {
			continue
		}
		for _, s := range w.After(on) {
			if does(s, kind.PutsAway, tool) {
				break
			}
			if s.Has("tools") && s.Procedure == on.Procedure && !names(s.Node, "held_by", tool) && !w.near(s, tool) && !optional(s) && s.Def.Name != "hold" {
				w.PutFor([]string{"kit/tool-at-two-places"}, AddRef(s.Node, "tools", "tool."+tool.ID).At(tool, on.Node), "%q uses %q, which is on", s.Title(), tool.Title())
				break
			}
		}
		if next := Next(on); next != nil {
			text := Copy(on.Node, on.ID+"_again", without(on.Node, "was", "after", "within", "figures"))
			w.PutFor([]string{"kit/tool-at-two-places", "access/fitted-twice"}, InsertAfter(on.Node, text).At(tool, on.Node), "%q put on twice", tool.Title())
		}
	}
}

// near reports whether a step works on what a tool is on.
func (s *Sound) near(st *model.Step, tool *model.Node) bool {
	seat := tool.Ref("sits_on")
	if names(st.Node, "on", tool) || seat == nil {
		return true
	}
	pos := s.Pos(st)
	for _, attr := range []string{"on", "part", "fastening", "lifts"} {
		for _, r := range st.AllRefs(attr) {
			part := r.To
			if part != nil && part.Def.Name == "fastening" && len(part.AllRefs("stack")) > 0 {
				part = part.AllRefs("stack")[0].To
			}
			if part != nil && part.Def.Name == "part" && s.Root(part, pos+1) == s.Root(seat, pos) {
				return true
			}
		}
	}
	return false
}
