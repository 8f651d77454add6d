package joint

import (
	"strings"

	"fettle/calc"
)

// Lubricant is how a kind of thread condition turns torque into preload: a band
// of the nut factor K, and one of the coefficient of friction µ in thread and
// under the head. Both are plain numbers.
type Lubricant struct {
	Kind           string
	Aliases        []string
	NutFactor      Band
	NutSource      Source
	Friction       Band
	FrictionSource Source
}

var (
	practice     = Source{Status: CommonPractice}
	shigleyTable = func(row string) Source {
		return Source{"Shigley 9th ed., Table 8-15: " + row + "; the band around it is common practice", ReadInDocument}
	}
	vdiClass = func(class string) Source {
		return Source{"within friction class " + class + " of VDI 2230", FromMemory}
	}
)

// lubricants in the order that documentation shows them. Bands hold for clean
// steel threads; they are screens and no promise.
var lubricants = []Lubricant{
	{"dry", []string{"clean and dry", "as received", "none", "unlubricated"},
		plain("0.20", "0.30"), shigleyTable("nonplated, black 0.30; text: 0.20 where nothing is said"),
		plain("0.14", "0.24"), vdiClass("C")},
	{"oil", []string{"engine oil", "motor oil", "machine oil", "light oil", "lubricating oil", "gear oil"},
		plain("0.15", "0.20"), shigleyTable("lubricated 0.18"),
		plain("0.10", "0.16"), vdiClass("B")},
	{"grease", []string{"lithium grease", "bearing grease", "waterproof grease"},
		plain("0.13", "0.20"), practice,
		plain("0.08", "0.16"), vdiClass("B")},
	{"anti-seize", []string{"anti-seize paste", "copper paste", "nickel anti-seize", "copper anti-seize", "antiseize"},
		plain("0.10", "0.16"), Source{"Shigley 9th ed., Table 8-15: anti-seize 0.12; the band around it is common practice", FromMemory},
		plain("0.06", "0.12"), vdiClass("A to B")},
	{"molybdenum disulphide", []string{"moly", "moly grease", "moly paste", "mos2", "assembly lubricant", "assembly paste"},
		plain("0.09", "0.15"), practice,
		plain("0.05", "0.11"), vdiClass("A to B")},
	{"threadlocker", []string{"thread locker", "anaerobic threadlocker", "locking compound", "retaining compound"},
		plain("0.14", "0.22"), practice,
		plain("0.09", "0.18"), practice},
	{"sealant", []string{"thread sealant", "pipe sealant", "jointing compound", "thread sealing paste", "ptfe tape", "rtv", "silicone sealant"},
		plain("0.12", "0.22"), practice,
		plain("0.08", "0.18"), practice},
	{"zinc plated", []string{"zinc", "zinc-plated", "electro-zinc", "bright zinc"},
		plain("0.17", "0.24"), shigleyTable("zinc-plated 0.20"),
		plain("0.12", "0.19"), vdiClass("B to C")},
	{"cadmium plated", []string{"cadmium", "cadmium-plated", "dry cadmium"},
		plain("0.12", "0.22"), Source{"Shigley 9th ed., Table 8-15: cadmium-plated 0.16; the band is what FAA AC 43.13-1B Table 7-1 implies at 40 000 psi", Computed},
		plain("0.08", "0.17"), practice},
	{"galvanized", []string{"galvanised", "hot-dip galvanized", "hot-dip galvanised"},
		plain("0.18", "0.30"), practice,
		plain("0.14", "0.24"), practice},
	{"phosphated and oiled", []string{"phosphate and oil", "phosphated", "phosphate"},
		plain("0.13", "0.20"), practice,
		plain("0.08", "0.16"), practice},
	{"stainless dry", []string{"stainless, dry", "dry stainless"},
		plain("0.24", "0.40"), practice,
		plain("0.18", "0.30"), practice},
	{"wax", []string{"waxed", "wax coating"},
		plain("0.10", "0.16"), practice,
		plain("0.06", "0.12"), practice},
}

// Lubricants lists the kinds known, in the order of documentation.
func Lubricants() []Lubricant { return append([]Lubricant(nil), lubricants...) }

// LubricantOf finds the bands for the kind of a supply, or "dry". A kind that is
// not known is a problem: nothing is guessed.
func LubricantOf(kind string) (Lubricant, *calc.Problem) {
	name := fold(kind)
	for _, l := range lubricants {
		if name == l.Kind {
			return l, nil
		}
		for _, a := range l.Aliases {
			if name == a {
				return l, nil
			}
		}
	}
	var kinds []string
	for _, l := range lubricants {
		kinds = append(kinds, l.Kind)
	}
	return Lubricant{}, &calc.Problem{
		Message: "No nut factor is known for threads with " + quoted(kind) + ".",
		Reason:  "The same torque stretches a slippery bolt twice as far as a dry one.",
		Remedy:  "Give nut_factor or friction, or name one of these kinds: " + strings.Join(kinds, ", ") + ".",
	}
}

// Scatter widens a nut factor so that preload lies within ± scatter (a plain
// number below 1) of that of the middle: K/(1 + s) to K/(1 − s).
//
// Source: NASA-STD-5020B Eq. 3 and 4, read in a reproduction; 0.25 for
// lubricated and 0.35 for dry threads under a torque wrench are from memory.
func Scatter(nutFactor, scatter calc.Quantity) (Band, *calc.Problem) {
	if p := positive("nut factor", calc.Plain, nutFactor); p != nil {
		return Band{}, p
	}
	if p := positive("scatter", calc.Plain, scatter); p != nil {
		return Band{}, p
	}
	k, s := nutFactor.Base(), scatter.Base()
	if !less(s, one) {
		return Band{}, &calc.Problem{Message: "A scatter of 1 or more leaves no preload.",
			Reason: "The lowest preload would be none.", Remedy: `Write it as a share below 1, such as "25 %".`}
	}
	return Band{calc.PlainNumber(quo(k, add(one, s))), calc.PlainNumber(quo(k, sub(one, s)))}, nil
}
