package joint

import (
	"math/big"

	"fettle/calc"
)

// Contact is what the full form knows of friction: plain coefficients in the
// thread and under the head, and the mean diameter of the bearing face.
type Contact struct {
	Thread, Head Band
	Bearing      calc.Quantity // zero: 1.25 d, a hexagon of 1.5 d on a hole of d
}

// BearingDiameter is the mean diameter of friction under a head of width w over
// a hole of diameter h: (w + h)/2, in the unit of w. Both must be lengths.
// Source: VDI 2230, read in a reproduction.
func BearingDiameter(w, h calc.Quantity) (calc.Quantity, *calc.Problem) {
	if p := positive("diameter under the head", calc.Length, w, h); p != nil {
		return calc.Quantity{}, p
	}
	return inUnit(quo(add(w.Base(), h.Base()), two), w.Unit, w.Decimals), nil
}

// PreloadByNutFactor is the short form, F = T / (K d), in kN or lbf. The band
// runs from the lowest torque over the highest K to the highest torque over the
// lowest K. T is that which reaches the bolt: take a locknut's drag off first (Net).
//
// Source: Shigley 9th ed. Eq. 8-27, read in the document.
func PreloadByNutFactor(torque, nutFactor Band, t Thread) (Band, *calc.Problem) {
	if p := given(t, torque, "torque", calc.Torque); p != nil {
		return Band{}, p
	}
	if p := nutFactor.positive("nut factor", calc.Plain); p != nil {
		return Band{}, p
	}
	d := t.Major.Base()
	arm := func(k calc.Quantity) *big.Rat { return mul(k.Base(), d) }
	return t.preload(torque, arm(nutFactor.Low), arm(nutFactor.High)), nil
}

// PreloadByFriction is the full form, F = T / (0.16 P + 0.58 d2 µ + D/2 µ'), in
// kN or lbf, with µ in the thread, µ' under the head and D the bearing diameter.
//
// Source: VDI 2230 R13/1 sec. 5.4.3, read in a reproduction.
func PreloadByFriction(torque Band, c Contact, t Thread) (Band, *calc.Problem) {
	if p := given(t, torque, "torque", calc.Torque); p != nil {
		return Band{}, p
	}
	low, high, p := c.arms(t)
	if p != nil {
		return Band{}, p
	}
	return t.preload(torque, low, high), nil
}

// TorqueByNutFactor is T = K F d, in N·m or lb·in, for a preload band; it runs
// from the lowest of both to the highest of both. Source: as PreloadByNutFactor.
func TorqueByNutFactor(preload, nutFactor Band, t Thread) (Band, *calc.Problem) {
	if p := given(t, preload, "preload", calc.Force); p != nil {
		return Band{}, p
	}
	if p := nutFactor.positive("nut factor", calc.Plain); p != nil {
		return Band{}, p
	}
	d := t.Major.Base()
	return Band{t.torque(mul(preload.Low.Base(), nutFactor.Low.Base(), d)),
		t.torque(mul(preload.High.Base(), nutFactor.High.Base(), d))}, nil
}

// TorqueByFriction is the full form turned round, in N·m or lb·in. Source: as PreloadByFriction.
func TorqueByFriction(preload Band, c Contact, t Thread) (Band, *calc.Problem) {
	if p := given(t, preload, "preload", calc.Force); p != nil {
		return Band{}, p
	}
	low, high, p := c.arms(t)
	if p != nil {
		return Band{}, p
	}
	return Band{t.torque(mul(preload.Low.Base(), low)), t.torque(mul(preload.High.Base(), high))}, nil
}

// NutFactorOf is the nut factor that two coefficients of friction amount to on
// this thread: the full form over d.
func NutFactorOf(c Contact, t Thread) (Band, *calc.Problem) {
	if p := t.needScreened(); p != nil {
		return Band{}, p
	}
	low, high, p := c.arms(t)
	if p != nil {
		return Band{}, p
	}
	d := t.Major.Base()
	return Band{calc.PlainNumber(quo(low, d)), calc.PlainNumber(quo(high, d))}, nil
}

// ProofShare is preload over proof load, a band of plain numbers: 0.75 is three
// quarters of proof. The thread is Screened and s of a class or a proof.
func ProofShare(preload Band, s Strength, t Thread) (Band, *calc.Problem) {
	if p := given(t, preload, "preload", calc.Force); p != nil {
		return Band{}, p
	}
	load := s.ProofLoad(t)
	if p := positive("proof load", calc.Force, load); p != nil {
		return Band{}, p
	}
	share := func(f calc.Quantity) calc.Quantity {
		return calc.NewQuantity(quo(f.Base(), load.Base()), calc.One, 2)
	}
	return Band{share(preload.Low), share(preload.High)}, nil
}

// arms are torque over preload, lowest and highest, in metres.
func (c Contact) arms(t Thread) (low, high *big.Rat, _ *calc.Problem) {
	if p := c.Thread.positive("friction in the thread", calc.Plain); p != nil {
		return nil, nil, p
	}
	if p := c.Head.positive("friction under the head", calc.Plain); p != nil {
		return nil, nil, p
	}
	bearing := mul(rat("1.25"), t.Major.Base()) // Shigley 9th ed., beside Eq. 8-26
	if c.Bearing.Valid() {
		if p := positive("bearing diameter", calc.Length, c.Bearing); p != nil {
			return nil, nil, p
		}
		bearing = c.Bearing.Base()
	}
	arm := func(thread, head calc.Quantity) *big.Rat {
		a := mul(rat("0.16"), t.Pitch.Base())
		a = add(a, mul(rat("0.58"), t.PitchDiameter().Base(), thread.Base()))
		return add(a, mul(quo(bearing, two), head.Base()))
	}
	return arm(c.Thread.Low, c.Head.Low), arm(c.Thread.High, c.Head.High), nil
}

func (t Thread) preload(torque Band, lowArm, highArm *big.Rat) Band {
	return Band{t.force(quo(torque.Low.Base(), highArm)), t.force(quo(torque.High.Base(), lowArm))}
}

func given(t Thread, b Band, what string, dim calc.Dim) *calc.Problem {
	if p := t.needScreened(); p != nil {
		return p
	}
	return b.positive(what, dim)
}
