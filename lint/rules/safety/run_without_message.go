package safety

import (
	"slices"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// RunWithoutMessage: a run by anything but hand at which no message is printed.
var RunWithoutMessage = &rule.Rule{
	Name:     "safety/run-without-message",
	Severity: diag.Error,
	Finds:    "A run by anything but hand at which no message is printed.",
	Why:      "It is the first moment at which the machine can hurt somebody by itself.",
	Remedy:   "Give the run a warning: what turns, what is under pressure, what is live, and where to stand.",
	Bad: `part "fan" {
  name = "Fan"
}

procedure "first_run" {
  title = "Run the fan"

  inspect "guard" {
    title     = "Look at the guard of the fan"
    on        = [part.fan]
    criterion = "The guard is on, and every slot is narrower than a finger."
    otherwise = "Put the guard right."
  }

  hold "run" {
    title   = "Stop before the fan runs"
    checks  = [inspect.guard]
    before  = run.fan
    release = "second person"
  }

  run "fan" { # want "no message"
    title     = "Run the fan for a minute"
    on        = [part.fan]
    by        = "electric"
    ppe       = [ppe.goggles]
    criterion = "It runs without a shake."
    otherwise = "Draw the plug, and look for what touches."
  }
}
`,
	Good: `part "fan" {
  name = "Fan"
}

procedure "first_run" {
  title = "Run the fan"

  inspect "guard" {
    title     = "Look at the guard of the fan"
    on        = [part.fan]
    criterion = "The guard is on, and every slot is narrower than a finger."
    otherwise = "Put the guard right."
  }

  hold "run" {
    title   = "Stop before the fan runs"
    checks  = [inspect.guard]
    before  = run.fan
    release = "second person"
  }

  run "fan" {
    title     = "Run the fan for a minute"
    on        = [part.fan]
    by        = "electric"
    ppe       = [ppe.goggles]
    criterion = "It runs without a shake."
    otherwise = "Draw the plug, and look for what touches."

    warning {
      hazard = "The fan starts at once and turns without a sound."
      result = "Crushed fingers."
      avoid  = "Keep both hands away from the guard."
    }
  }
}
`,
	Run: runRunWithoutMessage,
}

// silent reports an entry of whose hazard nothing is told; its own rule says so.
func silent(n *model.Node) bool { return hazard(n) != "" && len(messages(n)) == 0 }

func runRunWithoutMessage(p *rule.Pass) {
	for _, s := range p.Steps() {
		if byHand(s) || s.Damaged || told(s) || slices.ContainsFunc(met(s), silent) {
			continue
		}
		p.Report(s.Name, rule.Called(s.Node)+" runs the machine by "+s.Word("by")+", and no message is printed there.",
			rule.Related(s.At("by"), "What drives it stands here."))
	}
}
