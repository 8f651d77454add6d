package rework

import (
	"fmt"
	"slices"
	"strings"

	"fettle/bench/diff"
	"fettle/bench/logbook"
	"fettle/bench/revision"
	"fettle/lang/model"
	"fettle/lang/values"
)

// slot is a step of the new revision at a place, or spot.
type slot struct {
	step  *model.Step
	place string
}

// record is what stands in the logbook of a slot.
type record struct {
	fact *logbook.Fact
	then *then
	old  *model.Step // the step as it was when the line was written
}

// then is a revision that was in force when lines were written.
type then struct {
	model   *model.Manual
	digest  string
	changes *diff.Changes // from it to the new one; nil where it is the new one
	env     *values.Env   // with what is on record, in its own addresses
}

// Unknown is a revision that lines of the logbook follow and nobody can show.
type Unknown struct{ Letter, Digest string }

func (u *Unknown) Error() string {
	return fmt.Sprintf("the logbook follows revision %s (%s), which is not among those that were issued", u.Letter, logbook.Short(u.Digest))
}

// Carried is a logbook carried over to a revision.
type Carried struct {
	Manual *model.Manual
	Digest string
	Log    *logbook.Log
	State  *logbook.State
	Given  values.Given // what is on record, by the addresses of the manual
	Env    *values.Env

	records map[slot]record
	gone    []record // done under a revision, and no step any more
	lost    map[slot]bool
}

// Carry reads a whole logbook against a revision that need not be the one in
// force. issued shows the revisions that its lines follow, by digest; nil for
// one that is not known. The error is an *Unknown.
func Carry(m *model.Manual, l *logbook.Log, issued func(digest string) *model.Manual) (*Carried, error) {
	c := &Carried{Manual: m, Digest: revision.Digest(m), Log: l, State: logbook.StateOf(l),
		records: map[slot]record{}, lost: map[slot]bool{}}
	thens := map[string]*then{}
	facts, err := c.facts(thens, issued)
	if err != nil {
		return nil, err
	}
	for _, f := range facts {
		c.enter(f)
	}
	c.Given = c.given()
	c.Env = values.NewPlan(m).With(c.Given)
	return c, nil
}

// found is a fact with its address under the revision of its time.
type found struct {
	at   logbook.At
	fact *logbook.Fact
	then *then
}

// facts lists what stands, in the order of the logbook.
func (c *Carried) facts(thens map[string]*then, issued func(string) *model.Manual) ([]found, error) {
	var all []found
	for at, f := range c.State.Steps { // sorted below
		if f.Line == nil || f.Revision == nil {
			continue
		}
		d := f.Revision.Digest
		t := thens[d]
		if t == nil {
			t = &then{digest: d, model: c.Manual}
			if d != c.Digest {
				if t.model = issued(d); t.model == nil {
					return nil, &Unknown{f.Revision.Revision, d}
				}
				t.changes = diff.Diff(t.model, c.Manual)
			}
			g, _ := logbook.GivenBy(t.model, c.State)
			t.env = values.NewPlan(t.model).With(g)
			thens[d] = t
		}
		all = append(all, found{at, f, t})
	}
	slices.SortFunc(all, func(a, b found) int { return a.fact.Line.Number - b.fact.Line.Number })
	return all, nil
}

// enter brings a fact to its step in the new revision. Of two that come to one
// step, the later line stands.
func (c *Carried) enter(f found) {
	n := f.then.model.Find("procedure." + f.at.Step)
	if n == nil || n.Step == nil {
		return
	}
	r := record{f.fact, f.then, n.Step}
	to := n.Step
	if f.then.changes != nil {
		to = f.then.changes.Pairs.NewStep(n.Step)
	}
	if to == nil || !slices.Contains(values.Keys(to), f.at.Place) && !slices.Contains(values.Places(to), f.at.Place) {
		if !f.fact.Is(logbook.Undone, logbook.Refused) {
			c.gone = append(c.gone, r)
		}
		return
	}
	c.records[slot{to, f.at.Place}] = r
}

// given is what is on record, by new addresses.
func (c *Carried) given() values.Given {
	g, _ := logbook.GivenBy(c.Manual, c.State) // options and pieces
	g.Readings = map[string][]logbook.Quantity{}
	for s, r := range c.records { // into maps
		if !r.fact.Is(logbook.Reading) {
			continue
		}
		key, read, _ := values.ParseReading(c.Manual, values.Key(s.step, s.place), strings.Join(r.fact.Values, "; "))
		if key == "" {
			c.lost[s] = true // another unit, or beyond the instrument that is asked for now
			continue
		}
		g.Readings[key] = read
	}
	return g
}

// Build is the build with what is on record brought to the addresses of the
// manual: for recording and progress where steps were renamed.
func (c *Carried) Build() *logbook.Build {
	s := *c.State
	s.Steps = make(map[logbook.At]*logbook.Fact, len(c.records))
	for at, r := range c.records {
		s.Steps[logbook.At{Step: at.step.Key(), Place: at.place}] = r.fact
	}
	for at, f := range c.State.Steps { // what copies disagree in stays open
		if f.Line == nil {
			s.Steps[at] = f
		}
	}
	return logbook.BuildOf(c.Manual, c.Digest, c.Log, &s)
}

// Fact is what stands of a step at a place, or nil.
func (c *Carried) Fact(s *model.Step, place string) *logbook.Fact {
	return c.records[slot{s, place}].fact
}

// done reports that a step was done, whatever comes of it now: what it does to
// the engine has been done.
func (c *Carried) done(s *model.Step, place string) bool {
	for _, key := range keys(s, place) {
		if !c.records[slot{s, key}].fact.Is(logbook.Done, logbook.Reading, logbook.Release) {
			return false
		}
	}
	return true
}

// keys are what a step has on record at a place: itself, or each spot.
func keys(s *model.Step, place string) []string {
	all := values.Keys(s)
	if slices.Contains(all, place) {
		return []string{place}
	}
	return all
}
