package measure

import (
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// WrongInstrument: an instrument that cannot read what the step asks for.
var WrongInstrument = &rule.Rule{
	Name:     "measure/wrong-instrument",
	Severity: diag.Error,
	Finds:    "An instrument that cannot read what the step asks for.",
	Why:      "The builder cannot take the reading, or takes another one for it.",
	Remedy:   "Name an instrument that reads this.",
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
    tools     = [tool.thermometer] # want "cannot read a length"
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
	Run: runWrongInstrument,
}

func runWrongInstrument(p *rule.Pass) {
	readings(p, func(s *model.Step) {
		if t, want := misfit(s); t != nil {
			p.Report(t.At, rule.Called(t.Node)+" cannot read "+want+".",
				rule.Related(s.Name, "The reading is taken here."))
		}
	})
}

// misfit is the first instrument of a step, and what it cannot read, where none
// of its instruments can.
func misfit(s *model.Step) (t *tooling.Tool, want string) {
	var known []tooling.Tool
	for _, t := range tooling.Of(s) {
		if len(t.Reads()) > 0 {
			known = append(known, t)
		} else if instrument(t) {
			return nil, "" // nobody knows what it reads
		}
	}
	dim, ok := dimension(s)
	if len(known) == 0 || !ok || tooling.IsCount(dim) || dim == calc.Plain {
		return nil, ""
	}
	if !slices.ContainsFunc(known, func(t tooling.Tool) bool { return t.Shows(dim) }) {
		return &known[0], dim.String()
	}
	if !calc.Length.Fits(dim) {
		return nil, ""
	}
	for _, need := range needs {
		if !need.asked(s) {
			continue
		}
		for _, t := range known {
			if slices.ContainsFunc(t.Reads(), func(w string) bool { return !slices.Contains(need.not, w) }) {
				return nil, ""
			}
		}
		return &known[0], need.what
	}
	return nil, ""
}

// need is what the words of a step ask of its instrument, and the kinds of
// reading that surely cannot serve. The first that is asked counts. Common
// practice, no source.
type need struct {
	words []string
	what  string
	not   []string
}

var needs = []need{
	{[]string{"float", "end play", "backlash", "run-out", "runout", "rock", "wobble", "travel"}, "a movement", []string{"outside", "inside"}},
	{[]string{"depth", "deep", "recess", "below", "above", "proud", "wall", "thickness", "width", "length", "gap", "clearance"}, "", nil},
	{[]string{"bore", "hole", "inside diameter", "inner diameter"}, "the inside of a bore", []string{"outside", "gap"}},
	{[]string{"journal", "pin", "skirt", "outside diameter", "outer diameter"}, "an outside diameter", []string{"inside", "gap"}},
}

// asked reports words in the title, or in the names of all that is measured.
func (n need) asked(s *model.Step) bool {
	if prose.Has(s.Plain("title"), n.words...) {
		return true
	}
	on := s.AllRefs("on")
	for _, r := range on {
		if !prose.Has(strings.ReplaceAll(r.Name, "_", " "), n.words...) {
			return false
		}
	}
	return len(on) > 0
}
