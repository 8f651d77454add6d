package schedule

import (
	"fmt"
	"strings"
	"time"
)

// Text tells the plan to people at a terminal.
func (p *Plan) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s, revision %s", p.Manual.Title(), p.Manual.Plain("revision"))
	if c := p.Choice.String(); c != "" {
		b.WriteString(", " + c)
	}
	fmt.Fprintf(&b, "\n\n%s of work", Length(p.Work))
	if n := p.Days(); p.Options.Day > 0 {
		fmt.Fprintf(&b, " on %s of %s", count(n, "day"), Length(p.Options.Day))
	}
	fmt.Fprintf(&b, "; done after %s.\n", p.moment(p.Finish))
	if p.InTurn > p.Finish {
		fmt.Fprintf(&b, "Step after step it would be %s.\n", p.moment(p.InTurn))
	}
	if p.Assumed > 0 {
		fmt.Fprintf(&b, "%s do not say how long they take; the house's usual time is counted for them.\n", count(p.Assumed, "step"))
	}
	b.WriteString("Times are a plan, not a promise: no step is hurried to keep them.\n")
	p.helpersText(&b)
	p.waitsText(&b)
	p.daysText(&b)
	for _, i := range p.Long {
		fmt.Fprintf(&b, "\nThe work that begins with step %s must not be cut by a night, and is longer than a day. Begin it in the morning and stay with it.\n", p.Acts[i].Step.Number)
	}
	return strings.Map(printable, b.String())
}

func printable(r rune) rune {
	if r < 0x20 && r != '\n' || r >= 0x7f && r < 0xa0 {
		return -1
	}
	return r
}

func (p *Plan) helpersText(b *strings.Builder) {
	if len(p.Helpers) == 0 {
		b.WriteString("\nOne person can do all of it.\n")
		return
	}
	b.WriteString("\nWHEN A HELPER IS NEEDED\n")
	for _, w := range p.Helpers {
		var steps []string
		for _, i := range w.Acts {
			if n := len(steps); n == 0 || steps[n-1] != p.Acts[i].Step.Number {
				steps = append(steps, p.Acts[i].Step.Number)
			}
		}
		who := ""
		if w.People > 1 {
			who = fmt.Sprintf(", %d people", w.People)
		}
		fmt.Fprintf(b, "  %s to %s%s: steps %s\n", p.moment(w.Start), p.moment(w.End), who, strings.Join(steps, ", "))
	}
}

func (p *Plan) waitsText(b *strings.Builder) {
	said := false
	for i := range p.Acts {
		a := &p.Acts[i]
		while := p.Meanwhile(i)
		if !a.Wait || a.End-a.Start < time.Minute && len(while) == 0 {
			continue
		}
		if !said {
			b.WriteString("\nWAITS\n")
			said = true
		}
		fmt.Fprintf(b, "  %s %s: until %s", a.Step.Number, name(a), p.moment(a.End))
		if len(while) > 0 {
			first, last := &p.Acts[while[0]], &p.Acts[while[len(while)-1]]
			fmt.Fprintf(b, "\n      meanwhile steps %s to %s, %s of work", first.Step.Number, last.Step.Number, Length(last.End-first.Start))
		} else if a.End-a.Start >= worth {
			b.WriteString("\n      nothing can be brought forward: all that follows comes after it, or behind a hold")
		}
		b.WriteByte('\n')
	}
}

func (p *Plan) daysText(b *strings.Builder) {
	today := -1
	for i := range p.Acts {
		a := &p.Acts[i]
		if a.Wait {
			continue
		}
		if d := Day(a.Start); d != today && p.Options.Day > 0 || today < 0 {
			today = d
			if p.Options.Day > 0 {
				fmt.Fprintf(b, "\nDAY %d\n", d+1)
			} else {
				b.WriteString("\nIN ORDER\n")
			}
		}
		mark := ""
		if a.Ahead {
			mark = "  (ahead of its turn)"
		}
		fmt.Fprintf(b, "  %6s  %-5s %s%s\n", clock(p.shown(a.Start)), a.Step.Number, name(a), mark)
	}
}

func (p *Plan) shown(t time.Duration) time.Duration {
	if p.Options.Day > 0 {
		return TimeOfDay(t)
	}
	return t
}

// moment is a time of the plan: "day 2, 3:20", or "51:20" where days have no end.
func (p *Plan) moment(t time.Duration) string {
	if p.Options.Day > 0 {
		return fmt.Sprintf("day %d, %s", Day(t)+1, clock(TimeOfDay(t)))
	}
	return clock(t)
}

// clock is hours and minutes, begun minutes counted whole.
func clock(t time.Duration) string {
	m := int((t + time.Minute - 1) / time.Minute)
	return fmt.Sprintf("%d:%02d", m/60, m%60)
}

// Length is a time as a foreman says it: "1 h 20 min".
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

func name(a *Act) string {
	t := strings.ReplaceAll(a.Step.Title(), "«…»", "…")
	if a.Place != "" {
		t += " (" + a.Place + ")"
	}
	return t
}

func count(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}
