package logbook

import (
	"slices"
	"strings"
	"unicode"

	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// builder and secondPerson are signatories that every manual has.
const (
	builderRole  = "builder"
	secondPerson = "second person"
)

// role is who releases a hold.
func role(hold *model.Step) string { return or(hold.Plain("release"), secondPerson) }

func (c *check) release(s *model.Step) *Refusal {
	if !Does(s, kind.Stops) {
		return refuse(c.name(s)+" is no hold.", "There is nothing to release.", "Record it as done.")
	}
	want := role(s)
	c.e.Role = strings.Join(strings.Fields(c.e.Role), " ")
	if c.e.Role == "" {
		return refuse("Nothing says as what "+c.e.By+" releases it.", "The hold asks for: "+want+".", "Give the role.")
	}
	if !strings.EqualFold(c.e.Role, want) {
		return refuse(c.name(s)+" is released by the "+want+", not by the "+c.e.Role+".", "The manual says who answers for it.", "Have the "+want+" sign.")
	}
	c.e.Role = want
	checked, r := c.checked(s)
	if r != nil {
		return r
	}
	if strings.EqualFold(want, builderRole) {
		return nil
	}
	for _, f := range checked {
		if same(f.Line.By, c.e.By) {
			return refuse(c.e.By+" did the work that "+c.name(s)+" checks, and cannot release it.",
				"Who did the work sees what he expects to see: the manual asks for another person.", "Have somebody else look, and sign as the "+want+".")
		}
	}
	return nil
}

// checked is what stands of everything that the hold checks: the steps it
// names, or all that is on record of its procedure before it.
func (c *check) checked(hold *model.Step) ([]*Fact, *Refusal) {
	var facts []*Fact
	named := hold.Refs("checks", c.e.Place)
	for _, ref := range named {
		if ref.To == nil || ref.To.Step == nil {
			continue
		}
		s, place := ref.To.Step, c.e.Place
		if ref.Place != "" {
			place = ref.Place
		}
		for _, key := range keysAt(s, place) {
			if done, known := c.Env.Done(s, key); known && !done {
				continue
			}
			at := At{s.Key(), key}
			f := c.Fact(s, key)
			switch {
			case f == nil || f.Line == nil || f.Is(Undone):
				return nil, refuse("The hold checks "+at.String()+", which is not on record.", "Nobody can release what was not accepted.", "Do it and record it first: "+s.Title()+".")
			case !c.Stands(s, key):
				return nil, refuse("The hold checks "+at.String()+", which was not accepted.", "Nobody can release what was not accepted.", "Do what the step says for that, and record it again.")
			}
			facts = append(facts, f)
		}
	}
	if len(named) > 0 {
		return facts, nil
	}
	reached := false
	values.Work(c.Manual, func(s *model.Step, place string) {
		reached = reached || s == hold && place == c.e.Place
		if reached || s.Procedure != hold.Procedure {
			return
		}
		if f := c.Fact(s, place); f.Is(Done, Reading) {
			facts = append(facts, f)
		}
	})
	return facts, nil
}

// same compares initials as people write them: H.B., HB and hb are one person.
func same(a, b string) bool {
	letters := func(s string) string {
		return strings.ToLower(string(slices.DeleteFunc([]rune(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })))
	}
	return letters(a) == letters(b)
}
