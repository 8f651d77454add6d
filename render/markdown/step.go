package markdown

import (
	"fmt"
	"strings"

	"fettle/render"
	"fettle/render/words"
)

func (p *page) procedure(pr *render.Procedure) {
	if pr.Left != "" {
		p.para("", escape(pr.Number+" "+pr.Title+". "+pr.Left))
		return
	}
	p.heading(2, pr.Number+" "+placed(pr.Title, pr.Place))
	if pr.When != "" {
		p.para("", "**"+words.OnlyIf+":** "+escape(pr.When))
	}
	p.blocks("", pr.Intro)
	if pr.Conditions != nil {
		p.para("", "**"+words.WorkshopWord+":** "+escape(pr.Conditions.String()))
	}
	p.para("", layReady(words.ProtectionHead, pr.Protection))
	p.para("", layReady(words.ToolsHead, pr.Tools))
	p.para("", layReady(words.SuppliesHead, pr.Supplies))
	for i := range pr.Groups {
		g := &pr.Groups[i]
		if g.Place != "" {
			p.heading(3, words.At(g.Place))
		}
		for k := range g.Steps {
			p.step("", &g.Steps[k])
		}
	}
	for _, e := range pr.Examples {
		p.heading(3, words.ExamplesHead+": "+e.Title)
		p.pairs(words.GivenWord, e.Given)
		p.pairs(words.GivesWord, e.Gives)
	}
}

func (p *page) pairs(label string, all []render.Pair) {
	for _, v := range all {
		name := v.Step.Number + " " + v.Step.Title
		if v.Name != "" {
			name += ", " + v.Name
		}
		p.bullet("", label+": "+escape(name)+": **"+escape(v.Value)+"**")
	}
}

// layReady lists what to lay out before a procedure.
func layReady(label string, items []render.Item) string {
	if len(items) == 0 {
		return ""
	}
	return "**" + label + ":** " + names(items)
}

func names(items []render.Item) string {
	var all []string
	for _, it := range items {
		all = append(all, escape(it.Name))
	}
	return strings.Join(all, "; ")
}

func (p *page) items(indent, label string, items []render.Item) {
	if len(items) > 0 {
		p.bullet(indent, label+": "+names(items))
	}
}

// step writes one step: its box, number and title on a line, and the rest
// indented below it.
func (p *page) step(indent string, s *render.Step) {
	if s.Left != "" {
		p.para(indent, escape(words.StepWord+" "+s.Number+", "+s.Title+". "+s.Left))
		return
	}
	title := "- [ ] **" + s.Number + " " + inline(s.Heading, "")
	if s.Place != "" && !strings.HasSuffix(s.Heading.Plain(), s.Place) {
		title += ", " + escape(s.Place)
	}
	p.para(indent, title+"**"+flags(s))
	indent += "  "
	for i := range s.Messages {
		p.message(indent, &s.Messages[i])
	}
	p.facts(indent, s)
	p.blocks(indent, s.Text)
	if s.Readings == nil {
		for _, v := range s.Visits {
			p.bullet(indent, "[ ] "+escape(v))
		}
	}
	p.settings(indent, s)
	for i := range s.Readings {
		p.reading(indent, &s.Readings[i])
	}
	for i := range s.Computed {
		p.computed(indent, &s.Computed[i])
	}
	if s.Pick != nil {
		p.pick(indent, s.Pick)
	}
	if s.Hold != nil {
		p.hold(indent, s.Hold)
	}
	for i := range s.Otherwise {
		o := &s.Otherwise[i]
		p.para(indent, "**"+words.Outside(o.When, s.Pick != nil, s.Readings == nil && s.Computed == nil)+":**")
		p.blocks(indent, o.Text)
		for k := range o.Steps {
			p.step(indent, &o.Steps[k])
		}
		p.para(indent, "**"+escape(o.Then)+"**")
	}
	if s.Why != nil {
		p.why(indent, s.Why)
	}
	for i := range s.Figures {
		p.para(indent, picture(&s.Figures[i]))
	}
	if s.Record {
		p.para(indent, words.Initials+": "+blank)
	}
}

