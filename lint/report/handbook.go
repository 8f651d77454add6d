package report

import (
	"fmt"
	"strings"

	"fettle/lint/rule"
)

// groups says what each group of rules is about, in the order of the handbook.
var groups = []struct{ name, about string }{
	{"form", "Blocks, attributes and names that cannot be read. None of these can be agreed on or changed by house rules."},
	{"units", "Quantities as they are written."},
	{"values", "References, formulas, readings and worked examples."},
	{"fit", "Selective fits: what the kit's graded parts can serve."},
	{"order", "The order of procedures and steps, and the time between them."},
	{"fastening", "Bolts, nuts, plugs and their tightening."},
	{"measure", "Readings and the instruments that take them."},
	{"access", "What can be reached, what is on, and what comes off."},
	{"seal", "Sealants, their faces and their clocks."},
	{"hold", "Acceptances, holds and first runs."},
	{"safety", "What can hurt, and what keeps it from hurting."},
	{"kit", "The catalogue: parts, tools and supplies."},
	{"words", "Prose."},
	{"media", "Figures and films."},
	{"revision", "What was issued, and what changed since."},
}

// Handbook is all rules as Markdown, group by group, each group in the order given.
func Handbook(rules []*rule.Rule) string {
	byGroup := map[string][]*rule.Rule{}
	for _, r := range rules {
		group, _, _ := strings.Cut(r.Name, "/")
		byGroup[group] = append(byGroup[group], r)
	}
	var b strings.Builder
	b.WriteString("# Rules\n\nWritten by `go test ./lint -update` from the rules themselves; do not edit.\n\n" +
		"`error`: someone following the manual will be stopped, hurt, or build it wrong. `doubt`: likely so. `advice`: a better manual. " +
		"The house rules of a manual may change the severity of a rule; `# agreed group/rule: reason` beside a line silences one finding.\n\n" +
		"| rule | severity | finds |\n|---|---|---|\n")
	for _, g := range groups {
		for _, r := range byGroup[g.name] {
			fmt.Fprintf(&b, "| [`%s`](#%s) | %s | %s |\n", r.Name, anchor(r.Name), r.Severity, strings.ReplaceAll(r.Finds, "|", `\|`))
		}
	}
	b.WriteString("\n")
	for _, g := range groups {
		if len(byGroup[g.name]) == 0 {
			continue
		}
		fmt.Fprintf(&b, "# %s\n\n%s\n\n", g.name, g.about)
		for _, r := range byGroup[g.name] {
			b.WriteString(Rule(r))
		}
	}
	return strings.TrimRight(b.String(), "\n") + "\n"
}

// anchor is the identifier that Markdown readers give to the heading of a rule.
func anchor(name string) string { return strings.ReplaceAll(name, "/", "") }
