package html

import (
	"fettle/render"
	"fettle/render/words"
)

func (p *page) procedure(pr *render.Procedure) {
	if pr.Left != "" {
		p.s(`<p class=left`)
		p.a("id", pr.ID)
		p.s(">")
		p.t(pr.Number + " " + pr.Title + ". " + pr.Left)
		p.s("</p>\n")
		return
	}
	p.s(`<section class=procedure`)
	p.a("id", pr.ID)
	p.a("data-procedure", pr.Address)
	if pr.Place != "" {
		p.a("data-place", pr.Place)
	}
	p.a("aria-labelledby", pr.ID+"-h")
	p.s(">\n<header>")
	p.el(`span class=no aria-hidden=true`, pr.Number)
	p.s("<h2")
	p.a("id", pr.ID+"-h")
	p.s(">")
	p.t(pr.Title)
	p.place(pr.Place)
	p.s("</h2></header>\n")
	if pr.When != "" {
		p.el("p", words.OnlyIf+": "+pr.When)
	}
	if pr.Intro != nil {
		p.s(`<div class=intro>`)
		p.blocks(pr.Intro)
		p.s("</div>\n")
	}
	p.layReady(pr)
	for i := range pr.Groups {
		g := &pr.Groups[i]
		level := 3
		if g.Place != "" {
			p.s(`<h3 class=where>`)
			p.t(words.At(g.Place))
			p.s("</h3>\n")
			level = 4
		}
		for k := range g.Steps {
			p.step(&g.Steps[k], level)
		}
	}
	for i := range pr.Examples {
		p.example(&pr.Examples[i])
	}
	p.s("</section>\n")
}

func (p *page) place(place string) {
	if place != "" {
		p.s(" ")
		p.el("i", place)
	}
}

// layReady lists what to lay out before the procedure starts.
func (p *page) layReady(pr *render.Procedure) {
	p.s("<dl>")
	if pr.Conditions != nil {
		p.fact(words.WorkshopWord, pr.Conditions.String())
	}
	p.items(words.ProtectionHead, pr.Protection)
	p.items(words.ToolsHead, pr.Tools)
	p.items(words.SuppliesHead, pr.Supplies)
	p.s("</dl>\n")
}

func (p *page) fact(label, value string) {
	p.el("dt", label)
	p.el("dd", value)
}

func (p *page) items(label string, items []render.Item) {
	if len(items) == 0 {
		return
	}
	p.el("dt", label)
	p.s("<dd>")
	for i, it := range items {
		if i > 0 {
			p.s(" · ")
		}
		p.t(it.Name)
	}
	p.s("</dd>")
}

func (p *page) example(e *render.Example) {
	p.s(`<div class=example>`)
	p.el("h3", words.ExamplesHead+": "+e.Title)
	p.s("<dl>")
	for _, side := range [...]struct {
		label string
		pairs []render.Pair
	}{{words.GivenWord, e.Given}, {words.GivesWord, e.Gives}} {
		p.el("dt", side.label)
		for _, v := range side.pairs {
			p.s("<dd>")
			p.t(v.Step.Number + " " + v.Step.Title)
			if v.Name != "" {
				p.t(", " + v.Name)
			}
			p.s(": ")
			p.el("strong", v.Value)
			p.s("</dd>")
		}
	}
	p.s("</dl></div>\n")
}
