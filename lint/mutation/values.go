package mutation

import (
	"regexp"
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
)

var values = []*Class{
	{"values", "reference to nothing", []string{"values/unknown-reference", "kit/unknown-entry"}, referenceToNothing},
	{"values", "minus sign inside a name", []string{"values/minus-in-name"}, minusInName},
	{"values", "value used before it is read", []string{"values/used-before-read"}, usedBeforeRead},
	{"values", "value read only under an option", []string{"values/read-sometimes"}, readSometimes},
	{"values", "reading that nothing judges or uses", []string{"values/never-used"}, neverUsed},
	{"values", "circular calculation", []string{"values/circular-calculation"}, circular},
	{"values", "possible division by zero", []string{"values/division-by-zero"}, divisionByZero},
	{"values", "judged result can leave its limit, no otherwise", []string{"values/can-leave-its-limit", "measure/no-otherwise"}, leavesLimit},
	{"values", "prose number contradicts the typed one", []string{"values/prose-contradicts"}, proseContradicts},
	{"values", "same limit authored twice", []string{"values/limit-twice"}, limitTwice},
	{"values", "worked example that fails", []string{"values/example-fails"}, exampleFails},
	{"values", "choice or calculation without example", []string{"values/no-example"}, noExample},
	{"values", "map by place misses a place", []string{"values/place-left-out"}, placeLeftOut},
}

func referenceToNothing(w *Workshop) {
	i := 0
	w.EachNode(func(n *model.Node) {
		if n.Shared {
			return
		}
		for k := range n.Attrs {
			a := &n.Attrs[k]
			model.EachRef(a.Value, func(r *model.Ref) {
				if r.To == nil || r.To.Step == nil && r.To.Def.Name != "limit" && r.To.Def.Name != "option" && r.To.Def.Name != "fastening" {
					return
				}
				at := r.Span(n)
				name := r.To.ID
				if strings.Count(at.Text(), "."+name) != 1 {
					return
				}
				wrong := []string{name + "s_end", "the_" + name, "missing"}[i%3]
				i++
				w.Put(replace(n, at, strings.Replace(at.Text(), "."+name, "."+wrong, 1)), "%s names %s", a.Def.Name, wrong)
			})
		}
	})
}

// formulas calls visit for every attribute that works with readings.
func (s *Sound) formulas(visit func(n *model.Node, attr string, f *model.Formula)) {
	for _, st := range s.steps {
		for _, attr := range []string{"is", "gap", "base", "accept", "leaves", "makes"} {
			if f, ok := st.Get(attr, "").(*model.Formula); ok && f != nil && constant(st.Node, attr) && len(f.Refs) > 0 {
				visit(st.Node, attr, f)
			}
		}
	}
}

var subtraction = regexp.MustCompile(`([a-z_]) - ([a-z])`)

func minusInName(w *Workshop) {
	w.formulas(func(n *model.Node, attr string, _ *model.Formula) {
		text := n.ValueSpan(n.Attr(attr)).Text()
		if subtraction.MatchString(text) {
			w.Put(Set(n, attr, subtraction.ReplaceAllString(text, "$1-$2")), "%s without spaces: %s", attr, text)
			w.Put(Set(n, attr, subtraction.ReplaceAllString(text, "$1- $2")), "%s with one space behind: %s", attr, text)
		}
	})
	w.formulas(func(n *model.Node, attr string, f *model.Formula) {
		text := n.ValueSpan(n.Attr(attr)).Text()
		if len(f.Refs) == 1 && f.Refs[0].To.Step != nil && f.Refs[0].Span(n).Text() == text {
			w.Put(Set(n, attr, text+"-"+text), "%s less itself", attr)
		}
	})
}

// reads lists the readings and values that a step's formulas rest on.
func reads(s *model.Step) []*model.Step {
	var all []*model.Step
	for i := range s.Attrs {
		if f, ok := s.Attrs[i].Value.(*model.Formula); ok && f != nil {
			for _, r := range f.Refs {
				if r.To != nil && r.To.Step != nil {
					all = append(all, r.To.Step)
				}
			}
		}
	}
	return all
}

