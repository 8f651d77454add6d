package rework

import (
	"fmt"
	"strings"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/lang/entry"
	"fettle/lang/kind"
)

// Caution stands over every plan that tells somebody to do work.
const Caution = "This plan is an aid to a competent person; it does not approve an engine for service.\nLocal codes and licensed practice come first. Before you take anything off: make the\nmachine safe, let out pressure, liquid and springs, and read the messages of each step."

// Text tells the plan to people at a terminal.
func (p *Plan) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s, serial %s\nbuilt to revision %s, seen from revision %s (%s)\n", p.Manual.Title(), p.State.Start.Serial,
		p.letters(), p.Manual.Plain("revision"), logbook.Short(p.Digest))
	for _, c := range p.State.Conflicts {
		fmt.Fprintf(&b, "\nTwo copies of the logbook disagree about %s. Settle that first.\n", c.About)
	}
	if p.Empty() {
		fmt.Fprintf(&b, "\nNothing is asked of this engine: all %s on record stand as they are.\n", count(len(p.Items), "step"))
	} else {
		b.WriteString("\n" + Caution + "\n")
	}
	if p.Stuck != nil {
		fmt.Fprintf(&b, "\nTHIS CANNOT BE UNDONE: %s %s. Ask the supplier before you go on.\n", p.Stuck.Object, p.Stuck.Why)
	}
	p.wayInText(&b)
	if len(p.Renew) > 0 {
		b.WriteString("\nRENEW\n")
		for _, r := range p.Renew {
			fmt.Fprintf(&b, "  %d × %s", r.Count, r.Object)
			if r.Number != "" {
				b.WriteString(", number " + r.Number)
			}
			b.WriteString(": " + r.Why + "\n")
		}
	}
	if needs := p.Needs(); len(needs) > 0 {
		b.WriteString("\nHAVE READY\n")
		for _, n := range needs {
			fmt.Fprintf(&b, "  %s, for %s\n", n.Supply.Title(), strings.Join(n.steps(), ", "))
		}
	}
	titles := p.titles()
	if len(p.Again) > 0 {
		b.WriteString("\nTHEN DO, IN THIS ORDER\n")
		for i, a := range p.Again {
			mark := " "
			if a.Asked {
				mark = "*"
			}
			fmt.Fprintf(&b, " %s%3d  %s %s\n        %s\n", mark, i+1, a.Step.Number, titles.of(a.Step, a.Place), a.Why)
			if a.First != "" {
				fmt.Fprintf(&b, "        before it, this must have cured: %s\n", a.First)
			}
		}
		b.WriteString("  * asked by the revision; the others follow from what comes off\n")
	}
	p.verdictsText(&b, titles)
	return strings.Map(printable, b.String())
}

func (p *Plan) wayInText(b *strings.Builder) {
	if len(p.WayIn)+len(p.Remove) == 0 {
		return
	}
	b.WriteString("\nTHE WAY IN, IN THIS ORDER\n")
	for i, m := range p.WayIn {
		fmt.Fprintf(b, "  %3d  %s %s", i+1, verb(m), m.Object)
		if len(m.With) > 0 {
			b.WriteString(", with " + first(objects(m.With), 4))
		}
		b.WriteByte('\n')
		if u := m.Object.Node.Plain("undo"); u != "" {
			fmt.Fprintf(b, "        %s\n", strings.Join(strings.Fields(u), " "))
		}
		for _, s := range m.Seals {
			fmt.Fprintf(b, "        This breaks the seal of %s.\n", s)
		}
	}
	for i, o := range p.Remove {
		fmt.Fprintf(b, "  %3d  take off %s for good: the new revision does not fit it\n", len(p.WayIn)+i+1, o)
	}
}

func (p *Plan) verdictsText(b *strings.Builder, t titles) {
	for _, v := range []Verdict{DoNew, DoAgain, ReadAgain, Release, Gone} {
		if list := p.Of(v); len(list) > 0 {
			fmt.Fprintf(b, "\n%s\n", strings.ToUpper(v.String()))
			t.list(b, list)
		}
	}
	still := p.still()
	if len(still) > 0 {
		b.WriteString("\nCHANGED, AND STILL AS IT SHOULD BE\n")
		t.list(b, still)
	}
	if n := len(p.Of(AsItWas)) - len(still); n > 0 && !p.Empty() {
		fmt.Fprintf(b, "\n%s on record are as they were. Nothing is marked as done for you.\n", count(n, "other step"))
	}
}

// still lists what changed and asks nothing.
func (p *Plan) still() []Item {
	var all []Item
	for _, i := range p.Of(AsItWas) {
		if i.Why != "" {
			all = append(all, i)
		}
	}
	return all
}

func (t titles) list(b *strings.Builder, items []Item) {
	for _, g := range grouped(items) {
		fmt.Fprintf(b, "  %s %s\n      %s\n", g.step.Number, t.group(g), g.why)
	}
}

// letters are the revisions that the build has followed, in order.
func (p *Plan) letters() string {
	all := []string{p.State.Start.Revision}
	for _, l := range p.Log.Lines {
		if l.Kind == logbook.Revision {
			all = append(all, l.Revision)
		}
	}
	return strings.Join(all, ", then ")
}

func count(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}

// verb says what a move does to its object.
func verb(m bench.Move) string {
	switch {
	case m.Verb == kind.Slackens:
		return "loosen"
	case m.Object.Node.Is(entry.Fastening):
		return "undo"
	}
	return "take off"
}

func objects(list []bench.Object) []string {
	var all []string
	for _, o := range list {
		all = append(all, o.String())
	}
	return all
}

// first lists some, and how many more there are.
func first(list []string, most int) string {
	if n := len(list) - most; n > 1 {
		return strings.Join(list[:most], ", ") + fmt.Sprintf(" and %d more", n)
	}
	return strings.Join(list, ", ")
}

// printable drops what could steer a terminal.
func printable(r rune) rune {
	if r < 0x20 && r != '\n' || r >= 0x7f && r < 0xa0 {
		return -1
	}
	return r
}
