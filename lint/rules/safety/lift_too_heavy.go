package safety

import (
	"math/big"
	"strconv"

	"fettle/bench"
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// LiftTooHeavy: a lift of more than the people of the step may lift, with all that it carries, or than its hoist bears.
var LiftTooHeavy = &rule.Rule{
	Name:     "safety/lift-too-heavy",
	Severity: diag.Error,
	Finds:    "A lift of more than the people of the step may lift, with all that it carries, or than its hoist bears.",
	Why:      "Backs go at once and stay gone; a hoist that is loaded above its plate drops what it holds.",
	Remedy:   "Raise people, or name a hoist of enough capacity in tools.",
	Source:   "NIOSH load constant of 23 kg for one person, from memory; teams by HSE L23, from memory.",
	Bad: `part "bench" {
  name = "Bench"
}

part "motor" {
  name    = "Motor"
  sits_on = part.bench
  mass    = "31 kg"
}

procedure "set" {
  title = "Set the motor up"

  fit "motor" { # want "weighs 31 kg"
    title = "Lift the motor onto the bench"
    part  = part.motor
    ppe   = [ppe.boots]
  }
}
`,
	Good: `part "bench" {
  name = "Bench"
}

part "motor" {
  name    = "Motor"
  sits_on = part.bench
  mass    = "31 kg"
}

procedure "set" {
  title = "Set the motor up"

  fit "motor" {
    title  = "Lift the motor onto the bench"
    part   = part.motor
    people = 2
    ppe    = [ppe.boots]
  }
}
`,
	Run: runLiftTooHeavy,
}

func runLiftTooHeavy(p *rule.Pass) {
	each := p.Threshold("one_person_lift")
	type fault struct {
		step    *model.Step
		message string
		more    []func(*diag.Finding)
	}
	faults := map[*model.Node]*fault{} // by the heaviest part, which is lifted again and again
	var order []*model.Node
	said := map[*model.Step]bool{}
	for _, t := range p.Traces {
		for i := range t.Lifts {
			l := &t.Lifts[i]
			if l.Act < 0 || l.Act >= len(t.Acts) || !l.Mass.Valid() || said[t.Acts[l.Act].Step] {
				continue
			}
			s := t.Acts[l.Act].Step
			message, more := tooHeavy(l, each)
			if message == "" {
				continue
			}
			said[s] = true
			key := heaviest(l)
			if f := faults[key]; f != nil {
				f.more = append(f.more, rule.Related(s.Name, "Lifted here, too."))
				continue
			}
			faults[key] = &fault{s, message, more}
			order = append(order, key)
		}
	}
	for _, key := range order {
		f := faults[key]
		p.Report(f.step.Name, f.message, f.more...)
	}
}

// heaviest is the part of a lift that weighs most.
func heaviest(l *bench.Lift) *model.Node {
	var heavy *model.Node
	var most *calc.Quantity
	for _, o := range l.Parts {
		if o.Node == nil {
			continue
		}
		if m := o.Node.Quantity("mass", o.Place); m != nil && (most == nil || m.Cmp(*most) > 0) {
			heavy, most = o.Node, m
		}
	}
	return heavy
}

// tooHeavy says what is wrong with a lift, or "". A hoist bears the whole of it.
func tooHeavy(l *bench.Lift, each calc.Quantity) (string, []func(*diag.Finding)) {
	what := "What is lifted here"
	if len(l.Parts) > 0 {
		what = rule.CalledObject(l.Parts[0])
	}
	if len(l.Parts) > 1 {
		what += " with all that it carries"
	}
	mass := l.Mass.Rounded().String()
	var more []func(*diag.Finding)
	for i, o := range l.Parts {
		if o.Node != nil && i < 6 && o.Node.Has("mass") {
			more = append(more, rule.Related(o.Node.At("mass"), "Part of the lift."))
		}
	}
	if len(l.Hoists) > 0 {
		var best *calc.Quantity
		for _, h := range l.Hoists {
			if c := h.Quantity("capacity", ""); c != nil && (best == nil || c.Cmp(*best) > 0) {
				best = c
			}
		}
		if best == nil || l.Mass.Cmp(*best) <= 0 {
			return "", nil
		}
		return what + " weighs " + mass + ", and " + rule.Called(l.Hoists[0]) + " bears " + best.String() + ".", append(more,
			rule.Related(l.Hoists[0].At("capacity"), "The capacity stands here."), rule.Remedy("Name a hoist of enough capacity."))
	}
	people := max(l.People, 1)
	limit := new(big.Rat).Mul(each.Base(), big.NewRat(int64(people), 1))
	if l.Mass.Base().Cmp(limit) <= 0 {
		return "", nil
	}
	who := "one person lifts"
	if people > 1 {
		who = strconv.Itoa(people) + " people lift"
	}
	remedy := "Name a hoist in tools: this is no work for hands."
	for n := people + 1; n <= 4; n++ {
		if l.Mass.Base().Cmp(new(big.Rat).Mul(each.Base(), big.NewRat(int64(n), 1))) <= 0 {
			remedy = "Write people = " + strconv.Itoa(n) + ", or name a hoist in tools. " +
				"A team never shares a load evenly: reckon with two-thirds of the sum for two, and half of it for more."
			break
		}
	}
	most := calc.FromBase(limit, each.Unit, each.Decimals).In(l.Mass.Unit).Rounded().String()
	return what + " weighs " + mass + ", and " + who + " at most " + most + ".", append(more, rule.Remedy(remedy))
}
