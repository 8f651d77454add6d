package kit

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
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
	},
}
