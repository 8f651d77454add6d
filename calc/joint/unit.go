package joint

import (
	"math/big"

	"fettle/calc"
)

// The units that results are given in.
var (
	millimetre       = calc.MustUnit("mm")
	inch             = calc.MustUnit("in")
	squareMillimetre = calc.MustUnit("mm²")
	squareInch       = calc.MustUnit("in²")
	kilonewton       = calc.MustUnit("kN")
	poundForce       = calc.MustUnit("lbf")
	megapascal       = calc.MustUnit("MPa")
	kilopsi          = calc.MustUnit("ksi")
	newtonMetre      = calc.MustUnit("N·m")
	poundInch        = calc.MustUnit("lb·in")
	kilogram         = calc.MustUnit("kg")
	degree           = calc.MustUnit("°")
	kelvin           = calc.MustUnit("K")
	perMillionKelvin = calc.MustUnit("ppm/K")
)

// shown is how many decimals a result worked out from q is worth.
func shown(q calc.Quantity) int {
	if q.Decimals == calc.Exact {
		return 3
	}
	return q.Decimals
}

// counted is a constant in a unit, known exactly.
func counted(s string, u *calc.Unit) calc.Quantity { return calc.NewQuantity(rat(s), u, calc.Exact) }

// inUnit gives a value in base units as a quantity of u, shown to the given decimals.
func inUnit(base *big.Rat, u *calc.Unit, decimals int) calc.Quantity {
	return calc.NewQuantity(quo(base, u.Factor), u, decimals)
}
