package fn

import (
	"fmt"
	"strings"

	"fettle/calc"
)

// Describe explains one function as Markdown: for explain, and for FUNCTIONS.md.
func Describe(f *calc.Function) string {
	var b strings.Builder
	fmt.Fprintf(&b, "## %s\n\n`%s`\n\n%s\n\n", f.Name, f.Signature(), f.Doc)
	for _, a := range f.Args {
		fmt.Fprintf(&b, "- `%s`: %s\n", a.Name, a.Doc)
	}
	b.WriteString("\n")
	for _, e := range f.Examples {
		fmt.Fprintf(&b, "`%s` gives %s. (%s)\n\n", e.Call, e.Gives, e.Source)
	}
	fmt.Fprintf(&b, "Source: %s.\n", f.Source)
	return b.String()
}
