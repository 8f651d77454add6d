package joint

import (
	"math/big"

	"fettle/calc"
)

// Stripping says what the threads of one fastening bear along the bolt, in kN
// or lbf. What is not known is invalid.
type Stripping struct {
	Bolt     calc.Quantity // strips the bolt's own thread
	Tapped   calc.Quantity // strips the thread that the bolt is screwed into
	Breaking calc.Quantity // breaks the bolt in its shank or root
	First    string        // "the bolt's thread" or "the tapped thread", the weaker of those known
	Load     calc.Quantity // at which First strips
	Sources  []Source
}

var stripSource = Source{"FED-STD-H28/2 and ISO 898 practice, on basic sizes; bolt shear strength 0.6 of tensile", FromMemory}

// boltShear is the share of a bolt's tensile strength that it bears in shear. Source: from memory.
var boltShear = rat("0.6")

// ExternalShearArea is what shears when the bolt's thread strips over a length
// L of full thread engaged: π L/P · D1 (P/2 + 0.57735 (d2 − D1)). Basic sizes
// stand for the worst of the tolerance, so the area is up to a fifth too large.
// In mm² or in². Source: FED-STD-H28/2, from memory.
func ExternalShearArea(length calc.Quantity, t Thread) (calc.Quantity, *calc.Problem) {
	if p := engaged(length, t); p != nil {
		return calc.Quantity{}, p
	}
	d1, d2 := t.MinorDiameter().Base(), t.PitchDiameter().Base()
	return t.shearArea(length, d1, sub(d2, d1)), nil
}

// InternalShearArea is what shears when the tapped thread strips: π L/P · d
// (P/2 + 0.57735 (d − d2)). Limits and source as for ExternalShearArea.
func InternalShearArea(length calc.Quantity, t Thread) (calc.Quantity, *calc.Problem) {
	if p := engaged(length, t); p != nil {
		return calc.Quantity{}, p
	}
	d, d2 := t.Major.Base(), t.PitchDiameter().Base()
	return t.shearArea(length, d, sub(d, d2)), nil
}

func (t Thread) shearArea(length calc.Quantity, d, height *big.Rat) calc.Quantity {
	p := t.Pitch.Base()
	tooth := add(quo(p, two), mul(rat("0.57735"), height)) // tan 30°
	area := mul(pi, quo(length.Base(), p), d, tooth)
	if t.Form == Metric {
		return inUnit(area, squareMillimetre, 1)
	}
	return inUnit(area, squareInch, 4)
}

// Strip works out which thread of a bolt in a tapped hole or nut strips first,
// and at what load, from the length of full thread engaged. Compare Load with
// the highest preload: below it the thread strips as it is tightened; and with
// Breaking: below it the thread goes before the bolt.
func Strip(t Thread, length calc.Quantity, bolt Strength, tapped Material) (Stripping, *calc.Problem) {
	inner, p := InternalShearArea(length, t)
	if p != nil {
		return Stripping{}, p
	}
	s := Stripping{Breaking: bolt.BreakingLoad(t), First: "the tapped thread",
		Tapped:  t.force(mul(inner.Base(), tapped.Shear.Base())),
		Sources: []Source{stripSource, tapped.StrengthSource}}
	s.Load = s.Tapped
	if bolt.Tensile.Valid() {
		outer, _ := ExternalShearArea(length, t) // length and thread were judged above
		s.Bolt = t.force(mul(outer.Base(), boltShear, bolt.Tensile.Base()))
		s.Sources = append(s.Sources, bolt.Source)
		if s.Bolt.Cmp(s.Tapped) < 0 {
			s.First, s.Load = "the bolt's thread", s.Bolt
		}
	}
	return s, nil
}

// EngagementFor is the length of full thread at which the tapped thread bears a
// load, in mm or in: what a remedy can ask for.
func EngagementFor(load calc.Quantity, t Thread, tapped Material) (calc.Quantity, *calc.Problem) {
	if p := positive("load", calc.Force, load); p != nil {
		return calc.Quantity{}, p
	}
	per, p := InternalShearArea(counted("1", millimetre), t)
	if p != nil {
		return calc.Quantity{}, p
	}
	perMetre := mul(per.Base(), whole(1000), tapped.Shear.Base())
	return t.length(quo(load.Base(), perMetre)), nil
}

func engaged(length calc.Quantity, t Thread) *calc.Problem {
	if p := t.needScreened(); p != nil {
		return p
	}
	return positive("engaged length of thread", calc.Length, length)
}
