package render

import (
	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/values"
	"fettle/render/words"
)

func (l *lowering) step(s *model.Step, sc *scope) Step {
	if sc.place != "" && l.cards[s] == nil {
		sc = &scope{lowering: l}
	}
	out := Step{Ref: l.ref(s.Node, sc.place), Kind: s.Kind.Block.Name, Heading: l.line(s.Text("title"), sc)}
	if out.When, out.Left = l.condition(s.Node, sc); out.Left != "" {
		return out
	}
	w := &stepWriter{lowering: l, s: s, sc: sc, out: &out}
	if l.cards[s] == nil && s.Places != nil {
		out.Visits = s.Places.Names("names")
		if only := s.Names("only"); only != nil {
			out.Visits = only
		}
	}
	out.People = s.Whole("people", sc.place, 1)
	w.needs()
	w.messages()
	w.facts()
	w.settings()
	switch s.Kind.Yields {
	case kind.Reading:
		w.readings()
	case kind.Number:
		out.Computed = append(out.Computed, w.computed("is"))
	case kind.Pack:
		w.pick()
	}
	if does(s, kind.Stops) {
		w.hold()
	}
	w.otherwise()
	for _, a := range s.ByRole(schema.Instruction) {
		if a.Def.Type == schema.Prose {
			out.Text = append(out.Text, l.prose(textAt(a, sc), sc)...)
		}
	}
	out.Why = l.prose(s.Text("why"), sc)
	for _, r := range w.refs(schema.Picture) {
		out.Figures = append(out.Figures, l.figure(r.To))
	}
	out.Critical = s.Flag("critical") || w.limitIsCritical()
	out.Final = s.Flag("irreversible")
	out.Record = records(s)
	w.card()
	return out
}

// records reports whether a step goes into the build record: what it says, else
// what its kind does, and a critical torque always.
func records(s *model.Step) bool {
	if s.Has("record") {
		return s.Flag("record")
	}
	return s.Kind.Records || s.Flag("critical")
}

// stepWriter fills in one printed step.
type stepWriter struct {
	*lowering
	s   *model.Step
	sc  *scope
	out *Step
}

// does reports that a step has an effect on something that it names.
func does(s *model.Step, v kind.Verb) bool {
	for _, e := range s.Kind.Does {
		if e.Verb == v && s.Has(e.Attr) {
			return true
		}
	}
	return false
}

// object is what a step does an effect to, or nil.
func (w *stepWriter) object(v kind.Verb) *model.Node {
	for _, e := range w.s.Kind.Does {
		if e.Verb == v {
			for _, r := range w.s.Refs(e.Attr, w.sc.place) {
				return r.To
			}
		}
	}
	return nil
}

// refs are the addresses of all attributes of a role, each once.
func (w *stepWriter) refs(role schema.Role) []model.Ref {
	var all []model.Ref
	seen := map[string]bool{}
	for _, a := range w.s.ByRole(role) {
		refs, _ := model.AtPlace(a.Value, w.sc.place).(model.Refs)
		for _, r := range refs {
			if r.To != nil && !seen[r.Address()] {
				seen[r.Address()] = true
				all = append(all, r)
			}
		}
	}
	return all
}

func textAt(a *model.Attr, sc *scope) *model.Text {
	t, _ := model.AtPlace(a.Value, sc.place).(*model.Text)
	return t
}

// meets lists what a step has to do with and may carry a safety message or ask
// for protection, each once: the parts, tools and supplies that it names.
func (w *stepWriter) meets() []*model.Node {
	var all []*model.Node
	seen := map[*model.Node]bool{}
	var meet func(n *model.Node)
	meet = func(n *model.Node) {
		if n == nil || seen[n] {
			return
		}
		seen[n] = true
		switch {
		case n.Step != nil: // a pack: what it was picked from
			for _, a := range n.ByRole(schema.Subject) {
				refs, _ := a.Value.(model.Refs)
				for _, r := range refs {
					meet(r.To)
				}
			}
		case n.Is(entry.Fastening):
			if does(w.s, kind.Starts) || does(w.s, kind.Opens) {
				for _, r := range n.AllRefs("fasteners") {
					meet(r.To)
				}
			}
		default:
			all = append(all, n)
		}
	}
	for _, role := range [...]schema.Role{schema.Subject, schema.Touches, schema.State, schema.Method, schema.Tool, schema.Supply} {
		for _, r := range w.refs(role) {
			meet(r.To)
		}
	}
	return all
}

// needs are the tools, supplies and protection of the step, and its time.
func (w *stepWriter) needs() {
	for _, r := range w.refs(schema.Tool) {
		w.out.Tools = append(w.out.Tools, w.item(r.To))
		w.use(r.To)
	}
	for _, r := range w.refs(schema.Subject) {
		if r.To.Is(entry.Tool) {
			w.use(r.To)
		}
	}
	for _, r := range w.refs(schema.Method) {
		if r.To.Is(entry.Tool) {
			w.out.Tools = append(w.out.Tools, w.item(r.To))
			w.use(r.To)
		}
	}
	for _, r := range w.refs(schema.Supply) {
		w.out.Supplies = append(w.out.Supplies, w.item(r.To))
		w.use(r.To)
	}
	worn := map[*model.Node]bool{}
	wear := func(refs []model.Ref) {
		for _, r := range refs {
			if r.To != nil && !worn[r.To] {
				worn[r.To] = true
				w.out.Protection = append(w.out.Protection, w.item(r.To))
			}
		}
	}
	wear(w.refs(schema.Protection))
	for _, n := range w.meets() {
		for _, a := range n.ByRole(schema.Protection) {
			refs, _ := a.Value.(model.Refs)
			wear(refs)
		}
	}
	for _, p := range w.out.Protection {
		w.use(w.m.Find(p.Address))
	}
	w.out.Takes = w.one(w.s.Formula("takes", w.sc.place), w.sc)
}

