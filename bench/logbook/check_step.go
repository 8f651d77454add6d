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

// inBuild refuses a step that the options or a reading leave out.
func (c *check) inBuild(s *model.Step) *Refusal {
	switch done, known := c.Env.Done(s, c.e.Place); {
	case !known:
		return refuse("Nobody can tell yet whether "+c.name(s)+" is done in this build.", "That rests on a reading that is not on record.", "Record that reading first.")
	case !done:
		return refuse(c.name(s)+" is not done in this build.", "An option or a reading leaves it out.", "Look at the options with which the logbook begins.")
	}
	return nil
}

// inOrder refuses a step before a hold is released or what it comes after is done.
func (c *check) inOrder(s *model.Step) *Refusal {
	outer := s
	for outer.Branch != nil { // it stands where the step is whose branch it is in
		outer = outer.Branch.Parent.Step
	}
	var held *Refusal
	reached := false
	values.Work(c.Manual, func(w *model.Step, place string) {
		if reached || held != nil {
			return
		}
		if w == outer && (place == c.e.Place || place == "" || !slices.Contains(values.Places(w), c.e.Place)) {
			reached = true
			return
		}
		if !Does(w, kind.Stops) || c.Stands(w, place) {
			return
		}
		if done, known := c.Env.Done(w, place); !done && known {
			return
		}
		held = refuse("The work stops at "+At{w.Key(), place}.String()+", which is not released.",
			"Nothing after a hold starts without it: "+w.Title()+".", "Have it released: "+role(w)+" signs.")
	})
	if held != nil {
		return held
	}
	for _, a := range s.Refs("after", c.e.Place) {
		if a.To == nil || a.To.Step == nil {
			continue
		}
		place := c.e.Place
		if a.Place != "" {
			place = a.Place
		}
		for _, key := range keysAt(a.To.Step, place) {
			if done, known := c.Env.Done(a.To.Step, key); done && known && !c.Stands(a.To.Step, key) {
				return refuse(c.name(s)+" comes after "+At{a.To.Step.Key(), key}.String()+", which is not on record.",
					"The manual asks for that order.", "Do that first, and record it.")
			}
		}
	}
	return nil
}

func (c *check) reading(s *model.Step) *Refusal {
	if s.Kind.Yields != kind.Reading {
		return refuse(c.name(s)+" reads nothing.", "Nobody could use the value.", "Record it as done.")
	}
	read, r := c.read(At{s.Key(), c.e.Place}, c.e.Values)
	if r != nil {
		return r
	}
	c.e.Values = written(read)
	if r := c.instrument(s.AllRefs("tools")); r != nil {
		return r
	}
	if want := s.Whole("repeat", c.e.Place, 1); want > 1 && len(read) < want {
		c.notice(fmt.Sprintf("%s asks for %d readings, and %d on record.", c.name(s), want, len(read)), "Read it as often as the step says.")
	}
	c.judge(s, c.e.Place, read)
	return nil
}

// read takes values in as the manual reads them.
func (c *check) read(at At, list []string) ([]Quantity, *Refusal) {
	key, read, p := values.ParseReading(c.Manual, at.String(), strings.Join(list, "; "))
	if p != nil {
		if key == "" {
			return nil, refuse(p.Message, p.Reason, p.Remedy)
		}
		c.notice(p.Message+" "+p.Reason, p.Remedy)
	}
	return read, nil
}

func written(read []Quantity) []string {
	out := make([]string, len(read))
	for i, q := range read {
		out[i] = q.String()
	}
	return out
}

// judge says what comes of a reading that is not accepted. It is recorded all
// the same: it was read.
func (c *check) judge(s *model.Step, place string, read []Quantity) {
	g := c.Given
	g.Readings = map[string][]Quantity{}
	for key, q := range c.Given.Readings {
		g.Readings[key] = q
	}
	g.Readings[values.Key(s, place)] = read
	v, l := c.plan.With(g).Judge(s, place)
	if v != values.Refused {
		return
	}
	message := "This reading is not accepted."
	if l.Low != nil || l.High != nil {
		message = "This reading is outside its limit, " + calc.Style{First: c.Manual.System(), Gallon: c.Manual.Word("gallon")}.Limits(l.Low, l.High).String() + "."
	}
	remedy := s.Plain("otherwise")
	for _, b := range s.Nested(kind.Otherwise) {
		if remedy == "" {
			remedy = b.Plain("text")
		}
	}
	if remedy == "" {
		remedy = "Stop, and ask the supplier."
	}
	c.notice(message, remedy)
}

// instrument checks the tool that something was read with.
func (c *check) instrument(of []model.Ref) *Refusal {
	if c.e.Tool == "" {
		return nil
	}
	c.e.Tool = strings.TrimPrefix(c.e.Tool, "tool.")
	if c.Manual.Find("tool."+c.e.Tool) == nil {
		return refuse("There is no tool called "+c.e.Tool+".", "Nobody could find the instrument again.", "Give its label, and its own number as the instrument.")
	}
	var names []string
	for _, t := range of {
		if t.To != nil {
			names = append(names, t.To.ID)
		}
	}
	if len(names) > 0 && !slices.Contains(names, c.e.Tool) {
		return refuse("The step is not read with "+c.e.Tool+".", "It names: "+listed(names)+".", "Read it with one of these, or write a note that says why another was used.")
	}
	return nil
}

