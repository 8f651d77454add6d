// Package fn holds the trade's functions, one a file: what an author may call in
// an expression.
//
// It is for bind, which looks functions up by name, and for explain, which
// prints them. To add one, write its file and list it in All: its check, exact
// value, range, formula, page and test follow from the definition. Prefer a Body
// in arithmetic: it gives every reading at once. A function that arithmetic
// cannot say states Exact and Range, and how the builder's page works it out.
//
// It refuses floating point. FUNCTIONS.md beside package calc is generated from
// the definitions: go test ./calc/fn -update.
//
// Invariant: every example of every function holds.
package fn
