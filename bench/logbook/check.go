package logbook

import (
	"fmt"
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Quantity is what readings are.
type Quantity = calc.Quantity

// Refusal is why an entry is not recorded.
type Refusal struct{ Message, Reason, Remedy string }

func (r *Refusal) Error() string { return r.Message }

// Notice is what a builder should know of an entry that is recorded.
type Notice struct{ Message, Remedy string }

func refuse(message, reason, remedy string) *Refusal { return &Refusal{message, reason, remedy} }

// StartOf is the first line of the logbook of one build, with every option.
func StartOf(m *model.Manual, digest, serial string, options map[string]string) (Entry, *Refusal) {
	e := Entry{Kind: Start, Serial: strings.TrimSpace(serial), Manual: m.ID, Revision: m.Plain("revision"), Digest: digest, Options: map[string]string{}}
	if e.Serial == "" {
		return e, refuse("No serial is given.", "Nobody could tell whose record this is.", "Give the number on the engine.")
	}
	for _, o := range m.Of(entry.Option.Name) {
		e.Options[o.ID] = values.Default(o)
	}
	names := make([]string, 0, len(options))
	for name := range options {
		names = append(names, name)
	}
	for _, name := range sorted(names) {
		choice, o := options[name], m.Find("option."+name)
		if o == nil {
			return e, refuse("There is no option called "+name+".", "Nothing rests on it.", "Options are: "+listed(ids(m.Of(entry.Option.Name)))+".")
		}
		if !slices.Contains(o.Names("choices"), choice) {
			return e, refuse("The "+name+" cannot be "+choice+".", "The kit is not sold like that.", "Choose one of: "+listed(o.Names("choices"))+".")
		}
		e.Options[name] = choice
	}
	return e, nil
}

// RevisionOf is the line from which on another revision is in force.
func (b *Build) RevisionOf(m *model.Manual, digest string) (Entry, *Refusal) {
	e := Entry{Kind: Revision, Revision: m.Plain("revision"), Digest: digest}
	switch r := b.State.Revision; {
	case b.State.Start.Manual != m.ID:
		return e, refuse("This is the manual "+m.ID+", and the build follows "+b.State.Start.Manual+".", "A build has one manual.", "Give the folder of "+b.State.Start.Manual+".")
	case r != nil && r.Digest == digest:
		return e, refuse("Revision "+r.Entry.Revision+" is in force already.", "Nothing would change.", "Go on with the work.")
	}
	return e, nil
}

// Check says why an entry is not recorded, or what to know of it. It brings
// addresses and values into the form in which they are recorded.
func (b *Build) Check(e *Entry) ([]Notice, *Refusal) {
	if !b.Log.Whole() {
		f := b.Log.Faults[0]
		return nil, &Refusal{f.Message, f.Reason, f.Remedy}
	}
	if e.Kind == Revision {
		return nil, nil // RevisionOf has checked it
	}
	if r := b.Follows(); r != nil {
		return nil, r
	}
	e.By = strings.TrimSpace(e.By)
	if e.By == "" {
		return nil, refuse("Nobody signs this line.", "A record without a name proves nothing.", "Give your initials.")
	}
	c := check{Build: b, e: e}
	if last := b.Log.Lines[len(b.Log.Lines)-1]; !e.Time().IsZero() && e.Time().Before(last.Time()) {
		c.notice("This line is dated before the last one, "+last.At+".", "Look at the clock of this device: cures are counted by it.")
	}
	var r *Refusal
	switch e.Kind {
	case Start:
		r = refuse("This build has begun already: serial "+b.State.Start.Serial+".", "A logbook is for one engine.", "Begin another file for another engine.")
	case Piece:
		r = c.piece()
	case Correction:
		r = c.correction()
	case Note:
		if e.Step != "" {
			_, r = c.step(values.Places)
		}
		e.Text = strings.TrimSpace(e.Text)
		if r == nil && e.Text == "" {
			r = refuse("The note is empty.", "There is nothing to keep.", "Write what you saw.")
		}
	default:
		r = c.work()
	}
	if r != nil {
		return nil, r
	}
	return c.notices, nil
}

type check struct {
	*Build
	e       *Entry
	notices []Notice
}

func (c *check) notice(message, remedy string) {
	c.notices = append(c.notices, Notice{message, remedy})
}

// work checks what is said of one step.
func (c *check) work() *Refusal {
	keys := values.Places
	if s := c.find(c.e.Step); s != nil && s.Kind.Yields == kind.Reading {
		keys = values.Keys
	}
	s, r := c.step(keys)
	if r != nil {
		return r
	}
	if r := c.inBuild(s); r != nil {
		return r
	}
	if c.e.Kind != Undone {
		if r := c.inOrder(s); r != nil {
			return r
		}
	}
	switch c.e.Kind {
	case Reading:
		return c.reading(s)
	case Done:
		return c.done(s)
	case Refused:
		if !s.Kind.Judges || s.Kind.Yields != kind.Nothing {
			return refuse(c.name(s)+" accepts nothing by eye.", "There is nothing to refuse.", "Record what was done or read.")
		}
		if c.e.Text = strings.TrimSpace(c.e.Text); c.e.Text == "" {
			return refuse("Nothing says what was wrong.", "The next person must know what was seen.", "Write it with the line.")
		}
		if w := s.Plain("otherwise"); w != "" {
			c.notice(c.name(s)+" is not accepted.", w)
		}
		return nil
	case Undone:
		if f := c.Fact(s, c.e.Place); !f.Is(Done, Reading, Release) {
			return refuse(c.name(s)+" is not on record as done.", "There is nothing to take back.", "Look at what is done: progress.")
		}
		return nil
	case Release:
		return c.release(s)
	}
	return refuse(fmt.Sprintf("There is no kind of line called %q.", c.e.Kind), "Nobody could read it.", "Use one of the kinds of FORMAT.md.")
}

func (c *check) find(address string) *model.Step {
	if n := c.Manual.Find("procedure." + strings.TrimPrefix(strings.TrimSpace(address), "procedure.")); n != nil {
		return n.Step
	}
	return nil
}

// step finds the step and place of the entry, and writes them as they are recorded.
func (c *check) step(keys func(*model.Step) []string) (*model.Step, *Refusal) {
	address := strings.TrimSpace(c.e.Step)
	if name, place, bracketed := strings.Cut(address, "["); bracketed && c.e.Place == "" {
		address, c.e.Place = name, strings.Trim(place, `]" `)
	}
	s := c.find(address)
	if s == nil {
		return nil, refuse("This revision has no step called `"+address+"`.", "Nobody could find what was recorded.", c.suggest(address))
	}
	c.e.Step = s.Key()
	switch at := keys(s); {
	case slices.Contains(at, c.e.Place):
		return s, nil
	case c.e.Place == "":
		return nil, refuse("`"+s.Key()+"` does not say where.", "It is done at each of: "+listed(at)+".", "Write "+At{s.Key(), at[0]}.String()+".")
	case len(at) == 0 || at[0] == "":
		return nil, refuse("`"+s.Key()+"` is done at one place.", "It has no place called "+c.e.Place+".", "Leave the place out.")
	default:
		return nil, refuse("`"+s.Key()+"` is not done at "+c.e.Place+".", "It is done at: "+listed(at)+".", "Write "+At{s.Key(), at[0]}.String()+".")
	}
}

// suggest lists the steps whose own label is that of the address.
func (c *check) suggest(address string) string {
	label := address[strings.LastIndexByte(address, '.')+1:]
	var like []string
	c.Manual.EachStep(func(s *model.Step) {
		if s.ID == label && len(like) < 6 {
			like = append(like, s.Key())
		}
	})
	if len(like) == 0 {
		return "Look at what comes next: progress."
	}
	return "Did you mean " + strings.Join(like, ", or ") + "?"
}

func (c *check) name(s *model.Step) string {
	if c.e.Place == "" {
		return "`" + s.Key() + "`"
	}
	return "`" + s.Key() + "` (" + c.e.Place + ")"
}

func ids(nodes []*model.Node) (out []string) {
	for _, n := range nodes {
		out = append(out, n.ID)
	}
	return out
}

func listed(names []string) string { return strings.Join(names, ", ") }
