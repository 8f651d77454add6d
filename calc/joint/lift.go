package joint

import (
	"math/big"

	"fettle/calc"
)

// OneLift is the mass that one person lifts at best: close, between knee and
// shoulder, with a good grip. Source: the load constant of the revised NIOSH
// lifting equation, 23 kg (51 lb), from memory.
var OneLift = counted("23", kilogram)

// LiftSource is where the limits come from.
var LiftSource = Source{"NIOSH revised lifting equation, load constant 23 kg; two-thirds for two and one-half for three and more from HSE L23", FromMemory}

// LiftLimit is what so many people lift together, in the unit of one person's
// limit: two bring two-thirds of their sum, three or more one-half, since no
// team shares a load evenly. Each person's limit is a mass above zero, and
// people at least 1. Source: HSE L23, from memory.
func LiftLimit(people int, each calc.Quantity) (calc.Quantity, *calc.Problem) {
	if p := positive("lift of one person", calc.Mass, each); p != nil {
		return calc.Quantity{}, p
	}
	if people < 1 {
		return calc.Quantity{}, &calc.Problem{Message: "A lift takes at least one person.",
			Reason: "Nobody is there to lift.", Remedy: "Write people = 1 or more."}
	}
	share := one
	switch {
	case people == 2:
		share = big.NewRat(2, 3)
	case people > 2:
		share = big.NewRat(1, 2)
	}
	return inUnit(mul(each.Base(), whole(people), share), each.Unit, 0), nil
}

// PeopleFor is the fewest people whose limit bears a mass; none when that takes
// more than four, which is work for a hoist (common practice).
func PeopleFor(mass, each calc.Quantity) (people int, ok bool) {
	for people = 1; people <= 4; people++ {
		limit, p := LiftLimit(people, each)
		if p != nil {
			return 0, false
		}
		if mass.Cmp(limit) <= 0 {
			return people, true
		}
	}
	return 0, false
}