func usedBeforeRead(w *Workshop) {
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Number && s.Kind.Yields != kind.Pack {
			continue
		}
		for _, r := range reads(s) {
			if r.Procedure == s.Procedure && r.Branch == nil && r.Index < s.Index {
				w.Put(MoveBefore(s.Node, r.Node).At(r.Node), "%q before %q", s.Title(), r.Title())
				if r.Kind.Yields == kind.Number {
					w.Put(MoveAfter(r.Node, s.Node).At(r.Node, s.Node), "%q after %q", r.Title(), s.Title())
				}
			}
		}
	}
	// The limits of an earlier reading worked out from a later one.
	for i, s := range w.steps {
		if s.Kind.Yields != kind.Number || i == 0 {
			continue
		}
		for _, e := range w.steps[:i] {
			if e.Procedure == s.Procedure && e.Kind.Yields == kind.Number && !slices.Contains(reads(s), e) {
				is := e.ValueSpan(e.Attr("is")).Text()
				key := s.Def.Name + "." + s.ID
				w.Put(Set(e.Node, "is", is+" + "+key+" - "+key).At(s.Node), "%q works with %q", e.Title(), s.Title())
			}
		}
	}
}

func readSometimes(w *Workshop) {
	used := map[*model.Node]bool{}
	w.formulas(func(_ *model.Node, _ string, f *model.Formula) {
		for _, r := range f.Refs {
			used[r.To] = true
		}
	})
	held := map[*model.Node]bool{}
	for _, s := range w.steps {
		for _, r := range s.AllRefs("checks") {
			held[r.To] = true
		}
		for _, r := range s.AllRefs("after") {
			held[r.To] = true
		}
	}
	var options []*model.Node
	options = append(options, w.Own("option")...)
	for i, s := range w.steps {
		if s.Kind.Yields != kind.Reading || !used[s.Node] || held[s.Node] || optional(s) {
			continue
		}
		users := &Change{}
		w.formulas(func(n *model.Node, _ string, f *model.Formula) {
			for _, r := range f.Refs {
				if r.To == s.Node {
					users = users.At(n)
				}
			}
		})
		if len(options) > 0 {
			o := options[i%len(options)]
			choice := o.Names("choices")[i%len(o.Names("choices"))]
			w.Put(Set(s.Node, "when", "option."+o.ID+` == "`+choice+`"`).And(users), "%q only with %s %s", s.Title(), o.ID, choice)
		}
		option := "option \"extra\" {\n  name    = \"Extra\"\n  choices = [\"without\", \"with\"]\n}\n"
		w.Put(Set(s.Node, "when", `option.extra == "with"`).And(InsertAfter(w.Node, option), users), "%q only with a new option", s.Title())
		for _, e := range w.steps[:i] {
			if e.Kind.Yields == kind.Reading && e.Procedure == s.Procedure && !optional(e) {
				if l, ok := e.Limits("likely", ""); ok && l.Low != nil && l.High != nil {
					mid := plus(*l.Low, times(width(l), 0.5), 1)
					w.Put(Set(s.Node, "when", e.Def.Name+"."+e.ID+` > "`+mid.String()+`"`).And(users), "%q only under a reading", s.Title())
					break
				}
			}
		}
	}
}

func neverUsed(w *Workshop) {
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Reading || s.Def.Name != "measure" {
			continue
		}
		if s.Has("record") {
			continue // kept for itself
		}
		text := Copy(s.Node, s.ID+"_once_more", without(s.Node, "accept", "otherwise", "was", "critical"))
		if s.Has("accept") && !s.Has("likely") {
			text = Copy(s.Node, s.ID+"_once_more", without(s.Node, "otherwise", "was", "critical"), renameAttr(s.Node, "accept", "likely"))
		}
		if text != "" {
			w.Put(InsertAfter(s.Node, text), "a reading more, for nothing: %q", s.Title())
		}
		if w.Uses(s.Node) == 0 && s.Has("accept") && spareLimit(w, s) {
			w.Put(bare(s), "%q accepts nothing", s.Title())
		}
	}
}

