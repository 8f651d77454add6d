// Package fastening holds the rules on bolts, nuts, plugs and their tightening, one file a rule.
package fastening

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{}
