package measure

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// SettingDisturbed: a setting whose lock is tightened after it was read, and that is not read again.
var SettingDisturbed = &rule.Rule{
	Name:     "measure/setting-disturbed",
	Severity: diag.Error,
	Finds:    "A setting whose lock is tightened after it was read, and that is not read again.",
	Why:      "A lock nut takes the adjuster along as it bites, and the setting is another than the one on record.",
	Remedy:   "Measure it again after the lock is tight.",
	Bad: `part "band" {
  name = "Brake band"
}

fastening "lock_nut" {
  name         = "Lock nut of the band"
  does         = "lock nut"
  thread       = "M10x1.5"
  across_flats = "18 mm"
  torque       = "30 N·m ± 10 %"
  basis        = "Drawing BK-007"
}

procedure "brake" {
  title = "Set the brake"

  loosen "lock_nut" {
    title     = "Slacken the lock nut"
    fastening = fastening.lock_nut
    by        = "1/2 turn"
    tools     = [tool.spanner_18]
  }

  adjust "band" {
    title      = "Set the gap of the band"
    on         = [part.band]
    tools      = [tool.feeler_gauges]
    likely     = "0.20..0.90 mm"
    accept     = "0.40..0.70 mm"
    locks_with = fastening.lock_nut # want "not read again"
    otherwise  = "Turn the adjuster, and try the leaf again."
  }

  torque "lock_nut" {
    title     = "Tighten the lock nut"
    fastening = fastening.lock_nut
    from      = "loosened"
    tools     = [tool.torque_wrench_100, tool.socket_18]
  }
}
`,
	Good: `part "band" {
  name = "Brake band"
}

fastening "lock_nut" {
  name         = "Lock nut of the band"
  does         = "lock nut"
  thread       = "M10x1.5"
  across_flats = "18 mm"
  torque       = "30 N·m ± 10 %"
  basis        = "Drawing BK-007"
}

procedure "brake" {
  title = "Set the brake"

  loosen "lock_nut" {
    title     = "Slacken the lock nut"
    fastening = fastening.lock_nut
    by        = "1/2 turn"
    tools     = [tool.spanner_18]
  }

  adjust "band" {
    title      = "Set the gap of the band"
    on         = [part.band]
    tools      = [tool.feeler_gauges]
    likely     = "0.20..0.90 mm"
    accept     = "0.40..0.70 mm"
    locks_with = fastening.lock_nut
    otherwise  = "Turn the adjuster, and try the leaf again."
  }

  torque "lock_nut" {
    title     = "Tighten the lock nut"
    fastening = fastening.lock_nut
    from      = "loosened"
    tools     = [tool.torque_wrench_100, tool.socket_18]
  }

  measure "band" {
    title     = "Measure the gap of the band again"
    on        = [part.band]
    tools     = [tool.feeler_gauges]
    likely    = "0.20..0.90 mm"
    accept    = "0.40..0.70 mm"
    otherwise = "Slacken the lock nut, and set the gap again."
  }
}
`,
	Run: runSettingDisturbed,
}

func runSettingDisturbed(p *rule.Pass) {
	for _, b := range p.Breaches(bench.SettingDisturbed) {
		p.Breach(b, rule.CalledObject(b.Objects[0])+" is disturbed when "+rule.CalledObject(b.Objects[1])+" is tightened, and is not read again.")
	}
}
