// Package fastening holds the rules on bolts, nuts, plugs and their tightening, one file a rule.
package fastening

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	AdapterWithoutLength,
	AngleWithoutSnugTorque,
	DriveDiffers,
	HighPreload,
	LeftLoose,
	LockMissing,
	LockedWhileLoose,
	LowPreload,
	LubricantDiffers,
	NeverTightened,
	NoPattern,
	NoTorque,
	NoWrench,
	NotAsFound,
	NotStartedByHand,
	NothingHoldsThePart,
	NothingToLoosen,
	OutsideWrenchRange,
	PreloadNotJudged,
	RemovedWhileFastened,
	SlotWiderThanBand,
	SocketDoesNotFit,
	SpentPartUsedAgain,
	StackNotOn,
	StagesFall,
	StagesMissTheTorque,
	StrippingNotJudged,
	ThreadStripsFirst,
	TightenedTwice,
	TorqueWithoutBasis,
	TurnsTheWrongWay,
	UnsoundPattern,
	WrenchNotJudged,
	WrongSetting,
}
