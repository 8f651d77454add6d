package joint

import "fettle/calc"

// Growth is how much a length grows as it warms: L α ΔT, in the unit of the
// length; negative when it cools. α is per kelvin and ΔT a difference. State the
// range that α holds for: handbooks give 11.2 to 14.6 ppm/K for one steel.
// Source: definition of the coefficient; example: trunnion contraction.
func Growth(length, expansion, change calc.Quantity) (calc.Quantity, *calc.Problem) {
	if p := heated(length, expansion); p != nil {
		return calc.Quantity{}, p
	}
	if !change.Valid() || !calc.TemperatureDiff.Fits(change.Dim()) {
		return calc.Quantity{}, &calc.Problem{Message: "The change must be a temperature difference.",
			Reason: "The growth cannot be worked out.", Remedy: "Subtract one temperature from the other."}
	}
	return inUnit(mul(length.Base(), expansion.Base(), change.Base()), length.Unit, shown(length)+3), nil
}

// FitChange is by how much to heat a hole of a diameter (or cool a shaft) so
// that it grows by enlarge, the interference plus the clearance wanted: ΔT =
// enlarge/(α d), in kelvin. Source: engineering handbooks, read in a reproduction.
func FitChange(enlarge, expansion, diameter calc.Quantity) (calc.Quantity, *calc.Problem) {
	if p := heated(diameter, expansion); p != nil {
		return calc.Quantity{}, p
	}
	if p := positive("growth wanted", calc.Length, enlarge); p != nil {
		return calc.Quantity{}, p
	}
	return inUnit(quo(enlarge.Base(), mul(expansion.Base(), diameter.Base())), kelvin, 1), nil
}

func heated(length, expansion calc.Quantity) *calc.Problem {
	if p := positive("length", calc.Length, length); p != nil {
		return p
	}
	return positive("expansion coefficient", calc.Expansion, expansion)
}
