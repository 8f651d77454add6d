package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RunUnheld reads the first runs that no hold let go on.
var RunUnheld = &rule.Rule{
	Name:     "hold/run-unheld",
	Severity: diag.Error,
	Finds:    "The first run of its kind without a hold that stands before it.",
	Why:      "Pressure, current or fuel meets a machine that only its builder has looked at.",
	Remedy:   "Put a hold before it, with before = the run and checks = what must have been accepted.",
	Bad: `
part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "prove" {
  title = "Prove the pump"

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  inspect "seat" {
    title     = "Feel round the joint of the cover"
    on        = [part.cover]
    criterion = "The cover sits flat all round."
    otherwise = "Take the cover off, and look for a chip under it."
  }

  run "pressure" { # want "No hold stands before the first run under pressure"
    title     = "Pump the body up to 2 bar"
    on        = [part.body]
    by        = "pressure"
    tools     = [tool.test_pump, tool.pressure_gauge]
    ppe       = [ppe.goggles]
    criterion = "The gauge stands still for 10 min."
    otherwise = "Let the pressure off, and look for the leak."

    warning {
      hazard = "A cover can fly off under pressure."
      result = "Broken bones or an eye lost."
      avoid  = "Stand to the side of the cover."
    }
  }
}
`,
	Good: `
part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "prove" {
  title = "Prove the pump"

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  inspect "seat" {
    title     = "Feel round the joint of the cover"
    on        = [part.cover]
    criterion = "The cover sits flat all round."
    otherwise = "Take the cover off, and look for a chip under it."
  }

  hold "pressure" {
    title   = "Stop before the pump is put under pressure"
    checks  = [inspect.seat]
    before  = run.pressure
    release = "second person"
  }

  run "pressure" {
    title     = "Pump the body up to 2 bar"
    on        = [part.body]
    by        = "pressure"
    tools     = [tool.test_pump, tool.pressure_gauge]
    ppe       = [ppe.goggles]
    criterion = "The gauge stands still for 10 min."
    otherwise = "Let the pressure off, and look for the leak."

    warning {
      hazard = "A cover can fly off under pressure."
      result = "Broken bones or an eye lost."
      avoid  = "Stand to the side of the cover."
    }
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.RunUnheld) {
			p.Breach(b, "No hold stands before the first run "+drive(b.Step.Word("by"))+".", disturbed(b))
		}
	},
}

// drive says in words what drives a run.
func drive(by string) string {
	switch by {
	case "fluid":
		return "with a fluid"
	case "electric":
		return "under current"
	}
	return "under " + by
}
