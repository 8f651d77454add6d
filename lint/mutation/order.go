package mutation

import (
	"fmt"
	"slices"
	"strings"

	"fettle/lang/kind"
	"fettle/lang/model"
)

var order = []*Class{
	{"order", "after contradicted by the order", []string{"order/after-contradicted"}, afterContradicted},
	{"order", "procedures in a ring", []string{"order/procedures-in-ring"}, proceduresInRing},
	{"order", "procedure left out of the order", []string{"order/procedure-left-out"}, procedureLeftOut},
	{"order", "part fitted before what it sits on", []string{"order/fitted-before-seat", "access/covered"}, beforeSeat},
	{"order", "step that can never be reached", []string{"order/never-reached", "values/branch-never-taken"}, neverReached},
	{"order", "otherwise that cannot be done", []string{"order/otherwise-impossible", "fastening/removed-while-fastened", "fastening/nothing-to-loosen", "access/covered"}, otherwiseImpossible},
	{"order", "too late or too early", []string{"order/too-late", "order/too-early"}, outOfTime},
}

func afterContradicted(w *Workshop) {
	for i, s := range w.steps {
		if s.Has("after") || i%3 != 0 {
			continue
		}
		later := Next(s)
		if later == nil || later.Kind.Yields != kind.Nothing {
			continue
		}
		w.Put(Set(s.Node, "after", "["+later.Def.Name+"."+later.ID+"]").At(later.Node), "%q after %q", s.Title(), later.Title())
	}
	for i, p := range w.Procedures[:w.Ordered] {
		if i+1 < w.Ordered {
			next := w.Procedures[i+1]
			if !names(next, "after", p) {
				w.Put(AddRef(p, "after", "procedure."+next.ID).At(next, w.Node), "%q after %q", p.Title(), next.Title())
			}
			steps := p.Steps
			if len(steps) > 1 && len(next.Steps) > 0 && !steps[0].Has("after") && !names(next, "after", p) {
				w.Put(Set(steps[1].Node, "after", "[procedure."+next.ID+"]").At(next, w.Node), "%q after the next procedure", steps[1].Title())
			}
		}
		if len(p.Steps) > 2 && !p.Steps[1].Has("after") {
			last := p.Steps[len(p.Steps)-1]
			w.Put(Set(p.Steps[1].Node, "after", "["+last.Def.Name+"."+last.ID+"]").At(last.Node), "%q after the last step", p.Steps[1].Title())
		}
	}
}

func proceduresInRing(w *Workshop) {
	var earlier func(p *model.Node, seen []*model.Node) []*model.Node
	earlier = func(p *model.Node, seen []*model.Node) []*model.Node {
		for _, r := range p.AllRefs("after") {
			if r.To.Step == nil && !slices.Contains(seen, r.To) {
				seen = earlier(r.To, append(seen, r.To))
			}
		}
		return seen
	}
	for _, p := range w.Procedures[:w.Ordered] {
		w.Put(AddRef(p, "after", "procedure."+p.ID), "%q after itself", p.Title())
		for _, e := range earlier(p, nil) {
			w.Put(AddRef(e, "after", "procedure."+p.ID).At(p, w.Node), "%q after %q", e.Title(), p.Title())
		}
	}
}

func procedureLeftOut(w *Workshop) {
	for i, p := range w.Procedures[:w.Ordered] {
		if i == w.Ordered-1 && w.Ordered > 1 {
			w.Put(DropRef(w.Node, "order", p).At(p), "%q left out", p.Title())
		}
		text := fmt.Sprintf("procedure \"wipe_%s\" {\n  title = \"Wipe down\"\n\n  clean \"bench\" {\n    title = \"Wipe %s down\"\n    on    = [part.%s]\n    takes = \"2 min\"\n  }\n}\n",
			p.ID, "the casting", w.firstBase())
		if w.firstBase() != "" {
			w.Put(InsertAfter(p, text), "a procedure more that the order does not name, behind %q", p.Title())
		}
	}
}

func (s *Sound) firstBase() string {
	for _, p := range s.Own("part") {
		if !p.Has("sits_on") && !p.Has("when") {
			return p.ID
		}
	}
	return ""
}

