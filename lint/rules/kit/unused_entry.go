package kit

import (
	"strings"

	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lint/rule"
)

// UnusedEntry looks for what the manual's own folder declares and nothing names.
var UnusedEntry = &rule.Rule{
	Name:     "kit/unused-entry",
	Severity: diag.Doubt,
	Finds:    "An entry of the manual's own catalogue that nothing uses.",
	Why:      "It stands in the lists that a builder collects from, or a step that should use it forgets it.",
	Remedy:   "Use it where it belongs, or take it out. What several manuals share belongs into a shared folder.",
	Bad: `
tool "guide_pin" { # want "Nothing uses the tool"
  name = "Guide pin"
  kind = "guide pin"
}

limit "float" { # want "Nothing uses the limit"
  name  = "Float of the shaft"
  range = "0.08..0.14 mm"
  basis = "Drawing BK-040"
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
`,
	Good: `
tool "guide_pin" {
  name = "Guide pin"
  kind = "guide pin"
}

limit "float" {
  name  = "Float of the shaft"
  range = "0.08..0.14 mm"
  basis = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

procedure "float" {
  title = "Measure the float"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator, tool.guide_pin]
    accept    = limit.float
    otherwise = "Stop. Ask the workshop."
  }
}
`,
	Run: func(p *rule.Pass) {
		told := map[*model.Node]bool{} // by the bench
		for _, b := range p.Breaches(bench.NeverFitted, bench.NeverJoins, bench.NeverTightened) {
			told[b.Node] = true
			for _, o := range b.Objects {
				told[o.Node] = true
			}
		}
		for _, n := range p.Entries {
			if n.Shared || n.Def == entry.HouseRules || p.Used(n) || told[n] || n.Flag("spare") || n.Whole("in_place", "", 0) > 0 {
				continue
			}
			p.Report(n.Name, "Nothing uses the "+called(n.Def)+" "+rule.Called(n)+".")
		}
	},
}

func called(def *schema.Block) string {
	if def == entry.PPE {
		return "PPE"
	}
	return strings.ReplaceAll(def.Name, "_", " ")
}
