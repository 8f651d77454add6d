package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// RunBeforeLocked reads the runs of a machine that was not locked yet.
var RunBeforeLocked = &rule.Rule{
	Name:     "hold/run-before-locked",
	Severity: diag.Error,
	Finds:    "A machine that is run before a fastening of it is locked.",
	Why:      "It shakes loose in the first minutes, before the lock goes on.",
	Remedy:   "Lock the fastening before the run.",
	Bad: `
part "body" {
  name     = "Pump body"
  material = "cast iron"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

part "screw" {
  name     = "Cover screw, M8"
  quantity = 2
  sits_on  = part.cover
}

part "wire" {
  name    = "Locking wire"
  sits_on = part.screw
}

fastening "screws" {
  name            = "Cover screws"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.cover, part.body]
  fasteners       = [part.screw]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "16 mm"
  across_flats    = "13 mm"
  torque          = "25 N·m ± 10 %"
  locked_by       = part.wire
  basis           = "About 74 % of proof at K 0.20"
}

procedure "prove" {
  title = "Prove the pump"

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  fit "screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.screws
  }

  torque "screws" {
    title     = "Tighten the cover screws"
    fastening = fastening.screws
    tools     = [tool.torque_wrench_100, tool.socket_13]
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

  run "pressure" { # want "“Cover screws” are not locked yet"
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

  lock "screws" {
    title     = "Wire the cover screws together"
    fastening = fastening.screws
    tools     = [tool.pliers]
  }
}
`,
	Good: `
part "body" {
  name     = "Pump body"
  material = "cast iron"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

part "screw" {
  name     = "Cover screw, M8"
  quantity = 2
  sits_on  = part.cover
}

part "wire" {
  name    = "Locking wire"
  sits_on = part.screw
}

fastening "screws" {
  name            = "Cover screws"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.cover, part.body]
  fasteners       = [part.screw]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "16 mm"
  across_flats    = "13 mm"
  torque          = "25 N·m ± 10 %"
  locked_by       = part.wire
  basis           = "About 74 % of proof at K 0.20"
}

procedure "prove" {
  title = "Prove the pump"

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  fit "screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.screws
  }

  torque "screws" {
    title     = "Tighten the cover screws"
    fastening = fastening.screws
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }

  lock "screws" {
    title     = "Wire the cover screws together"
    fastening = fastening.screws
    tools     = [tool.pliers]
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
		for _, b := range p.Breaches(bench.RunUnlocked) {
			p.Breach(b, "The machine is run here, and "+rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" not locked yet.")
		}
	},
}