// use notes that the step needs something, for the lists in front.
func (w *stepWriter) use(n *model.Node) {
	refs := w.used[n]
	if k := len(refs); k > 0 && refs[k-1].ID == w.out.ID {
		return
	}
	w.used[n] = append(refs, w.out.Ref)
}

func (l *lowering) item(n *model.Node) Item {
	it := Item{Address: n.Address, Name: n.Title()}
	for _, name := range [...]string{"standard", "number"} {
		if s := n.Plain(name); s != "" {
			it.Note = s
		}
	}
	return it
}

// limitIsCritical reports that a named limit that the step judges by is critical.
func (w *stepWriter) limitIsCritical() bool {
	for _, a := range w.s.ByRole(schema.Judgement) {
		f, ok := model.AtPlace(a.Value, w.sc.place).(*model.Formula)
		if !ok || f == nil {
			continue
		}
		for _, r := range f.Refs {
			if r.To != nil && r.To.Is(entry.Limit) && r.To.Flag("critical") {
				return true
			}
		}
	}
	return false
}

// hold is a stop: what must be accepted, what it guards and who lets go.
func (w *stepWriter) hold() {
	h := &Hold{Signer: w.s.Plain("release")}
	if h.Signer == "" {
		h.Signer = words.SecondPerson
	}
	for _, a := range w.s.ByRole(schema.Judgement) {
		for _, r := range w.s.Refs(a.Def.Name, w.sc.place) {
			if r.To != nil {
				h.Checks = append(h.Checks, w.checks(r.To)...)
			}
		}
	}
	for _, r := range w.s.Refs("before", w.sc.place) {
		if r.To != nil {
			ref := w.ref(r.To, w.sc.place)
			h.Guards = &ref
		}
	}
	w.out.Hold = h
}

// checks are a step at each place where it was done, where the hold itself
// stands at no place.
func (w *stepWriter) checks(n *model.Node) []Ref {
	places := w.cards[n.Step]
	if w.sc.place != "" || len(places) == 0 {
		return []Ref{w.ref(n, w.sc.place)}
	}
	var all []Ref
	for _, p := range places {
		all = append(all, w.ref(n, p))
	}
	return all
}

// otherwise is what to do when a value is outside.
func (w *stepWriter) otherwise() {
	if t, ok := w.s.Get("otherwise", w.sc.place).(*model.Text); ok {
		w.out.Otherwise = append(w.out.Otherwise, Otherwise{Text: w.prose(t, w.sc), Then: words.NoAnswer, Stop: true})
	}
	for _, b := range w.s.Blocks {
		if !b.Is(kind.Otherwise) {
			continue
		}
		o := Otherwise{When: b.Plain("when"), Text: w.prose(b.Text("text"), w.sc), Steps: w.steps(b.Steps, w.sc)}
		r := model.Ref{Word: "read again"}
		if refs := b.Refs("then", w.sc.place); len(refs) > 0 {
			r = refs[0]
		}
		switch {
		case r.To != nil:
			ref := w.ref(r.To, w.sc.place)
			o.Go, o.Then = &ref, words.GoTo(ref.Number, ref.Title)
		case r.Word == "stop":
			o.Then, o.Stop = words.ThenStop, true
		default:
			o.Then = words.ReadAgain
		}
		w.out.Otherwise = append(w.out.Otherwise, o)
	}
}

// messages are the safety messages that the step meets, the gravest first: its
// own, then those of what it has to do with.
func (w *stepWriter) messages() {
	carriers := append([]*model.Node{w.s.Node}, w.meets()...)
	for _, def := range entry.Messages() {
		for _, n := range carriers {
			for _, b := range n.Nested(def) {
				w.out.Messages = append(w.out.Messages, w.message(b, n))
			}
		}
	}
}

func (w *stepWriter) message(b, carrier *model.Node) Message {
	m := w.lowering.message(b, w.sc)
	if carrier != w.s.Node {
		m.From = carrier.Title()
	}
	m.Short = w.full[b]
	w.full[b] = true
	return m
}

func (l *lowering) message(b *model.Node, sc *scope) Message {
	m := Message{Word: b.Def.Name, Hazard: l.line(b.Text("hazard"), sc), Result: l.line(b.Text("result"), sc)}
	for _, a := range b.ByRole(schema.Instruction) {
		m.Avoid = append(m.Avoid, l.line(textAt(a, sc), sc)...)
	}
	return m
}

// computed is a value that is worked out from a formula of the step.
func (w *stepWriter) computed(attr string) Computed {
	c := Computed{Place: w.sc.place, Key: values.Key(w.s, w.sc.keyPlace(w.s))}
	f := w.s.Formula(attr, w.sc.place)
	if f == nil {
		return c
	}
	c.Formula, c.Substituted = calc.Formula(f.Expr), calc.FormulaWith(f.Expr, w.sc)
	v := w.value(f, w.sc)
	if q, ok := v.(calc.Quantity); ok {
		c.Result, c.Unit = w.quantity(q), label(w.unit(q))
	}
	j := w.s.Formula("accept", w.sc.place)
	c.Accept, c.Judge = w.limit(j, w.sc)
	c.Verdict = w.verdict(w.s, w.sc)
	return c
}

// keyPlace is the place in the key of a step's value.
func (s *scope) keyPlace(of *model.Step) string {
	if of.Places == nil {
		return ""
	}
	return s.place
}
