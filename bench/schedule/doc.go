// Package schedule plans the work in time: what can be done while something
// cures, when a helper is needed, what fits into a day, and the earliest finish.
//
// One builder does one step after the other, with helpers where steps ask for
// more hands. Steps of a procedure keep their order, and a place keeps its turn.
// A procedure is begun earlier only where all that stands `after` allows it, no
// hold between would be passed, and the bench accepts the whole work in the new
// order. The same manual gives the same plan.
//
// It is for schedule and for the chart in the checklist.
package schedule
