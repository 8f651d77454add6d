package html

import (
	"fettle/render"
	"fettle/render/draw"
	"fettle/render/words"
)

// readings are the boxes of a step, one set for each place.
func (p *page) readings(s *render.Step) {
	for i := range s.Readings {
		r := &s.Readings[i]
		p.s(`<div class=read`)
		p.a("data-key", r.Key)
		p.a("data-unit", r.Code)
		p.s(">")
		if r.Place != "" {
			p.el(`span class=at`, r.Place)
		}
		for _, b := range r.Boxes {
			p.box("box", r, b)
		}
		if r.Result != nil {
			p.box("box result", r, *r.Result)
		}
		if r.Agree != nil {
			p.must(words.Agree, r.Agree.String(), "")
		}
		p.judged(r.Accept, r.Judge, r.Verdict)
		if r.Accept == nil && r.Likely != nil {
			p.must(words.Likely, r.Likely.String(), "")
		}
		p.s("</div>\n")
	}
}

func (p *page) box(class string, r *render.Reading, b render.Box) {
	p.s(`<label class="`, class, `"><span>`)
	p.t(b.Label)
	p.s("</span>")
	attrs := []string{"inputmode", "decimal"}
	if b.Key != "" {
		attrs = append(attrs, "data-key", b.Key)
	}
	p.field(b.Value, attrs...)
	p.el(`span class=unit`, r.Unit)
	p.s("</label>")
}

func (p *page) must(label, value, note string) {
	p.s(`<p class=must><span class=label>`)
	p.t(label)
	p.s("</span> ")
	if label == words.Accept {
		p.el("span class=limit", value)
	} else {
		p.t(value)
	}
	if note != "" {
		p.el(`span class=quiet`, note)
	}
	p.s("</p>")
}

// judged is what a value must meet, and how a known one stands to it.
func (p *page) judged(l *render.Limit, judge string, v render.Verdict) {
	if l != nil {
		note := ""
		if l.Aim != nil {
			note = words.AimAt(l.Aim.String())
		}
		if l.Basis != "" {
			if note != "" {
				note += ". "
			}
			note += l.Basis
		}
		p.must(words.Accept, l.Range.String(), note)
	}
	if judge != "" {
		p.must(words.Accept, judge, "")
	}
	switch v {
	case render.Inside:
		p.el(`p class=verdict`, "✓ "+words.InsideWord)
	case render.Outside:
		p.el(`p class="verdict outside"`, "✗ "+words.OutsideWord)
	}
}

// computed is a value with its formula, with or without numbers in it.
func (p *page) computed(c *render.Computed) {
	p.s(`<div class=read`)
	p.a("data-key", c.Key)
	p.s(">")
	p.formula(c)
	p.s(`<label class="box result"><span>`, words.ResultWord, "</span>")
	if c.Result != nil {
		p.field(c.Result.First)
		p.s("</label>")
		if c.Result.Other != "" {
			p.el(`p class=quiet`, c.Result.Other)
		}
	} else {
		p.field("")
		p.s("</label>")
	}
	p.judged(c.Accept, c.Judge, c.Verdict)
	p.s("</div>\n")
}

func (p *page) formula(c *render.Computed) {
	p.s(`<p><span class=label>`, words.FormulaWord, `</span> `)
	p.el(`span class=formula`, equation(c))
	p.s("</p>")
}

// equation is the formula with names, then with numbers and blanks.
func equation(c *render.Computed) string {
	if c.Substituted == "" || c.Substituted == c.Formula {
		return c.Formula
	}
	return c.Formula + " = " + c.Substituted
}

