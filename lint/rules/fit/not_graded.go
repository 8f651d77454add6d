package fit

import (
	"errors"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// NotGraded looks for choices that cannot be put to the solver.
var NotGraded = &rule.Rule{
	Name:     "fit/not-graded",
	Severity: diag.Error,
	Finds:    "A choice that cannot be worked out: its part has no sizes, or gap and limits are not both stated.",
	Why:      "Nothing can be picked, so the builder gets no pack.",
	Remedy:   "Give the part its sizes, and the choice either `gap` with `leaves` or `base` with `makes`.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
}

procedure "shim" {
  title = "Shim the shaft"

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.40 mm"
  }

  choose "pack" {
    title  = "Choose the shim"
    from   = part.shim # want "has no sizes"
    gap    = measure.float
    leaves = "0.04..0.14 mm"
  }

  fit "pack" {
    title = "Slide the shim on: ${choose.pack}"
    part  = choose.pack
  }
}
`,
	Good: `
part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
  size "0.10 mm" { in_kit = 1 }
  size "0.20 mm" { in_kit = 1 }
}

procedure "shim" {
  title = "Shim the shaft"

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.34 mm"
  }

  choose "pack" {
    title  = "Choose the shim"
    from   = part.shim
    gap    = measure.float
    leaves = "0.04..0.14 mm"
  }

  fit "pack" {
    title = "Slide the shim on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float = "0.21 mm" }
    gives    = { choose.pack.result = "0.11 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		said := map[*model.Step]bool{}
		eachChoice(p, func(s *model.Step, place string) {
			if said[s] {
				return
			}
			said[s] = true
			if both := bothForms(s); both != "" {
				p.Report(s.At(both), "This choice states `"+both+"` of the other form as well: a pack fills a gap, or it builds up on a base.")
				return
			}
			_, err := p.Plan().Selection(s, place)
			switch {
			case errors.Is(err, values.ErrNotGraded):
				p.Report(s.At("from"), rule.Called(s.Ref("from"))+" has no sizes to choose from.", rule.Related(s.Ref("from").Name, "The part stands here."))
			case errors.Is(err, values.ErrNoReading):
				p.Report(s.Name, "This choice says nothing of what is measured: neither `gap` nor `base`.")
			case errors.Is(err, values.ErrNoLimits):
				p.Report(s.Name, "This choice says nothing of what may be left or made: neither `leaves` nor `makes`.")
			case errors.Is(err, values.ErrSizes):
				p.Report(s.At("from"), "A size of "+rule.Called(s.Ref("from"))+" is no value of the sort that the limits are.", rule.Related(s.Ref("from").Name, "The sizes stand here."))
			}
		})
	},
}

// bothForms is an attribute that belongs to the other form, or "".
func bothForms(s *model.Step) string {
	if !s.Has("gap") && !s.Has("leaves") {
		return ""
	}
	for _, name := range []string{"base", "makes"} {
		if s.Has(name) {
			return name
		}
	}
	return ""
}
