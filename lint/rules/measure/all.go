// Package measure holds the rules on readings and the instruments that take them, one file a rule.
package measure

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	InstrumentNotJudged,
	InstrumentTooCoarse,
	NeverAccepted,
	NoInstrument,
	NoOtherwise,
	NoTake,
	OutsideInstrumentRange,
	SettingDisturbed,
	SpotsMeasuredAsOne,
	WrongInstrument,
}
