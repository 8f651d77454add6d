// Package lint runs the rules over a manual and settles what is said: severities
// by the house rules, silences agreed in writing, one order.
//
// It is for the commands and the language server. It refuses to silence what
// keeps a manual from being read.
package lint

import (
	"io/fs"
	"runtime"
	"slices"
	"strings"
	"sync"

	"fettle/bench"
	"fettle/bench/revision"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/rules"
)

// Result is all that there is to say about a manual.
type Result struct {
	Findings diag.List      // sorted
	Silenced diag.List      // agreed in writing; sorted
	Traces   []*bench.Trace // of every choice of options that was tried
}

// Option gives Check more to look at than the manual.
type Option func(*rule.Pass)

// Files gives it the files that the manual was loaded from, so that rules see
// whether a figure is there. Without it they say nothing about that.
func Files(fsys fs.FS) Option { return func(p *rule.Pass) { p.Files = fsys } }

// Since gives it the revision that was issued last, or nil for none. Without it
// rules say nothing about what changed.
func Since(issued *revision.Issued) Option { return func(p *rule.Pass) { p.Issued = issued } }

// Check runs every rule. found is what loading the manual found.
func Check(m *model.Manual, found diag.List, options ...Option) Result {
	r := Result{Traces: traces(m)}
	all := append(diag.List{}, found...)
	all.Add(run(m, found, r.Traces, options)...)
	severities := severity(m, &all)
	for i := range all {
		if rl := rules.Find(all[i].Rule); rl != nil {
			all[i].Severity = rl.Severity
		}
		if s, ok := severities[all[i].Rule]; ok {
			all[i].Severity = s
		}
	}
	all = slices.DeleteFunc(all, func(f diag.Finding) bool { return f.Severity == off })
	all.Sort()
	all = withoutConsequences(m, all)
	r.Findings, r.Silenced = silence(m, all)
	r.Findings.Sort()
	return r
}

// off is the severity of a rule that the house does not want.
const off diag.Severity = 255

func traces(m *model.Manual) []*bench.Trace {
	bound := int(rule.Whole(m, "option_combinations"))
	choices := bench.Choices(m, bound)
	out := make([]*bench.Trace, len(choices))
	b := bench.New(m)
	each(len(choices), func(i int) { out[i] = b.Run(choices[i]) })
	return out
}

func run(m *model.Manual, found diag.List, traces []*bench.Trace, options []Option) diag.List {
	all := rules.All()
	results := make([]diag.List, len(all))
	pass := rule.Pass{Manual: m, Index: rule.NewIndex(m), Traces: traces}
	if !loses(m, found) {
		pass.Gathered = bench.Gather(traces)
	}
	for _, give := range options {
		give(&pass)
	}
	each(len(all), func(i int) {
		rl := all[i]
		if rl.Run == nil || m.Incomplete && !rl.Broken {
			return
		}
		p := pass
		p.Rule, p.Out = rl, &results[i]
		rl.Run(&p)
	})
	var out diag.List
	for _, r := range results {
		out = append(out, r...)
	}
	return out
}

// each calls do for 0 to n-1, a few at a time.
func each(n int, do func(int)) {
	var wg sync.WaitGroup
	next := make(chan int)
	for range min(runtime.GOMAXPROCS(0), n) {
		wg.Go(func() {
			for i := range next {
				do(i)
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	wg.Wait()
}

// severity reads what the house rules say about severities.
func severity(m *model.Manual, out *diag.List) map[string]diag.Severity {
	set := map[string]diag.Severity{}
	for _, h := range m.Of(entry.HouseRules.Name) {
		a := h.Attr("severity")
		if a == nil {
			continue
		}
		t, _ := a.Value.(*model.Table)
		if t == nil {
			continue
		}
		for _, p := range t.Pairs {
			name, word := p.Key.Word, string(p.Value.(model.Exact))
			s, ok := words[word]
			switch {
			case rules.Find(name) == nil:
				out.Add(diag.Finding{Rule: "form/unknown-rule", Severity: diag.Error, Span: p.Key.Span(h),
					Message: "There is no rule `" + name + "`.", Reason: "The severity is set for nothing.",
					Remedy: "fettle explain lists the rules."})
			case !ok:
				out.Add(diag.Finding{Rule: "form/unknown-word", Severity: diag.Error, Span: p.Span,
					Message: "A severity cannot be \"" + word + "\".", Reason: "A severity is one of four words.",
					Remedy: `Use one of: "error", "doubt", "advice", "off".`})
			case strings.HasPrefix(name, "form/"):
				out.Add(diag.Finding{Rule: "form/unknown-rule", Severity: diag.Error, Span: p.Key.Span(h),
					Message: "`" + name + "` cannot be changed.", Reason: "What it finds keeps the manual from being read.",
					Remedy: "Take it out of the house rules."})
			default:
				set[name] = s
			}
		}
	}
	return set
}

var words = map[string]diag.Severity{"error": diag.Error, "doubt": diag.Doubt, "advice": diag.Advice, "off": off}
