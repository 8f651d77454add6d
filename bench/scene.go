package bench

import (
	"fmt"
	"strings"
	"time"
)

// Scene describes the bench just before an act, in words: what is on, what is
// out of reach and why, fastenings, seals, marks and liquids, and what comes up
// in this act. It is for an author who wants to understand a finding.
func (t *Trace) Scene(act int) string {
	a := &t.Acts[act]
	before := t.Before(act)
	b := &scene{t: t}
	b.line("%s  %s%s", a.Step.Number, a.Step.Title(), at(a.Place))
	if c := t.Choice.String(); c != "" {
		b.line("with %s", c)
	}
	b.line("%s into the work", whole(a.Start))
	b.head("ON THE BENCH")
	for _, p := range before.On() {
		what := p.Object.String()
		if p.Pieces > 1 {
			what = fmt.Sprintf("%d × %s", p.Pieces, what)
		}
		if len(p.Seats) > 0 {
			what += " on " + join(p.Seats)
		}
		if p.Trial {
			what += ", on trial"
		}
		b.item(what, p.Act, "from the start", "fitted")
	}
	b.head("OUT OF REACH")
	for _, c := range before.Covered() {
		b.item(c.Object.String()+": covered by "+c.By.String(), -1, "", "")
	}
	b.head("IN THE WAY OF THIS STEP")
	for _, c := range before.InTheWay(a.Step, a.Place) {
		b.item(c.By.String()+" covers "+c.Object.String(), -1, "", "")
	}
	b.head("FASTENINGS")
	for _, f := range before.Fastenings() {
		what := f.Object.String() + ": " + string(f.Grip)
		if f.Locked {
			what += ", locked"
		}
		if f.Trial {
			what += ", on trial"
		}
		b.item(what, f.Act, "from the start", "since")
	}
	b.head("SEALS")
	for _, s := range before.Seals() {
		what := s.Step.String() + ": open"
		switch {
		case s.Parted:
			what = s.Step.String() + ": parted"
		case s.Closed && !s.Known:
			what = s.Step.String() + ": closed; nobody says how long it cures"
		case s.Closed && s.Cured > before.Time():
			what = s.Step.String() + ": closed, cured in " + whole(s.Cured-before.Time())
		case s.Closed:
			what = s.Step.String() + ": cured"
		}
		b.item(what, -1, "", "")
	}
	b.head("MARKS IN PLACE")
	for _, m := range before.Marks() {
		b.item(m.String(), -1, "", "")
	}
	b.head("LIQUID IN")
	for _, o := range before.Liquids() {
		b.item(o.String(), -1, "", "")
	}
	b.head("WHAT COMES UP HERE")
	for i := range t.Breaches {
		if x := &t.Breaches[i]; x.Act == act {
			b.item(x.What.String()+": "+join(x.Objects), -1, "", "")
		}
	}
	return b.String()
}

// scene writes headed lists, and leaves out heads with nothing under them.
type scene struct {
	strings.Builder
	t       *Trace
	pending string
}

func (b *scene) line(format string, args ...any) { fmt.Fprintf(b, format+"\n", args...) }

func (b *scene) head(title string) { b.pending = title }

func (b *scene) item(what string, act int, start, since string) {
	if b.pending != "" {
		b.line("\n%s", b.pending)
		b.pending = ""
	}
	switch {
	case act >= 0:
		what += " (" + since + " " + b.t.Acts[act].Step.Number + at(b.t.Acts[act].Place) + ")"
	case start != "":
		what += " (" + start + ")"
	}
	b.line("  %s", what)
}

func at(place string) string {
	if place == "" {
		return ""
	}
	return ", " + place
}

func join(objects []Object) string {
	words := make([]string, len(objects))
	for i, o := range objects {
		words[i] = o.String()
	}
	return strings.Join(words, ", ")
}

// whole is a time to the minute.
func whole(d time.Duration) string {
	d = d.Round(time.Minute)
	if h := int(d.Hours()); h > 0 {
		return fmt.Sprintf("%d h %d min", h, int(d.Minutes())%60)
	}
	return fmt.Sprintf("%d min", int(d.Minutes()))
}
