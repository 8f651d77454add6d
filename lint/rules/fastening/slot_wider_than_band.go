package fastening

import (
	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lint/rule"
)

// SlotWiderThanBand: a castellated nut whose torque band is too narrow for a slot to come round inside it.
var SlotWiderThanBand = &rule.Rule{
	Name:     "fastening/slot-wider-than-band",
	Severity: diag.Doubt,
	Finds:    "A castellated nut whose torque band is too narrow for a slot to come round inside it.",
	Why:      "No slot meets the hole inside the band, so the nut is slacked back or pulled too far to let the pin in.",
	Remedy:   "Write torque as a band, from the least to the most that the bolt may have, or say which washers bring the slot round.",
	Source:   "FAA AC 43.13-1B 7-40: from the minimum on to a slot, never above the maximum. The screen itself is this project's.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

part "pin" {
  name     = "Split pin"
  in_place = 1
  sits_on  = part.bracket
  use_once = true
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 1
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24.0..24.2 N·m" # want "apart"
  to_slot      = true
  locked_by    = part.pin
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

part "pin" {
  name     = "Split pin"
  in_place = 1
  sits_on  = part.bracket
  use_once = true
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 1
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "20..28 N·m"
  to_slot      = true
  locked_by    = part.pin
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
	Run: runSlotWiderThanBand,
}

func runSlotWiderThanBand(p *rule.Pass) {
	const slots = 6 // on a castellated nut, ISO 7035
	known := newScreen()
	for _, f := range p.Having("to_slot") {
		if f.Def != entry.Fastening || !f.Flag("to_slot") || f.Damaged {
			continue
		}
		for _, t := range settings(f, "torque") {
			if t.Low.Cmp(t.High) == 0 {
				p.Report(f.At("torque"), rule.Called(f)+" has one torque, "+t.String()+", and no band in which a slot could come round.",
					rule.Related(f.At("to_slot"), "It is turned on to a slot."))
				break
			}
			c, _ := known.of(f)
			if c == nil || soft(f) {
				break
			}
			s, problem := joint.SlotsWithin(joint.Band{Low: t.Low, High: t.High}, c.factor, c.thread, calc.Quantity{}, slots)
			if problem != nil || s.Share.Cmp(joint.SlotShareLeast) >= 0 {
				continue
			}
			p.Report(f.At("torque"), "In its band of "+t.String()+" "+rule.Called(f)+" turns by "+s.Turn.Rounded().String()+", and its slots are "+s.Step.Rounded().String()+" apart.",
				rule.Reason("No slot meets the hole inside the band. Worked out for a "+joint.SlotAssumption+", and "+c.rests+"."),
				rule.Related(f.At("to_slot"), "It is turned on to a slot."))
			break
		}
	}
}
