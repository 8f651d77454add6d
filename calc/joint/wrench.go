package joint

import (
	"math/big"

	"fettle/calc"
)

// Reach says where a torque lies in a wrench's working range.
type Reach uint8

// Reaches.
const (
	InRange   Reach = iota
	BelowBand       // on the scale, below the share from which it is accurate
	BelowScale
	AboveScale
)

// WrenchSource is where the lowest share of full scale comes from: ± 4 % of
// reading from 20 % to full scale, and no requirement below. The 2017 edition of
// ISO 6789-1 starts at the lowest marked value instead.
var WrenchSource = Source{"TM 1-1500-204-23-9 Table 8-1", ReadInDocument}

// WorkingRange is the part of a wrench's scale that is accurate: from the larger
// of its lowest mark and share (a plain number, by rule 0.20) of full scale, up
// to full scale. Ends are exact, in the unit of the scale.
func WorkingRange(scale Band, share calc.Quantity) (Band, *calc.Problem) {
	if p := wrenchScale(scale); p != nil {
		return Band{}, p
	}
	if p := positive("share of the scale", calc.Plain, share); p != nil {
		return Band{}, p
	}
	low := larger(scale.Low.Base(), mul(share.Base(), scale.High.Base()))
	return Band{inUnit(low, scale.High.Unit, scale.High.Decimals), scale.High}, nil
}

// WrenchReach places a torque on a wrench; ends count as inside. A stage, the
// setting with an adapter and the sum with drag are torques to be placed too.
func WrenchReach(torque calc.Quantity, scale Band, share calc.Quantity) (Reach, *calc.Problem) {
	working, p := WorkingRange(scale, share)
	if p != nil {
		return InRange, p
	}
	if p := positive("torque", calc.Torque, torque); p != nil {
		return InRange, p
	}
	switch {
	case torque.Cmp(scale.High) > 0:
		return AboveScale, nil
	case torque.Cmp(scale.Low) < 0:
		return BelowScale, nil
	case torque.Cmp(working.Low) < 0:
		return BelowBand, nil
	}
	return InRange, nil
}

// wrenchScale lets a scale start at zero.
func wrenchScale(scale Band) *calc.Problem {
	if scale.Low.Valid() && calc.Torque.Fits(scale.Low.Dim()) && scale.Low.Sign() == 0 {
		return positive("range of the wrench", calc.Torque, scale.High)
	}
	return scale.positive("range of the wrench", calc.Torque)
}

// WrenchAccuracy is the largest error of reading that ISO 6789-1 allows an
// indicating or setting wrench, as a plain number: 0.06 up to 10 N·m of full
// scale, 0.04 above. Source: ISO 6789-1:2017 5.1.5, from memory.
func WrenchAccuracy(fullScale calc.Quantity) (calc.Quantity, *calc.Problem) {
	if p := positive("full scale", calc.Torque, fullScale); p != nil {
		return calc.Quantity{}, p
	}
	if fullScale.Base().Cmp(whole(10)) <= 0 {
		return calc.PlainNumber(rat("0.06")), nil
	}
	return calc.PlainNumber(rat("0.04")), nil
}

// AdapterSource is where the setting with an adapter comes from.
var AdapterSource = Source{"TM 1-1500-204-23-9 para 8-5; NAVEDTRA 14008", ReadInDocument}

// WrenchSetting is what to set on a wrench of length L (grip to drive) for a
// torque T through an adapter of length A (drive to fastener) at an angle to
// the wrench: S = T L / (L + A cos angle). 0° points straight on, 90° changes
// nothing, 180° points back along the wrench. The result is in T's unit, exact
// at multiples of 60° and 90°, else to 30 decimals of the cosine.
//
// An adapter that points back as far as the grip is a problem.
func WrenchSetting(torque, wrench, adapter, angle calc.Quantity) (calc.Quantity, *calc.Problem) {
	lever, p := leverage(wrench, adapter, angle)
	if p == nil {
		p = positive("torque", calc.Torque, torque)
	}
	if p != nil {
		return calc.Quantity{}, p
	}
	return inUnit(quo(torque.Base(), lever), torque.Unit, shown(torque)), nil
}

// AppliedTorque is what a setting S gives at the fastener: S (L + A cos angle) / L.
// Source: TM 9-254 Fig 4-5, read in the document.
func AppliedTorque(setting, wrench, adapter, angle calc.Quantity) (calc.Quantity, *calc.Problem) {
	lever, p := leverage(wrench, adapter, angle)
	if p == nil {
		p = positive("setting", calc.Torque, setting)
	}
	if p != nil {
		return calc.Quantity{}, p
	}
	return inUnit(mul(setting.Base(), lever), setting.Unit, shown(setting)), nil
}

// leverage is (L + A cos angle) / L. An angle that is not Valid counts as 0°.
func leverage(wrench, adapter, angle calc.Quantity) (*big.Rat, *calc.Problem) {
	if p := positive("length of the wrench", calc.Length, wrench); p != nil {
		return nil, p
	}
	if p := positive("length of the adapter", calc.Length, adapter); p != nil {
		return nil, p
	}
	cos := one
	if angle.Valid() {
		if !calc.Angle.Fits(angle.Dim()) {
			return nil, &calc.Problem{Message: "The adapter's angle must be an angle, and this is " + angle.Dim().String() + ".",
				Reason: "The setting cannot be worked out.", Remedy: `Write it as "0°", "90°" or "180°".`}
		}
		cos = cosine(angle.Base())
	}
	lever := add(one, mul(cos, quo(adapter.Base(), wrench.Base())))
	if lever.Sign() <= 0 {
		return nil, &calc.Problem{Message: "The adapter points back as far as the grip of the wrench.",
			Reason: "No setting gives the torque.", Remedy: "Use a longer wrench, or turn the adapter round."}
	}
	return lever, nil
}
