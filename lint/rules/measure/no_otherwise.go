package measure

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// NoOtherwise: a reading or an inspection that may refuse the work and does not say what then.
var NoOtherwise = &rule.Rule{
	Name:     "measure/no-otherwise",
	Severity: diag.Doubt,
	Finds:    "A reading or an inspection that may refuse the work and does not say what then.",
	Why:      "The builder stands there with a number outside the limit and an evening gone.",
	Remedy:   "Give otherwise: what to look for, where to go back to, or whom to ask.",
	Bad: `part "housing" {
  name = "Housing"
}

part "shaft" {
  name     = "Shaft"
  in_place = 1
  sits_on  = part.housing
  features = ["journal"]
}

procedure "check" {
  title = "Check the shaft"

  measure "float" { # want "what to do"
    title  = "Measure the float of the shaft"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.02..0.30 mm"
    accept = "0.08..0.14 mm"
  }
}
`,
	Good: `part "housing" {
  name = "Housing"
}

part "shaft" {
  name     = "Shaft"
  in_place = 1
  sits_on  = part.housing
  features = ["journal"]
}

procedure "check" {
  title = "Check the shaft"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Run: runNoOtherwise,
}

func runNoOtherwise(p *rule.Pass) {
	for _, s := range p.Steps() {
		if !s.Kind.Judges || strings.TrimSpace(s.Plain("otherwise")) != "" || len(s.Nested(kind.Otherwise)) > 0 || s.Damaged || tooling.Does(s.Kind, kind.WorksOut) != "" {
			continue
		}
		attr := "accept"
		if tooling.Does(s.Kind, kind.Accepts) != "" {
			attr = "criterion"
		}
		if !s.Has(attr) {
			continue
		}
		p.Report(s.Name, rule.Called(s.Node)+" does not say what to do when it is refused.", rule.Related(s.At(attr), "It is judged by this."))
	}
}
