package joint

import (
	"math/big"

	"fettle/calc"
)

// Cure is a time at a temperature, as the maker states it: 24 h at 20 °C.
type Cure struct{ Time, At calc.Quantity }

// coldest is absolute zero, 0 K.
var coldest = new(big.Rat)

// CureTime is how long a cure takes in a workshop. Of the cures stated it is the
// one for the warmest temperature that the workshop reaches; warmth beyond
// that shortens nothing. Where the workshop is colder than all of them, the one
// for the lowest temperature is multiplied by slower for every 10 °C begun
// below it. slower is a plain number of at least 1, as the maker or a house rule
// states it (2 doubles); not Valid, it says nothing, and that is a problem.
//
// That reactions go about half as fast 10 °C colder is common practice, no source.
func CureTime(stated []Cure, workshop, slower calc.Quantity) (calc.Quantity, *calc.Problem) {
	if p := curable(stated, workshop); p != nil {
		return calc.Quantity{}, p
	}
	var best, lowest *Cure
	for i := range stated {
		c := &stated[i]
		if c.At.Cmp(workshop) <= 0 && (best == nil || c.At.Cmp(best.At) > 0) {
			best = c
		}
		if lowest == nil || c.At.Cmp(lowest.At) < 0 {
			lowest = c
		}
	}
	if best != nil {
		return best.Time, nil
	}
	if !slower.Valid() || slower.Base().Cmp(one) < 0 {
		return calc.Quantity{}, &calc.Problem{Message: "The cure is stated for a warmer place than this workshop.",
			Reason: "It takes longer in the cold, and nobody says how long.",
			Remedy: "State the cure at the workshop's temperature or below, or warm the work."}
	}
	factor := new(big.Rat).Set(one)
	for below := sub(lowest.At.Base(), workshop.Base()); below.Sign() > 0; below.Sub(below, whole(10)) {
		factor.Mul(factor, slower.Base())
	}
	return inUnit(mul(lowest.Time.Base(), factor), lowest.Time.Unit, lowest.Time.Decimals), nil
}

func curable(stated []Cure, workshop calc.Quantity) *calc.Problem {
	if len(stated) == 0 {
		return &calc.Problem{Message: "No cure is stated.", Reason: "The builder cannot tell when to go on.",
			Remedy: `Write it as a time at a temperature: "24 h at 20 °C".`}
	}
	temperatures := []calc.Quantity{workshop}
	for _, c := range stated {
		if p := positive("cure time", calc.Time, c.Time); p != nil {
			return p
		}
		temperatures = append(temperatures, c.At)
	}
	for _, t := range temperatures {
		if !t.Valid() || !calc.Temperature.Fits(t.Dim()) || less(t.Base(), coldest) || less(whole(5000), t.Base()) {
			return &calc.Problem{Message: "A cure needs a temperature that can be met in a workshop.",
				Reason: "The time cannot be worked out.", Remedy: `Write it as "20 °C" or "68 °F".`}
		}
	}
	return nil
}