// pick is the choice of a pack: what is needed, the sizes with room to write,
// and the table that a builder without a computer reads it from.
func (p *page) pick(s *render.Step) {
	k := s.Pick
	p.s(`<div class=pick`)
	p.a("data-key", k.Key)
	p.s(">")
	start, limit := words.BaseWord, words.MakesWord
	if k.Fills {
		start, limit = words.GapWord, words.LeavesWord
	}
	p.s("<dl>")
	p.fact(start, equation(&k.Start))
	if k.Limit != nil {
		must := k.Limit.Range.String()
		if k.Limit.Aim != nil {
			must += "; " + words.AimAt(k.Limit.Aim.String())
		}
		if k.Limit.Basis != "" {
			must += " (" + k.Limit.Basis + ")"
		}
		p.fact(limit, must)
	}
	if k.Start.Judge != "" {
		p.fact(limit, k.Start.Judge)
	}
	p.fact(words.PiecesWord, k.Pieces)
	p.s("</dl>")
	p.el("p", k.Prefer)
	if k.Problem != "" {
		p.el(`p class="verdict outside"`, "✗ "+k.Problem)
	}
	p.served(k.Served)
	p.s(`<div class=tables>`)
	p.sizes(k)
	p.serves(k)
	p.s("</div>")
	p.s("</div>\n")
}

// served is the picture of the starts that the kit serves, with its words.
func (p *page) served(s *render.Served) {
	if s == nil {
		return
	}
	var spans []draw.Span
	var gaps []string
	for _, g := range s.Gaps {
		spans = append(spans, draw.Span{From: g.From, To: g.To})
		gaps = append(gaps, g.Range.String())
	}
	p.s("<p class=quiet>", draw.Served(spans), "<br>")
	p.t(words.Serves(s.Range.String(), gaps))
	p.s("</p>")
}

func (p *page) sizes(k *render.Pick) {
	p.table([]string{words.SizeWord, words.NumberWord, words.MarkWord, words.HeldWord, words.TakeWord}, []string{"", "", "", "n", "n"})
	for _, size := range k.Sizes {
		p.s("<tr>")
		label := size.Label
		if size.Is != nil {
			label += ", " + size.Is.String()
		}
		p.el(`th scope=row`, label)
		p.td("", size.Number)
		p.td("", size.Mark)
		p.td("n", itoa(size.Held))
		p.s(`<td class=n>`)
		p.field(size.Take, "inputmode", "numeric", "aria-label", words.TakeWord+": "+label)
		p.s("</td></tr>\n")
	}
	p.s(`</tbody><tfoot><tr><th scope=row colspan=4>`)
	p.t(words.PackTotal + unit(k.Unit))
	p.s(`</th><td>`)
	p.field(k.Total, "inputmode", "decimal", "aria-label", words.PackTotal+unit(k.Unit))
	p.s(`</td></tr><tr><th scope=row colspan=4>`)
	p.t(words.ResultWord + unit(k.Unit))
	p.s(`</th><td>`)
	p.field(k.Result, "inputmode", "decimal", "aria-label", words.ResultWord+unit(k.Unit))
	p.s("</td></tr></tfoot></table></div>\n")
}

func unit(u string) string {
	if u == "" {
		return ""
	}
	return ", " + u
}

// serves is the table of packs.
func (p *page) serves(k *render.Pick) {
	if k.Table == nil {
		return
	}
	start := words.BaseWord
	if k.Fills {
		start = words.GapWord
	}
	if k.By != "" {
		start = k.By
	}
	p.s(`<div class=scroll tabindex="0"><table class=serves><caption>`)
	p.t(words.TableCaption + " " + words.EitherPack)
	p.s(`</caption><thead><tr><th scope=col>`)
	p.t(start)
	p.s(`</th><th scope=col>`)
	p.t(words.TakeWord)
	p.s(`</th><th scope=col>`)
	p.t(words.PackTotal)
	p.s("</th></tr></thead><tbody>\n")
	for _, r := range k.Table {
		p.s("<tr>")
		p.el(`th scope=row`, r.Start.First)
		if r.Pack == "" {
			p.s(`<td colspan=2><strong>`, words.NoPack, "</strong></td>")
		} else {
			p.td("", r.Pack)
			p.td("", r.Total)
		}
		p.s("</tr>\n")
	}
	p.endTable()
}
