// Package joint knows the trade's physics: threads and their strength, torque
// and preload, stripping, spanner sizes, wrenches and adapters, tightening
// patterns, instruments, lifts, cures and heat. It is for the rules that doubt
// a number and for the functions that authors call.
//
// Everything here is a screen. A result rests on the assumption that its
// docstring names, and on a Source that says how good it is; callers print
// both. Nothing here changes or approves an authored value.
//
// It refuses floating point: values are exact rationals, π is carried to 35
// decimals, and a cosine or root is rounded to 30, so a result is the same on
// every machine. What it cannot decide it says in a *calc.Problem, with what it
// would need; such problems carry no rule, which is the caller's to name.
package joint
