package measure

import (
	"math/big"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// InstrumentNotJudged: an instrument that states neither resolution nor accuracy, on a reading with a tolerance.
var InstrumentNotJudged = &rule.Rule{
	Name:     "measure/instrument-not-judged",
	Severity: diag.Advice,
	Finds:    "An instrument that states neither resolution nor accuracy, on a reading with a tolerance.",
	Why:      "Whether it is fine enough for the tolerance cannot be told.",
	Remedy:   "Give the tool resolution and accuracy.",
	Bad: `tool "dial" { # want "neither resolution nor accuracy"
  name  = "Dial indicator"
  kind  = "dial indicator"
  range = "0..10 mm"
}

part "housing" {
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
    tools     = [tool.dial]
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Good: `tool "dial" {
  name       = "Dial indicator"
  kind       = "dial indicator"
  range      = "0..10 mm"
  resolution = "0.001 mm"
}

part "housing" {
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
    tools     = [tool.dial]
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Run: runInstrumentNotJudged,
}

func runInstrumentNotJudged(p *rule.Pass) {
	said := map[*model.Node]bool{}
	var serves func(*model.Step) (*big.Rat, use)
	readings(p, func(s *model.Step) {
		var bare []tooling.Tool
		for _, t := range tooling.Of(s) {
			if len(t.Reads()) == 0 {
				continue
			}
			if t.Has("resolution") || t.Has("accuracy") || t.Damaged || fixed(t) {
				return
			}
			bare = append(bare, t)
		}
		dim, ok := dimension(s)
		if len(bare) == 0 || !ok {
			return
		}
		if serves == nil {
			serves = served(p)
		}
		if width, _ := serves(s); width == nil {
			return
		}
		for _, t := range bare {
			if !t.Shows(dim) {
				continue
			}
			if !said[t.Node] {
				said[t.Node] = true
				p.Report(t.Name, rule.Called(t.Node)+" states neither resolution nor accuracy.", rule.Related(t.At, "It takes this reading."))
			}
		}
	})
}

// fixed reports a gauge that goes in or does not: it has no scale to be fine or coarse.
func fixed(t tooling.Tool) bool {
	k := t.Plain("kind")
	for _, w := range [...]string{"plug", "strip", "plastic", "wire", "stick", "ring", "jug"} {
		if prose.Has(k, w) {
			return true
		}
	}
	return false
}
