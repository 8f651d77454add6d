package values

import (
	"fmt"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// ExampleFails works every example through.
var ExampleFails = &rule.Rule{
	Name:     "values/example-fails",
	Severity: diag.Error,
	Finds:    "A worked example that does not come out as it says.",
	Why:      "Either the example is wrong or the formula is; a builder who checks one against the other trusts neither.",
	Remedy:   "Work it through by hand and correct the one that is wrong.",
	Bad: `
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
    gives    = { calculate.wear = "0.10 mm" } # want "0.01 mm, and the example says 0.10 mm"
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
		for _, e := range p.Examples {
			workThrough(p, e)
		}
	},
}

func workThrough(p *rule.Pass, e *model.Node) {
	build := values.Given{Options: map[string]string{}, Readings: map[string][]calc.Quantity{}}
	for _, pair := range pairs(e, "options") {
		if word, ok := pair.Value.(model.Exact); ok && pair.Key.To != nil {
			build.Options[pair.Key.To.ID] = string(word)
		}
	}
	for _, pair := range pairs(e, "readings") {
		if f, ok := pair.Value.(*model.Formula); ok && pair.Key.To != nil && pair.Key.To.Step != nil {
			if q := f.Quantity(); q != nil {
				key := values.Key(pair.Key.To.Step, pair.Key.Place)
				build.Readings[key] = []calc.Quantity{*q}
			}
		}
	}
	env := p.Plan().With(build)
	// One wrong number makes all that rests on it wrong: the rest stands beside the first.
	first := true
	var message string
	var at source.Span
	var about []func(*diag.Finding)
	for _, pair := range pairs(e, "gives") {
		if pair.Key.To == nil || pair.Key.To.Step == nil || cannotChoose(p, pair.Key.To.Step) {
			continue
		}
		wrong, reason := holds(env, pair)
		switch {
		case wrong == "":
		case first:
			first = false
			message, at = wrong, pair.Span
			about = append(about, rule.Related(pair.Key.To.Step.Name, "It is worked out here."))
			if reason != "" {
				about = append(about, rule.Reason(reason))
			}
		default:
			about = append(about, rule.Related(pair.Span, wrong))
		}
	}
	if !first {
		p.Report(at, message, about...)
	}
}

// holds says what is wrong with one line of `gives`, "" for nothing.
func holds(env *values.Env, pair model.Pair) (wrong, reason string) {
	s, place := pair.Key.To.Step, pair.Key.Place
	got := given(env, pair.Key)
	if got == nil {
		why := missing(env, s, place)
		if problem := env.Problem(s, place); problem != nil {
			why, reason = problem.Message, problem.Reason
		}
		return name(pair.Key) + " cannot be worked out from these readings: " + why, reason
	}
	if says, differs := compare(got, pair.Value); differs {
		return name(pair.Key) + " comes to " + say(got) + ", and the example says " + says + ".", ""
	}
	return "", ""
}

func pairs(e *model.Node, attr string) []model.Pair {
	if t, ok := e.Get(attr, "").(*model.Table); ok {
		return t.Pairs
	}
	return nil
}

// given is the value that a key of `gives` stands for, or nil.
func given(env *values.Env, key model.Ref) calc.Value {
	name := key.To.Step.Key()
	if key.Name != "" {
		name += "." + key.Name
	}
	return env.Value(&calc.Var{Name: name, Place: key.Place})
}

// compare holds a value against what the example says, at the decimals written.
func compare(got calc.Value, want model.Value) (says string, differs bool) {
	switch want := want.(type) {
	case model.Exact:
		return string(want), say(got) != string(want)
	case *model.Formula:
		q, ok := got.(calc.Quantity)
		w := want.Quantity()
		if !ok || w == nil || !w.Dim().Fits(q.Dim()) {
			return "something else", true
		}
		at := calc.NewQuantity(q.In(w.Unit).Num(), w.Unit, w.Decimals).Rounded()
		return w.String(), at.Cmp(*w) != 0
	}
	return "", false
}

func say(v calc.Value) string {
	switch v := v.(type) {
	case calc.Quantity:
		return v.String()
	case calc.Word:
		return string(v)
	}
	return fmt.Sprint(v)
}

// name is the key as the author wrote it.
func name(key model.Ref) string {
	s := key.To.Step
	n := s.Kind.Block.Name + "." + s.ID
	if key.Place != "" {
		n += `["` + key.Place + `"]`
	}
	if key.Name != "" {
		n += "." + key.Name
	}
	return "`" + n + "`"
}

// missing names the readings that the example leaves out.
func missing(env *values.Env, s *model.Step, place string) string {
	if done, known := env.Done(s, place); known && !done {
		return "the step is not done under these options."
	}
	f := s.Formula("is", place)
	for _, attr := range [...]string{"gap", "base"} {
		if s.Kind.Yields == kind.Pack && f == nil {
			f = s.Formula(attr, place)
		}
	}
	if f != nil {
		for _, v := range calc.Vars(values.Localize(f.Expr, place)) {
			if env.Value(v) == nil {
				return "nothing is given for `" + v.Key() + "`."
			}
		}
	}
	return "something that it rests on is not given."
}
