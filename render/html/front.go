package html

import (
	"strings"

	"fettle/render"
	"fettle/render/draw"
	"fettle/render/words"
)

// front is what stands before the first procedure.
func (p *page) front() {
	d := p.d
	p.s(`<a class=skip href="#work">`, words.SkipLink, "</a>\n", signs, "\n")
	p.s(`<header class=title><div class=block>`, "\n")
	p.s(`<div class=all>`)
	p.cellLabel(words.ChecklistWord)
	p.el("h1", d.Title)
	p.s("</div>\n")
	p.cell("", words.SupplierWord, d.Supplier)
	p.cell("", words.RevisionWord, d.Revision)
	p.cell("", words.IssuedWord, d.Issued)
	for _, o := range d.Options {
		p.cell("", o.Name, o.Chosen)
	}
	p.cell("", words.ContactWord, d.Contact)
	if d.Workshop != nil {
		p.cell("", words.WorkshopWord, d.Workshop.String())
	}
	if d.Digest != "" {
		p.s(`<div class=all>`)
		p.cellLabel(words.DigestWord)
		p.el(`div class=digest`, d.Digest)
		p.s("</div>\n")
	}
	for _, f := range [...]struct{ id, label string }{{"serial", words.SerialWord}, {"builder", words.BuilderWord}} {
		p.s(`<div class="half fill">`)
		p.input(f.label, "", "id", f.id)
		p.s("</div>\n")
	}
	p.s("</div></header>\n<main>\n")
	if d.Incomplete {
		p.el(`p class=broken`, words.IncompleteNote)
	}
	p.part("safety", words.Safety)
	p.s(`<div class=first><ul>`)
	for _, c := range d.Cautions {
		p.el("li", c)
	}
	p.s("</ul></div></section>\n")
	p.contents()
	p.protection()
	p.tools()
	p.supplies()
	p.parts()
	p.history()
	p.s(`<div id=work></div>`, "\n")
}

// part opens a section of the front or back.
func (p *page) part(id, head string) {
	p.s(`<section class=part aria-labelledby="`, id, `-h"><h2 id="`, id, `-h">`)
	p.t(head)
	p.s("</h2>\n")
}

func (p *page) cellLabel(label string) { p.el(`span class=label`, label) }

func (p *page) cell(class, label, value string) {
	if value == "" {
		return
	}
	p.s(`<div class="`, class, `">`)
	p.cellLabel(label)
	p.el(`span class=what`, value)
	p.s("</div>\n")
}

// table opens a table with a head; classes go with the columns.
func (p *page) table(heads []string, classes []string) {
	p.s(`<div class=scroll tabindex="0"><table><thead><tr>`)
	for i, h := range heads {
		p.s(`<th scope=col`)
		if i < len(classes) && classes[i] != "" {
			p.a("class", classes[i])
		}
		p.s(">")
		p.t(h)
		p.s("</th>")
	}
	p.s("</tr></thead><tbody>\n")
}

func (p *page) endTable() { p.s("</tbody></table></div>\n") }

func (p *page) td(class, text string) {
	if class == "" {
		p.el("td", text)
		return
	}
	p.s(`<td class="`, class, `">`)
	p.t(text)
	p.s("</td>")
}

// contents is the order of work with times, helpers and holds.
func (p *page) contents() {
	d := p.d
	p.s(`<nav class=part aria-labelledby=contents-h><section class=part><h2 id=contents-h>`)
	p.t(words.Contents)
	p.s("</h2>\n")
	p.table([]string{words.NumberWord, words.ProcedureWord, words.WorkWord, words.WaitingWord, words.HelperWord, words.HoldsWord},
		[]string{"n", "", "n", "n", "", ""})
	for _, c := range d.Contents {
		if c.Left != "" {
			p.s(`<tr class=left>`)
			p.td("n", c.Number)
			p.s(`<td colspan=5>`)
			p.t(c.Title + ". " + c.Left)
			p.s("</td></tr>\n")
			continue
		}
		p.s("<tr>")
		p.td("n", c.Number)
		p.s("<td><a")
		p.a("href", "#"+c.ID)
		p.s(">")
		p.t(placed(c.Title, c.Place))
		p.s("</a></td>")
		p.td("n", c.Times.Work)
		p.td("n", c.Times.Waiting)
		p.s("<td>")
		p.numbers(c.Helpers)
		p.s("</td><td>")
		p.numbers(c.Holds)
		p.s("</td></tr>\n")
	}
	p.s(`</tbody><tfoot><tr><th scope=row colspan=2>`, words.TotalWord, "</th>")
	p.td("n", d.Totals.Work)
	p.td("n", d.Totals.Waiting)
	p.s(`<td colspan=2>`)
	if d.Totals.Unsaid > 0 {
		p.t(words.Unsaid(d.Totals.Unsaid))
	}
	p.s("</td></tr></tfoot></table></div>\n")
	p.el(`p class=quiet`, words.TimesNote)
	p.sequence()
	p.s("</section></nav>\n")
}

