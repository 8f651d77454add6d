// Package bench executes a manual on a virtual bench, for one choice of
// options, and tells what goes wrong: what a builder would find with the engine
// half built. Rules, schedule, progress and rework read its trace. It never
// fails, never changes the manual, knows no kind of step and no rule; what a
// step does it reads off the verbs that its kind declares (kind.Does).
//
// # States
//
// A part or tool at one place is a body. It is in the tray, on (joined to what
// it sits on), on for trial, spent or gone for good. Joined bodies are a group:
// it moves, weighs and comes off as one. A part without sits_on stands on the
// bench from the start; a bolt sits where its fastening does.
//
// A fastening at one place is off, started by hand, tight or loosened; locked
// or not; for trial or not; wet with this or that. It comes tight and locked
// where all that it is made of and clamps is in place at the start.
//
// A face is clean until something wets it or too long a time passes. A seal has
// clocks: to be closed, to be clamped, to cure. A mark is made, and may be
// wiped. A reading is taken, and a setting goes stale when its lock is
// tightened. What a step accepts is held when a hold has checked it, and the
// hold stands until that is disturbed. Liquid stands in a body until drained.
//
// # Conditions
//
// What a step touches must be in reach: nothing that is on, belongs to the same
// group and is said to cover it. A part goes on when all it sits on is one
// group; a seat that is still in the tray makes a sub-assembly. It comes off
// when nothing holds it, fastens it to what stays, lies over it or also stands
// on it. A fastening is found as the step says it is, with its stack on and its
// thread wet with what the torque rests on. The rest stands beside the verbs,
// in the file of each theme.
//
// # One slip, one breach
//
// After a breach the bench is set to what the author meant: the forgotten bolt
// is tight, the cover in the way is off, the part that comes too late is on, and
// the step that brings it is passed over when it comes. What is meant shows from
// the steps to come, which plan.foresee lists. A run that finds something loose
// waits for the end: it is a breach of the run where that is tightened later,
// and of the fastening where it never is. What happens under a reading only
// (Act.Maybe) counts as done and gives no ground for a breach by being skipped.
//
// Otherwise blocks run on the same tables, which take their changes back
// (table). Going back to an earlier step asks the teardown planner what comes
// off, what that spends, and whether it can be done at all.
//
// # Invariants
//
// Cost grows with the steps: nothing is copied or searched for each step but
// what the step names. Every list is in source order or in the order of the
// work, so the same manual gives the same trace, in however many files.
package bench
