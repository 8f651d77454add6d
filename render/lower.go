package render

import (
	"io/fs"
	"strings"

	"fettle/calc"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/render/words"
)

// Options say what a document is made for.
type Options struct {
	Given   values.Given // options and readings of one build; none for a blank checklist
	Digest  string       // of the revision, printed as it is
	Figures fs.FS        // the root that the manual's folder lies in; nil prints no pictures
}

// Lower makes the document of a manual. It never fails: what could not be read
// is left out, and the document says that it is incomplete.
func Lower(m *model.Manual, o Options) *Document {
	plan := values.NewPlan(m)
	l := &lowering{m: m, o: o, plan: plan, env: plan.With(o.Given), ranges: plan.Ranges(),
		style: calc.Style{First: m.System(), Gallon: m.Plain("gallon")},
		full:  map[*model.Node]bool{}, live: live{said: map[string]int{}}, extras: map[string]*Card{}, places: map[string]string{}, used: map[*model.Node][]Ref{}, draws: map[*model.Node]int{}}
	d := &Document{
		ID: m.ID, Title: m.Title(), Units: m.Word("units"),
		Supplier: m.Plain("supplier"), Contact: m.Plain("contact"),
		Revision: m.Plain("revision"), Issued: m.Plain("issued"), Digest: o.Digest,
		Incomplete: m.Incomplete, Cautions: words.Cautions,
	}
	d.Options = l.options()
	if q := m.Quantity("conditions", ""); q != nil {
		d.Workshop = l.quantity(*q)
	}
	nowhere := &scope{lowering: l}
	for _, h := range m.Blocks {
		d.History = append(d.History, PastRevision{h.ID, h.Plain("issued"), l.line(h.Text("reason"), nowhere)})
	}
	l.layOut()
	l.countDraws()
	for _, p := range m.Procedures[:m.Ordered] {
		d.Procedures = append(d.Procedures, l.procedures(p)...)
	}
	l.contents(d)
	l.front(d)
	l.record(d)
	d.SignOff = l.signOff(d)
	d.Live = l.liveValues()
	return d
}

// lowering is the state of one Lower.
type lowering struct {
	m       *model.Manual
	o       Options
	plan    *values.Plan
	env     *values.Env
	ranges  *values.Ranges
	style   calc.Style
	numbers map[*model.Node]string   // of procedures
	cards   map[*model.Step][]string // the places of which each has a printed step of its own
	full    map[*model.Node]bool     // messages that have been printed in full
	used    map[*model.Node][]Ref    // steps that use a tool, supply or PPE, in order
	draws   map[*model.Node]int      // how many choices draw on a graded part
	live    live
	extras  map[string]*Card  // by the ID of a step
	places  map[string]string // by what stands for them in an ID
}

// scope is what a name means at one place of the work.
type scope struct {
	*lowering
	place string
}

// Value is the value of a variable, as seen from here.
func (s *scope) Value(v *calc.Var) calc.Value {
	if v.Name == "place" && s.place == "" {
		return nil
	}
	return s.env.At(s.place).Value(v)
}

func (l *lowering) options() []Option {
	var all []Option
	for _, n := range l.m.Of("option") {
		all = append(all, Option{ID: n.ID, Name: n.Title(), Choices: n.Names("choices"),
			Chosen: l.env.Option(n.ID), Default: l.o.Given.Options[n.ID] == ""})
	}
	return all
}

// condition tells whether something is done in this build: left says why not,
// when says that a reading decides.
func (l *lowering) condition(n *model.Node, sc *scope) (when, left string) {
	f := n.Formula("when", sc.place)
	if f == nil {
		return "", ""
	}
	v, problem := calc.Eval(f.Expr, sc)
	if problem != nil {
		return calc.Formula(f.Expr), ""
	}
	if v == calc.Truth(true) {
		return "", ""
	}
	var because []string
	for _, x := range calc.Vars(f.Expr) {
		if n := l.m.Find(x.Name); n != nil && strings.HasPrefix(x.Name, "option.") {
			because = append(because, n.Title()+": "+l.env.Option(n.ID))
		}
	}
	if because == nil {
		because = []string{calc.FormulaWith(f.Expr, sc)}
	}
	return "", words.NotForThis(strings.Join(because, ", "))
}

// insert is a value that stands in text.
func (l *lowering) insert(f *model.Formula, sc *scope) Inline {
	in := Inline{Kind: Value, Text: calc.Blank}
	if f == nil {
		return in
	}
	if v, ok := f.Expr.(*calc.Var); ok {
		key := *v
		if key.Place == model.Here {
			key.Place = sc.place
		}
		if in.Key = key.Key(); v.Name == "place" {
			in.Key = ""
		}
	}
	in.Live = l.live.say(f, sc.place)
	v := f.Const
	if v == nil {
		var problem *calc.Problem
		if v, problem = calc.Eval(f.Expr, sc); problem != nil {
			return in
		}
	}
	in.Text = l.said(v)
	if w, ok := v.(calc.Word); ok && in.Key == "" { // a name or a place is text like any other
		return Inline{Kind: Text, Text: string(w)}
	}
	return in
}

// said is a value in words, in both systems.
func (l *lowering) said(v calc.Value) string {
	switch v := v.(type) {
	case calc.Quantity:
		return l.style.Quantity(v).String()
	case calc.Limits:
		return l.style.Limits(v.Low, v.High).String()
	case calc.Word:
		return string(v)
	case calc.Truth:
		if v {
			return "yes"
		}
		return "no"
	case calc.Numbers:
		parts := make([]string, len(v))
		for i, q := range v {
			parts[i] = l.style.Quantity(q).String()
		}
		return strings.Join(parts, ", ")
	}
	return calc.Blank
}