// why is the reason, on one line where it is one paragraph.
func (p *page) why(indent string, all []render.Block) {
	if all[0].Kind == render.Paragraph {
		p.para(indent, words.WhyWord+": "+line(all[0].Line))
		all = all[1:]
	}
	p.blocks(indent, all)
}

func flags(s *render.Step) string {
	var all []string
	if s.People > 1 {
		all = append(all, words.People(s.People))
	}
	if s.Critical {
		all = append(all, words.CriticalWord)
	}
	if s.Final {
		all = append(all, words.FinalWord)
	}
	if s.When != "" {
		all = append(all, words.OnlyIf+" "+s.When)
	}
	if s.Takes != nil {
		all = append(all, s.Takes.String())
	}
	if all == nil {
		return ""
	}
	return " (" + escape(strings.Join(all, "; ")) + ")"
}

// message is a safety message as a quotation, its word in capitals.
func (p *page) message(indent string, m *render.Message) {
	s := "> **" + words.Signal(m.Word) + "** "
	if m.From != "" {
		s += escape(m.From) + ": "
	}
	switch {
	case !m.Short:
		var parts []string
		for _, l := range [...]render.Line{m.Hazard, m.Result} {
			if l != nil {
				parts = append(parts, line(l))
			}
		}
		if m.Avoid != nil {
			parts = append(parts, bold(m.Avoid))
		}
		s += strings.Join(parts, " ")
	case m.Avoid != nil:
		s += line(m.Avoid)
	default:
		s += line(m.Hazard)
	}
	p.para(indent, s)
}

func (p *page) facts(indent string, s *render.Step) {
	p.items(indent, words.ProtectionHead, s.Protection)
	p.items(indent, words.ToolsHead, s.Tools)
	p.items(indent, words.SuppliesHead, s.Supplies)
	for _, f := range s.Facts {
		if f.Label == "" {
			p.bullet(indent, bold(f.Value))
			continue
		}
		p.bullet(indent, f.Label+": "+line(f.Value))
	}
}

func (p *page) settings(indent string, s *render.Step) {
	for _, set := range s.Settings {
		t := "**" + set.Label + ":"
		switch {
		case set.Amount.First != "":
			t += " " + escape(set.Amount.String()) + "**"
		default:
			t += "** " + blank
		}
		if set.Formula != "" {
			t += ", " + escape(set.Formula)
		}
		if set.Allowed != nil {
			t += ". " + words.AllowedWord + ": " + escape(set.Allowed.String())
		}
		if set.Note != "" {
			t += ". " + escape(set.Note)
		}
		p.bullet(indent, t)
		if set.Aside {
			continue
		}
		for i, st := range set.Stages {
			p.bullet(indent+"  ", "[ ] "+words.Stage(i+1)+": **"+escape(st.String())+"**")
		}
	}
	if t := s.Pattern; t != nil {
		var names []string
		for _, o := range t.Order {
			names = append(names, escape(o))
		}
		p.bullet(indent, "**"+words.TightenInOrder+":** "+strings.Join(names, ", ")+". "+words.Positions(t.Layout))
	}
}

func (p *page) reading(indent string, r *render.Reading) {
	if r.Place != "" {
		p.para(indent, "**"+escape(r.Place)+"**")
	}
	for _, b := range r.Boxes {
		p.bullet(indent, escape(b.Label)+": "+value(b.Value, r.Unit))
	}
	if r.Result != nil {
		p.bullet(indent, "**"+escape(r.Result.Label)+":** "+value(r.Result.Value, r.Unit))
	}
	if r.Agree != nil {
		p.bullet(indent, words.Agree+" "+escape(r.Agree.String()))
	}
	if r.Accept == nil && r.Likely != nil {
		p.bullet(indent, words.Likely+": "+escape(r.Likely.String()))
	}
	p.judged(indent, r.Accept, r.Judge, r.Verdict)
}

