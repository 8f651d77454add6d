// Package rule says what a rule is and what it sees.
//
// It is for packages below lint/rules, one file a rule. A rule is a pure
// function from a manual and what the bench made of it to findings; it reads
// no files, keeps no state and never asks which kind of step it has.
package rule

import (
	"io/fs"

	"fettle/bench"
	"fettle/bench/revision"
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/source"
)

// Rule is one rule as data: explain, the handbook, the test and the run all
// come from here.
type Rule struct {
	Name     string        // group/what-is-wrong
	Severity diag.Severity // unless the house rules say otherwise
	Finds    string        // what it finds, in one sentence
	Why      string        // what comes of it on the bench
	Remedy   string        // the way out
	Source   string        // the standard or handbook it rests on; "" for none
	Bad      string        // a fragment with `# want "part of the message"` beside each line it must find
	Good     string        // a fragment that no rule has anything to say about

	// Broken rules run on a manual that could not be read whole, too.
	Broken bool
	// Run reports findings. It is nil for what is found while the manual is read.
	Run func(*Pass)
}

// Pass is one run of one rule over one manual.
type Pass struct {
	*model.Manual
	*Index
	Rule     *Rule
	Traces   []*bench.Trace   // one for each choice of options tried; never empty
	Gathered []bench.Breach   // of all traces, each once
	Files    fs.FS            // what the manual was loaded from; nil where nobody has said
	Issued   *revision.Issued // what was issued last; nil where nothing was, or nobody has said
	Out      *diag.List
}

// Report adds a finding at a place.
func (p *Pass) Report(at source.Span, message string, more ...func(*diag.Finding)) {
	f := diag.Finding{Rule: p.Rule.Name, Severity: p.Rule.Severity, Span: at, Message: message,
		Reason: p.Rule.Why, Remedy: p.Rule.Remedy}
	for _, add := range more {
		add(&f)
	}
	p.Out.Add(f)
}

// Reason says why in the terms of this case, instead of the rule's.
func Reason(s string) func(*diag.Finding) { return func(f *diag.Finding) { f.Reason = s } }

// Remedy says what to do in the terms of this case, instead of the rule's.
func Remedy(s string) func(*diag.Finding) { return func(f *diag.Finding) { f.Remedy = s } }

// Related names another place that takes part.
func Related(at source.Span, message string) func(*diag.Finding) {
	return func(f *diag.Finding) {
		if !at.IsZero() {
			f.Related = append(f.Related, diag.Related{Span: at, Message: message})
		}
	}
}

// Fix offers edits; sure ones are applied by check --fix.
func Fix(title string, sure bool, edits ...diag.Edit) func(*diag.Finding) {
	return func(f *diag.Finding) { f.Fixes = append(f.Fixes, diag.Fix{Title: title, Sure: sure, Edits: edits}) }
}

// Threshold is a number that the house rules set, or its default.
func (p *Pass) Threshold(name string) calc.Quantity {
	l := p.Band(name)
	return *l.Target
}

// Band is a band that the house rules set, or its default.
func (p *Pass) Band(name string) calc.Limits { return Band(p.Manual, name) }

// Band is a threshold as the house rules of m set it, or its default. Of a
// single value all ends and the target are that value.
func Band(m *model.Manual, name string) calc.Limits {
	t, ok := entry.ThresholdNamed(name)
	if !ok {
		panic("internal error: no threshold " + name)
	}
	for _, h := range m.Of(entry.HouseRules.Name) {
		if l, ok := h.Limits(name, ""); ok {
			return l
		}
	}
	lit, problems := calc.ParseLiteral(t.Default, calc.Context{Want: t.Dim, HasWant: true, AllowPercent: true, AllowPlain: true})
	if len(problems) > 0 {
		panic("internal error: threshold " + name + ": " + problems[0].Message)
	}
	if lit.IsLimits() {
		return lit.Limits()
	}
	return calc.Limits{Low: lit.Nominal, High: lit.Nominal, Target: lit.Nominal}
}

// Whole is a threshold that is a plain number, as a float for comparing counts.
func Whole(m *model.Manual, name string) float64 {
	f, _ := Band(m, name).Target.Num().Float64()
	return f
}
