package html

import (
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/render"
	"fettle/render/draw"
	"fettle/render/words"
)

// step writes one card. Level is that of its heading.
func (p *page) step(s *render.Step, level int) {
	if s.Left != "" {
		p.s(`<p class=left`)
		p.a("id", s.ID)
		p.s(">")
		p.t(words.StepWord + " " + s.Number + ", " + s.Title + ". " + s.Left)
		p.s("</p>\n")
		return
	}
	side := s.Settings != nil || s.Readings != nil || s.Computed != nil
	p.s("<article")
	p.a("id", s.ID)
	switch {
	case s.Hold != nil:
		p.s(" class=hold")
	case side:
		p.s(" class=two")
	}
	p.s(">")
	p.rail(s)
	p.s(`<div class=say>`)
	h := "h" + strconv.Itoa(min(level, 6))
	p.s("<", h, ">")
	if s.Hold != nil {
		p.s(stopSign)
	}
	p.line(s.Heading)
	p.place(s.Place)
	p.s("</", h, ">")
	p.flags(s)
	for i := range s.Messages {
		p.message(&s.Messages[i])
	}
	rest := p.Len()
	p.needs(s)
	if s.Text != nil {
		p.s(`<div class=text>`)
		p.blocks(s.Text)
		p.s("</div>")
	}
	if s.Pattern != nil {
		p.pattern(s.Pattern)
	}
	p.visits(s)
	if s.Hold != nil {
		p.hold(s)
	}
	wide := s.Pick != nil || nests(s)
	if !wide {
		p.otherwise(s, level)
	}
	if s.Why != nil {
		p.s(`<div class=why><span class=label>`, words.WhyWord, `</span> `)
		p.item(s.Why)
		p.s("</div>")
	}
	p.figures(s.Figures)
	p.once(s, rest)
	p.s("</div>\n")
	if side {
		p.s(`<div class=side>`)
		p.settings(s)
		p.readings(s)
		for i := range s.Computed {
			p.computed(&s.Computed[i])
		}
		p.s("</div>\n")
	}
	if wide {
		p.s(`<div class=wide>`)
		if s.Pick != nil {
			p.pick(s)
		}
		p.otherwise(s, level)
		p.s("</div>\n")
	}
	p.s("</article>\n")
}

// once leaves out what a step says in the very words of the same step at an earlier
// place: the sheet stays short, and the script puts it back. Messages, numbers to
// set and boxes stand at each place.
func (p *page) once(s *render.Step, from int) {
	if s.Place == "" || s.Hold != nil {
		return
	}
	text := p.String()[from:]
	first, ok := p.said[s.Address]
	switch {
	case !ok:
		p.said[s.Address] = saying{s.Place, s.ID, text}
	case first.text == text && len(text) > 60:
		p.Truncate(from)
		p.s("<p class=as")
		p.a("data-as", first.id)
		p.s(">")
		p.t(words.AsAt(first.place))
		p.s("</p>")
	}
}

// saying is what a step says at the first of its places.
type saying struct{ place, id, text string }

// nests reports steps inside the step.
func nests(s *render.Step) bool {
	for _, o := range s.Otherwise {
		if len(o.Steps) > 0 {
			return true
		}
	}
	return false
}

// rail is the number, the box to tick and the initials.
func (p *page) rail(s *render.Step) {
	if !s.Record {
		p.s(`<label class=rail><b>`)
		p.t(s.Number)
		p.s(`</b><input type=checkbox>`, words.Done, "</label>")
		return
	}
	p.s(`<div class=rail><label><b>`)
	p.t(s.Number)
	p.s(`</b><input type=checkbox>`, words.Done, "</label>")
	p.input(words.Initials, "")
	p.s("</div>")
}

// flags are the few words that change how a step is done.
func (p *page) flags(s *render.Step) {
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
	if all == nil && s.Takes == nil {
		return
	}
	p.s(`<p class=flags>`)
	for _, f := range all {
		p.el("b", f)
		p.s(" ")
	}
	if s.Takes != nil {
		p.t(s.Takes.String())
	}
	p.s("</p>")
}

// message is a safety message: the word and a sign, so that colour is never
// alone; hazard, result, and how not to get hurt.
func (p *page) message(m *render.Message) {
	class := "message " + m.Word
	if !m.Short {
		class += " full"
	}
	p.s(`<div class="`, class, `"><b>`, words.Signal(m.Word), "</b><p>")
	if m.From != "" {
		p.t(m.From + ": ")
	}
	if !m.Short {
		p.line(m.Hazard)
		p.s(" ")
		p.line(m.Result)
		p.s(" <strong>")
		p.line(m.Avoid)
		p.s("</strong>")
	} else if m.Avoid != nil {
		p.line(m.Avoid)
	} else {
		p.line(m.Hazard)
	}
	p.s("</p></div>")
}