// sequence is the picture of the procedures and what each comes after, with its words.
func (p *page) sequence() {
	var numbers, said []string
	var after [][]int
	at := map[string]int{}
	for i := range p.d.Procedures {
		pr := &p.d.Procedures[i]
		if _, again := at[pr.Address]; again || pr.Left != "" {
			continue
		}
		at[pr.Address] = len(numbers)
		var list []int
		var names []string
		for _, r := range pr.After {
			if k, ok := at[r.Address]; ok {
				list = append(list, k)
				names = append(names, r.Number)
			}
		}
		numbers = append(numbers, pr.Number)
		after = append(after, list)
		said = append(said, words.Needs(pr.Number, pr.Title, names))
	}
	if len(numbers) < 2 {
		return
	}
	p.s("<details class=how><summary>", words.SequenceHead, "</summary><div class=order>", draw.Order(numbers, after), "</div><ul>")
	for _, s := range said {
		p.el("li", s)
	}
	p.s("</ul></details>\n")
}

func placed(title, place string) string {
	if place == "" || strings.HasSuffix(title, place) {
		return title
	}
	return title + ", " + place
}

// numbers points to steps by their numbers.
func (p *page) numbers(refs []render.Ref) {
	for i, r := range refs {
		if i > 0 {
			p.s(", ")
		}
		p.s("<a")
		p.a("href", "#"+r.ID)
		p.s(">")
		p.t(r.Number)
		p.s("</a>")
	}
}

func (p *page) protection() {
	if len(p.d.Protection) == 0 {
		return
	}
	p.part("wear", words.ProtectionHead)
	p.s(`<ul>`)
	for _, it := range p.d.Protection {
		p.el("li", named(it))
	}
	p.s("</ul></section>\n")
}

func named(it render.Item) string {
	if it.Note == "" {
		return it.Name
	}
	return it.Name + ", " + it.Note
}

// have is the box for a thing that lies ready.
func (p *page) have(address string) {
	p.s(`<td class=c><input type=checkbox`)
	p.a("aria-labelledby", address)
	p.s("></td>")
}

func (p *page) nameCell(it render.Item) {
	p.s(`<th scope=row`)
	p.a("id", it.Address)
	p.s(">")
	p.t(it.Name)
	p.s("</th>")
}

func (p *page) tools() {
	if len(p.d.Tools) == 0 {
		return
	}
	p.part("tools", words.ToolsHead)
	p.table([]string{words.HaveWord, words.ToolWord, words.QuantityWord, words.RangeWord, words.ReadsToWord}, []string{"c", "", "n", "", ""})
	for _, t := range p.d.Tools {
		p.s("<tr>")
		p.have(t.Address)
		p.nameCell(t.Item)
		p.td("n", itoa(t.Quantity))
		p.td("", amount(t.Range))
		p.td("", amount(t.Resolution))
		p.s("</tr>\n")
	}
	p.endTable()
	p.s("</section>\n")
}

func amount(a *render.Amount) string {
	if a == nil {
		return ""
	}
	return a.String()
}

func (p *page) supplies() {
	if len(p.d.Supplies) == 0 {
		return
	}
	p.part("supplies", words.SuppliesHead)
	p.table([]string{words.HaveWord, words.SupplyWord, words.KindWord, words.AmountWord, words.ClocksWord, words.ProtectionHead}, []string{"c"})
	for _, s := range p.d.Supplies {
		p.s("<tr>")
		p.have(s.Address)
		p.nameCell(s.Item)
		p.td("", s.Kind)
		p.td("", s.Amount)
		p.s("<td>")
		for i, c := range s.Clocks {
			if i > 0 {
				p.s("<br>")
			}
			p.t(clock(c))
		}
		p.s("</td><td>")
		for i, it := range s.Protection {
			if i > 0 {
				p.s("<br>")
			}
			p.t(it.Name)
		}
		p.s("</td></tr>\n")
	}
	p.endTable()
	p.s("</section>\n")
}

func clock(c render.Clock) string {
	s := c.Label + " " + c.For.String()
	if c.At != nil {
		s += " at " + c.At.String()
	}
	return s
}

func (p *page) parts() {
	if len(p.d.Parts) == 0 {
		return
	}
	p.part("parts", words.PartsHead)
	p.table([]string{words.HaveWord, words.NameOfPart, words.NumberWord, words.QuantityWord, words.SizesHead}, []string{"c", "", "", "n", ""})
	for _, t := range p.d.Parts {
		p.s("<tr>")
		p.have(t.Address)
		p.nameCell(t.Item)
		p.td("", t.Number)
		p.td("n", itoa(t.Quantity))
		p.s("<td>")
		for i, s := range t.Sizes {
			if i > 0 {
				p.s("<br>")
			}
			p.t(itoa(s.Held) + " × " + s.Label)
			if s.Is != nil {
				p.t(", " + s.Is.String())
			}
		}
		if note := partNote(t); note != "" {
			p.t(note)
		}
		p.s("</td></tr>\n")
	}
	p.endTable()
	p.s("</section>\n")
}

func partNote(t render.Part) string {
	switch {
	case !t.Supplied:
		return words.OwnPart
	case t.InPlace > 0:
		return words.InPlace(t.InPlace)
	}
	return ""
}

func (p *page) history() {
	if len(p.d.History) == 0 {
		return
	}
	p.part("history", words.HistoryHead)
	p.table([]string{words.RevisionWord, words.IssuedWord, words.ReasonWord}, nil)
	for _, h := range p.d.History {
		p.s("<tr>")
		p.el(`th scope=row`, h.Revision)
		p.td("w", h.Issued)
		p.s("<td>")
		p.line(h.Reason)
		p.s("</td></tr>\n")
	}
	p.endTable()
	p.s("</section>\n")
}
