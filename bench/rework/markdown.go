package rework

import (
	"fmt"
	"strings"

	"fettle/bench/logbook"
)

// Markdown is the plan as a work sheet to tick off, in CommonMark. Its boxes are
// empty: it marks nothing as done.
func (p *Plan) Markdown() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# Rework of serial %s\n\n", escape(p.State.Start.Serial))
	fmt.Fprintf(&b, "%s. Built to revision %s; seen from revision %s (%s).\n", escape(p.Manual.Title()), escape(p.letters()),
		escape(p.Manual.Plain("revision")), logbook.Short(p.Digest))
	for _, c := range p.State.Conflicts {
		fmt.Fprintf(&b, "\nTwo copies of the logbook disagree about %s. Settle that first.\n", escape(c.About))
	}
	if p.Empty() {
		fmt.Fprintf(&b, "\nNothing is asked of this engine: all %s on record stand as they are.\n", count(len(p.Items), "step"))
	} else {
		b.WriteString("\n> " + strings.ReplaceAll(Caution, "\n", "\n> ") + "\n")
	}
	if p.Stuck != nil {
		fmt.Fprintf(&b, "\n**This cannot be undone: %s %s.** Ask the supplier before you go on.\n", escape(p.Stuck.Object.String()), escape(p.Stuck.Why))
	}
	p.partsMarkdown(&b)
	p.stepsMarkdown(&b)
	return b.String()
}

// partsMarkdown is what comes off, what is renewed and what to have ready.
func (p *Plan) partsMarkdown(b *strings.Builder) {
	if len(p.WayIn)+len(p.Remove) > 0 {
		b.WriteString("\n## The way in, in this order\n\n")
	}
	for i, m := range p.WayIn {
		fmt.Fprintf(b, "%d. [ ] %s %s", i+1, upper(verb(m)), escape(m.Object.String()))
		if len(m.With) > 0 {
			b.WriteString(", with " + escape(first(objects(m.With), 4)))
		}
		b.WriteString(".")
		if u := m.Object.Node.Plain("undo"); u != "" {
			b.WriteString(" " + escape(u))
		}
		for _, s := range m.Seals {
			b.WriteString(" This breaks the seal of " + escape(s.String()) + ".")
		}
		b.WriteByte('\n')
	}
	for i, o := range p.Remove {
		fmt.Fprintf(b, "%d. [ ] Take off %s for good: the new revision does not fit it.\n", len(p.WayIn)+i+1, escape(o.String()))
	}
	if len(p.Renew) > 0 {
		b.WriteString("\n## Renew\n\n| | part | number | why |\n|---|---|---|---|\n")
	}
	for _, r := range p.Renew {
		fmt.Fprintf(b, "| %d | %s | %s | %s |\n", r.Count, escape(r.Object.String()), escape(r.Number), escape(r.Why))
	}
	needs := p.Needs()
	if len(needs) > 0 {
		b.WriteString("\n## Have ready\n\n")
	}
	for _, n := range needs {
		fmt.Fprintf(b, "- %s, for %s\n", escape(n.Supply.Title()), strings.Join(n.steps(), ", "))
	}
}

// stepsMarkdown is what is done then, and what the revision makes of the record.
func (p *Plan) stepsMarkdown(b *strings.Builder) {
	t := p.titles()
	if len(p.Again) > 0 {
		b.WriteString("\n## Then do, in this order\n\nWhat the revision itself asks is in bold; the rest follows from what comes off.\n\n")
	}
	for i, a := range p.Again {
		said := escape(a.Step.Number + " " + t.of(a.Step, a.Place))
		if a.Asked {
			said = "**" + said + "**"
		}
		fmt.Fprintf(b, "%d. [ ] %s (%s)", i+1, said, escape(a.Why))
		if a.First != "" {
			b.WriteString(" Before it, this must have cured: " + escape(a.First) + ".")
		}
		b.WriteByte('\n')
	}
	list := func(title string, items []Item) {
		if len(items) == 0 {
			return
		}
		b.WriteString("\n## " + title + "\n\n")
		for _, g := range grouped(items) {
			fmt.Fprintf(b, "- %s: %s\n", escape(g.step.Number+" "+t.group(g)), escape(g.why))
		}
	}
	for _, v := range []Verdict{DoNew, DoAgain, ReadAgain, Release, Gone} {
		list(upper(v.String()), p.Of(v))
	}
	still := p.still()
	list("Changed, and still as it should be", still)
	if n := len(p.Of(AsItWas)) - len(still); n > 0 && !p.Empty() {
		fmt.Fprintf(b, "\n%s on record are as they were. Nothing is marked as done for you.\n", upper(count(n, "other step")))
	}
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// escape keeps what a manual or logbook says from being read as Markdown.
func escape(s string) string {
	var b strings.Builder
	for _, r := range strings.Join(strings.Fields(strings.Map(printable, s)), " ") {
		if strings.ContainsRune("\\`*_{}[]<>#|~&!", r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}
