// Package hold holds the rules on acceptances and stops, one file a rule.
package hold

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{}
