// Package order holds the rules on the order of procedures and steps, one file a rule.
package order

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	AfterContradicted,
	FittedBeforeSeat,
	NeverReached,
	OtherwiseImpossible,
	ProcedureLeftOut,
	ProcedureTwice,
	ProceduresInRing,
	TimeAssumed,
	TooEarly,
	TooLate,
	WaitsForLater,
}
