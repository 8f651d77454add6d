package units

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TargetOutsideRange compares the two attributes of a limit.
var TargetOutsideRange = &rule.Rule{
	Name:     "units/target-outside-range",
	Severity: diag.Error,
	Finds:    "A limit whose target lies outside its own range.",
	Why:      "A builder who hits the target misses the limit.",
	Remedy:   "Correct the target or the range; the drawing tells which.",
	Bad: `
limit "float" {
  name   = "Axial float of the shaft"
  range  = "0.08..0.14 mm"
  target = "0.18 mm" # want "outside"
  basis  = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

procedure "float" {
  title = "Measure the float"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    accept    = limit.float
    otherwise = "Stop. Ask the workshop."
  }
}
`,
	Good: `
limit "float" {
  name   = "Axial float of the shaft"
  range  = "0.08..0.14 mm"
  target = "0.11 mm"
  basis  = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

procedure "float" {
  title = "Measure the float"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    accept    = limit.float
    otherwise = "Stop. Ask the workshop."
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, n := range p.Having("target") {
			l, ok := n.Limits("range", "")
			q := n.Quantity("target", "")
			if !ok || q == nil || !l.Type().Dim.Fits(q.Dim()) || l.Contain(*q) {
				continue
			}
			p.Report(n.At("target"), "The target "+q.String()+" lies outside the range, "+calc.Style{}.Limits(l.Low, l.High).First+".",
				rule.Related(n.At("range"), "The range stands here."))
		}
	},
}
