// Package rework says what a new revision asks of an engine that is built in
// part, and plans it: what comes off and in which order, what is renewed, which
// steps are done again and which holds released again.
//
// Each step on record is compared with what it has become (carry, verdict). What
// must be done again is put to the bench: it tells what is in the way, and what
// follows from taking that off is added until nothing is missing (plan); the
// plan is then executed on the bench as the engine stands (run), and what the
// bench asks for is added again. So a plan is no longer than what forces it.
//
// It is for rework and progress. It never marks anything as done: the entries
// that it offers for the logbook say what no longer stands. It refuses to compare
// with a revision that nobody can show it.
package rework
