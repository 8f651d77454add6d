// Package access holds the rules on what can be reached, seen and taken off, one file a rule.
package access

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	Covered,
	FilledThroughClosed,
	FittedTwice,
	MarkCovered,
	MarkNotMade,
	MarkWiped,
	MoreThanKit,
	NeverFitted,
	NeverJoins,
	NeverRefitted,
	OpenedBelowLiquid,
	RemovedFromUnder,
	RemovedNotOn,
	RemovedWhileHeld,
	ToolLeftOn,
	TrialAsFinal,
	TrialNeverUndone,
}