func beforeSeat(w *Workshop) {
	joins := func(s *model.Step) *model.Node {
		if all := Does(s, kind.Joins); len(all) == 1 && !s.Flag("trial") && s.Ref("part") != nil && s.Ref("part").Def.Name == "part" {
			return all[0]
		}
		return nil
	}
	single := func(p *model.Node) bool { return p != nil && len(w.Doing(kind.Joins, p)) == 1 }
	for _, s := range w.steps {
		next := Next(s)
		if next == nil || w.Uses(s.Node) > 0 || w.Uses(next.Node) > 0 {
			continue
		}
		q, p := joins(s), joins(next)
		if !single(q) || !single(p) {
			continue
		}
		for _, f := range w.Of("fastening") {
			stack := f.AllRefs("stack")
			at := slices.IndexFunc(stack, func(r model.Ref) bool { return r.To == p })
			under := slices.IndexFunc(stack, func(r model.Ref) bool { return r.To == q })
			if at >= 0 && under > at && under < len(stack)-1 && !names(p, "sits_on", q) { // p above q above something else
				w.Put(Swap(s.Node, next.Node).At(p, q, f), "%q before %q", next.Title(), s.Title())
				break
			}
		}
	}
	// A seat that is a list is together before anything goes on it.
	for _, s := range w.steps {
		p := joins(s)
		if !single(p) || len(p.AllRefs("sits_on")) != 1 || w.Uses(s.Node) > 0 || optional(s) || s.Places != nil {
			continue
		}
		for _, later := range w.After(s) {
			q := joins(later)
			if later.Procedure != s.Procedure || q == nil || optional(later) || !single(q) || names(q, "sits_on", p) || names(p, "sits_on", q) || q.Has("at_each") || p.Has("at_each") || goesBack(s.Procedure) || w.carries(p) {
				continue
			}
			if w.Root(q, w.Pos(s)) == q && q.Has("sits_on") && w.Root(p, w.Pos(later)+1) == w.Root(q, w.Pos(later)+1) {
				w.Put(AddRef(p, "sits_on", "part."+q.ID).At(s.Node), "%q sits on %q too, which goes on later", p.Title(), q.Title())
				break
			}
		}
	}
}

func neverReached(w *Workshop) {
	for i, s := range w.steps {
		if s.Def.Name != "inspect" || s.Has("when") {
			continue
		}
		put := func(when, what string) {
			text := Copy(s.Node, s.ID+"_more", without(s.Node, "was", "critical"), Set(s.Node, "when", when))
			w.Put(InsertAfter(s.Node, text), "%q when %s", s.Title(), what)
		}
		for _, o := range w.Own("option") {
			c := o.Names("choices")
			if len(c) < 2 {
				continue
			}
			put(fmt.Sprintf("option.%s == %q && option.%s == %q", o.ID, c[0], o.ID, c[1]), "two choices at once")
			if p := s.Procedure; p.Has("when") {
				text := p.ValueSpan(p.Attr("when")).Text()
				for _, other := range c {
					if strings.HasPrefix(text, "option."+o.ID+" ==") && !strings.Contains(text, quote(other)) {
						put(fmt.Sprintf("option.%s == %q", o.ID, other), "the procedure's option says otherwise")
					}
				}
			}
		}
		for _, e := range w.steps[:i] {
			l, ok := e.Limits("likely", "")
			if a, judged := limitsOf(e.Node, "accept"); judged {
				l, ok = a, true
			}
			if e.Kind.Yields == kind.Reading && e.Procedure == s.Procedure && !optional(e) && e.Places == s.Places && ok && l.Low != nil && l.High != nil {
				put(fmt.Sprintf("%s.%s > %q", e.Def.Name, e.ID, plus(*l.High, width(l), 2)), "a reading lies where none is likely or accepted")
				put(fmt.Sprintf("%s.%s < %q", e.Def.Name, e.ID, plus(*l.Low, width(l), -2)), "a reading lies where none is likely or accepted")
				break
			}
		}
	}
	for _, s := range w.steps { // a branch for a side that has no end
		if l, ok := limitsOf(s.Node, "accept"); ok && s.Kind.Yields == kind.Reading && s.Has("otherwise") && s.Formula("accept", "").Literal != nil {
			block := "    otherwise {\n      when = \"below\"\n      text = \"Look for dirt, and measure again.\"\n      then = \"stop\"\n    }\n"
			rest := "    otherwise {\n      when = \"above\"\n      text = \"Look for dirt, and measure again.\"\n      then = \"stop\"\n    }\n"
			c := Set(s.Node, "accept", quote("≤ "+l.High.String())).And(Unset(s.Node, "otherwise"))
			end := s.Extent.Sub(len(s.Extent.Text())-len(margin(s.Node))-1, len(s.Extent.Text())-len(margin(s.Node))-1)
			w.Put(c.And(replace(s.Node, end, "\n"+block+"\n"+rest)), "%q: a branch for below, and no lower end", s.Title())
		}
	}
}