// The sign of a safety message, a triangle with a mark of exclamation as in ANSI
// Z535 and ISO 7010 W001, is drawn by the style sheet; that of a stop is an octagon.
const (
	signs = `<svg width="0" height="0" aria-hidden=true class=signs>` +
		`<symbol id=sign-stop viewBox="0 0 68 68"><path fill="none" stroke="currentColor" stroke-width="4" d="M21 3h26l18 18v26L47 65H21L3 47V21z"/><text x="34" y="40" text-anchor="middle" font-size="17" font-weight="800" fill="currentColor">STOP</text></symbol></svg>`
	stopSign = `<svg aria-hidden=true><use href="#sign-stop"/></svg>`
)

// needs are what to wear and use, and the facts of the step.
func (p *page) needs(s *render.Step) {
	if s.Protection == nil && s.Tools == nil && s.Supplies == nil && s.Facts == nil {
		return
	}
	p.s("<dl>")
	p.items(words.ProtectionHead, s.Protection)
	p.items(words.ToolsHead, s.Tools)
	p.items(words.SuppliesHead, s.Supplies)
	for _, f := range s.Facts {
		if f.Label == "" {
			p.s(`<dd class=alone>`)
		} else {
			p.el("dt", f.Label)
			p.s("<dd>")
		}
		p.line(f.Value)
		p.s("</dd>")
	}
	p.s("</dl>")
}

func (p *page) visits(s *render.Step) {
	if s.Visits == nil || s.Readings != nil {
		return
	}
	p.s(`<ul class=visits>`)
	for _, v := range s.Visits {
		p.s("<li>")
		p.tick("small", v)
		p.s("</li>")
	}
	p.s("</ul>")
}

func (p *page) settings(s *render.Step) {
	for i := range s.Settings {
		set := &s.Settings[i]
		p.s(`<div class=`)
		if set.Aside {
			p.s(`"set aside"`)
		} else {
			p.s("set")
		}
		if set.Live > 0 {
			p.a("data-say", itoa(set.Live))
		}
		p.s(">")
		p.el(`div class=label`, set.Label)
		if set.Live > 0 && set.Amount.First == "" { // a place for what is worked out
			set.Amount.First = calc.Blank
		}
		if set.Amount.First != "" && (set.Stages == nil || set.Aside) {
			p.big(set.Amount)
		}
		if set.Formula != "" {
			p.el(`div class=formula`, set.Formula)
		}
		if set.Stages != nil && !set.Aside {
			p.s("<ol>")
			for k, st := range set.Stages {
				p.s("<li>")
				p.s(`<label class=small><input type=checkbox`)
				p.a("aria-label", words.Stage(k+1)+": "+st.String())
				p.s("><span>")
				p.big(st)
				p.s("</span></label></li>")
			}
			p.s("</ol>")
		}
		if set.Allowed != nil {
			p.s(`<p class=must><span class=label>`, words.AllowedWord, `</span> `)
			p.t(set.Allowed.String())
			p.s("</p>")
		}
		if set.Note != "" {
			p.el(`p class=quiet`, set.Note)
		}
		p.s("</div>\n")
	}
}

// big is the number to set, the other system below it.
func (p *page) big(a render.Amount) {
	p.el(`b class=big`, a.First)
	if a.Other != "" {
		p.el(`b class=other`, a.Other)
	}
}

func (p *page) pattern(t *render.Pattern) {
	p.s(`<div class=order>`)
	p.el(`div class=label`, words.TightenInOrder)
	order := strings.Join(t.Order, " → ")
	if svg, drawn := draw.Pattern(t.Layout, t.Order); drawn {
		p.s(`<div role=img`)
		p.a("aria-label", order+". "+words.Positions(t.Layout))
		p.s(">", svg, "</div>")
		p.el(`p class=quiet`, words.FollowTurns)
	} else {
		p.el(`p class=turns`, order)
	}
	p.s("</div>\n")
}

func (p *page) hold(s *render.Step) {
	p.el("p", words.HoldText)
	if s.Hold.Checks != nil {
		p.s(`<ul class=checks>`)
		for _, c := range s.Hold.Checks {
			p.s("<li>")
			p.tick("small", c.Number+" "+placed(c.Title, c.Place))
			p.s("</li>")
		}
		p.s("</ul>")
	}
	if g := s.Hold.Guards; g != nil {
		p.s("<p>")
		p.t(words.Guards(g.Number, placed(g.Title, g.Place)))
		p.s("</p>")
	}
	p.s(`<div class=sign><div>`)
	p.input(words.ReleasedBy+": "+s.Hold.Signer, "", "data-release", s.Hold.Signer)
	p.s("</div><div>")
	p.input(words.DateWord, "")
	p.s("</div></div>")
}

func (p *page) otherwise(s *render.Step, level int) {
	for i := range s.Otherwise {
		o := &s.Otherwise[i]
		p.s(`<div class=otherwise>`)
		p.s(`<p class=head>`, words.Outside(o.When, s.Pick != nil, s.Readings == nil && s.Computed == nil), "</p>")
		p.blocks(o.Text)
		for k := range o.Steps {
			p.step(&o.Steps[k], level+1)
		}
		p.s("<p><strong>")
		p.t(o.Then)
		p.s("</strong></p></div>")
	}
}
