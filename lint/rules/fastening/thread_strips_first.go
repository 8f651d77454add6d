package fastening

import (
	"math/big"
	"strings"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// ThreadStripsFirst: a thread that strips before the bolt breaks, or a nut that is weaker than its bolt.
var ThreadStripsFirst = &rule.Rule{
	Name:     "fastening/thread-strips-first",
	Severity: diag.Doubt,
	Finds:    "A thread that strips before the bolt breaks, or a nut that is weaker than its bolt.",
	Why:      "A stripped thread gives no warning: the wrench never clicks, and the casting is scrap where a bolt would have been cheap.",
	Remedy:   "Engage more thread, cut it in something stronger, use an insert and give its basis, or take a weaker bolt.",
	Source:   "Shear areas by FED-STD-H28/2, from memory; nut classes by ISO 898-2 and SAE J995, from memory. That the bolt should break first is common practice, no source.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name            = "Bracket bolts"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.bracket, part.bed]
  thread_material = "aluminium"
  thread_length   = "6 mm" # want "strips before"
  lubricant       = "dry"
  across_flats    = "13 mm"
  torque          = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name            = "Bracket bolts"
  thread          = "M8x1.25"
  bolt_class      = "8.8"
  quantity        = 2
  stack           = [part.bracket, part.bed]
  thread_material = "aluminium"
  thread_length   = "16 mm"
  lubricant       = "dry"
  across_flats    = "13 mm"
  torque          = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Run: runThreadStripsFirst,
}

func runThreadStripsFirst(p *rule.Pass) {
	margin := p.Threshold("strip_margin")
	tightened(p, func(f *model.Node) {
		if !clamps(f) {
			return
		}
		if p2 := weakNut(f); p2 != nil {
			p.Report(f.At("nut_class"), unstop(p2.Message)+" in "+rule.Called(f)+".", rule.Reason(p2.Reason), rule.Remedy(p2.Remedy),
				rule.Related(f.At("bolt_class"), "The class of the bolt stands here."))
			return
		}
		s, thread, tapped, ok := stripping(f)
		if !ok {
			return
		}
		need := s.Breaking
		what := "the bolt breaks"
		if !need.Valid() {
			return
		}
		needed := new(big.Rat).Mul(need.Base(), margin.Base())
		if s.Load.Base().Cmp(needed) >= 0 {
			return
		}
		remedy := "Engage more thread, or cut it in something stronger."
		if length, p2 := joint.EngagementFor(calc.FromBase(needed, need.Unit, 1), thread, tapped); p2 == nil && s.First == "the tapped thread" {
			up, _ := calc.RoundUpTo(length, calc.NewQuantity(big.NewRat(1, 10), length.Unit, 1))
			remedy = "It would take " + up.Rounded().String() + " of full thread. Engage more, or cut it in something stronger."
		}
		p.Report(f.At("thread_length"), strings.ToUpper(s.First[:1])+s.First[1:]+" of "+rule.Called(f)+" strips before "+what+": at "+
			s.Load.Rounded().String()+" against "+need.Rounded().String()+".",
			rule.Reason("A stripped thread gives no warning, and costs the casting. This rests on a shear strength of "+tapped.Shear.String()+" for "+
				tapped.Name+", from "+tapped.StrengthSource.String()+", and on basic sizes of the thread."),
			rule.Remedy(remedy),
			rule.Related(f.At("thread_material"), "The thread is cut in this."))
	})
}

// weakNut is what is wrong where a nut is weaker than its bolt.
func weakNut(f *model.Node) *calc.Problem {
	nut, bolt := f.Plain("nut_class"), f.Plain("bolt_class")
	if nut == "" || bolt == "" {
		return nil
	}
	if problem := joint.NutSuits(nut, bolt); problem != nil && strings.Contains(problem.Message, "weaker") {
		return problem
	}
	return nil
}

// stripping works out what strips first; ok is false where that cannot be told.
func stripping(f *model.Node) (s joint.Stripping, t joint.Thread, tapped joint.Material, ok bool) {
	length := f.Quantity("thread_length", "")
	material := f.Plain("thread_material")
	if length == nil || material == "" {
		return s, t, tapped, false
	}
	c := &clamp{}
	if c.readThread(f) != nil || c.readStrength(f) != nil {
		return s, t, tapped, false
	}
	tapped, problem := joint.MaterialOf(material)
	if problem != nil {
		return s, t, tapped, false
	}
	s, problem = joint.Strip(c.thread, *length, c.strength, tapped)
	return s, c.thread, tapped, problem == nil
}
