package values

import (
	"sort"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// ReadSometimes tries the options under which a value is read and used.
var ReadSometimes = &rule.Rule{
	Name:     "values/read-sometimes",
	Severity: diag.Error,
	Finds:    "A value that is read only under an option, at some places or in an `otherwise`, and used without it.",
	Why:      "A builder who never took the reading cannot go on when it is needed.",
	Remedy:   "Take the reading under every option, or use it only where it is taken.",
	Bad: `
option "bush" {
  name    = "Bush"
  choices = ["bronze", "none"]
}

part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
    when      = option.bush == "bronze"
  }

  calculate "wear" {
    title     = "Work out the wear"
    is        = "20.00 mm" - measure.journal # want "bush is none"
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Good: `
option "bush" {
  name    = "Bush"
  choices = ["bronze", "none"]
}

part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
    when      = option.bush == "bronze"
  }

  calculate "wear" {
    title     = "Work out the wear"
    is        = "20.00 mm" - measure.journal
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
    when      = option.bush == "bronze"
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		c := &sometimes{p, map[[2]*model.Step]bool{}}
		for _, s := range p.Steps() {
			for i := range s.Attrs {
				for _, place := range values.Places(s) {
					eachUse(&s.Attrs[i], place, func(f *model.Formula) { c.formula(s, place, f) })
					if _, by := s.Attrs[i].Value.(model.ByPlace); !by {
						break
					}
				}
			}
		}
	},
}

type sometimes struct {
	*rule.Pass
	said map[[2]*model.Step]bool // of a user and a value, each once
}

func (c *sometimes) formula(s *model.Step, place string, f *model.Formula) {
	if len(f.Refs) == 0 {
		return
	}
	for _, ref := range f.Refs {
		if ref.To == nil || ref.To.Step == nil || !gives(ref.To.Step) || ref.To.Step == s {
			continue
		}
		r := ref.To.Step
		if c.said[[2]*model.Step{s, r}] {
			continue
		}
		if r.Branch != nil && s.Branch != r.Branch {
			c.said[[2]*model.Step{s, r}] = true
			c.Report(ref.Span(s.Node), rule.Called(r.Node)+" is done only when "+rule.Called(r.Branch.Parent)+" is outside, and its value is used here in any case.",
				rule.Related(r.Name, "It is read here."))
			continue
		}
		if at, missing := c.placeWithout(s, r, ref); missing {
			c.said[[2]*model.Step{s, r}] = true
			c.Report(ref.Span(s.Node), rule.Called(r.Node)+" is not done at "+at+", and its value is used there.",
				rule.Related(r.At("only"), "It is done at some places only."))
			continue
		}
		conditions := append(whens(s), whens(r)...)
		if len(whens(r)) == 0 || c.sameWords(s, r) {
			continue
		}
		if words, found := c.without(s, r, place, f, conditions); found {
			c.said[[2]*model.Step{s, r}] = true
			c.Report(ref.Span(s.Node), "When "+words+", "+rule.Called(r.Node)+" is not done, and its value is used here.",
				rule.Related(whenSpan(r), "It is done under this condition only."))
		}
	}
}

// placeWithout is a place at which s is done and r is not.
func (c *sometimes) placeWithout(s, r *model.Step, ref model.Ref) (string, bool) {
	if r.Places == nil || !r.Has("only") {
		return "", false
	}
	done := map[string]bool{}
	for _, place := range values.Places(r) {
		done[place] = true
	}
	needed := values.Places(s)
	switch {
	case ref.Place != "":
		needed = []string{ref.Place}
	case s.Places != r.Places:
		needed = r.Places.Names("names")
	}
	for _, place := range needed {
		if place != "" && !done[place] {
			return place, true
		}
	}
	return "", false
}

// whens are the conditions under which a step is done: its own, its procedure's,
// and those of the step whose branch it stands in.
func whens(s *model.Step) []*model.Formula {
	var all []*model.Formula
	for _, n := range []*model.Node{s.Procedure, s.Node} {
		if f := n.Formula("when", ""); f != nil {
			all = append(all, f)
		}
	}
	if s.Branch != nil && s.Branch.Parent != nil {
		if f := s.Branch.Parent.Formula("when", ""); f != nil {
			all = append(all, f)
		}
	}
	return all
}

func whenSpan(s *model.Step) (at source.Span) {
	if s.Has("when") {
		return s.At("when")
	}
	return s.Procedure.At("when")
}

// sameWords reports that every condition of r is, word by word, one of s.
func (c *sometimes) sameWords(s, r *model.Step) bool {
	mine := map[string]bool{}
	for _, f := range whens(s) {
		mine[calc.Formula(f.Expr)] = true
	}
	for _, f := range whens(r) {
		if !mine[calc.Formula(f.Expr)] {
			return false
		}
	}
	return true
}

// without looks for options under which s is done and reaches the value of r,
// and r is not done; words says which.
func (c *sometimes) without(s, r *model.Step, place string, f *model.Formula, conditions []*model.Formula) (words string, found bool) {
	var options []*model.Node
	onReading := false
	for _, w := range append(conditions, f) {
		for _, ref := range w.Refs {
			switch {
			case ref.To == nil:
			case ref.To.Def.Name == "option":
				options = appendNew(options, ref.To)
			case ref.To.Step != nil && w != f:
				onReading = true
			}
		}
	}
	try := map[string]string{}
	var next func(i int) bool
	next = func(i int) bool {
		if i < len(options) {
			for _, choice := range options[i].Names("choices") {
				try[options[i].ID] = choice
				if next(i + 1) {
					return true
				}
			}
			return false
		}
		env := c.Plan().With(values.Given{Options: try})
		done, sure := env.Done(s, place)
		if sure && !done || !reaches(f.Expr, env.At(place), r) {
			return false
		}
		read, known := env.Done(r, place)
		if !known {
			words = "another reading leads past it"
			return true
		}
		if read || !sure && !onReading {
			return false
		}
		words = said(options, try, whens(r))
		return true
	}
	const most = 6 // options in one formula; nobody writes more
	if len(options) > most {
		return "", false
	}
	return words, next(0)
}

// said names the options that r looks at.
func said(options []*model.Node, try map[string]string, of []*model.Formula) string {
	matters := map[*model.Node]bool{}
	for _, f := range of {
		for _, ref := range f.Refs {
			matters[ref.To] = true
		}
	}
	var words []string
	for _, o := range options {
		if matters[o] {
			words = append(words, strings.ReplaceAll(o.ID, "_", " ")+" is "+try[o.ID])
		}
	}
	sort.Strings(words)
	return rule.Join(words, "and")
}

func appendNew(list []*model.Node, n *model.Node) []*model.Node {
	for _, old := range list {
		if old == n {
			return list
		}
	}
	return append(list, n)
}

// reaches reports whether e needs the value of r under the options of env: a
// branch that these do not take needs nothing.
func reaches(e calc.Expr, env calc.Env, r *model.Step) bool {
	found := false
	calc.Walk(e, func(e calc.Expr) bool {
		switch e := e.(type) {
		case *calc.Cond:
			v, p := calc.Eval(e.If, env)
			t, ok := v.(calc.Truth)
			if p != nil || !ok {
				return true
			}
			branch := e.Else
			if t {
				branch = e.Then
			}
			found = found || reaches(branch, env, r)
			return false
		case *calc.Var:
			if e.Name == r.Key() || r.Kind.Yields == kind.Pack && strings.HasPrefix(e.Name, r.Key()+".") {
				found = true
			}
		}
		return true
	})
	return found
}
