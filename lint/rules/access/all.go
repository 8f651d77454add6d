// Package access holds the rules on what can be reached, seen and taken off, one file a rule.
package access

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{}
