package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// ToolLeftOn reads the tools that were on at a run or at the end.
var ToolLeftOn = &rule.Rule{
	Name:     "access/tool-left-on",
	Severity: diag.Error,
	Finds:    "A tool that stays on the machine when it is run or handed over.",
	Why:      "What turns throws it off; what does not turn is blocked by it.",
	Remedy:   "Take it off with a remove step.",
	Bad: `
tool "lock_bar" {
  name     = "Flywheel lock bar"
  kind     = "lock bar"
  stays_on = true
  sits_on  = part.frame
}

part "frame" {
  name = "Engine frame"
}

part "flywheel" {
  name    = "Flywheel"
  sits_on = part.frame
}

procedure "flywheel" {
  title = "Fit the flywheel"

  fit "flywheel" {
    title = "Set the flywheel in the frame"
    part  = part.flywheel
  }

  fit "lock_bar" { # want "“Flywheel lock bar” is put on here and"
    title = "Hook the lock bar into the flywheel"
    tool  = tool.lock_bar
  }
}
`,
	Good: `
tool "lock_bar" {
  name     = "Flywheel lock bar"
  kind     = "lock bar"
  stays_on = true
  sits_on  = part.frame
}

part "frame" {
  name = "Engine frame"
}

part "flywheel" {
  name    = "Flywheel"
  sits_on = part.frame
}

procedure "flywheel" {
  title = "Fit the flywheel"

  fit "flywheel" {
    title = "Set the flywheel in the frame"
    part  = part.flywheel
  }

  fit "lock_bar" {
    title = "Hook the lock bar into the flywheel"
    tool  = tool.lock_bar
  }

  remove "lock_bar" {
    title = "Unhook the lock bar"
    tool  = tool.lock_bar
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.ToolLeftOn) {
			message := rule.CalledObject(b.Objects[0]) + " " + rule.Is(b.Objects[0]) + " put on here and never taken off."
			if run := cause(b); run != nil {
				message = rule.CalledObject(b.Objects[0]) + " " + rule.Is(b.Objects[0]) + " put on here and is still on at " + rule.Called(run) + "."
			}
			p.Breach(b, message)
		}
	},
}
