package fastening

import (
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// AngleWithoutSnugTorque: a fastening that is turned on by an angle with no torque to start the angle from.
var AngleWithoutSnugTorque = &rule.Rule{
	Name:     "fastening/angle-without-snug-torque",
	Severity: diag.Error,
	Finds:    "A fastening that is turned on by an angle with no torque to start the angle from.",
	Why:      "The same angle gives twice the pull when it is counted from a tighter start.",
	Remedy:   "Give torque: the snug torque from which the angle is turned.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  angle        = "90°" # want "no torque to start from"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.degree_wheel, tool.spanner_13]
  }
}
`,
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "20 N·m"
  angle        = "30°"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Run: runAngleWithoutSnugTorque,
}

func runAngleWithoutSnugTorque(p *rule.Pass) {
	snug := map[*model.Node]bool{}
	tightenings(p, func(s *model.Step, f *model.Node) {
		if s.Has("to") {
			snug[f] = true
		}
	})
	for _, f := range p.Having("angle") {
		if f.Def != entry.Fastening || f.Has("torque") || f.Has("stages") || f.Damaged || snug[f] {
			continue
		}
		p.Report(f.At("angle"), rule.Called(f)+" "+is(f)+" turned on by "+calc.Style{}.Quantity(anyOf(f, "angle")).First+" with no torque to start from.")
	}
}

// anyOf is the value of an attribute, or an end of its limits.
func anyOf(n *model.Node, attr string) calc.Quantity {
	if q := n.Quantity(attr, ""); q != nil {
		return *q
	}
	l, _ := n.Limits(attr, "")
	if l.Low != nil {
		return *l.Low
	}
	return *l.High
}
