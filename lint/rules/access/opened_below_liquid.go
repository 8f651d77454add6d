package access

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// OpenedBelowLiquid reads what came off while liquid stood behind it.
var OpenedBelowLiquid = &rule.Rule{
	Name:     "access/opened-below-liquid",
	Severity: diag.Error,
	Finds:    "A plug, pipe or cover that is opened while liquid stands behind it.",
	Why:      "The liquid runs out over the bench and the builder; hot or burning, it hurts.",
	Remedy:   "Drain the liquid first, or fill it in later.",
	Bad: `
part "case" {
  name  = "Gear case"
  ports = ["filler", "side"]
}

part "side_plug" {
  name     = "Side plug"
  in_place = 1
  sits_on  = part.case
  covers   = [part.case.port.side]
}

procedure "oil" {
  title = "Fill the gear case"

  fill "oil" {
    title    = "Pour the oil in"
    on       = [part.case]
    through  = part.case.port.filler
    supplies = [supply.engine_oil]
    tools    = [tool.funnel]
    amount   = "2 L"
  }

  remove "plug" {
    title = "Pull the side plug out"
    part  = part.side_plug # want "with liquid still in “Gear case”"
  }

  fit "plug" {
    title = "Push the side plug in"
    part  = part.side_plug
  }
}
`,
	Good: `
part "case" {
  name  = "Gear case"
  ports = ["filler", "side"]
}

part "side_plug" {
  name     = "Side plug"
  in_place = 1
  sits_on  = part.case
  covers   = [part.case.port.side]
}

procedure "oil" {
  title = "Fill the gear case"

  remove "plug" {
    title = "Pull the side plug out"
    part  = part.side_plug
  }

  fit "plug" {
    title = "Push the side plug in"
    part  = part.side_plug
  }

  fill "oil" {
    title    = "Pour the oil in"
    on       = [part.case]
    through  = part.case.port.filler
    supplies = [supply.engine_oil]
    tools    = [tool.funnel]
    amount   = "2 L"
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.OpenedWet) {
			p.Breach(b, rule.CalledObject(b.Objects[0])+" "+rule.Is(b.Objects[0])+" opened here with liquid still in "+rule.CalledObject(b.Objects[1])+".",
				wayOut(b, "Drain what %s put in first, or fill it in later."))
		}
	},
}