func (c *check) done(s *model.Step) *Refusal {
	switch {
	case Does(s, kind.Stops):
		return refuse(c.name(s)+" is a hold.", "It is released, not done.", "Record who released it, and as what: "+role(s)+".")
	case s.Kind.Yields == kind.Reading:
		return refuse(c.name(s)+" is read.", "Without the value nobody can judge it.", "Record the reading.")
	case s.Kind.Yields == kind.Number, s.Kind.Yields == kind.Pack:
		if p := c.Env.Problem(s, c.e.Place); p != nil {
			return refuse(p.Message, p.Reason, p.Remedy)
		}
		v, _ := c.Env.Judge(s, c.e.Place)
		if v == values.Refused {
			return refuse("What "+c.name(s)+" works out is outside its limit.", "It cannot be accepted.", or(s.Plain("otherwise"), "Do what the step says for that."))
		}
		if c.Env.Of(s, c.e.Place) == nil && c.Env.Pack(s, c.e.Place) == nil {
			return refuse(c.name(s)+" cannot be worked out yet.", "A reading that it rests on is not on record.", "Record that reading first.")
		}
	}
	if f := c.Fact(s, c.e.Place); f.Is(Done) && f.Revision == c.State.Revision {
		c.notice(fmt.Sprintf("%s is on record as done already, line %d, by %s.", c.name(s), f.Line.Number, f.Line.By), "Nothing, where it was done twice.")
	}
	return nil
}

func or(s, t string) string {
	if s == "" {
		return t
	}
	return s
}

func (c *check) piece() *Refusal {
	part := c.Manual.Find("part." + strings.TrimPrefix(c.e.Part, "part."))
	if part == nil || len(part.Nested(entry.Size)) == 0 {
		return refuse("There is no graded part called "+c.e.Part+".", "Nothing is picked from it.", "Give the label of the shims or shells that you measured.")
	}
	c.e.Part = part.ID
	var size *model.Node
	for _, n := range part.Nested(entry.Size) {
		if n.ID == c.e.Size {
			size = n
		}
	}
	if size == nil {
		return refuse(part.Title()+" has no size "+c.e.Size+".", "Nobody could tell which piece was measured.", "Its sizes are: "+listed(ids(part.Nested(entry.Size)))+".")
	}
	if held := size.Whole("in_kit", "", 0); len(c.e.Values) > held {
		return refuse(fmt.Sprintf("The kit holds %d of the size %s, and %d are given.", held, size.ID, len(c.e.Values)), "There cannot be more pieces than the kit holds.", "Give one value for each piece.")
	}
	var read []Quantity
	for _, v := range c.e.Values {
		q, ok := parseSize(c.Manual, PieceOf{part.ID, size.ID}, v)
		if !ok {
			return refuse(v+" is no value of a piece of "+part.Title()+".", "A piece is measured in the unit of its size.", "Give it as its size is written: "+size.ID+".")
		}
		read = append(read, q)
	}
	c.e.Values = written(read)
	return c.instrument(nil)
}

// parseSize reads the measured value of a piece.
func parseSize(m *model.Manual, of PieceOf, value string) (Quantity, bool) {
	part := m.Find("part." + of.Part)
	if part == nil {
		return Quantity{}, false
	}
	for _, n := range part.Nested(entry.Size) {
		if n.ID != of.Size {
			continue
		}
		l, known := n.Limits("is", "")
		lit, problems := calc.ParseLiteral(strings.TrimSpace(value), calc.Context{Want: l.Type().Dim, HasWant: known, Gallon: m.Word("gallon")})
		if len(problems) > 0 || lit.Nominal == nil || lit.IsLimits() || lit.Nominal.Sign() <= 0 {
			return Quantity{}, false
		}
		return *lit.Nominal, true
	}
	return Quantity{}, false
}

func (c *check) correction() *Refusal {
	line := c.Log.Find(c.e.Line)
	if line == nil {
		return refuse("There is no line "+c.e.Line+".", "Nobody could tell what is corrected.", "Give the digest of the line, or its first twelve characters.")
	}
	c.e.Line = line.Sum
	if c.e.Text = strings.TrimSpace(c.e.Text); c.e.Text == "" {
		return refuse("Nothing says why the line is corrected.", "An inspector will ask.", "Write it with the line.")
	}
	root := line
	for root.Kind == Correction {
		root = c.Log.Find(root.Line)
	}
	switch root.Kind {
	case Start, Revision:
		return refuse("A "+string(root.Kind)+" is not corrected.", "Everything after it rests on it.", "Begin another logbook, or record the revision that is in force.")
	case Reading:
		if len(c.e.Values) == 0 {
			return nil // it is withdrawn
		}
		s := c.find(root.Step)
		if s == nil {
			return refuse("This revision does not read `"+root.Step+"`.", "Nobody can tell in which unit.", "Withdraw the line, and record what this revision reads.")
		}
		read, r := c.read(At{root.Step, root.Place}, c.e.Values)
		if r != nil {
			return r
		}
		c.e.Values = written(read)
		c.judge(s, root.Place, read)
		return c.instrument(s.AllRefs("tools"))
	case Piece:
		if len(c.e.Values) == 0 {
			return nil
		}
		p := check{Build: c.Build, e: &Entry{Part: root.Part, Size: root.Size, Values: c.e.Values, Tool: c.e.Tool}}
		r := p.piece()
		c.e.Values, c.e.Tool = p.e.Values, p.e.Tool
		return r
	}
	if len(c.e.Values) > 0 {
		return refuse("A line of the kind "+string(root.Kind)+" has no values.", "There is nothing to put in their place.", "Leave the values out: the line is withdrawn.")
	}
	return nil
}
