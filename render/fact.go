package render

import (
	"math/big"
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/values"
	"fettle/render/words"
)

// factRoles are printed as labelled lines, in this order.
var factRoles = [...]schema.Role{schema.Subject, schema.Touches, schema.Instruction, schema.Guide, schema.Value,
	schema.Method, schema.State, schema.Property, schema.Duration, schema.Order, schema.Judgement}

// elsewhere are attributes that have a form of their own: boxes, a table, the
// number in large type, the hold.
var elsewhere = map[string]bool{
	"text": true, "likely": true, "accept": true, "repeat": true, "spots": true, "agree_within": true, "take": true,
	"is": true, "gap": true, "base": true, "leaves": true, "makes": true, "pieces": true, "prefer": true,
	"takes": true, "critical": true, "irreversible": true, "otherwise": true, "checks": true, "before": true,
	"after": true, "record": true, "to": true, "amount": true, "quantity": true, "gives": true,
}

// heavy is the mass from which a builder wants to know it. Common practice, no source.
var heavy = calc.NewQuantity(big.NewRat(4, 1), calc.MustUnit("kg"), 0)

// facts are the labelled lines of the step.
func (w *stepWriter) facts() {
	w.clock()
	for _, role := range factRoles {
		for _, a := range w.s.ByRole(role) {
			if elsewhere[a.Def.Name] || role == schema.Touches && w.out.Facts != nil && !w.s.Kind.NeedsOn {
				continue
			}
			w.fact(a)
		}
	}
	if n := w.object(kind.Tightens); n != nil {
		w.refFact(n, "lubricant")
	}
	if n := w.object(kind.Locks); n != nil && !w.s.Has("by") {
		w.refFact(n, "locked_by")
	}
	if does(w.s, kind.Waits) {
		w.cures()
	}
	if does(w.s, kind.Seals) || does(w.s, kind.Wets) {
		for _, r := range w.refs(schema.Supply) {
			for _, a := range r.To.ByRole(schema.Clock) {
				w.supplyClock(a)
			}
		}
	}
}

// cures says how long what a wait waits for takes, as its supplies state it.
func (w *stepWriter) cures() {
	seen := map[*model.Node]bool{}
	for _, r := range w.s.Refs("until", w.sc.place) {
		if r.To == nil || r.To.Step == nil {
			continue
		}
		for _, s := range r.To.Refs("supplies", w.sc.place) {
			if s.To == nil || seen[s.To] {
				continue
			}
			seen[s.To] = true
			if a := s.To.Attr("cure"); a != nil {
				var times []string
				for _, c := range w.clocks(a) {
					times = append(times, clockText(c))
				}
				w.say(s.To.Title(), Words(words.CuredAfter(strings.Join(times, "; "))))
			}
		}
	}
}

func (w *stepWriter) say(label string, value Line) {
	if len(value) > 0 {
		w.out.Facts = append(w.out.Facts, Fact{label, value})
	}
}

// fact prints one attribute by its type.
func (w *stepWriter) fact(a *model.Attr) {
	switch v := model.AtPlace(a.Value, w.sc.place).(type) {
	case *model.Text:
		w.say(words.Label(a.Def), w.line(v, w.sc))
	case model.Word:
		if s := words.Found(a.Def.Name, string(v)); s != "" {
			w.say("", Words(s))
		} else if a.Def.Role == schema.Method {
			w.say(words.Label(a.Def), Words(words.DriveWord(string(v))))
		}
	case model.Flag:
		if s := words.Flag(a.Def.Name); v && s != "" {
			w.say("", Words(s))
		}
	case *model.Formula:
		if set, allowed := w.amount(v, w.sc); set != nil && a.Def.Role != schema.Value {
			s := set.String()
			if allowed != nil {
				s += ", " + allowed.String()
			}
			w.say(words.Label(a.Def), Words(s))
		}
	case model.Refs:
		line := Words(w.list(v, a))
		if len(v) == 1 && w.isPack(v[0], a) { // its pieces change with the reading
			key := values.Key(v[0].To.Step, w.sc.keyPlace(v[0].To.Step))
			as := words.AsChosen(w.ref(v[0].To, w.sc.place).Number) + " "
			text, pack, _ := strings.Cut(line.Plain(), as)
			line = Line{{Kind: Text, Text: text + as}, {Kind: Value, Text: pack, Key: key, Live: w.live.sayPack(key)}}
		}
		w.say(words.Label(a.Def), line)
	case model.Names:
		var names []string
		for _, n := range v {
			names = append(names, n.Text)
		}
		w.say(words.Label(a.Def), Words(strings.Join(names, ", ")))
	}
}

// refFact prints what an entry names.
func (w *stepWriter) refFact(n *model.Node, attr string) {
	a := n.Attr(attr)
	if a == nil {
		return
	}
	w.say(words.Label(a.Def), Words(w.list(n.Refs(attr, w.sc.place), a)))
}

