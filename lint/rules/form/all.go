// Package form holds the rules on blocks, attributes and names that cannot be read, one file a rule.
package form

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{}
