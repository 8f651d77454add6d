package mutation

import (
	"slices"
	"strings"

	"fettle/lang/kind"
	"fettle/lang/model"
)

var safety = []*Class{
	{"safety", "hazard told nowhere", []string{"safety/hazard-untold", "safety/heat-untold"}, hazardUntold},
	{"safety", "PPE missing", []string{"safety/protection-missing", "safety/hazard-untold"}, protectionMissing},
	{"safety", "message without hazard, result or avoidance", []string{"safety/message-incomplete"}, messageIncomplete},
	{"safety", "lift too heavy", []string{"safety/lift-too-heavy"}, liftTooHeavy},
	{"safety", "hot, pressurised, energised work untold", []string{"safety/heat-untold", "safety/hazard-untold", "safety/run-without-message"}, energyUntold},
	{"safety", "helper in the prose, one person in the step", []string{"safety/helper-not-counted"}, helperNotCounted},
	{"safety", "run with no message", []string{"safety/run-without-message", "safety/hazard-untold"}, runUntold},
	{"safety", "media with no word on which governs", []string{"safety/media-without-precedence"}, mediaUngoverned},
}

// messages are the words for safety messages to persons.
var messages = []string{"danger", "warning", "caution"}

// told reports whether a node has a message of its own.
func told(n *model.Node) bool {
	return slices.ContainsFunc(n.Blocks, func(b *model.Node) bool { return slices.Contains(messages, b.Def.Name) })
}

// meets lists the steps that meet an entry: that use it, fit it or touch it.
func (s *Sound) meets(n *model.Node) []*model.Step {
	var all []*model.Step
	s.EachStep(func(st *model.Step) {
		for _, attr := range []string{"supplies", "tools", "tool", "part", "on", "lifts"} {
			if names(st.Node, attr, n) {
				all = append(all, st)
				return
			}
		}
	})
	return all
}

// hazardous reports whether everybody knows that an entry can hurt.
func hazardous(n *model.Node) bool {
	switch n.Def.Name {
	case "supply":
		k := n.Plain("kind")
		return k == "solvent" || k == "sealant" || k == "threadlocker" || k == "adhesive" || k == "petrol" || k == "fuel"
	case "tool":
		return n.Flag("hot")
	}
	return n.Has("stores")
}

func hazardUntold(w *Workshop) {
	for _, block := range []string{"supply", "tool", "part"} {
		for _, n := range w.Of(block) {
			by := w.meets(n)
			if !hazardous(n) || !told(n) || len(by) == 0 || slices.ContainsFunc(by, func(s *model.Step) bool { return told(s.Node) }) {
				continue
			}
			c := DropBlocks(n, messages...)
			for _, s := range by {
				c = c.At(s.Node)
			}
			w.Put(c, "%q says nothing of its hazard", n.Title())
			if n.Shared {
				continue
			}
			note := "\n  notice {\n    text = \"Keep it away from frost.\"\n  }\n"
			end := len(n.Extent.Text()) - 1
			w.Put(c.And(replace(n, n.Extent.Sub(end, end), note)), "%q tells of frost only", n.Title())
		}
	}
}

func protectionMissing(w *Workshop) {
	for _, n := range w.Of("supply") {
		by := w.meets(n)
		if !n.Has("ppe") || len(by) == 0 || !hazardous(n) {
			continue
		}
		spared := true
		for _, r := range n.AllRefs("ppe") {
			spared = spared && w.Spared(r.To)
		}
		own := slices.ContainsFunc(by, func(s *model.Step) bool { return s.Has("ppe") })
		if spared && !own {
			c := Unset(n, "ppe")
			for _, s := range by {
				c = c.At(s.Node)
			}
			w.Put(c, "%q without protection", n.Title())
		}
	}
	for _, s := range w.steps {
		if !s.Has("ppe") {
			continue
		}
		hot := Is(s, kind.Heats) && !s.Flag("cool") || slices.ContainsFunc(s.AllRefs("tools"), func(r model.Ref) bool { return r.To.Flag("hot") })
		says := false // a message that the step meets says to wear something
		for _, n := range append([]*model.Node{s.Node}, met(s)...) {
			if n.Def.Name == "part" {
				continue // its message may be about another moment
			}
			for _, b := range n.Blocks {
				avoid := strings.ToLower(b.Plain("avoid"))
				says = says || strings.Contains(avoid, "goggles") && onlyPPE(s, "goggles") || strings.Contains(avoid, "gloves") && onlyPPE(s, "gloves")
			}
		}
		spared := true
		for _, r := range s.AllRefs("ppe") {
			spared = spared && w.Spared(r.To)
		}
		if (hot || says) && spared && !slices.ContainsFunc(met(s), func(n *model.Node) bool { return n.Has("ppe") }) {
			w.Put(Unset(s.Node, "ppe"), "%q without protection", s.Title())
		}
	}
}