// list names several things; of one part its faces and the like stand together.
func (w *stepWriter) list(refs []model.Ref, a *model.Attr) string {
	var names []string
	for i := 0; i < len(refs); i++ {
		r := refs[i]
		if r.To == nil || r.To.Step != nil {
			names = append(names, w.named(r, a))
			continue
		}
		name := w.named(model.Ref{To: r.To, Place: r.Place}, a)
		var subs []string
		for ; i < len(refs) && refs[i].To == r.To && refs[i].Place == r.Place; i++ {
			if refs[i].Sub != "" {
				subs = append(subs, strings.ReplaceAll(refs[i].Name, "_", " "))
			}
		}
		i--
		if subs != nil {
			name += " (" + strings.Join(subs, ", ") + ")"
		}
		names = append(names, name)
	}
	return strings.Join(names, "; ")
}

// named is what an address is called, with what a builder needs to find it.
func (w *stepWriter) named(r model.Ref, a *model.Attr) string {
	if r.To == nil {
		if r.Word == "second person" {
			return words.SecondPerson
		}
		return r.Word
	}
	name := r.To.Title()
	subject := a.Def.Role == schema.Subject
	switch {
	case r.To.Step != nil:
		return w.pointed(r, a)
	case subject && r.To.Is(entry.Part):
		if n := r.To.Plain("number"); n != "" {
			name += ", " + n
		}
		if n := w.s.Whole("quantity", w.sc.place, r.To.Whole("quantity", w.sc.place, 1)); n > 1 && w.s.Kind.Yields != kind.Pack {
			name = strconv.Itoa(n) + " × " + name
		}
		if q := r.To.Quantity("mass", w.sc.place); q != nil && q.Cmp(heavy) >= 0 {
			name += ", " + w.style.Quantity(*q).String()
		}
	case subject && r.To.Is(entry.Fastening):
		n, thread := r.To.Whole("quantity", w.sc.place, 1), r.To.Plain("thread")
		switch {
		case n > 1 && thread != "":
			name += ", " + strconv.Itoa(n) + " × " + thread
		case n > 1:
			name = strconv.Itoa(n) + " × " + name
		case thread != "":
			name += ", " + thread
		}
	}
	if r.Place != "" {
		name += ", " + r.Place
	}
	return name
}

// isPack reports that an address stands for the pieces of a choice.
func (w *stepWriter) isPack(r model.Ref, a *model.Attr) bool {
	return r.To != nil && r.To.Step != nil && r.To.Step.Kind.Yields == kind.Pack && a.Def.Role == schema.Subject
}

// pointed is a step in words: a pack by its pieces, another by its number.
func (w *stepWriter) pointed(r model.Ref, a *model.Attr) string {
	ref := w.ref(r.To, w.sc.place)
	if w.isPack(r, a) {
		from := w.m.Node
		for _, s := range r.To.ByRole(schema.Subject) {
			if refs, _ := s.Value.(model.Refs); len(refs) > 0 && refs[0].To != nil {
				from = refs[0].To
			}
		}
		pack := calc.Blank
		if p := w.env.Pack(r.To.Step, w.sc.keyPlace(r.To.Step)); p != nil {
			pack = p.String()
		}
		return from.Title() + ", " + words.AsChosen(ref.Number) + " " + pack
	}
	return words.StepNamed(ref.Number, ref.Title)
}

// clock says how soon and how late a step comes after others.
func (w *stepWriter) clock() {
	var after []string
	for _, r := range w.s.Refs("after", w.sc.place) {
		if r.To != nil {
			ref := w.ref(r.To, w.sc.place)
			after = append(after, words.StepNamed(ref.Number, ref.Title))
		}
	}
	for _, a := range w.s.ByRole(schema.Clock) {
		if set := w.one(w.s.Formula(a.Def.Name, w.sc.place), w.sc); set != nil {
			w.say(words.Label(a.Def), Words(words.AfterStep(set.String(), strings.Join(after, "; "))))
		}
	}
}

// supplyClock prints a time that a supply keeps.
func (w *stepWriter) supplyClock(a *model.Attr) {
	for _, c := range w.clocks(a) {
		w.say(c.Label, Words(clockText(c)))
	}
}

func clockText(c Clock) string {
	if c.At == nil {
		return c.For.String()
	}
	return c.For.String() + " at " + c.At.String()
}

// clocks are the times of one attribute of a supply.
func (l *lowering) clocks(a *model.Attr) []Clock {
	var all []Clock
	switch v := a.Value.(type) {
	case *model.Formula:
		if q := v.Quantity(); q != nil {
			all = append(all, Clock{words.Label(a.Def), *l.quantity(*q), nil})
		}
	case model.Times:
		for _, t := range v {
			c := Clock{Label: words.Label(a.Def), For: *l.quantity(*t.For)}
			if t.At != nil {
				c.At = l.quantity(*t.At)
			}
			all = append(all, c)
		}
	}
	return all
}
