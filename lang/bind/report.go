package bind

import (
	"strconv"

	"github.com/agext/levenshtein"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/source"
)

func itoa(n int) string { return strconv.Itoa(n) }

func (d *decoder) add(f diag.Finding) {
	f.Severity = diag.Error
	d.out = append(d.out, f)
}

func (d *decoder) find(rule string, at source.Span, message, reason, remedy string) {
	d.add(diag.Finding{Rule: rule, Span: at, Message: message, Reason: reason, Remedy: remedy})
}

// problem reports what calc found in an expression of the file.
func (d *decoder) problem(p *calc.Problem, file *source.File) {
	d.find(p.Rule, source.Span{File: file, Start: p.Span.Start, End: p.Span.End}, p.Message, p.Reason, p.Remedy)
}

// nearest is the name that was probably meant, or "".
func nearest(given string, names []string) string {
	best, score := "", 3
	for _, n := range names {
		limit := max(1, min(len(n), len(given))/3)
		if dist := levenshtein.Distance(given, n, nil); dist <= limit && dist < score {
			best, score = n, dist
		}
	}
	return best
}

// suggest puts the likely spelling into the remedy, with the edit that makes it.
func suggest(f *diag.Finding, given string, at source.Span, names []string) {
	if n := nearest(given, names); n != "" {
		f.Remedy = "Did you mean `" + n + "`?"
		f.Fixes = append(f.Fixes, diag.Fix{Title: "Write " + n, Edits: []diag.Edit{{Span: at, New: n}}})
	}
}
