package html

import (
	"encoding/base64"

	"fettle/calc"
	"fettle/render"
)

// blocks writes prose.
func (p *page) blocks(all []render.Block) {
	for _, b := range all {
		switch b.Kind {
		case render.Paragraph:
			p.s("<p>")
			p.line(b.Line)
			p.s("</p>")
		case render.Heading:
			p.s("<p><strong>")
			p.line(b.Line)
			p.s("</strong></p>")
		case render.Bullets, render.Numbers:
			open, end := "<ul>", "</ul>"
			if b.Kind == render.Numbers {
				open, end = "<ol>", "</ol>"
				if b.Start != 1 {
					open = `<ol start="` + itoa(b.Start) + `">`
				}
			}
			p.s(open)
			for _, item := range b.Items {
				p.s("<li>")
				p.item(item)
				p.s("</li>")
			}
			p.s(end)
		case render.Quote:
			p.s("<blockquote>")
			p.blocks(b.Quote)
			p.s("</blockquote>")
		case render.Verbatim:
			p.s(`<pre tabindex="0">`)
			p.t(b.Text)
			p.s("</pre>")
		case render.Rule:
			p.s("<hr>")
		}
	}
}

// item writes the text of a list item; a lone paragraph needs no element.
func (p *page) item(all []render.Block) {
	if len(all) == 1 && all[0].Kind == render.Paragraph {
		p.line(all[0].Line)
		return
	}
	p.blocks(all)
}

func (p *page) line(l render.Line) {
	for _, in := range l {
		switch in.Kind {
		case render.Text:
			p.t(in.Text)
		case render.Value:
			p.value(in)
		case render.Emphasis:
			p.s("<em>")
			p.line(in.Line)
			p.s("</em>")
		case render.Strong:
			p.s("<strong>")
			p.line(in.Line)
			p.s("</strong>")
		case render.Code:
			p.el("code", in.Text)
		case render.Link: // nothing leads out of the page
			p.line(in.Line)
			if in.Line.Plain() != in.Text && in.Text != "" {
				p.t(" (" + in.Text + ")")
			}
		case render.Break:
			p.s("<br>")
		case render.Picture:
			p.image(in.Figure)
		}
	}
}

func (p *page) value(in render.Inline) {
	p.s(`<span class="value`)
	if in.Text == calc.Blank {
		p.s(" blank")
	}
	p.s(`"`)
	if in.Live > 0 {
		p.a("data-say", itoa(in.Live))
	}
	p.s(">")
	p.t(in.Text)
	p.s("</span>")
}

// image shows a picture that stands in the page, or says why there is none. As
// an image an SVG runs no script and fetches nothing.
func (p *page) image(f *render.Figure) {
	if f.Type == "" {
		p.s(`<em class=quiet>`)
		p.t(f.Missing + ": " + f.File + ". " + f.Alt)
		p.s("</em>")
		return
	}
	p.s(`<img src="data:`, f.Type, `;base64,`, base64.StdEncoding.EncodeToString(f.Data), `"`)
	p.a("alt", f.Alt)
	p.s(">")
}

func (p *page) figures(all []render.Figure) {
	for i := range all {
		f := &all[i]
		p.s("<figure>")
		if f.Film != "" {
			p.t(f.Film)
		} else {
			p.image(f)
		}
		if f.Note != "" || f.Film == "" && f.Alt != "" && f.Type != "" {
			p.s("<figcaption>")
			if f.Type != "" { // read aloud with the picture already
				p.el(`span aria-hidden=true`, f.Alt)
			}
			if f.Note != "" {
				p.t(" " + f.Note)
			}
			p.s("</figcaption>")
		}
		p.s("</figure>")
	}
}
