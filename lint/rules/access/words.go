package access

import (
	"fmt"

	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// cause is the first step that takes part in a breach, or nil.
func cause(b bench.Breach) *model.Node {
	for _, c := range b.Causes {
		if c.Node != nil && c.Node.Step != nil {
			return c.Node
		}
	}
	return nil
}

// wayOut gives a remedy that names the step behind the breach, at %s; without
// such a step the remedy is the rule's own.
func wayOut(b bench.Breach, format string) func(*diag.Finding) {
	n := cause(b)
	if n == nil {
		return func(*diag.Finding) {}
	}
	return rule.Remedy(fmt.Sprintf(format, rule.Called(n)))
}

// markName is what people call a mark: that of a step, or the maker's own.
func markName(o bench.Object) string {
	if o.Node != nil && o.Node.Step != nil {
		return "the mark of " + rule.Called(o.Node)
	}
	return rule.CalledObject(o)
}
