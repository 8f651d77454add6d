package logbook

import (
	"slices"
	"strings"

	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Build is one build: a logbook read against the revision that it follows.
type Build struct {
	Manual *model.Manual
	Digest string // of the manual
	Log    *Log
	State  *State
	Given  values.Given
	Env    *values.Env
	Lost   []At // recorded, and this manual has no such reading

	plan *values.Plan
}

// NewBuild reads a whole logbook against a manual with its digest.
func NewBuild(m *model.Manual, digest string, l *Log) *Build {
	return newBuild(values.NewPlan(m), digest, l, StateOf(l))
}

// BuildOf is NewBuild with a state that has been brought to the addresses of the
// manual, as rework does where steps were renamed.
func BuildOf(m *model.Manual, digest string, l *Log, s *State) *Build {
	return newBuild(values.NewPlan(m), digest, l, s)
}

func newBuild(plan *values.Plan, digest string, l *Log, s *State) *Build {
	b := &Build{Manual: plan.Manual, Digest: digest, Log: l, State: s, plan: plan}
	b.Given, b.Lost = GivenBy(plan.Manual, s)
	b.Env = plan.With(b.Given)
	return b
}

// GivenBy is what the record gives to a manual's expressions. What the manual
// does not read, or reads in another dimension, is left out and listed.
func GivenBy(m *model.Manual, s *State) (g values.Given, lost []At) {
	g = values.Given{Options: map[string]string{}, Readings: map[string][]Quantity{}, Pieces: map[string][]values.Piece{}}
	if s.Start != nil {
		for name, choice := range s.Start.Options {
			g.Options[name] = choice
		}
	}
	for at, f := range s.Steps { // into a map
		if !f.Is(Reading) {
			continue
		}
		key, read, _ := values.ParseReading(m, at.String(), strings.Join(f.Values, "; "))
		if key == "" {
			lost = append(lost, at)
			continue
		}
		g.Readings[key] = read
	}
	for of, f := range s.Pieces { // sorted below
		if !f.Is(Piece) {
			continue
		}
		for _, v := range f.Values {
			if q, ok := parseSize(m, of, v); ok {
				g.Pieces[of.Part] = append(g.Pieces[of.Part], values.Piece{Size: of.Size, Is: q})
			}
		}
	}
	for _, pieces := range g.Pieces {
		slices.SortStableFunc(pieces, func(a, b values.Piece) int {
			if c := strings.Compare(a.Size, b.Size); c != 0 {
				return c
			}
			return a.Is.Cmp(b.Is)
		})
	}
	slices.SortFunc(lost, func(a, b At) int { return strings.Compare(a.String(), b.String()) })
	return g, lost
}

// Follows refuses where the manual is not the revision in force.
func (b *Build) Follows() *Refusal {
	r := b.State.Revision
	switch {
	case r == nil:
		return refuse("Two copies of this logbook follow different revisions.",
			"Nobody can tell which limits hold.", "Settle it: record revision, with the one that is right.")
	case b.State.Start.Manual != b.Manual.ID:
		return refuse("This logbook follows the manual "+b.State.Start.Manual+", and this is "+b.Manual.ID+".",
			"What is recorded belongs to another engine.", "Give the folder of "+b.State.Start.Manual+".")
	case r.Digest != b.Digest:
		return refuse("This logbook follows revision "+r.Entry.Revision+" ("+short(r.Digest)+"), and the manual here is revision "+
			b.Manual.Plain("revision")+" ("+short(b.Digest)+").",
			"What is recorded would be judged by limits that the builder never saw.",
			"Give the revision as it was issued, or see what the new one asks, rework, and record the change of revision.")
	}
	return nil
}

func short(digest string) string { return digest[:min(len(digest), 12)] }

// Short is how a digest is shown to people.
func Short(digest string) string { return short(digest) }

// Fact is what stands of a step at a place, or nil.
func (b *Build) Fact(s *model.Step, place string) *Fact { return b.State.Steps[At{s.Key(), place}] }

// Stands reports that a step at a place is done: read, and not refused by its
// limits; done; or released. keys are its places, or spots.
func (b *Build) Stands(s *model.Step, place string) bool {
	f := b.Fact(s, place)
	if s.Kind.Yields == kind.Reading {
		if !f.Is(Reading) {
			return false
		}
		v, _ := b.Env.Judge(s, place)
		return v != values.Refused
	}
	return f.Is(Done, Release)
}

// keysAt are the keys of a step as seen from a place: that place where it has
// it, else all of them.
func keysAt(s *model.Step, place string) []string {
	keys := values.Keys(s)
	if place != "" && slices.Contains(keys, place) {
		return []string{place}
	}
	return keys
}

// Does reports what a step's kind does on the bench.
func Does(s *model.Step, v kind.Verb) bool {
	return slices.ContainsFunc(s.Kind.Does, func(e kind.Effect) bool { return e.Verb == v })
}
