package joint

import "fettle/calc"

// TorqueTolerance is what a torque without one is usually held to, ± 10 %.
// Source: TB 9-3950-253-13&P WP 0061, read in the document.
var TorqueTolerance = calc.PlainNumber(rat("0.10"))

// Around is the band of a bare value and a tolerance, a plain number below 1.
func Around(torque, tolerance calc.Quantity) (Band, *calc.Problem) {
	if p := positive("torque", calc.Torque, torque); p != nil {
		return Band{}, p
	}
	if p := positive("tolerance", calc.Plain, tolerance); p != nil {
		return Band{}, p
	}
	part := calc.NewQuantity(mul(torque.Num(), tolerance.Base()), torque.Unit, calc.Exact)
	b := Band{shift(torque, part, -1), shift(torque, part, 1)}
	return b, b.positive("torque", calc.Torque)
}

// DragRule says what the drag of a self-locking nut does to the setting of the
// wrench. It is a setting of the procedure: published rules differ.
type DragRule uint8

// Rules for drag.
const (
	DragIncluded   DragRule = iota // the torque is what the wrench shows, drag and all
	DragAdded                      // set the sum. FAA AC 43.13-1B 7-40 d, read in the document
	DragFromAThird                 // set the sum if drag is at least 0.33 of the lowest torque, else ignore it. TM 5-2330-325-13&P WP 0095, read in the document
)

// WrenchTorque is what to set on the wrench for an authored torque and a drag,
// in the torque's unit. A drag that is not Valid counts as none; it is never negative.
func WrenchTorque(torque Band, drag calc.Quantity, rule DragRule) (Band, *calc.Problem) {
	sum, p := rule.adds(torque, drag)
	if p != nil || !sum {
		return torque, p
	}
	return Band{shift(torque.Low, drag, 1), shift(torque.High, drag, 1)}, nil
}

// Net is what of an authored torque stretches the bolt, in the torque's unit: all
// of it where drag is added or ignored, and the rest where it is included. A
// drag as large as the torque is a problem.
func Net(torque Band, drag calc.Quantity, rule DragRule) (Band, *calc.Problem) {
	if _, p := rule.adds(torque, drag); p != nil {
		return torque, p
	}
	if rule != DragIncluded || !drag.Valid() {
		return torque, nil
	}
	net := Band{shift(torque.Low, drag, -1), shift(torque.High, drag, -1)}
	if net.Low.Sign() <= 0 {
		return torque, &calc.Problem{Message: "The drag of the nut takes up all of its torque.",
			Reason: "Nothing of the torque reaches the bolt.", Remedy: "Add the drag to the torque, or correct one of them."}
	}
	return net, nil
}

func (r DragRule) adds(torque Band, drag calc.Quantity) (bool, *calc.Problem) {
	if p := torque.positive("torque", calc.Torque); p != nil {
		return false, p
	}
	if !drag.Valid() || calc.Torque.Fits(drag.Dim()) && drag.Sign() == 0 {
		return false, nil
	}
	if p := positive("drag", calc.Torque, drag); p != nil {
		return false, p
	}
	third := mul(rat("0.33"), torque.Low.Base())
	return r == DragAdded || r == DragFromAThird && !less(drag.Base(), third), nil
}

// shift is q with r added sign times, in q's unit.
func shift(q, r calc.Quantity, sign int) calc.Quantity {
	return inUnit(add(q.Base(), mul(whole(sign), r.Base())), q.Unit, q.Decimals)
}
