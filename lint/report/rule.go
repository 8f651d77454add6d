package report

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"

	"fettle/lint/rule"
)

// Rule explains one rule as Markdown: for explain, and for lint/RULES.md.
func Rule(r *rule.Rule) string {
	var b strings.Builder
	fmt.Fprintf(&b, "## `%s`\n\n%s\n\nSeverity: %s.\n\n**Why.** %s\n\n**What to do.** %s\n\n", r.Name, r.Finds, r.Severity, r.Why, r.Remedy)
	if r.Source != "" {
		fmt.Fprintf(&b, "**Source.** %s\n\n", r.Source)
	}
	fragment(&b, "Wrong", r.Bad)
	fragment(&b, "Right", r.Good)
	return b.String()
}

var (
	wantLine = regexp.MustCompile(`(?m)^[ \t]*# want(@[+-]?\d+)? .*\n`)
	want     = regexp.MustCompile(`(?m)[ \t]*# want(@[+-]?\d+)? .*$`)
)

// fragment prints a fragment without what its test looks for.
func fragment(b *strings.Builder, title, text string) {
	if long(text) {
		return
	}
	text = strings.Map(func(r rune) rune {
		if r != '\n' && unicode.IsControl(r) {
			return unicode.ReplacementChar
		}
		return r
	}, strings.ToValidUTF8(text, "\uFFFD"))
	text = strings.Trim(want.ReplaceAllString(wantLine.ReplaceAllString(text, ""), ""), "\n")
	if text != "" {
		fmt.Fprintf(b, "%s:\n\n```hcl\n%s\n```\n\n", title, text)
	}
}

// long reports a fragment that was made to break a limit, and that nobody reads.
func long(text string) bool {
	const lines, width = 200, 300
	if strings.Count(text, "\n") > lines {
		return true
	}
	for line := range strings.SplitSeq(text, "\n") {
		if len(line) > width {
			return true
		}
	}
	return false
}
