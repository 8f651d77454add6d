package access

import (
	"fmt"
	"slices"

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

// merged joins breaches of one step and attribute that have the same cause: one
// wiping takes off all the marks of a face. Each keeps the objects of all.
func merged(breaches []bench.Breach) []bench.Breach {
	type key struct {
		node, cause *model.Node
		attr        string
	}
	at := map[key]int{}
	var all []bench.Breach
	for _, b := range breaches {
		k := key{b.Node, nil, b.Attr}
		if n := len(b.Causes); n > 0 {
			k.cause = b.Causes[n-1].Node
		}
		i, ok := at[k]
		if !ok {
			at[k] = len(all)
			all = append(all, b)
			continue
		}
		all[i].Objects = append(slices.Clip(all[i].Objects), b.Objects[0])
		all[i].Causes = append(slices.Clip(all[i].Causes), b.Causes...)
	}
	return all
}

// markNames lists marks.
func markNames(marks []bench.Object) string {
	names := make([]string, len(marks))
	for i, m := range marks {
		names[i] = markName(m)
	}
	return rule.Join(names, "and")
}
