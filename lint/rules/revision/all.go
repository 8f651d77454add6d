// Package revision holds the rules on what changes from one revision to the next, one file a rule.
package revision

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{}
