package report

import (
	"fmt"
	"regexp"
	"strings"

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

var wants = regexp.MustCompile(`(?m)[ \t]*# want(@-?\d+)? .*$`)

func fragment(b *strings.Builder, title, text string) {
	text = strings.Trim(wants.ReplaceAllString(text, ""), "\n")
	if text != "" {
		fmt.Fprintf(b, "%s:\n\n```hcl\n%s\n```\n\n", title, text)
	}
}
