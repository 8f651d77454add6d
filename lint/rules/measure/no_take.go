package measure

import (
	"strconv"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NoTake: several readings that do not say which of them counts.
var NoTake = &rule.Rule{
	Name:     "measure/no-take",
	Severity: diag.Error,
	Finds:    "Several readings that do not say which of them counts.",
	Why:      "One builder writes down the mean, the next the best, and both are right.",
	Remedy:   "Give take: \"mean\", \"largest\", \"smallest\", or \"each\".",
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

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    repeat    = 3 # want "counts"
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
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
    title        = "Measure the float of the shaft"
    on           = [part.shaft]
    tools        = [tool.dial_indicator]
    repeat       = 3
    agree_within = "0.01 mm"
    take         = "mean"
    likely       = "0.02..0.30 mm"
    accept       = "0.08..0.14 mm"
    otherwise    = "Send the shaft back."
  }
}
`,
	Run: runNoTake,
}

func runNoTake(p *rule.Pass) {
	readings(p, func(s *model.Step) {
		if s.Has("take") || s.Damaged {
			return
		}
		for _, attr := range [...]string{"repeat", "spots"} {
			if n := times(s, attr); n > 1 {
				p.Report(s.At(attr), rule.Called(s.Node)+" takes "+strconv.Itoa(n)+" readings and does not say which counts.")
				return
			}
		}
	})
}

// times is how many readings repeat or spots ask for.
func times(s *model.Step, attr string) int {
	names := s.Names(attr)
	if attr == "repeat" || len(names) == 0 {
		return s.Whole(attr, "", 1)
	}
	if n, err := strconv.Atoi(names[0]); err == nil && len(names) == 1 {
		return n
	}
	return len(names)
}
