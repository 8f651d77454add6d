package lint

import (
	"fettle/lang/diag"
	"fettle/lang/source"
)

// unread are the rules that say a piece of source could not be read, or means
// nothing as it stands. What else is found on the same line follows from that.
var unread = map[string]bool{
	"form/syntax": true, "form/broken-block": true, "form/unclosed-block": true, "form/stray-bracket": true,
	"form/crowded-line": true, "form/unclosed-bracket": true, "form/unclosed-string": true, "form/not-in-dialect": true,
	"form/chained-comparison": true, "form/nested-too-deep": true, "form/expression-too-long": true, "form/number-too-long": true,
	"form/number-with-exponent": true, "form/not-utf8": true, "form/control-character": true, "form/unknown-character": true, "form/quantity-without-quotes": true,
}

// withoutConsequences keeps one finding on each line that could not be read:
// the first that says more than that. all must be sorted.
func withoutConsequences(all diag.List) diag.List {
	type place struct {
		file *source.File
		line int
	}
	first := map[place]int{} // index of the finding to keep
	for i, f := range all {
		if !unread[f.Rule] || f.Span.IsZero() {
			continue
		}
		at := place{f.Span.File, f.Span.Position().Line}
		old, seen := first[at]
		if !seen || all[old].Rule == "form/syntax" && f.Rule != "form/syntax" {
			first[at] = i
		}
	}
	if len(first) == 0 {
		return all
	}
	var kept diag.List
	for i, f := range all {
		if !f.Span.IsZero() {
			if keep, ok := first[place{f.Span.File, f.Span.Position().Line}]; ok && keep != i {
				continue
			}
		}
		kept = append(kept, f)
	}
	return kept
}
