// Package revision holds the rules on what changes from one revision to the next, one file a rule.
package revision

import (
	"fettle/lint/rule"
)

// All lists the rules, sorted by name.
var All = []*rule.Rule{ChangedUnderLetter, DayGoesBack, LetterGoesBack, WasNamesNothing, WasStillExists}

// since reports that a revision of this manual was issued before.
func since(p *rule.Pass) bool { return p.Issued != nil && p.Issued.Manual == p.ID }
