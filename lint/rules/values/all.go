// Package values holds the rules on references, expressions and worked examples, one file a rule.
package values

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	BranchNeverTaken,
	CanLeaveItsLimit,
	CircularCalculation,
	DivisionByZero,
	ExampleFails,
	LikelyNotStated,
	LimitTwice,
	MinusInName,
	NeverUsed,
	NoExample,
	NotANumber,
	PlaceLeftOut,
	ProseContradicts,
	ReadSometimes,
	UnknownFunction,
	UnknownReference,
	UsedBeforeRead,
	WrongArguments,
	WrongType,
}
