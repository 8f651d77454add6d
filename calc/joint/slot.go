package joint

import (
	"math/big"

	"fettle/calc"
)

// Slots is what a castellated nut of a given torque band can do. A slot can only
// be met inside the band if the nut turns far enough between its lowest and its
// highest torque; one pin hole and six slots meet every 60°.
type Slots struct {
	Step    calc.Quantity // angle from one slot to the next
	Turn    calc.Quantity // angle that the nut turns from the lowest to the highest torque
	Share   calc.Quantity // Turn / Step, a plain number: the chance that a nut as it comes meets a slot
	PerStep calc.Quantity // preload that one whole slot would add, kN or lbf
	Sources []Source
}

// SlotShareLeast is the share below which a band is too narrow for a nut with
// slots. Every castellated-nut row of FAA AC 43.13-1B Table 7-1 has more, by
// the assumptions of SlotsWithin; a house rule may replace it.
var SlotShareLeast = calc.NewQuantity(rat("0.05"), calc.One, 2)

// SlotAssumption is what SlotsWithin rests on, as printed with its findings.
const SlotAssumption = "steel bolt of 200 GPa that stretches over its grip and 0.8 of its diameter more, in a joint that yields half as much as the bolt"

// SlotsWithin works out Slots from elastic stretch: turn = ΔF (δb + δj)/P of a
// whole turn, ΔF = ΔT/(K d), bolt δb = (grip + 0.8 d)/(E As), joint δj = 0.47
// δb. The lowest K of the band gives the largest turn, so that only a band that
// is surely too narrow is called so. A grip that is not Valid counts as four
// diameters; gaskets and soft parts turn further.
//
// Source: Shigley 9th ed. Example 8-3 for the ratio 6.50/13.8 of stiffness;
// FAA AC 43.13-1B 7-40 f for the rule: from the minimum on to a slot, never above
// the maximum, else another washer or nut. The screen itself is this project's.
func SlotsWithin(torque, nutFactor Band, t Thread, grip calc.Quantity, slots int) (Slots, *calc.Problem) {
	if p := given(t, torque, "torque", calc.Torque); p != nil {
		return Slots{}, p
	}
	if p := nutFactor.positive("nut factor", calc.Plain); p != nil {
		return Slots{}, p
	}
	if slots < 1 || slots > 60 {
		return Slots{}, &calc.Problem{Message: "A castellated nut has between 1 and 60 slots.",
			Reason: "The angle from slot to slot cannot be worked out.", Remedy: "Correct the number of slots; six is usual."}
	}
	d := t.Major.Base()
	stretch := mul(whole(4), d)
	if grip.Valid() {
		if p := positive("grip", calc.Length, grip); p != nil {
			return Slots{}, p
		}
		stretch = grip.Base()
	}
	stretch = add(stretch, mul(rat("0.8"), d))
	perNewton := quo(stretch, mul(rat("200000000000"), t.StressArea().Base()))
	perNewton = mul(perNewton, add(one, rat("650/1380")))

	step := big.NewRat(360, int64(slots))
	force := quo(torque.width(), mul(nutFactor.Low.Base(), d))
	turn := quo(mul(whole(360), force, perNewton), t.Pitch.Base())
	perStep := quo(mul(quo(step, whole(360)), t.Pitch.Base()), perNewton)
	return Slots{
		Step: inUnit(step, degree, 0), Turn: inUnit(turn, degree, 1), PerStep: t.force(perStep),
		Share:   calc.NewQuantity(quo(turn, step), calc.One, 2),
		Sources: []Source{{"Shigley 9th ed. Example 8-3 (joint stiffness)", ReadInDocument}, {"FAA AC 43.13-1B 7-40 f", ReadInDocument}},
	}, nil
}
