package progress

import (
	"fmt"
	"strings"
	"time"

	"fettle/bench"
	"fettle/bench/logbook"
)

// Text tells where the build stands to people at a terminal.
func (p *Progress) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s, serial %s\nrevision %s (%s)\n", p.Manual.Title(), p.State.Start.Serial, p.Manual.Plain("revision"), logbook.Short(p.Digest))
	fmt.Fprintf(&b, "\n%d of %d steps are done.\n", p.Done, len(p.Steps))
	if p.Log.Torn > 0 {
		fmt.Fprintf(&b, "The last line of the logbook was not written whole: %d bytes of it are lost. Record it again.\n", p.Log.Torn)
	}
	if !p.Plan.Empty() {
		fmt.Fprintf(&b, "This revision asks for %d steps of what is done to be done again: see rework.\n", len(p.Plan.Again))
	}
	for _, c := range p.State.Conflicts {
		fmt.Fprintf(&b, "\nTWO COPIES DISAGREE about %s:\n", c.About)
		for _, l := range c.Lines {
			fmt.Fprintf(&b, "  line %d, %s, %s: %s %s\n", l.Number, l.At, l.By, l.Kind, strings.Join(l.Values, "; "))
		}
		b.WriteString("  Look again, and record what is true.\n")
	}
	if p.Next < len(p.Steps) {
		s := &p.Steps[p.Next]
		fmt.Fprintf(&b, "\nNEXT\n  %s %s\n      %s\n", s.Number, s.name(), s.Key())
		if s.Why != "" {
			fmt.Fprintf(&b, "      %s\n", s.Why)
		}
	} else {
		b.WriteString("\nThe work is done.\n")
	}
	list := func(title string, lines []string) {
		if len(lines) > 0 {
			b.WriteString("\n" + title + "\n  " + strings.Join(lines, "\n  ") + "\n")
		}
	}
	list("NOT ACCEPTED", p.with(NotAccepted))
	list("PASSED OVER: later work is on record, these are not", p.with(Passed))
	list("HOLDS TO BE RELEASED", p.holds())
	list("STILL CURING", p.curing())
	list("FASTENINGS NOT TIGHT", fastened(p.Loose))
	list("ON FOR TRIAL, TO COME OFF AGAIN", placed(p.Trials))
	list("TOOLS THAT ARE ON", placed(p.Tools))
	return strings.Map(printable, b.String())
}

func printable(r rune) rune {
	if r < 0x20 && r != '\n' || r >= 0x7f && r < 0xa0 {
		return -1
	}
	return r
}

func (s *Step) name() string {
	t := strings.ReplaceAll(s.Title(), "«…»", "…")
	if s.Place != "" {
		t += " (" + s.Place + ")"
	}
	return t
}

func (p *Progress) with(status Status) (lines []string) {
	for i := range p.Steps {
		if s := &p.Steps[i]; s.Status == status {
			lines = append(lines, s.Number+" "+s.name())
		}
	}
	return lines
}

func (p *Progress) holds() (lines []string) {
	for _, i := range p.Holds {
		s := &p.Steps[i]
		who := s.Plain("release")
		if who == "" {
			who = "second person"
		}
		lines = append(lines, s.Number+" "+s.name()+": "+who)
	}
	return lines
}

func (p *Progress) curing() (lines []string) {
	for _, c := range p.Curing {
		lines = append(lines, fmt.Sprintf("%s, step %s: until %s, %s more", c.Supply.Title(), c.Step.Number,
			c.Until.Format("2006-01-02 15:04"), Length(c.Until.Sub(p.Now))))
	}
	return lines
}

// Length is a time as a foreman says it: "1 h 20 min", "2 days".
func Length(d time.Duration) string {
	m := int((d + time.Minute - 1) / time.Minute)
	switch {
	case m < 60:
		return fmt.Sprintf("%d min", m)
	case m%60 == 0:
		return fmt.Sprintf("%d h", m/60)
	}
	return fmt.Sprintf("%d h %d min", m/60, m%60)
}

func fastened(list []bench.Fastened) (lines []string) {
	for _, f := range list {
		l := f.Object.String() + ": " + string(f.Grip)
		if f.Trial {
			l += ", for trial"
		}
		lines = append(lines, l)
	}
	return lines
}

func placed(list []bench.Placed) (lines []string) {
	for _, p := range list {
		lines = append(lines, p.Object.String())
	}
	return lines
}
