package bench

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
