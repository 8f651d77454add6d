// Package media holds the rules on figures and films, one file a rule.
package media

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	FileMissing,
	NoAlternativeText,
	OlderRevision,
	UnknownRevision,
}
