// Package rules lists the rules of all groups.
package rules

import (
	"slices"
	"strings"

	"fettle/lint/rule"
	"fettle/lint/rules/access"
	"fettle/lint/rules/fastening"
	"fettle/lint/rules/fit"
	"fettle/lint/rules/form"
	"fettle/lint/rules/hold"
	"fettle/lint/rules/kit"
	"fettle/lint/rules/measure"
	"fettle/lint/rules/media"
	"fettle/lint/rules/order"
	"fettle/lint/rules/revision"
	"fettle/lint/rules/safety"
	"fettle/lint/rules/seal"
	"fettle/lint/rules/units"
	"fettle/lint/rules/values"
	"fettle/lint/rules/words"
)

var all, byName = func() ([]*rule.Rule, map[string]*rule.Rule) {
	var all []*rule.Rule
	byName := map[string]*rule.Rule{}
	for _, group := range [][]*rule.Rule{access.All, fastening.All, fit.All, form.All, hold.All, kit.All, measure.All, media.All, order.All, revision.All, safety.All, seal.All, units.All, values.All, words.All} {
		for _, r := range group {
			if byName[r.Name] != nil {
				panic("internal error: two rules are called " + r.Name)
			}
			byName[r.Name] = r
			all = append(all, r)
		}
	}
	slices.SortFunc(all, func(a, b *rule.Rule) int { return strings.Compare(a.Name, b.Name) })
	return all, byName
}()

// All lists every rule, sorted by name.
func All() []*rule.Rule { return all }

// Find is the rule of that name, or nil.
func Find(name string) *rule.Rule { return byName[name] }
