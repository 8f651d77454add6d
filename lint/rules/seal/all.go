// Package seal holds the rules on sealed faces and their clocks, one file a rule.
package seal

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{}
