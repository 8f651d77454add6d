package order

import (
	"slices"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// NeverReached looks for steps that no option and no reading leads to.
var NeverReached = &rule.Rule{
	Name:     "order/never-reached",
	Severity: diag.Error,
	Finds:    "A step, a procedure or an `otherwise` block that no option and no likely reading leads to.",
	Why:      "Nobody ever does it, so what it is there for is never done.",
	Remedy:   "Correct its condition, or take it out.",
	Bad: `
option "drive" {
  name    = "Drive"
  choices = ["belt", "chain"]
}

part "frame" {
  name = "Frame"
}

procedure "drive" {
  title = "Look over the drive"

  inspect "belt" {
    title     = "Look at the belt's run"
    on        = [part.frame]
    when      = option.drive == "belt" && option.drive == "chain" # want "“Look at the belt's run” is never done"
    criterion = "Nothing touches the belt."
    otherwise = "Bend the guard away."
  }

  inspect "guard" {
    title     = "Look at the guard"
    on        = [part.frame]
    criterion = "The guard covers both runs."
    otherwise = "Ask the workshop for another guard."
  }
}
`,
	Good: `
option "drive" {
  name    = "Drive"
  choices = ["belt", "chain"]
}

part "frame" {
  name = "Frame"
}

procedure "drive" {
  title = "Look over the drive"

  inspect "belt" {
    title     = "Look at the belt's run"
    on        = [part.frame]
    when      = option.drive == "belt"
    criterion = "Nothing touches the belt."
    otherwise = "Bend the guard away."
  }

  inspect "guard" {
    title     = "Look at the guard"
    on        = [part.frame]
    criterion = "The guard covers both runs."
    otherwise = "Ask the workshop for another guard."
  }
}
`,
	Run: func(p *rule.Pass) {
		idle := neverDone(p)
		if !allTried(p) { // a choice that was not tried may lead there
			clear(idle)
		}
		for _, proc := range p.Procedures[:p.Ordered] {
			if proc.Has("when") && len(proc.Steps) > 0 && !slices.ContainsFunc(proc.Steps, func(s *model.Step) bool { return !idle[s] }) {
				p.Report(proc.At("when"), "The procedure "+rule.Called(proc)+" is never done: no choice of options meets its condition.")
				continue
			}
			for _, s := range proc.Steps {
				if idle[s] {
					p.Report(condition(s), rule.Called(s.Node)+" is never done: no choice of options meets its condition.")
				}
			}
		}
		for _, s := range p.Steps() {
			if len(s.Blocks) > 0 {
				branches(p, s)
			}
		}
		conditions := p.Having("when")
		if len(conditions) == 0 {
			return
		}
		ranges := p.Plan().Ranges()
		for _, n := range conditions {
			if s := n.Step; s != nil && s.Branch == nil && !idle[s] && never(s, ranges) {
				p.Report(s.At("when"), rule.Called(s.Node)+" is never done: no likely reading meets its condition.")
			}
		}
	},
}

// neverDone are the steps in the order of the work that have a condition, or
// stand in a procedure that has one, and are done under no choice of options.
func neverDone(p *rule.Pass) map[*model.Step]bool {
	idle := map[*model.Step]bool{}
	for _, proc := range p.Procedures[:p.Ordered] {
		for _, s := range proc.Steps {
			if proc.Has("when") || s.Has("when") || s.Has("only") {
				idle[s] = true
			}
		}
	}
	for _, t := range p.Traces {
		for i := range t.Acts {
			if len(idle) == 0 {
				return nil
			}
			delete(idle, t.Acts[i].Step)
		}
	}
	return idle
}

// allTried says whether every combination of options was tried.
func allTried(p *rule.Pass) bool {
	all := 1
	for _, pick := range p.Traces[0].Choice {
		all *= len(pick.Option.Names("choices"))
	}
	return len(p.Traces) == all
}

// condition is what keeps a step from being done.
func condition(s *model.Step) source.Span {
	for _, name := range [...]string{"when", "only"} {
		if s.Has(name) {
			return s.At(name)
		}
	}
	return s.Name
}

// never says whether a condition on readings fails for all that are likely, at
// every place.
func never(s *model.Step, ranges *values.Ranges) bool {
	f := s.Formula("when", "")
	if f == nil || f.Expr == nil {
		return false
	}
	places := []string{""}
	if s.Places != nil {
		places = s.Places.Names("names")
	}
	for _, place := range places {
		f := s.Formula("when", place)
		if f == nil || f.Expr == nil || calc.RangeOf(values.Localize(f.Expr, place), ranges).Yes {
			return false
		}
	}
	return true
}

// branches looks at the otherwise blocks of a step: one for a side on which
// there is no limit, or which an earlier one serves already, is never read.
func branches(p *rule.Pass, s *model.Step) {
	served := map[string]*model.Node{}
	for _, b := range s.Blocks {
		if b.Def != kind.Otherwise {
			continue
		}
		side := b.Plain("when")
		earlier := served[""]
		if earlier == nil {
			earlier = served[side]
		}
		l, known := s.Limits("accept", "")
		switch {
		case earlier != nil:
			p.Report(b.At("when"), "This otherwise is never read: an earlier one serves the same readings.",
				rule.Related(earlier.Header, "This one serves them."))
		case known && (side == "below" && l.Low == nil || side == "above" && l.High == nil):
			p.Report(b.At("when"), "This otherwise is never read: nothing lies "+side+" the limits.",
				rule.Related(s.At("accept"), "The limits stand here."))
		default:
			served[side] = b
		}
	}
}
