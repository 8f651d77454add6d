// Package seal holds the rules on sealants, their clocks and what they cover, one file a rule.
package seal

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	Broken,
	ClosedTooLate,
	Dirtied,
	NeverClosed,
	NotCleaned,
	OutsideService,
	OverWhatStaysClear,
	RunBeforeCure,
	SqueezeOutLeft,
	TightenedTooLate,
	WaitTooShort,
}
