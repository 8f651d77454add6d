// Package units holds the rules on quantities and their units, one file a rule.
package units

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	BackwardsRange,
	BareNumber,
	DecimalComma,
	EnergyForTorque,
	HyphenForRange,
	TargetOutsideRange,
	TemperatureForDifference,
	TwoSystems,
	UnknownUnit,
	UnreadableQuantity,
	WrongDimension,
}
