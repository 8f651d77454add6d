// Package words holds the rules on prose, one file a rule.
package words

import "fettle/lint/rule"

// All lists the rules, sorted by name.
var All = []*rule.Rule{
	LongSentence,
	NoAction,
	NoCriterion,
	SeveralActions,
	VagueAmount,
	VagueCriterion,
}