func otherwiseImpossible(w *Workshop) {
	put := func(s *model.Step, block, what string, where ...*model.Node) {
		var c *Change
		if s.Has("otherwise") {
			c = Unset(s.Node, "otherwise")
		} else {
			return
		}
		end := len(s.Extent.Text()) - len(margin(s.Node)) - 1
		w.Put(c.And(replace(s.Node, s.Extent.Sub(end, end), "\n    otherwise {\n      text = \"Something is in the way.\"\n"+block+"    }\n")).At(where...), "%q: %s", s.Title(), what)
	}
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Reading && s.Def.Name != "inspect" || !s.Has("otherwise") || optional(s) || s.Has("at_each") {
			continue
		}
		// A part that is bolted down comes off.
		for _, f := range w.Of("fastening") {
			all := w.fate(f)
			var last *model.Step
			for _, x := range all {
				if w.Pos(x) < w.Pos(s) {
					last = x
				}
			}
			if last == nil || last.Procedure != s.Procedure || !does(last, kind.Tightens, f) || len(f.AllRefs("stack")) < 2 || f.Has("when") || f.AllRefs("stack")[0].To.Def.Name != "part" {
				continue
			}
			p := f.AllRefs("stack")[0].To
			if !w.lies(p, w.Pos(s)) {
				continue
			}
			put(s, fmt.Sprintf("\n      remove \"%s_off\" {\n        title = \"Take it off\"\n        part  = part.%s\n        takes = \"2 min\"\n      }\n\n      then = \"stop\"\n", p.ID, p.ID), "takes "+p.Title()+" off with its bolts tight", f)
			break
		}
		// A fastening that is not tight is loosened.
		for _, f := range w.Of("fastening") {
			all := w.fate(f)
			if len(all) > 0 && w.Pos(all[0]) > w.Pos(s) && does(all[0], kind.Starts, f) && all[0].Procedure == s.Procedure && !f.Has("when") {
				put(s, fmt.Sprintf("\n      loosen \"%s_early\" {\n        title     = \"Slacken it\"\n        fastening = fastening.%s\n        by        = \"1/2 turn\"\n        takes     = \"1 min\"\n      }\n\n      then = \"stop\"\n", f.ID, f.ID), "slackens "+f.Title()+", which is not on yet", f)
				break
			}
		}
		// Back to before something that cannot be undone.
		for _, irr := range w.steps[:w.Pos(s)] {
			if irr.Flag("irreversible") && irr.Procedure == s.Procedure && irr.Index > 0 {
				before := irr.Procedure.Steps[irr.Index-1]
				put(s, fmt.Sprintf("      then = %s.%s\n", before.Def.Name, before.ID), "goes back to before what cannot be undone", irr.Node)
				part := Does(irr, kind.Joins)
				if len(part) > 0 {
					put(s, fmt.Sprintf("      then = %s.%s\n", irr.Def.Name, irr.ID), "does again what cannot be undone", irr.Node)
				}
			}
		}
	}
}

// lies reports whether a part lies on top when the work reaches a place: nothing
// on it, and one fastening that holds it.
func (s *Sound) lies(p *model.Node, pos int) bool {
	for _, q := range s.Of("part") {
		if names(q, "sits_on", p) && s.On(q, pos) && !slices.ContainsFunc(s.Of("fastening"), func(f *model.Node) bool { return names(f, "fasteners", q) }) || names(q, "covers", p) {
			return false
		}
	}
	holding := 0
	for _, f := range s.Of("fastening") {
		if names(f, "stack", p) {
			holding++
		}
	}
	return holding == 1
}

// carries reports whether anything is ever put on a part.
func (s *Sound) carries(p *model.Node) bool {
	return slices.ContainsFunc(s.Of("part"), func(q *model.Node) bool { return names(q, "sits_on", p) })
}

func toolsSpared(w *Workshop, s *model.Step) bool {
	for _, r := range s.AllRefs("tools") {
		if !w.Spared(r.To) {
			return false
		}
	}
	return true
}

func outOfTime(w *Workshop) {
	wait := func(id, long string) string {
		return fmt.Sprintf("  wait \"%s_pause\" {\n    title = \"Have a rest\"\n    for   = %q\n  }\n", id, long)
	}
	for _, s := range w.steps {
		if !s.Has("after") {
			continue
		}
		first := s.AllRefs("after")[len(s.AllRefs("after"))-1].To
		if s.Has("within") {
			w.Put(InsertBefore(s.Node, wait(s.ID, "4 h")).At(s.Node, first), "a rest of 4 h before %q", s.Title())
			w.Put(InsertBefore(s.Node, wait(s.ID, "30 min")).And(Set(s.Node, "within", `"20 min"`)).At(s.Node, first), "a rest of 30 min before %q", s.Title())
			if first.Step != nil && first.Step.Procedure == s.Procedure && s.Index-first.Step.Index > 1 {
				b := s.Procedure.Steps[s.Index-1]
				w.Put(Set(b.Node, "takes", `"5 h"`).At(s.Node, first), "%q takes 5 h", b.Title())
			}
		} else if first.Step != nil {
			w.Put(Set(s.Node, "not_before", `"900 h"`).At(first), "%q not before 900 h", s.Title())
		}
	}
	for _, s := range w.steps {
		p := Previous(s)
		if p == nil || optional(p) || optional(s) || s.Has("after") || s.Has("within") || s.Kind.Yields != kind.Nothing || s.Index%5 != 2 || !p.Has("takes") {
			continue
		}
		address := p.Def.Name + "." + p.ID
		w.Put(Set(s.Node, "after", "["+address+"]").And(Set(s.Node, "not_before", `"2 h"`)).At(p.Node), "%q not before 2 h after %q", s.Title(), p.Title())
		if pp := Previous(p); pp != nil && pp.Procedure == s.Procedure {
			if q := p.Quantity("takes", ""); q != nil && float(*q) >= 120 && s.Places == pp.Places {
				address := pp.Def.Name + "." + pp.ID
				w.Put(Set(s.Node, "after", "["+address+"]").And(Set(s.Node, "within", `"30 s"`)).At(pp.Node, p.Node), "%q within 30 s of %q", s.Title(), pp.Title())
			}
		}
	}
}