// spareLimit reports whether a step can accept something else and leave no limit unused.
func spareLimit(w *Workshop, s *model.Step) bool {
	if f := s.Formula("accept", ""); f != nil {
		return !slices.ContainsFunc(f.Refs, func(r model.Ref) bool { return r.To.Def.Name == "limit" && !w.Spared(r.To) })
	}
	return true
}

// without takes attributes, and otherwise blocks if they are named, out of a block.
func without(n *model.Node, attrs ...string) *Change {
	c := &Change{}
	for _, a := range attrs {
		if d := Unset(n, a); d != nil {
			c = c.And(d)
		}
		if d := DropBlocks(n, a); d != nil {
			c = c.And(d)
		}
	}
	return c
}

func renameAttr(n *model.Node, from, to string) *Change {
	if a := n.Attr(from); a != nil {
		return replace(n, n.NameSpan(a), to)
	}
	return nil
}

// bare takes away what a step accepts, and what it says for when it does not.
func bare(s *model.Step) *Change {
	if s.Has("likely") {
		return without(s.Node, "accept", "otherwise", "critical")
	}
	return without(s.Node, "otherwise", "critical").And(renameAttr(s.Node, "accept", "likely"))
}

func proseContradicts(w *Workshop) {
	for i, s := range w.steps {
		for _, f := range Does(s, kind.Tightens) {
			attr, n := "torque", f
			if s.Has("to") {
				attr, n = "to", s.Node
			}
			q := literal(n, attr)
			text := scale(strings.SplitN(strings.SplitN(q, "±", 2)[0], "..", 2)[0], []float64{1.4, 0.7, 1.2}[i%3])
			u := unitOf(q)
			if text == "" || u == "" {
				continue
			}
			number := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), u)) + " " + u
			w.Put(Say(s.Node, "text", []string{"Tighten to " + number + ".", "The torque is " + number + "."}[i%2]).At(f), "prose says %s", number)
		}
		if l, ok := s.Limits("accept", ""); ok && l.Low != nil && l.High != nil && s.Kind.Yields == kind.Reading {
			low, high := plus(*l.Low, times(width(l), 0.5), 1), plus(*l.High, times(width(l), 0.5), 1)
			w.Put(Say(s.Node, "text", "The reading must lie between "+low.String()+" and "+high.String()+".").At(s.Ref("accept")), "prose gives another range for %q", s.Title())
		}
		if a, ok := s.Get("amount", "").(*model.Formula); ok && a != nil && a.Quantity() != nil {
			w.Put(Say(s.Node, "text", "Pour "+times(*a.Quantity(), 1.5).String()+" in."), "prose gives another amount")
		}
		if s.Def.Name == "heat" {
			if l, ok := s.Limits("to", ""); ok && l.High != nil {
				w.Put(Say(s.Node, "text", "Set the oven to "+plus(*l.High, calc.NewQuantity(l.High.Num(), l.High.Unit, 0), 1).String()+"."), "prose gives another temperature")
			}
		}
		if q := s.Quantity("for", ""); q != nil {
			w.Put(Say(s.Node, "text", "Wait "+times(*q, 2).String()+"."), "prose gives another wait")
		}
	}
}

func limitTwice(w *Workshop) {
	for _, n := range w.Own("limit") {
		l, ok := n.Limits("range", "")
		if !ok || l.Low == nil || l.High == nil || !constant(n, "range") {
			continue
		}
		other := quote(band(plus(*l.Low, times(width(l), 0.25), 1), plus(*l.High, times(width(l), 0.25), 1)))
		var users []*model.Node
		for _, s := range w.steps {
			if s.Formula("accept", "") != nil && slices.ContainsFunc(s.Formula("accept", "").Refs, func(r model.Ref) bool { return r.To == n }) {
				users = append(users, s.Node)
			}
		}
		if len(users) > 0 && w.Uses(n) > 1 {
			u := users[len(users)-1]
			copied := Copy(n, n.ID+"_again", Set(n, "range", other), without(n, "target"))
			w.Put(InsertAfter(n, copied).And(Set(u, "accept", "limit."+n.ID+"_again")).At(n), "%q once more, with other numbers", n.Title())
		}
	}
}

