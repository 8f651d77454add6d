package bench

import (
	"time"

	"fettle/lang/model"
)

// DoAll does steps in this order, as the next acts, and gives what goes wrong.
// Unlike Do after Do, each step knows what comes after it, as in a run: a seal
// that it will be closed, a hold what it guards.
func (s *State) DoAll(steps []Act) []Breach {
	r := s.r
	before, first := len(r.t.Breaches), len(r.acts)
	for _, a := range steps {
		for _, slot := range r.slotsOf(a.Step, a.Place) {
			r.actOf[slot] = int32(len(r.acts))
			r.acts = append(r.acts, planned{slot: slot})
		}
	}
	r.foresee(r.plan)
	for i := first; i < len(r.acts); i++ {
		r.perform(int32(i))
	}
	return r.t.Breaches[before:]
}

// Cure is how long a supply takes to cure at the temperature at which a procedure
// is done; known is false where the supply does not say.
func (s *State) Cure(supply, procedure *model.Node) (d time.Duration, known bool) {
	return s.r.cure(supply, procedure)
}

// Midway gives the bench when only the steps are done that done says, and the
// others are still to come: what the manual undoes later counts as meant to be.
func Midway(m *model.Manual, c Choice, done func(s *model.Step, place string) bool) *State {
	x := newIndex(m)
	r := x.newRun(c, nil)
	for i, a := range r.acts {
		if o := &x.ops[a.slot]; done(o.step, o.place) {
			r.perform(int32(i))
		} else { // keeps acts and their numbers in step
			r.t.Acts = append(r.t.Acts, Act{Step: o.step, Place: o.place, Start: r.now, End: r.now})
		}
	}
	return &State{r}
}
