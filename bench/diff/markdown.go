package diff

import (
	"fmt"
	"strings"
)

// Markdown is the changes as a bulletin for builders, in CommonMark.
func (c *Changes) Markdown() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s: what %s changes\n\n", escape(c.New.Title()), "revision "+escape(c.New.Plain("revision")))
	fmt.Fprintf(&b, "From %s to %s.\n", escape(side(c.Old)), escape(side(c.New)))
	if s := c.New.Plain("supplier"); s != "" {
		fmt.Fprintf(&b, "Issued by %s.", escape(s))
		if t := c.New.Plain("contact"); t != "" {
			fmt.Fprintf(&b, " Questions: %s.", escape(strings.TrimSuffix(t, ".")))
		}
		b.WriteByte('\n')
	}
	for _, r := range c.reasons() {
		fmt.Fprintf(&b, "\n%s\n", escape(r))
	}
	if c.Empty() {
		b.WriteString("\nNothing changed but letter, day and history. An engine built to the old revision is built to the new one.\n")
		return b.String()
	}
	b.WriteString("\n" + caution + "\n")
	show := newShower(c.New)
	for _, class := range Classes() {
		list := c.Of(class)
		if len(list) == 0 {
			continue
		}
		fmt.Fprintf(&b, "\n## %s\n\n%s\n", classTitles[class], meaning[class])
		for _, x := range list {
			fmt.Fprintf(&b, "\n- **%s**", escape(heading(x.Node())))
			if w := x.what(); w != "" {
				fmt.Fprintf(&b, " (%s)", escape(w))
			}
			if x.Moved {
				fmt.Fprintf(&b, "; it was %s", escape(heading(x.Old)))
			}
			b.WriteByte('\n')
			for i := range x.Fields {
				b.WriteString("  - " + x.Fields[i].markdown(show) + "\n")
			}
			if len(x.UsedBy) > 0 {
				b.WriteString("  - Used by " + escape(usedBy(x)) + "\n")
			}
		}
	}
	return b.String()
}

const caution = `> This bulletin is an aid to a competent person. It does not approve an engine
> for service. Local codes and licensed practice come first. What it asks of an
> engine that is built in part, fettle works out from the engine's logbook: rework.`

var meaning = map[Class]string{
	Safety:   "Somebody can be hurt where these are missed. Read them before you touch the engine again.",
	Value:    "What is done to the engine, and what is accepted.",
	Sequence: "When it is done.",
	Kit:      "What must be at hand.",
	Words:    "What is said, not what is done.",
}

func (f *Field) markdown(show shower) string {
	label := escape(f.label())
	was, is := f.shown(show)
	switch {
	case was == "":
		return fmt.Sprintf("%s: now **%s**", label, escape(is))
	case is == "":
		return fmt.Sprintf("%s: was ~~%s~~, now nothing", label, escape(was))
	case f.Parts != nil:
		var words []string
		changed := false
		for _, p := range f.Parts {
			switch p.Op {
			case Same:
				words = append(words, escape(p.Text))
				continue
			case Out:
				words = append(words, "~~"+escape(p.Text)+"~~")
			case In:
				words = append(words, "**"+escape(p.Text)+"**")
			}
			changed = true
		}
		if !changed {
			return label + ": only blanks and line ends changed"
		}
		return label + ": " + strings.Join(words, " ")
	}
	s := fmt.Sprintf("%s: ~~%s~~ → **%s**", label, escape(was), escape(is))
	if f.Trend != NoTrend {
		s += " (" + f.Trend.String() + ")"
	}
	return s
}

// escape keeps an author's words from being read as Markdown or HTML.
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