func onlyPPE(s *model.Step, word string) bool {
	return slices.ContainsFunc(s.AllRefs("ppe"), func(r model.Ref) bool { return strings.Contains(strings.ToLower(r.To.Title()), word) })
}

// met are the entries whose messages a step inherits.
func met(s *model.Step) []*model.Node {
	var all []*model.Node
	for _, attr := range []string{"supplies", "tools", "tool", "part"} {
		for _, r := range s.AllRefs(attr) {
			if r.To != nil && r.To.Step == nil {
				all = append(all, r.To)
			}
		}
	}
	return all
}

func messageIncomplete(w *Workshop) {
	w.EachNode(func(n *model.Node) {
		if n.Shared || !slices.Contains(messages, n.Def.Name) {
			return
		}
		for _, attr := range []string{"hazard", "result", "avoid"} {
			w.Put(Unset(n, attr), "a %s without %s", n.Def.Name, attr)
		}
		w.Put(Set(n, "avoid", `""`), "a %s with an empty avoid", n.Def.Name)
	})
}

// lifts lists the steps that lift a part by itself or with what it carries.
func (s *Sound) lifts(p *model.Node) []*model.Step {
	var all []*model.Step
	for _, st := range s.steps {
		for _, v := range []kind.Verb{kind.Joins, kind.Takes, kind.Lifts} {
			for _, n := range Does(st, v) {
				if n == p || s.Root(p, s.Pos(st)) == n {
					all = append(all, st)
				}
			}
		}
	}
	return slices.Compact(all)
}

func (s *Sound) hoisted(st *model.Step) bool {
	return len(toolsThat(st, func(t *model.Node) bool { return t.Has("capacity") })) > 0
}

func liftTooHeavy(w *Workshop) {
	for _, p := range w.Own("part") {
		m := p.Quantity("mass", "")
		by := w.lifts(p)
		if m == nil || len(by) != 1 || len(w.Doing(kind.Joins, p)) > 1 {
			continue
		}
		st := by[0]
		if w.hoisted(st) {
			continue
		}
		heavy := "200 kg"
		if m.Unit.Name == "lb" {
			heavy = "440 lb"
		}
		if p.Whole("quantity", "", 1) == 1 {
			w.Put(Set(p, "mass", quote(heavy)).At(st.Node), "%q weighs %s", p.Title(), heavy)
		}
	}
	for _, st := range w.steps { // the others are sent away
		if !st.Has("people") || w.hoisted(st) || !Is(st, kind.Joins) && !Is(st, kind.Takes) && !Is(st, kind.Lifts) {
			continue
		}
		total := 0.0
		for _, p := range w.Of("part") {
			m := p.Quantity("mass", "")
			if m == nil {
				continue
			}
			for _, v := range []kind.Verb{kind.Joins, kind.Takes, kind.Lifts} {
				for _, n := range Does(st, v) {
					pos := w.Pos(st)
					if n == p || v == kind.Joins && w.Root(p, pos) == n || v == kind.Lifts && p.Ref("sits_on") != nil && w.Root(p, pos) == n {
						total += float(*m)
					}
				}
			}
		}
		if total > 24 {
			w.Put(Unset(st.Node, "people"), "%q alone", st.Title())
		}
	}
	for _, t := range w.Of("tool") {
		if !t.Has("capacity") {
			continue
		}
		for _, st := range w.steps {
			if !names(st.Node, "tools", t) || !Is(st, kind.Joins) && !Is(st, kind.Takes) && !Is(st, kind.Lifts) {
				continue
			}
			for _, v := range []kind.Verb{kind.Joins, kind.Takes, kind.Lifts} {
				for _, p := range Does(st, v) {
					if m := p.Quantity("mass", ""); m != nil && float(*m) > 2 {
						w.Put(w.Variant(st.Node, "tools", t, Set(t, "capacity", quote(times(*m, 0.5).String()))).At(p), "%q with a hoist for half of it", st.Title())
					}
				}
			}
		}
	}
}

