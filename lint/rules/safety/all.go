// Package safety holds the rules on what can hurt, one file a rule.
package safety

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	HazardUntold,
	HeatUntold,
	HelperNotCounted,
	LiftTooHeavy,
	MediaWithoutPrecedence,
	MessageIncomplete,
	ProtectionMissing,
	RunWithoutMessage,
}
