package diag

import (
	"cmp"
	"slices"
	"strings"

	"fettle/lang/source"
)

// A Severity says what a finding means for somebody who follows the manual.
// The zero value is not valid.
type Severity uint8

// The severities, the gravest first. None is called 'warning', which in a
// manual is a word for people's safety.
const (
	Error  Severity = iota + 1 // stopped, hurt, or built wrong
	Doubt                      // likely so
	Advice                     // a better manual
)

// String gives the word that authors and reports use.
func (s Severity) String() string {
	switch s {
	case Error:
		return "error"
	case Doubt:
		return "doubt"
	case Advice:
		return "advice"
	}
	return "invalid"
}

// A Finding says what is wrong and where, why it matters, and the way out.
type Finding struct {
	Rule     string // group/what-is-wrong
	Severity Severity
	Span     source.Span
	Message  string // one sentence
	Reason   string // why it matters on the bench
	Remedy   string // what to do
	Related  []Related
	Fixes    []Fix
}

// A Related place takes part in a finding.
type Related struct {
	Span    source.Span
	Message string
}

// A Fix is one way to mend the source. Sure means that applying it unseen is
// safe.
type Fix struct {
	Title string
	Sure  bool
	Edits []Edit
}

// An Edit replaces the bytes of Span by New.
type Edit struct {
	Span source.Span
	New  string
}

// A List is findings in the making.
type List []Finding

// Add appends findings.
func (l *List) Add(f ...Finding) { *l = append(*l, f...) }

// Sort orders the list by file, place, rule and message, and drops what is
// said twice, so that the order of work never shows.
func (l *List) Sort() {
	slices.SortStableFunc(*l, compare)
	*l = slices.CompactFunc(*l, func(a, b Finding) bool { return compare(a, b) == 0 })
}

// Worst gives the gravest severity in the list, or the zero value if it is
// empty.
func (l List) Worst() Severity {
	var worst Severity
	for _, f := range l {
		if worst == 0 || f.Severity < worst {
			worst = f.Severity
		}
	}
	return worst
}

func compare(a, b Finding) int {
	return cmp.Or(
		a.Span.Compare(b.Span),
		strings.Compare(a.Rule, b.Rule),
		strings.Compare(a.Message, b.Message),
	)
}
