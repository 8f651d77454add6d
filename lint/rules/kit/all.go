// Package kit holds the rules on what the catalogue holds, one file a rule.
package kit

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	NumberTwice,
	ToolAtTwoPlaces,
	UnknownEntry,
	UnusedEntry,
}
