// Package fit holds the rules on packs of graded parts, one file a rule.
package fit

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	ImpossiblePieces,
	MoreThanKit,
	NotDecided,
	NotGraded,
	NotServed,
	RunsShort,
	SizeNeverUsed,
}
