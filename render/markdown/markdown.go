// Package markdown writes a checklist that reads well as plain text and prints
// from any reader of CommonMark with tables. It is for paper, for mail and for
// whoever reads in a terminal.
//
// It refuses markup from a manual: what an author wrote as text is escaped where
// it would mean something else.
package markdown

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"fettle/render"
	"fettle/render/words"
)

// Write writes the checklist. The error is that of w.
func Write(w io.Writer, d *render.Document) error {
	p := &page{d: d}
	p.front()
	for i := range d.Procedures {
		p.procedure(&d.Procedures[i])
	}
	p.back()
	_, err := w.Write(p.Bytes())
	return err
}

// page is the text as far as it is written.
type page struct {
	bytes.Buffer
	d    *render.Document
	list bool // a list is open
}

// blank is room to write. It stands behind a blank or at the start of a cell,
// where a run of underscores ends no emphasis.
const blank = "______"

// para writes a paragraph of finished Markdown, indented to stand in a list.
func (p *page) para(indent, markdown string) {
	if markdown == "" {
		return
	}
	p.end()
	p.WriteString(indent + markdown + "\n\n")
}

// bullet writes a line of a list.
func (p *page) bullet(indent, markdown string) {
	p.list = true
	p.WriteString(indent + "- " + markdown + "\n")
}

// end closes a list, so that what follows stands by itself.
func (p *page) end() {
	if p.list {
		p.WriteString("\n")
	}
	p.list = false
}

func (p *page) heading(level int, text string) {
	p.end()
	p.WriteString(strings.Repeat("#", min(level, 6)) + " " + escape(text) + "\n\n")
}

// table writes a table; cells are finished Markdown without line ends.
func (p *page) table(indent string, heads []string, rows [][]string) {
	if len(rows) == 0 {
		return
	}
	p.end()
	p.WriteString(indent + "| " + strings.Join(heads, " | ") + " |\n")
	p.WriteString(indent + "|" + strings.Repeat(" --- |", len(heads)) + "\n")
	for _, r := range rows {
		p.WriteString(indent + "| " + strings.Join(r, " | ") + " |\n")
	}
	p.WriteString("\n")
}

func (p *page) front() {
	d := p.d
	p.heading(1, d.Title)
	var rows [][]string
	row := func(label, value string) {
		if value != "" {
			rows = append(rows, []string{label, escape(value)})
		}
	}
	row(words.SupplierWord, d.Supplier)
	row(words.RevisionWord, d.Revision)
	row(words.IssuedWord, d.Issued)
	for _, o := range d.Options {
		row(escape(o.Name), o.Chosen)
	}
	row(words.ContactWord, d.Contact)
	if d.Workshop != nil {
		row(words.WorkshopWord, d.Workshop.String())
	}
	row(words.DigestWord, d.Digest)
	rows = append(rows, []string{words.SerialWord, blank}, []string{words.BuilderWord, blank})
	p.table("", []string{words.ChecklistWord, ""}, rows)
	if d.Incomplete {
		p.para("", "**"+words.IncompleteNote+"**")
	}
	p.heading(2, words.Safety)
	for _, c := range d.Cautions {
		p.bullet("", c)
	}
	p.contents()
	p.lists()
	if len(d.History) > 0 {
		p.heading(2, words.HistoryHead)
		rows = nil
		for _, h := range d.History {
			rows = append(rows, []string{escape(h.Revision), escape(h.Issued), line(h.Reason)})
		}
		p.table("", []string{words.RevisionWord, words.IssuedWord, words.ReasonWord}, rows)
	}
}

func (p *page) contents() {
	p.heading(2, words.Contents)
	var rows [][]string
	for _, c := range p.d.Contents {
		title := escape(placed(c.Title, c.Place))
		if c.Left != "" {
			rows = append(rows, []string{c.Number, title + ". " + escape(c.Left), "", "", "", ""})
			continue
		}
		rows = append(rows, []string{c.Number, title, c.Times.Work, c.Times.Waiting, numbers(c.Helpers), numbers(c.Holds)})
	}
	rows = append(rows, []string{"", "**" + words.TotalWord + "**", p.d.Totals.Work, p.d.Totals.Waiting, "", ""})
	p.table("", []string{words.NumberWord, words.ProcedureWord, words.WorkWord, words.WaitingWord, words.HelperWord, words.HoldsWord}, rows)
	note := words.TimesNote
	if n := p.d.Totals.Unsaid; n > 0 {
		note += " " + words.Unsaid(n) + "."
	}
	p.para("", note)
}

