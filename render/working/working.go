// Package working prints how the values of a build are worked out: the formula,
// the numbers put in, the result and what it means.
//
// It is for the calc command. It prints every value of the manual in the order
// of the work; what rests on a reading that was not given stays blank.
package working

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Value is one value of one step at one place.
type Value struct {
	Step    string      `json:"step"`             // printed number
	Address string      `json:"address"`          // "thrust_end.choose.pack"
	Title   string      `json:"title"`            //
	Known   bool        `json:"known"`            // false while a reading is missing
	Formula string      `json:"formula"`          // "" for a reading
	Worked  string      `json:"worked,omitempty"` // the formula with numbers, "" while nothing is known
	Shown   string      `json:"shown,omitempty"`  // in both systems of units
	Exact   *calc.Coded `json:"exact,omitempty"`  // of a number, its decimals and UCUM code
	Pack    string      `json:"pack,omitempty"`   // of a choice
	Leaves  string      `json:"result,omitempty"` // of a choice: what is left or made
	Verdict string      `json:"verdict,omitempty"`
	Limits  string      `json:"limits,omitempty"`
	Problem string      `json:"problem,omitempty"`
	Remedy  string      `json:"remedy,omitempty"`
}

// Values lists them in the order of the work, steps that the options leave out
// left out.
func Values(m *model.Manual, e *values.Env) []Value {
	style := calc.Style{First: m.System(), Gallon: m.Word("gallon")}
	var all []Value
	values.Work(m, func(s *model.Step, place string) {
		if s.Kind.Yields == kind.Nothing || s.Kind.Yields == kind.Mark {
			return
		}
		if done, known := e.Done(s, place); known && !done {
			return
		}
		keys := []string{place}
		if place == "" {
			keys = values.Keys(s)
		}
		for _, key := range keys {
			all = append(all, value(e, style, s, key))
		}
	})
	return all
}

func value(e *values.Env, style calc.Style, s *model.Step, place string) Value {
	v := Value{Step: s.Number, Address: values.Key(s, place), Title: s.Title()}
	if place != "" {
		v.Title += ", " + place
	}
	env := e.At(place)
	if f := s.Formula("is", place); f != nil {
		x := values.Localize(f.Expr, place)
		v.Formula, v.Worked = calc.Formula(x), calc.FormulaWith(x, env)
	}
	if q, ok := e.Of(s, place).(calc.Quantity); ok {
		c := q.Coded()
		v.Known, v.Exact, v.Shown = true, &c, style.Quantity(q).String()
	}
	if s.Kind.Yields == kind.Pack {
		choice(&v, e, style, s, place)
	}
	verdict, limits := e.Judge(s, place)
	switch verdict {
	case values.Accepted:
		v.Verdict = "accepted"
	case values.Refused:
		v.Verdict = "refused"
	}
	if limits.Low != nil || limits.High != nil {
		v.Limits = style.Limits(limits.Low, limits.High).String()
	}
	if p := e.Problem(s, place); p != nil {
		v.Problem, v.Remedy = strings.TrimSpace(p.Message+" "+p.Reason), p.Remedy
	} else if verdict == values.Refused {
		v.Problem = "Outside its limits."
		v.Remedy = s.Plain("otherwise")
	}
	return v
}

func choice(v *Value, e *values.Env, style calc.Style, s *model.Step, place string) {
	from, sign := s.Formula("gap", place), " − "
	if from == nil {
		from, sign = s.Formula("base", place), " + "
	}
	if from != nil {
		v.Formula = calc.Formula(values.Localize(from.Expr, place)) + sign + "pack"
	}
	p := e.Pack(s, place)
	if p == nil {
		return
	}
	v.Known = true
	v.Pack = p.String()
	v.Shown = style.Quantity(p.Total).String()
	v.Leaves = style.Quantity(p.Result).String()
	c := p.Total.Coded()
	v.Exact = &c
	if from != nil {
		if x, problem := calc.Eval(from.Expr, e.At(place)); problem == nil {
			if q, ok := x.(calc.Quantity); ok {
				v.Worked = q.String() + sign + p.Total.String() + " = " + p.Result.String()
			}
		}
	}
}

// Text prints the values for people.
func Text(w io.Writer, all []Value) error {
	var b strings.Builder
	for _, v := range all {
		fmt.Fprintf(&b, "%s  %s\n      %s\n", v.Step, v.Title, v.Address)
		line := func(label, text string) {
			if text != "" {
				fmt.Fprintf(&b, "      %-8s %s\n", label, text)
			}
		}
		line("formula", v.Formula)
		if v.Worked != v.Formula {
			line("worked", v.Worked)
		}
		switch {
		case v.Pack != "":
			line("pack", v.Pack+", together "+v.Shown)
			line("gives", v.Leaves)
		case v.Known:
			line("value", v.Shown)
		case v.Problem == "":
			line("value", "____  not known yet")
		}
		line("limits", v.Limits)
		line("verdict", v.Verdict)
		line("stop", v.Problem)
		line("", v.Remedy)
		b.WriteString("\n")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// JSON prints the values for programs.
func JSON(w io.Writer, all []Value) error {
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	return enc.Encode(struct {
		Values []Value `json:"values"`
	}{all})
}
