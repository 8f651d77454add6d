// Package hold holds the rules on holds, acceptances and runs, one file a rule.
package hold

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	AfterItsStep,
	ChecksLater,
	ChecksLeftOut,
	ChecksNothing,
	CoveredBeforeAccepted,
	CoveredBeforeHeld,
	IrreversibleUnheld,
	RunBeforeLocked,
	RunBeforeTight,
	RunUnheld,
	TorqueUnchecked,
	UnknownReleaser,
}
