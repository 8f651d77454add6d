package safety

import (
	"slices"
	"strings"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// personal are the messages about what hurts people; a notice is about property.
var personal = []*schema.Block{entry.Danger, entry.Warning, entry.Caution}

// messages lists what a step or an entry says about what hurts people.
func messages(n *model.Node) []*model.Node {
	var all []*model.Node
	for _, b := range n.Blocks {
		if slices.Contains(personal, b.Def) {
			all = append(all, b)
		}
	}
	return all
}

// met lists the entries whose messages are printed at a step: its supplies, its
// tools, and the parts that it is about.
func met(s *model.Step) []*model.Node {
	var all []*model.Node
	for i := range s.Attrs {
		a := &s.Attrs[i]
		switch a.Def.Role {
		case schema.Supply, schema.Tool, schema.Touches, schema.Subject, schema.State:
			model.EachRef(a.Value, func(r *model.Ref) {
				if r.To != nil && r.To.Step == nil && !slices.Contains(all, r.To) {
					all = append(all, r.To)
				}
			})
		}
	}
	return all
}

// told reports a step at which some message about what hurts people is printed.
func told(s *model.Step) bool {
	return len(messages(s.Node)) > 0 || slices.ContainsFunc(met(s), func(n *model.Node) bool { return len(messages(n)) > 0 })
}

// users maps each entry of a block to the steps that meet it, for entries that
// interest says yes to.
func users(p *rule.Pass, interest func(n *model.Node) bool) (order []*model.Node, steps map[*model.Node][]*model.Step) {
	steps = map[*model.Node][]*model.Step{}
	wanted := map[*model.Node]bool{}
	for _, n := range p.Entries {
		if !n.Damaged && interest(n) {
			wanted[n] = true
		}
	}
	if len(wanted) == 0 {
		return nil, steps
	}
	for _, s := range p.Steps() {
		for _, n := range met(s) {
			if !wanted[n] {
				continue
			}
			if steps[n] == nil {
				order = append(order, n)
			}
			steps[n] = append(steps[n], s)
		}
	}
	return order, steps
}

// protection is what is worn at a step: its own, and what its supplies ask for.
func protection(s *model.Step) []*model.Node {
	var all []*model.Node
	add := func(n *model.Node) {
		for _, r := range n.AllRefs("ppe") {
			if r.To != nil {
				all = append(all, r.To)
			}
		}
	}
	add(s.Node)
	for _, n := range met(s) {
		add(n)
	}
	return all
}

// kindOf is the kind of a supply or tool, in small letters.
func kindOf(n *model.Node) string { return strings.ToLower(n.Plain("kind")) }

// byHand reports a step that drives nothing, or drives it by hand.
func byHand(s *model.Step) bool {
	return tooling.Does(s.Kind, kind.Drives) == "" || s.Word("by") == "hand"
}