func numbers(refs []render.Ref) string {
	var all []string
	for _, r := range refs {
		all = append(all, r.Number)
	}
	return strings.Join(all, ", ")
}

func placed(title, place string) string {
	if place == "" || strings.HasSuffix(title, place) {
		return title
	}
	return title + ", " + place
}

// lists are what the job needs.
func (p *page) lists() {
	d := p.d
	if len(d.Protection) > 0 {
		p.heading(2, words.ProtectionHead)
		for _, it := range d.Protection {
			p.bullet("", "[ ] "+escape(named(it)))
		}
	}
	var rows [][]string
	for _, t := range d.Tools {
		rows = append(rows, []string{"[ ]", escape(t.Name), fmt.Sprint(t.Quantity), escape(amount(t.Range)), escape(amount(t.Resolution))})
	}
	p.listed(words.ToolsHead, []string{"", words.ToolWord, words.QuantityWord, words.RangeWord, words.ReadsToWord}, rows)
	rows = nil
	for _, s := range d.Supplies {
		var clocks, wear []string
		for _, c := range s.Clocks {
			at := ""
			if c.At != nil {
				at = " at " + c.At.String()
			}
			clocks = append(clocks, escape(c.Label+" "+c.For.String()+at))
		}
		for _, it := range s.Protection {
			wear = append(wear, escape(it.Name))
		}
		rows = append(rows, []string{"[ ]", escape(s.Name), escape(s.Kind), escape(s.Amount), strings.Join(clocks, "; "), strings.Join(wear, "; ")})
	}
	p.listed(words.SuppliesHead, []string{"", words.SupplyWord, words.KindWord, words.AmountWord, words.ClocksWord, words.ProtectionHead}, rows)
	rows = nil
	for _, t := range d.Parts {
		rows = append(rows, []string{"[ ]", escape(t.Name), escape(t.Number), fmt.Sprint(t.Quantity), escape(partNote(t))})
	}
	p.listed(words.PartsHead, []string{"", words.NameOfPart, words.NumberWord, words.QuantityWord, words.SizesHead}, rows)
}

func (p *page) listed(head string, heads []string, rows [][]string) {
	if len(rows) > 0 {
		p.heading(2, head)
		p.table("", heads, rows)
	}
}

func named(it render.Item) string {
	if it.Note == "" {
		return it.Name
	}
	return it.Name + ", " + it.Note
}

func amount(a *render.Amount) string {
	if a == nil {
		return ""
	}
	return a.String()
}

func partNote(t render.Part) string {
	var all []string
	for _, s := range t.Sizes {
		note := fmt.Sprintf("%d × %s", s.Held, s.Label)
		if s.Is != nil {
			note += ", " + s.Is.String()
		}
		all = append(all, note)
	}
	switch {
	case !t.Supplied:
		all = append(all, words.OwnPart)
	case t.InPlace > 0:
		all = append(all, words.InPlace(t.InPlace))
	}
	return strings.Join(all, "; ")
}

func (p *page) back() {
	var rows [][]string
	for _, r := range p.d.Record {
		what := placed(r.Title, r.Place)
		if r.What != "" {
			what += ", " + r.What
		}
		limit := ""
		switch {
		case r.Limit != nil:
			limit = r.Limit.Range.String()
		case r.Likely != nil:
			limit = words.Likely + " " + r.Likely.String()
		case r.Signer != "":
			limit = words.ReleasedBy + ": " + r.Signer
		}
		rows = append(rows, []string{r.Number, escape(what), escape(limit), value(r.Value, r.Unit), blank})
	}
	if len(rows) > 0 {
		p.heading(2, words.RecordHead)
		p.para("", words.RecordNote)
		p.table("", []string{words.StepWord, words.WhatWord, words.LimitWord, words.ValueWord, words.Initials}, rows)
	}
	p.heading(2, words.SignOffHead)
	p.para("", words.SignOffNote)
	rows = nil
	for _, who := range p.d.SignOff {
		rows = append(rows, []string{escape(who), blank, blank, blank})
	}
	p.table("", []string{"", words.NameWord, words.Signature, words.DateWord}, rows)
}

// value is a known value, or room to write it.
func value(v, unit string) string {
	if v == "" {
		v = blank
	} else {
		v = "**" + escape(v) + "**"
	}
	if unit == "" {
		return v
	}
	return v + " " + escape(unit)
}
