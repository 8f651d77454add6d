package measure

import (
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// NoInstrument: a reading that names nothing to take it with.
var NoInstrument = &rule.Rule{
	Name:     "measure/no-instrument",
	Severity: diag.Error,
	Finds:    "A reading that names nothing to take it with.",
	Why:      "The builder guesses, or takes what lies nearest, and writes down a number that proves nothing.",
	Remedy:   "Name the instrument in tools.",
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
    tools     = [tool.soft_mallet] # want "nothing to read"
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
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Run: runNoInstrument,
}

func runNoInstrument(p *rule.Pass) {
	readings(p, func(s *model.Step) {
		dim, known := dimension(s)
		if s.Damaged || known && (tooling.IsCount(dim) || dim == calc.Plain) {
			return
		}
		if slices.ContainsFunc(tooling.Of(s), instrument) || readsItself(s) {
			return
		}
		what := "a value"
		if known {
			what = dim.String()
		}
		p.Report(s.At("tools"), rule.Called(s.Node)+" names nothing to read "+what+" with.")
	})
}

// instrument reports a tool that seems to read something: by what it states, or
// by its name. Of the latter nobody knows more.
func instrument(t tooling.Tool) bool {
	return len(t.Reads()) > 0 || t.Has("range") || t.Has("resolution") || t.Has("accuracy") || named(t.Node)
}

// readsItself reports a step on a part that shows a value: a gauge or a dipstick
// of the machine.
func readsItself(s *model.Step) bool {
	return slices.ContainsFunc(s.AllRefs("on"), func(r model.Ref) bool { return r.To != nil && named(r.To) })
}

// named reports an entry whose name is that of an instrument. Common practice, no source.
func named(n *model.Node) bool {
	name := strings.ToLower(n.Plain("name") + " " + n.Plain("kind"))
	for _, w := range [...]string{"gauge", "gage", "meter", "indicator", "tester", "dipstick", "dial", "scale", "display", "sensor", "light", "level", "ruler", "tape", "protractor", "clock", "sight glass", "template"} {
		if strings.Contains(name, w) {
			return true
		}
	}
	return false
}
