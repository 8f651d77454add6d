package lint

import (
	"slices"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint/rules"
)

// One mistake gives one finding. What could not be read is judged by nothing
// else: neither the rest of its line, nor the rest of its step or entry.

// unread are the rules that say a piece of source could not be read, or means
// nothing as it stands. What else is found on the same line follows from that.
var unread = map[string]bool{
	"form/syntax": true, "form/broken-block": true, "form/unclosed-block": true, "form/stray-bracket": true,
	"form/crowded-line": true, "form/unclosed-bracket": true, "form/unclosed-string": true, "form/not-in-dialect": true,
	"form/chained-comparison": true, "form/nested-too-deep": true, "form/expression-too-long": true, "form/number-too-long": true,
	"form/number-with-exponent": true, "form/not-utf8": true, "form/control-character": true, "form/unknown-character": true,
	"form/quantity-without-quotes": true, "values/minus-in-name": true,
}

// withoutConsequences leaves out what follows from a finding of the reader. all
// must be sorted.
func withoutConsequences(m *model.Manual, all diag.List) diag.List {
	all = firstOfLine(all)
	for _, f := range follows {
		all = f.withoutEffects(m, all)
	}
	broken := damaged(m, all)
	if len(broken.nodes) == 0 {
		return all
	}
	var kept diag.List
	for _, f := range all {
		if byReader(f) || !ofTheWhole[f.Rule] && !broken.covers(f) {
			kept = append(kept, f)
		}
	}
	return kept
}

// ofTheWhole are the rules that say that nothing in the manual names a thing, or
// work with numbers from all over it: they wait until all of it can be read.
var ofTheWhole = map[string]bool{"kit/unused-entry": true, "values/never-used": true, "values/example-fails": true}

// follow says which rule is quiet where another has found the cause.
type follow struct {
	cause, effect string
	there         bool // only in the step or entry where the cause stands
}

var follows = []follow{
	{"units/target-outside-range", "values/example-fails", false},      // the pick aims at the wrong number
	{"fit/not-served", "values/example-fails", true},                   // an example may well stand in the gap
	{"values/division-by-zero", "measure/instrument-too-coarse", true}, // close to zero no instrument is fine enough
}

func (x follow) withoutEffects(m *model.Manual, all diag.List) diag.List {
	caused := slices.DeleteFunc(slices.Clone(all), func(f diag.Finding) bool { return f.Rule != x.cause })
	if len(caused) == 0 || !slices.ContainsFunc(all, func(f diag.Finding) bool { return f.Rule == x.effect }) {
		return all
	}
	w := &wreck{}
	m.EachNode(func(n *model.Node) {
		if n.Step != nil && slices.ContainsFunc(caused, func(f diag.Finding) bool { return n.Extent.Contains(f.Span) }) {
			w.extents = append(w.extents, n.Extent)
		}
	})
	return slices.DeleteFunc(all, func(f diag.Finding) bool {
		return f.Rule == x.effect && (!x.there || w.covers(f))
	})
}

// firstOfLine keeps one finding on each line that could not be read: the first
// that says more than that.
func firstOfLine(all diag.List) diag.List {
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

// byReader reports a finding of a rule that is held while the manual is read.
func byReader(f diag.Finding) bool {
	r := rules.Find(f.Rule)
	return r == nil || r.Run == nil
}

// wreck is what of a manual could not be read.
type wreck struct {
	nodes   []*model.Node // steps, entries and examples
	extents []source.Span // of these
	meant   []string      // names that were probably meant
}

func (w *wreck) covers(f diag.Finding) bool {
	for _, e := range w.extents {
		if e.Contains(f.Span) {
			return true
		}
		for _, r := range f.Related { // what is found elsewhere because of it
			if e.Contains(r.Span) {
				return true
			}
		}
	}
	name := strings.Trim(f.Span.Text(), `"`)
	return name != "" && slices.Contains(w.meant, name) // nothing names it, since its name is misspelt
}

// kept are the rules of the reader that leave a value all the same.
var kept = map[string]bool{"units/decimal-comma": true, "units/hyphen-for-range": true}

// loses reports that something that the work rests on could not be read: then the
// bench cannot tell what is done to what.
func loses(m *model.Manual, found diag.List) bool {
	lost := slices.DeleteFunc(slices.Clone(found), func(f diag.Finding) bool { return kept[f.Rule] })
	for _, f := range damaged(m, lost).nodes {
		switch f.Def {
		case entry.Example, entry.Limit, entry.Figure, entry.Media:
		default:
			return true
		}
	}
	return false
}

// damaged finds the steps, entries and examples that the reader found at fault.
func damaged(m *model.Manual, all diag.List) *wreck {
	w := &wreck{}
	faults := map[*source.File][]diag.Finding{}
	for _, f := range all {
		if f.Severity != diag.Error || f.Span.IsZero() || !byReader(f) {
			continue
		}
		faults[f.Span.File] = append(faults[f.Span.File], f)
		for _, fix := range f.Fixes {
			for _, e := range fix.Edits {
				w.meant = append(w.meant, e.New)
			}
		}
	}
	if len(faults) == 0 {
		return w
	}
	look := func(n *model.Node) {
		if n.Def.Steps && n.Step == nil { // its steps are looked at by themselves
			for _, f := range faults[n.File] {
				if n.Extent.Contains(f.Span) && !slices.ContainsFunc(n.Steps, func(s *model.Step) bool { return s.Extent.Contains(f.Span) }) {
					w.nodes = append(w.nodes, n)
					return
				}
			}
			return
		}
		if n == m.Node || n.Def == entry.HouseRules {
			return // nothing on the bench rests on them
		}
		for _, f := range faults[n.File] {
			if n.Extent.Contains(f.Span) {
				w.nodes, w.extents = append(w.nodes, n), append(w.extents, n.Extent)
				return
			}
		}
	}
	m.EachNode(look)
	for _, n := range m.Examples {
		look(n)
	}
	return w
}
