package values

import (
	"slices"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// UsedBeforeRead follows every value from where it is used to where it is read.
var UsedBeforeRead = &rule.Rule{
	Name:     "values/used-before-read",
	Severity: diag.Error,
	Finds:    "A value that is used before the step that reads or works it out.",
	Why:      "A builder who comes to the step has no number to put in.",
	Remedy:   "Move the reading before its use, or take the reading that is meant.",
	Bad: `
part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Size the shaft"

  calculate "wear" {
    title     = "Work out the wear"
    is        = "20.00 mm" - measure.journal # want "is not known yet"
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Good: `
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
  }

  calculate "wear" {
    title     = "Work out the wear"
    is        = "20.00 mm" - measure.journal
    accept    = "0..0.02 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }

  example "a good shaft" {
    readings = { measure.journal = "19.99 mm" }
    gives    = { calculate.wear = "0.01 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		w := &walk{Pass: p, known: map[read]bool{}, ever: map[read]bool{}, said: map[*model.Step]bool{}}
		values.Work(p.Manual, func(s *model.Step, place string) {
			if gives(s) {
				w.ever[read{s, place}] = true
			}
		})
		values.Work(p.Manual, w.step)
	},
}

// read is a value at a place.
type read struct {
	step  *model.Step
	place string
}

// walk goes through the work and keeps what is known.
type walk struct {
	*rule.Pass
	known map[read]bool
	ever  map[read]bool // known at some time
	said  map[*model.Step]bool
}

func (w *walk) step(s *model.Step, place string) {
	var unread []use
	for i := range s.Attrs {
		a := &s.Attrs[i]
		ownValue := a.Def.Role != schema.Value // a reading is judged, and written down, once it is read
		eachUse(a, place, func(f *model.Formula) {
			unread = w.formula(unread, s, place, f, ownValue)
		})
	}
	if len(unread) > 0 && !w.said[s] {
		w.said[s] = true
		w.report(s, unread)
	}
	w.known[read{s, place}] = true
	for _, b := range s.Blocks {
		for _, inner := range b.Steps {
			w.step(inner, place)
		}
	}
}

// use is a value that a step uses, and where.
type use struct {
	of *model.Step
	at source.Span
}

func (w *walk) report(s *model.Step, unread []use) {
	var names []string
	var later []func(*diag.Finding)
	for _, u := range unread {
		names = append(names, rule.Called(u.of.Node))
		later = append(later, rule.Related(u.of.Name, "It is known only here."))
	}
	verb := " gives, which is"
	if len(names) > 1 {
		verb = " give, which are"
	}
	w.Report(unread[0].at, rule.Called(s.Node)+" uses what "+rule.Join(names, "and")+verb+" not known yet.", later...)
}

// eachUse calls visit for the formulas of an attribute that must be known when
// the step is begun. What is said in passing may be known later.
func eachUse(a *model.Attr, place string, visit func(*model.Formula)) {
	switch a.Def.Role {
	case schema.Reason, schema.Remedy, schema.Renamed:
		return
	}
	formulas(a.Value, place, visit)
}

func formulas(v model.Value, place string, visit func(*model.Formula)) {
	switch v := model.AtPlace(v, place).(type) {
	case *model.Formula:
		if v.Const == nil {
			visit(v)
		}
	case *model.Text:
		for _, f := range v.Values {
			if f != nil && f.Const == nil {
				visit(f)
			}
		}
	case model.List:
		for _, item := range v {
			formulas(item, place, visit)
		}
	}
}

func (w *walk) formula(unread []use, s *model.Step, place string, f *model.Formula, ownValue bool) []use {
	if len(f.Refs) == 0 {
		return unread
	}
	for _, v := range calc.Vars(f.Expr) {
		r, ref := stepOf(f, v)
		if r == nil || r == s && ownValue || slices.ContainsFunc(unread, func(u use) bool { return u.of == r }) {
			continue
		}
		if at := whereRead(r, v, place); w.ever[at] && !w.known[at] {
			unread = append(unread, use{r, ref.Span(s.Node)})
		}
	}
	return unread
}

// whereRead is the value that v stands for where the work stands.
func whereRead(r *model.Step, v *calc.Var, place string) read {
	at := v.Place
	if at == model.Here {
		at = place
	}
	if r.Places == nil {
		at = "" // in brackets stands a spot, if anything
	}
	return read{r, at}
}

// stepOf is the step that gives v, with the reference that names it, or nil.
func stepOf(f *model.Formula, v *calc.Var) (*model.Step, model.Ref) {
	for _, r := range f.Refs {
		if r.To != nil && r.To.Step != nil && gives(r.To.Step) && r.Start <= v.At.Start && v.At.Start < r.End {
			return r.To.Step, r
		}
	}
	return nil, model.Ref{}
}

func gives(s *model.Step) bool {
	switch s.Kind.Yields {
	case kind.Reading, kind.Number, kind.Pack:
		return true
	}
	return false
}