func (p *page) judged(indent string, l *render.Limit, judge string, v render.Verdict) {
	if l != nil {
		p.bullet(indent, "**"+words.Accept+": "+escape(l.Range.String())+"**"+limitNote(l))
	}
	if judge != "" {
		p.bullet(indent, "**"+words.Accept+":** "+escape(judge))
	}
	switch v {
	case render.Inside:
		p.bullet(indent, "**"+words.InsideWord+"**")
	case render.Outside:
		p.bullet(indent, "**"+words.OutsideWord+"**")
	}
}

func limitNote(l *render.Limit) string {
	var all []string
	if l.Aim != nil {
		all = append(all, words.AimAt(l.Aim.String()))
	}
	if l.Basis != "" {
		all = append(all, l.Basis)
	}
	if all == nil {
		return ""
	}
	return " (" + escape(strings.Join(all, "; ")) + ")"
}

func (p *page) computed(indent string, c *render.Computed) {
	p.bullet(indent, words.FormulaWord+": "+escape(equation(c)))
	v := value("", c.Unit)
	if c.Result != nil {
		v = value(c.Result.String(), "")
	}
	p.bullet(indent, "**"+words.ResultWord+":** "+v)
	p.judged(indent, c.Accept, c.Judge, c.Verdict)
}

func equation(c *render.Computed) string {
	if c.Substituted == "" || c.Substituted == c.Formula {
		return c.Formula
	}
	return c.Formula + " = " + c.Substituted
}

func (p *page) pick(indent string, k *render.Pick) {
	start, limit := words.BaseWord, words.MakesWord
	if k.Fills {
		start, limit = words.GapWord, words.LeavesWord
	}
	p.bullet(indent, "**"+start+":** "+escape(equation(&k.Start)))
	if k.Limit != nil {
		p.bullet(indent, "**"+limit+": "+escape(k.Limit.Range.String())+"**"+limitNote(k.Limit))
	}
	if k.Start.Judge != "" {
		p.bullet(indent, "**"+limit+":** "+escape(k.Start.Judge))
	}
	p.bullet(indent, "**"+words.PiecesWord+":** "+escape(k.Pieces)+". "+k.Prefer)
	if k.Problem != "" {
		p.bullet(indent, "**"+escape(k.Problem)+"**")
	}
	var rows [][]string
	for _, s := range k.Sizes {
		label := s.Label
		if s.Is != nil {
			label += ", " + s.Is.String()
		}
		rows = append(rows, []string{escape(label), escape(s.Number), escape(s.Mark), fmt.Sprint(s.Held), value(s.Take, "")})
	}
	rows = append(rows, []string{"**" + words.PackTotal + "**", "", "", "", value(k.Total, k.Unit)},
		[]string{"**" + words.ResultWord + "**", "", "", "", value(k.Result, k.Unit)})
	p.table(indent, []string{words.SizeWord, words.NumberWord, words.MarkWord, words.HeldWord, words.TakeWord}, rows)
	if k.Table == nil {
		return
	}
	p.para(indent, words.TableCaption+" "+words.EitherPack)
	rows = nil
	for _, r := range k.Table {
		pack := escape(r.Pack)
		if r.Pack == "" {
			pack = "**" + words.NoPack + "**"
		}
		rows = append(rows, []string{escape(r.Start.First), pack, escape(r.Total)})
	}
	if k.By != "" {
		start = escape(k.By)
	}
	p.table(indent, []string{start, words.TakeWord, words.PackTotal}, rows)
}

func (p *page) hold(indent string, h *render.Hold) {
	p.para(indent, "**"+strings.ToUpper(words.StopWord)+".** "+words.HoldText)
	for _, c := range h.Checks {
		p.bullet(indent, "[ ] "+escape(c.Number+" "+placed(c.Title, c.Place)))
	}
	if h.Guards != nil {
		p.para(indent, escape(words.Guards(h.Guards.Number, placed(h.Guards.Title, h.Guards.Place))))
	}
	p.para(indent, words.ReleasedBy+": "+escape(h.Signer)+" "+blank+" "+words.DateWord+": "+blank)
}