func exampleFails(w *Workshop) {
	for i, e := range w.Examples {
		t, ok := e.Get("gives", "").(*model.Table)
		if !ok {
			continue
		}
		for _, p := range t.Pairs {
			text := p.Span.Text()
			at := strings.LastIndexAny(text, "0123456789")
			if at < 0 {
				continue
			}
			digit := (text[at]-'0'+byte(1+i%8))%10 + '0'
			w.Put(replace(e, p.Span, text[:at]+string(digit)+text[at+1:]), "%q gives another number", e.ID)
		}
		r, ok := e.Get("readings", "").(*model.Table)
		if !ok {
			continue
		}
		for _, p := range r.Pairs {
			text := p.Span.Text()
			at := strings.LastIndexAny(text, "0123456789")
			shown := slices.ContainsFunc(t.Pairs, func(g model.Pair) bool {
				k := g.Key
				whole := k.Name == "result" || k.To != nil && k.To.Step != nil && k.To.Step.Kind.Yields == kind.Number
				return whole && k.To.Step != nil && k.Place == p.Key.Place && slices.Contains(reads(k.To.Step), p.Key.To.Step)
			})
			if at < 0 || !shown {
				continue
			}
			if at > 0 && text[at-1] >= '0' && text[at-1] <= '9' {
				at-- // the last digit may be finer than what is shown
			}
			digit := (text[at]-'0'+1)%10 + '0'
			w.Put(replace(e, p.Span, text[:at]+string(digit)+text[at+1:]), "%q reads another number", e.ID)
		}
	}
}

func noExample(w *Workshop) {
	shown := map[*model.Node][]*model.Node{}
	for _, e := range w.Examples {
		if t, ok := e.Get("gives", "").(*model.Table); ok {
			seen := map[*model.Node]bool{}
			for _, p := range t.Pairs {
				if !seen[p.Key.To] {
					seen[p.Key.To] = true
					shown[p.Key.To] = append(shown[p.Key.To], e)
				}
			}
		}
	}
	for _, s := range w.steps {
		if s.Kind.Yields != kind.Pack && (s.Kind.Yields != kind.Number || !s.Has("accept")) || len(shown[s.Node]) == 0 {
			continue
		}
		c := &Change{}
		alone := true
		for _, e := range shown[s.Node] {
			c = c.And(&Change{Edits: w.Drop(e).Edits})
			for other, es := range shown {
				alone = alone && (other == s.Node || !slices.Contains(es, e) || len(es) > 1)
			}
		}
		if alone {
			w.Put(c.At(s.Node), "no example of %q", s.Title())
		}
		if s.Kind.Yields == kind.Number && s.Has("accept") {
			text := Copy(s.Node, s.ID+"_again", without(s.Node, "was"))
			w.Put(InsertAfter(s.Node, text), "%q worked out once more, without an example", s.Title())
		}
	}
}

func placeLeftOut(w *Workshop) {
	w.EachNode(func(n *model.Node) {
		if n.Shared {
			return
		}
		for i := range n.Attrs {
			a := &n.Attrs[i]
			by, ok := a.Value.(model.ByPlace)
			if !ok || len(by) < 2 {
				continue
			}
			last := by[len(by)-1]
			text, at := n.ValueSpan(a).Text(), last.Span.Start-n.ValueSpan(a).Start
			head := strings.TrimRight(text[:at], " ,\n")
			w.Put(Set(n, a.Def.Name, head+" }"), "%s without %s", a.Def.Name, last.Place)
		}
	})
	for i, s := range w.steps {
		if s.Places == nil {
			continue
		}
		names := s.Places.Names("names")
		if s.Has("only") || len(names) < 2 {
			continue
		}
		for _, attr := range []string{"takes", "facing", "accept", "likely"} {
			if !constant(s.Node, attr) {
				continue
			}
			text := s.ValueSpan(s.Attr(attr)).Text()
			w.Put(Set(s.Node, attr, "{ "+quote(names[i%len(names)])+" = "+text+" }"), "%s of %q at one place only", attr, s.Title())
		}
	}
}
