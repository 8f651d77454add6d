// Package calc holds exact quantities, their units, typed expressions with
// their several readings, the trade's functions and the selective-fit solver.
//
// It is for the rest of fettle and imports nothing of it. It refuses floating
// point: every value is an exact rational, and a function that needs a root or
// an angle returns a rational rounded to a stated number of decimals.
//
// Invariant: a Quantity is immutable, and two quantities combine only where
// their dimensions allow it.
package calc
