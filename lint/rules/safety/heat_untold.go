package safety

import (
	"slices"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// HeatUntold: work that heats or cools a part, or handles it hot, with no message or nothing to wear.
var HeatUntold = &rule.Rule{
	Name:     "safety/heat-untold",
	Severity: diag.Error,
	Finds:    "Work that heats or cools a part, or handles it hot, with no message or nothing to wear.",
	Why:      "A part at 100 °C looks like any other, and is dropped by the hand that finds out.",
	Remedy:   "Give the step or its tool a message on the heat, and name gloves in ppe.",
	Bad: `part "shaft" {
  name = "Shaft"
}

part "bearing" {
  name    = "Ball bearing"
  sits_on = part.shaft
  fits_by = "shrink"
}

tool "plate" {
  name = "Oil bath"
  kind = "bath"
}

procedure "warm" {
  title = "Fit the bearing warm"

  heat "bearing" { # want "no message"
    title = "Warm the bearing in the bath"
    on    = [part.bearing]
    tools = [tool.plate]
    ppe   = [ppe.heat_gloves]
    to    = "80..100 °C"
  }

  fit "bearing" {
    title = "Slide the bearing on"
    part  = part.bearing
    ppe   = [ppe.heat_gloves]
    after = [heat.bearing]
  }
}
`,
	Good: `part "shaft" {
  name = "Shaft"
}

part "bearing" {
  name    = "Ball bearing"
  sits_on = part.shaft
  fits_by = "shrink"
}

tool "plate" {
  name = "Oil bath"
  kind = "bath"

  caution {
    hazard = "The bath and what comes out of it are hot."
    result = "Burnt hands."
    avoid  = "Wear heat-resistant gloves."
  }
}

procedure "warm" {
  title = "Fit the bearing warm"

  heat "bearing" {
    title = "Warm the bearing in the bath"
    on    = [part.bearing]
    tools = [tool.plate]
    ppe   = [ppe.heat_gloves]
    to    = "80..100 °C"
  }

  fit "bearing" {
    title = "Slide the bearing on"
    part  = part.bearing
    ppe   = [ppe.heat_gloves]
    after = [heat.bearing]
  }
}
`,
	Run: runHeatUntold,
}

func runHeatUntold(p *rule.Pass) {
	for _, s := range p.Steps() {
		if refs := tooling.Done(s, kind.Heats); len(refs) > 0 && !s.Damaged {
			switch {
			case !told(s) && !slices.ContainsFunc(met(s), func(n *model.Node) bool { return hazard(n) != "" }):
				p.Report(s.Name, rule.Called(s.Node)+" works with heat or cold, and no message tells of it.")
			case len(protection(s)) == 0 && !hotTool(s):
				p.Report(s.At("ppe"), rule.Called(s.Node)+" works with heat or cold, and lists nothing to wear.")
			}
			continue
		}
		for _, r := range s.AllRefs("after") {
			if r.To == nil || r.To.Step == nil || !s.Has("within") && !joinsHot(s, r.To.Step) {
				continue
			}
			if said, _, _ := unlisted(s, nil); said != nil {
				break // that a message says so is a finding of its own
			}
			if len(tooling.Done(r.To.Step, kind.Heats)) > 0 && len(protection(s)) == 0 && !waits(s) && !s.Damaged {
				p.Report(s.At("ppe"), rule.Called(s.Node)+" handles a part straight after "+rule.Called(r.To)+", and lists nothing to wear.",
					rule.Related(r.To.Name, "The part is heated or cooled here."))
				break
			}
		}
	}
}

// hotTool reports a tool whose own rule asks for protection.
func hotTool(s *model.Step) bool {
	return slices.ContainsFunc(met(s), func(n *model.Node) bool { return n.Def == entry.Tool && n.Flag("hot") })
}

// joinsHot reports a step that fits what another has heated.
func joinsHot(s, heated *model.Step) bool {
	for _, r := range tooling.Done(s, kind.Joins) {
		for _, h := range tooling.Done(heated, kind.Heats) {
			if r.To != nil && r.To == h.To {
				return true
			}
		}
	}
	return false
}

// waits reports a step that lets time pass, or asks that some has passed.
func waits(s *model.Step) bool { return tooling.Does(s.Kind, kind.Waits) != "" || s.Has("not_before") }