func energyUntold(w *Workshop) {
	for _, s := range w.steps {
		if Is(s, kind.Heats) && !s.Flag("cool") { // heated by something that tells of no heat
			hots := toolsThat(s, func(t *model.Node) bool { return t.Flag("hot") })
			spared := true
			for _, t := range hots {
				spared = spared && w.Spared(t)
			}
			ppe := true
			for _, r := range s.AllRefs("ppe") {
				ppe = ppe && w.Spared(r.To)
			}
			if spared && ppe && len(hots) > 0 && !told(s.Node) {
				c := &Change{}
				for _, t := range hots {
					c = c.And(DropRef(s.Node, "tools", t))
				}
				if len(hots) == 1 && s.Has("ppe") {
					w.Put(c.And(Unset(s.Node, "ppe")), "%q: by what, and how not to get burnt, is not said", s.Title())
				}
			}
		}
	}
	for _, r := range w.drives() {
		if told(r.Node) {
			told := slices.ContainsFunc(append(met(r), refNodes(r.AllRefs("on"))...), func(n *model.Node) bool { return told(n) })
			if !told {
				w.Put(DropBlocks(r.Node, messages...), "%q says nothing of its hazard", r.Title())
			}
		}
	}
	for _, p := range w.Own("part") {
		by := w.meets(p)
		if p.Has("stores") && told(p) && len(by) > 0 && !slices.ContainsFunc(by, func(s *model.Step) bool { return told(s.Node) }) {
			w.Put(DropBlocks(p, messages...).At(nodes(by)...), "%q stores %s, and says nothing", p.Title(), p.Plain("stores"))
		}
		if !p.Has("stores") && !told(p) && len(by) > 0 && len(w.Doing(kind.Joins, p)) == 1 && !slices.ContainsFunc(by, func(s *model.Step) bool { return told(s.Node) }) && strings.Contains(strings.ToLower(p.Title()), "spring") {
			w.Put(Set(p, "stores", `"spring"`).At(nodes(by)...), "%q stores a spring's force, and says nothing", p.Title())
		}
	}
}

func helperNotCounted(w *Workshop) {
	says := []string{
		"A helper holds the other end.",
		"Let a second person steady it.",
		"One of you holds it while the other works.",
		"Ask somebody to hold the lamp, and lift it together.",
	}
	i := 0
	for _, s := range w.steps {
		if s.Has("people") || s.Kind.Yields == kind.Pack || Is(s, kind.Stops) || Is(s, kind.Waits) || s.Word("held_by") == "second person" || s.Plain("held_by") == "second person" {
			continue
		}
		if a := s.Attr("held_by"); a != nil && strings.Contains(s.ValueSpan(a).Text(), "second person") {
			continue
		}
		if i%4 == 0 {
			w.Put(Say(s.Node, "text", says[i/4%len(says)]), "%q: %s", s.Title(), says[i/4%len(says)])
		}
		i++
	}
	for _, s := range w.steps {
		text := strings.ToLower(s.Plain("text"))
		if s.Has("people") && (strings.Contains(text, "helper") || strings.Contains(text, "second person") || strings.Contains(text, "one of you") || strings.Contains(text, "together")) && !Is(s, kind.Joins) && !Is(s, kind.Lifts) && !Is(s, kind.Takes) {
			w.Put(Unset(s.Node, "people"), "%q: the prose counts two", s.Title())
		}
	}
}

func runUntold(w *Workshop) {
	for _, r := range w.drives() {
		all := append(append(met(r), refNodes(r.AllRefs("on"))...), r.Node)
		c := &Change{}
		count := 0
		for _, n := range all {
			if told(n) {
				c = c.And(DropBlocks(n, messages...))
				count++
			}
		}
		if count == 1 && (told(r.Node) || !hazardous(all[slices.IndexFunc(all, func(n *model.Node) bool { return told(n) })])) {
			w.Put(c.At(r.Node), "%q: nobody says what can hurt", r.Title())
		}
	}
	for _, r := range w.drives() { // a run of a part that tells of nothing
		last := r.Procedure.Steps[len(r.Procedure.Steps)-1]
		for _, p := range w.Own("part") {
			if !p.Has("sits_on") && !told(p) && !p.Has("stores") && !p.Has("when") && !optional(r) && r.Def.Name == "run" && !names(r.Node, "on", p) && w.Pos(r) == w.Pos(w.drives()[len(w.drives())-1]) {
				text := Copy(r.Node, r.ID+"_bare", without(r.Node, "was", "after", "tools", "supplies", "danger", "warning", "caution"), Set(r.Node, "on", "[part."+p.ID+"]"))
				if r.Has("figures") {
					continue
				}
				w.Put(InsertAfter(last.Node, text), "a run of %q, without a word", p.Title())
				break
			}
		}
	}
}

func mediaUngoverned(w *Workshop) {
	for _, n := range w.Own("media") {
		w.Put(Unset(n, "governs"), "%q: which governs is not said", n.Title())
		w.Put(Set(n, "governs", `""`), "%q: an empty word on which governs", n.Title())
	}
	for _, s := range w.steps {
		if !s.Has("figures") && s.Index == 1 {
			text := "media \"bench_film\" {\n  address = \"Film 1 on the kit's disc\"\n  made_at = \"" + w.Plain("revision") + "\"\n  shows   = [" + s.Address + "]\n}\n"
			w.Put(InsertAfter(w.Node, text).And(Set(s.Node, "figures", "[media.bench_film]")), "a film, with no word on which governs")
		}
	}
}
