package html

import (
	"fettle/render"
	"fettle/render/words"
)

// back is the record of readings and the sign-off.
func (p *page) back() {
	if len(p.d.Record) > 0 {
		p.part("record", words.RecordHead)
		p.el("p", words.RecordNote)
		p.table([]string{words.StepWord, words.WhatWord, words.LimitWord, words.ValueWord, words.Initials}, nil)
		for i := range p.d.Record {
			p.recordLine(&p.d.Record[i])
		}
		p.endTable()
		p.s("</section>\n")
	}
	p.part("signoff", words.SignOffHead)
	p.el("p", words.SignOffNote)
	p.s(`<div class=signoff>`)
	for i, who := range p.d.SignOff {
		id := "sign-" + itoa(i+1)
		p.s(`<div role=group aria-labelledby="`, id, `-h"><h3 id="`, id, `-h">`)
		p.t(who)
		p.s("</h3>")
		for _, f := range [...]struct{ id, label string }{{"-name", words.NameWord}, {"-signature", words.Signature}, {"-date", words.DateWord}} {
			p.s("<p>")
			p.input(f.label, "", "id", id+f.id)
			p.s("</p>")
		}
		p.s("</div>")
	}
	p.s("</div></section>\n")
}

func (p *page) recordLine(r *render.RecordLine) {
	p.s(`<tr><th scope=row><a`)
	p.a("href", "#"+r.ID)
	p.s(">")
	p.t(r.Number)
	p.s("</a></th><td>")
	what := placed(r.Title, r.Place)
	if r.What != "" {
		what += ", " + r.What
	}
	p.t(what)
	p.s("</td>")
	switch {
	case r.Limit != nil:
		p.td("", r.Limit.Range.String())
	case r.Likely != nil:
		p.td("", words.Likely+" "+r.Likely.String())
	case r.Signer != "":
		p.td("", words.ReleasedBy+": "+r.Signer)
	default:
		p.td("", "")
	}
	of := " " + r.Number + " " + r.What
	p.s(`<td><div class=box>`)
	if r.Key != "" {
		p.field(r.Value, "aria-label", words.ValueWord+of, "data-key", r.Key)
	} else {
		p.field(r.Value, "aria-label", words.ValueWord+of)
	}
	p.s(`<span class=unit>`)
	p.t(r.Unit)
	p.s(`</span></div></td><td>`)
	p.field("", "aria-label", words.Initials+of)
	p.s("</td></tr>\n")
}
