package kit

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// ToolAtTwoPlaces reads the bench's tools.
var ToolAtTwoPlaces = &rule.Rule{
	Name:     "kit/tool-at-two-places",
	Severity: diag.Error,
	Finds:    "A tool that is needed while all there are of it are in use elsewhere.",
	Why:      "A builder stands with a part in one hand and looks for a tool that is under the other.",
	Remedy:   "Take the tool off first, name another one, or say that there are more of it.",
	Bad: `
tool "clamp" {
  name     = "Holding clamp"
  kind     = "clamp"
  stays_on = true
  sits_on  = part.bed
}

part "bed" {
  name = "Bed plate"
}

part "bush" {
  name    = "Bush"
  sits_on = part.bed
}

procedure "bush" {
  title = "Fit the bush"

  fit "clamp" {
    title = "Put the clamp on the bed plate"
    tool  = tool.clamp
  }

  fit "bush" {
    title = "Press the bush in"
    part  = part.bush
    tools = [tool.clamp] # want "Holding clamp"
  }

  remove "clamp" {
    title = "Take the clamp off"
    tool  = tool.clamp
  }
}
`,
	Good: `
tool "clamp" {
  name     = "Holding clamp"
  kind     = "clamp"
  quantity = 2
  stays_on = true
  sits_on  = part.bed
}

part "bed" {
  name = "Bed plate"
}

part "bush" {
  name    = "Bush"
  sits_on = part.bed
}

procedure "bush" {
  title = "Fit the bush"

  fit "clamp" {
    title    = "Put the clamp on the bed plate"
    tool     = tool.clamp
    quantity = 1
  }

  fit "bush" {
    title = "Press the bush in"
    part  = part.bush
    tools = [tool.clamp]
  }

  remove "clamp" {
    title = "Take the clamp off"
    tool  = tool.clamp
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.ToolElsewhere) {
			where := ""
			if len(b.Objects) > 1 && b.Objects[1].Node != nil {
				where = ", at " + rule.CalledObject(b.Objects[1])
			}
			p.Breach(b, rule.CalledObject(b.Objects[0])+" is needed here and is in use elsewhere"+where+".")
		}
		for _, n := range p.Having("held_by") {
			if n.Step != nil {
				turnsAndHolds(p, n.Step)
			}
		}
	},
}

// turnsAndHolds reports the one tool that fits the fastener and is to hold it as well.
func turnsAndHolds(p *rule.Pass, s *model.Step) {
	holder := s.Ref("held_by")
	if holder == nil || holder.Def != entry.Tool || !holder.Has("size") || holder.Whole("quantity", "", 1) > 1 {
		return
	}
	listed := false
	for _, t := range tooling.Of(s) {
		if t.Node == holder {
			listed = true
		} else if t.Has("size") && tooling.Fits(t.Plain("size"), holder.Plain("size")) {
			return // one turns and the other holds
		}
	}
	for _, r := range tooling.Done(s, kind.Tightens) {
		if listed && r.To != nil && tooling.Fits(holder.Plain("size"), r.To.Plain("across_flats")) {
			p.Report(s.At("held_by"), rule.Called(holder)+" cannot turn "+rule.Called(r.To)+" and hold it at the same time.",
				rule.Related(s.At("tools"), "It turns the fastener here."))
			return
		}
	}
}
