package media

import (
	"fettle/bench/diff"
	"fettle/bench/revision"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lint/rule"
)

// OlderRevision: a picture of a step that has changed since it was made.
var OlderRevision = &rule.Rule{
	Name:     "media/older-revision",
	Severity: diag.Doubt,
	Finds:    "A figure or film whose step has changed since it was made, as the revision issued last tells.",
	Why:      "Where words and picture disagree, the builder follows the picture.",
	Remedy:   "Look at it beside the step. Make it anew, or write the new revision in `made_at` where it still shows the step as it is.",
	Bad: `
` + issuedGate + `
-- m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "B"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.hang]

  history "A" {
    issued = "2026-01-10"
    reason = "First issue. Revision B turns the gate round."
  }
}

part "post" {
  name     = "Gate post"
  in_place = 1
}

part "gate" {
  name    = "Gate"
  sits_on = part.post
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "A" # want "has changed since"
  shows   = [procedure.hang.fit.gate]
}

procedure "hang" {
  title = "Hang the gate"

  fit "gate" {
    title   = "Hang the gate on its pins"
    part    = part.gate
    facing  = "Latch towards the yard"
    figures = [figure.hinge]
  }
}
`,
	Good: `
` + issuedGate + `
-- m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "B"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.hang]

  history "A" {
    issued = "2026-01-10"
    reason = "First issue. Revision B says how long hanging takes."
  }
}

part "post" {
  name     = "Gate post"
  in_place = 1
}

part "gate" {
  name    = "Gate"
  sits_on = part.post
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "A"
  shows   = [procedure.hang.fit.gate]
}

procedure "hang" {
  title = "Hang the gate"

  fit "gate" {
    title   = "Hang the gate on its pins"
    part    = part.gate
    facing  = "Latch towards the road"
    figures = [figure.hinge]
    takes   = "5 min"
  }
}
`,
	Run: func(p *rule.Pass) {
		if p.Issued == nil || p.Issued.Manual != p.ID || p.Issued.Revision == p.Plain("revision") {
			return
		}
		var pairs *diff.Pairs
		for _, n := range made(p.Manual) {
			if at := n.Plain("made_at"); at == "" || at == p.Plain("revision") {
				continue
			}
			if pairs == nil {
				pairs = diff.Pair(p.Issued.Model, p.Manual)
			}
			for _, r := range n.AllRefs("shows") {
				s, attr := changed(pairs, p, r.To)
				if s == nil {
					continue
				}
				at := s.Name
				if attr != "" {
					at = s.At(attr)
				}
				p.Report(n.At("made_at"), rule.Called(n)+" was made at revision "+n.Plain("made_at")+", and "+rule.Called(s)+" has changed since.",
					rule.Related(at, "It was otherwise in revision "+p.Issued.Revision+"."))
				break
			}
		}
	},
}

// changed is the first step of what is shown that looks otherwise than in the
// revision issued last, and the attribute that differs; a new one has none.
func changed(pairs *diff.Pairs, p *rule.Pass, shown *model.Node) (step *model.Node, attr string) {
	if shown == nil {
		return nil, ""
	}
	if shown.Step == nil {
		for _, s := range shown.Steps {
			if step, attr = changed(pairs, p, s.Node); step != nil {
				return step, attr
			}
		}
		return nil, ""
	}
	old := pairs.Old(shown)
	if old == nil {
		return shown, ""
	}
	was, is := revision.Canon{Manual: p.Issued.Model}, revision.Canon{Manual: p.Manual, Address: func(n *model.Node) string {
		if o := pairs.Old(n); o != nil {
			return o.Address
		}
		return n.Address
	}}
	said := map[string]string{}
	for _, a := range revision.Attrs(old) {
		if seen[a.Def.Role] {
			said[a.Def.Name] = was.Value(a.Value)
		}
	}
	for _, a := range revision.Attrs(shown) {
		if !seen[a.Def.Role] {
			continue
		}
		if before, ok := said[a.Def.Name]; !ok || before != is.Value(a.Value) {
			return shown, a.Def.Name
		}
		delete(said, a.Def.Name)
	}
	if len(said) > 0 {
		return shown, ""
	}
	return nil, ""
}

// seen are the roles of what a picture of a step may show.
var seen = map[schema.Role]bool{
	schema.Title: true, schema.Instruction: true, schema.Touches: true, schema.Subject: true, schema.Tool: true, schema.Supply: true,
	schema.Protection: true, schema.Where: true, schema.Guide: true, schema.Value: true, schema.Judgement: true, schema.Method: true,
	schema.State: true, schema.Property: true,
}

const issuedGate = `-- issued/m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- issued/m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-10"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.hang]
}

part "post" {
  name     = "Gate post"
  in_place = 1
}

part "gate" {
  name    = "Gate"
  sits_on = part.post
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "A"
  shows   = [procedure.hang.fit.gate]
}

procedure "hang" {
  title = "Hang the gate"

  fit "gate" {
    title   = "Hang the gate on its pins"
    part    = part.gate
    facing  = "Latch towards the road"
    figures = [figure.hinge]
  }
}`
