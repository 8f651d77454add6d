package diff

import (
	"fmt"
	"strings"

	"fettle/bench/revision"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// what says what happened to a block, in one word or two.
func (c *Change) what() string {
	switch {
	case c.Added():
		return "new"
	case c.Removed():
		return "gone"
	}
	var words []string
	if c.Moved {
		words = append(words, "moved")
	}
	if c.Renamed {
		words = append(words, "label was "+c.Old.ID)
	}
	return strings.Join(words, ", ")
}

// label names a field for people.
func (f *Field) label() string {
	l := strings.ReplaceAll(f.Name, "_", " ")
	if f.In != "" {
		l = f.In + ", " + l
	}
	if f.Place != "" {
		l += " (" + f.Place + ")"
	}
	return l
}

// reasons are the history blocks of the new manual from the old letter on.
func (c *Changes) reasons() (all []string) {
	from := c.Old.Plain("revision")
	for _, h := range c.New.Nested(entry.History) {
		if o, ok := revision.Compare(h.ID, from); !ok || o >= 0 {
			all = append(all, h.ID+": "+strings.Join(strings.Fields(h.Plain("reason")), " "))
		}
	}
	return all
}

// side names one revision: letter, day, digest.
func side(m *model.Manual) string {
	s := "revision " + m.Plain("revision")
	if d := m.Plain("issued"); d != "" {
		s += " of " + d
	}
	return s + " (" + revision.Digest(m)[:12] + ")"
}

var classTitles = map[Class]string{
	Safety: "Safety", Value: "Values", Sequence: "Sequence", Kit: "Kit", Words: "Words only",
}

// count says how many changes there are of each class.
func (c *Changes) count() string {
	var parts []string
	for _, class := range Classes() {
		if n := len(c.Of(class)); n > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", class, n))
		}
	}
	return strings.Join(parts, " · ")
}

// Text tells the changes to people at a terminal.
func (c *Changes) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s\nfrom %s\nto   %s\n", c.New.Title(), side(c.Old), side(c.New))
	for _, r := range c.reasons() {
		fmt.Fprintf(&b, "     %s\n", r)
	}
	if c.Empty() {
		b.WriteString("\nNothing changed but letter, day and history.\n")
		return b.String()
	}
	b.WriteString("\n" + c.count() + "\n")
	show := newShower(c.New)
	for _, class := range Classes() {
		list := c.Of(class)
		if len(list) == 0 {
			continue
		}
		fmt.Fprintf(&b, "\n%s\n", strings.ToUpper(classTitles[class]))
		for _, x := range list {
			fmt.Fprintf(&b, "  %s", heading(x.Node()))
			if w := x.what(); w != "" {
				fmt.Fprintf(&b, "  [%s]", w)
			}
			fmt.Fprintf(&b, "\n      %s\n", address(x.Node()))
			if x.Moved {
				fmt.Fprintf(&b, "      was %s\n", heading(x.Old))
			}
			for i := range x.Fields {
				x.Fields[i].text(&b, show)
			}
			if len(x.UsedBy) > 0 {
				b.WriteString("      used by " + usedBy(x) + "\n")
			}
		}
	}
	return strings.Map(printable, b.String())
}

// printable drops what could steer a terminal.
func printable(r rune) rune {
	if r < 0x20 && r != '\n' || r == 0x7f || 0x80 <= r && r < 0xa0 {
		return -1
	}
	return r
}

func usedBy(c *Change) string {
	var steps []string
	for _, s := range c.UsedBy {
		steps = append(steps, heading(s.Node))
	}
	return strings.Join(steps, "; ")
}

func (f *Field) text(b *strings.Builder, show shower) {
	label := "      " + f.label()
	was, is := f.shown(show)
	switch {
	case was == "":
		fmt.Fprintf(b, "%s: now %s\n", label, is)
	case is == "":
		fmt.Fprintf(b, "%s: was %s, now nothing\n", label, was)
	case f.Parts != nil:
		was, is := marked(f.Parts, Out), marked(f.Parts, In)
		if was == is {
			fmt.Fprintf(b, "%s: only blanks and line ends changed\n", label)
			return
		}
		fmt.Fprintf(b, "%s\n        was  %s\n        now  %s\n", label, was, is)
	default:
		fmt.Fprintf(b, "%s: %s → %s", label, was, is)
		if f.Trend != NoTrend {
			fmt.Fprintf(b, "  (%s)", f.Trend)
		}
		b.WriteByte('\n')
	}
}

// shown is what is said on either side, or holds where nothing is said; "" for
// nothing.
func (f *Field) shown(show shower) (was, is string) {
	was, is = f.Default, f.Default
	if f.Old != nil {
		was = show.value(f.Old)
	}
	if f.New != nil {
		is = show.value(f.New)
	}
	return was, is
}

// marked is one side of a text, the words that the other side does not have in
// brackets.
func marked(parts []Part, op Op) string {
	var words []string
	for _, p := range parts {
		switch p.Op {
		case Same:
			words = append(words, p.Text)
		case op:
			words = append(words, "["+p.Text+"]")
		}
	}
	return strings.Join(words, " ")
}

// Say tells one field in one line: what was said, and what is.
func (c *Changes) Say(f *Field) string {
	was, is := f.shown(newShower(c.New))
	switch {
	case was == "":
		return f.label() + ": now " + is
	case is == "":
		return f.label() + ": was " + was + ", now nothing"
	}
	return f.label() + ": " + was + " → " + is
}
