package joint

import (
	"math/big"

	"fettle/calc"
)

// Form is the family of a thread.
type Form uint8

// Forms of thread. Only metric and unified ones are screened.
const (
	NoForm  Form = iota
	Metric       // ISO 261 metric, 60°
	Unified      // ASME B1.1 unified inch, 60°
	Pipe         // ISO 228, ISO 7-1, ASME B1.20.1
	Other        // known and not screened: trapezoidal, Whitworth, BA
)

// Thread is a designation, read. The zero Thread is of no form.
type Thread struct {
	Text     string        // as written; designations are compared as written
	Form     Form          //
	Series   string        // "coarse", "fine"; "UNC", "UNF", …; "G", "NPT", …
	LeftHand bool          //
	Major    calc.Quantity // nominal diameter in mm or in; invalid unless Screened
	Pitch    calc.Quantity // mm or in; invalid unless Screened
}

// Screened reports whether strength and preload can be worked out for the thread.
func (t Thread) Screened() bool { return t.Form == Metric || t.Form == Unified }

// Tightens is the way to turn a fastener home, seen from its head.
func (t Thread) Tightens() string {
	if t.LeftHand {
		return "anticlockwise"
	}
	return "clockwise"
}

// Factors of the pitch between the diameters of a 60° thread, in multiples of
// its height H = 0.866025 P: 3/4 H, 5/4 H, 17/12 H and 3/2 H.
// Source: ISO 724 and ISO 898-1 for metric, Shigley 9th ed. Table 8-2 for
// unified threads; the stress area rows of both recompute with them.
var (
	toPitchDiameter = rat("0.649519")
	toMinorInternal = rat("1.082532")
	toRootMetric    = rat("1.226869")
	toRootUnified   = rat("1.299038")
)

// diameter is the major diameter less so many pitches.
func (t Thread) diameter(factor *big.Rat) calc.Quantity {
	if !t.Screened() {
		return calc.Quantity{}
	}
	return calc.NewQuantity(sub(t.Major.Num(), mul(factor, t.Pitch.Num())), t.Major.Unit, t.decimals())
}

func (t Thread) decimals() int {
	if t.Form == Metric {
		return 3
	}
	return 4
}

// PitchDiameter is d2 = d − 0.649519 P, of both threads. Invalid unless Screened.
func (t Thread) PitchDiameter() calc.Quantity { return t.diameter(toPitchDiameter) }

// MinorDiameter is D1 = d − 1.082532 P, that of the internal thread. Invalid unless Screened.
func (t Thread) MinorDiameter() calc.Quantity { return t.diameter(toMinorInternal) }

// RootDiameter is that of the bolt's root: d3 = d − 1.226869 P for metric,
// d − 1.299038 P for unified threads. Invalid unless Screened.
func (t Thread) RootDiameter() calc.Quantity {
	if t.Form == Metric {
		return t.diameter(toRootMetric)
	}
	return t.diameter(toRootUnified)
}

// StressArea is As = π/4 ((d2 + d3)/2)², in mm² or in². For a unified thread of
// n to the inch that is 0.7854 (d − 0.9743/n)². Invalid unless Screened.
//
// Source: ISO 898-1 formula; Shigley 9th ed. Table 8-2.
func (t Thread) StressArea() calc.Quantity {
	if !t.Screened() {
		return calc.Quantity{}
	}
	mean := quo(add(t.PitchDiameter().Num(), t.RootDiameter().Num()), two)
	area := quo(mul(pi, mean, mean), whole(4))
	if t.Form == Metric {
		return calc.NewQuantity(area, squareMillimetre, 1)
	}
	return calc.NewQuantity(area, squareInch, 4)
}

// needScreened is the problem of a thread that is not screened, or nil.
func (t Thread) needScreened() *calc.Problem {
	if t.Screened() {
		return nil
	}
	return &calc.Problem{
		Message: "The strength of thread " + quoted(t.Text) + " is not known here.",
		Reason:  "Only metric and unified threads are screened.",
		Remedy:  "Rest its torque on the maker's figure, and name that as its basis.",
	}
}

// force, torque and length give results in the system that the thread belongs to.
func (t Thread) force(newtons *big.Rat) calc.Quantity {
	if t.Form == Metric {
		return inUnit(newtons, kilonewton, 1)
	}
	return inUnit(newtons, poundForce, 0)
}

func (t Thread) torque(newtonMetres *big.Rat) calc.Quantity {
	if t.Form == Metric {
		return inUnit(newtonMetres, newtonMetre, 1)
	}
	return inUnit(newtonMetres, poundInch, 0)
}

func (t Thread) length(metres *big.Rat) calc.Quantity {
	if t.Form == Metric {
		return inUnit(metres, millimetre, 1)
	}
	return inUnit(metres, inch, 2)
}
