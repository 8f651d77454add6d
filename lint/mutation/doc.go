// Package mutation measures the rules. It takes sound manuals, puts one true
// fault at a time into their source, lints what comes out, and counts for each
// class of faults how often the right rule found it at the right place, and
// what else was said.
//
// The test of the package samples the mutants and holds every class to the
// target; to see them all, or to measure with another manual:
//
//	go test ./lint/mutation -v -all
//	go test ./lint/mutation -v -all -manual procedures/beck -class fastening -detail
//
// It is for the developers of rules. A class is one row of a table: the fault
// as the design names it, the rules that are right to find it, and a function
// that knows where in a manual the fault can be put in several ways. A mutant
// must be a fault beyond argument: a function leaves out every place where the
// edit would still give a manual that works. What a class knows of the trade it
// works out by itself and never asks a rule or the bench, which would only
// measure that they agree with themselves.
package mutation
