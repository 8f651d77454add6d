package joint

import (
	"math/big"
	"regexp"
	"strings"

	"fettle/calc"
)

// Strength is what a fastener bears before it stretches for good. Proof is the
// stress it must bear unchanged; Yield and Tensile are invalid where the class
// does not tell. Load, where valid, is a proof load given as a force instead.
type Strength struct {
	Class                 string
	Proof, Yield, Tensile calc.Quantity
	Load                  calc.Quantity
	Source                Source
}

// classRow is one class over the nominal diameters over < d ≤ upTo.
// Diameters are in mm for ISO, in inches for SAE; stresses in MPa or ksi.
type classRow struct {
	class                 string
	over, upTo            string
	proof, yield, tensile string
}

// Source: ISO 898-1, reproductions; every proof load of the table read is proof
// stress times nominal stress area. 660 MPa, which one page prints as the proof
// stress of 8.8 up to 16 mm, is the yield stress of 8.8 above it. Yield: from memory.
var isoClasses = []classRow{
	{"4.6", "0", "39", "225", "240", "400"},
	{"4.8", "0", "39", "310", "340", "420"},
	{"5.6", "0", "39", "280", "300", "500"},
	{"5.8", "0", "39", "380", "420", "520"},
	{"6.8", "0", "39", "440", "480", "600"},
	{"8.8", "0", "16", "580", "640", "800"},
	{"8.8", "16", "39", "600", "660", "830"},
	{"9.8", "0", "16", "650", "720", "900"},
	{"10.9", "0", "39", "830", "940", "1040"},
	{"12.9", "0", "39", "970", "1100", "1220"},
}

// J429 starts at 1/4 in: the numbered sizes end at 0.216 in.
// Source: SAE J429 in Shigley 9th ed. (read in a reproduction).
var saeGrades = []classRow{
	{"1", "0.216", "1.5", "33", "36", "60"},
	{"2", "0.216", "0.75", "55", "57", "74"},
	{"2", "0.75", "1.5", "33", "36", "60"},
	{"4", "0.216", "1.5", "65", "100", "115"},
	{"5", "0.216", "1", "85", "92", "120"},
	{"5", "1", "1.5", "74", "81", "105"},
	{"5.2", "0.216", "1", "85", "92", "120"},
	{"7", "0.216", "1.5", "105", "115", "133"},
	{"8", "0.216", "1.5", "120", "130", "150"},
	{"8.2", "0.216", "1", "120", "130", "150"},
}

// Stainless steel has no proof stress of its own: the 0.2 % yield stands for it.
// Source: ISO 3506-1, from memory.
var stainlessClasses = []classRow{
	{"50", "0", "39", "210", "210", "500"},
	{"70", "0", "24", "450", "450", "700"},
	{"80", "0", "24", "600", "600", "800"},
}

var (
	isoSource       = Source{"ISO 898-1", ReadInReproduction}
	saeSource       = Source{"SAE J429, in Shigley 9th ed.", ReadInReproduction}
	stainlessSource = Source{"ISO 3506-1, 0.2 % yield as proof", FromMemory}
	givenSource     = Source{"proof", Authored}

	isoClass  = regexp.MustCompile(`^(?:iso )?(?:898-1 )?(?:property )?(?:class |grade )?(\d{1,2}\.\d)$`)
	saeGrade  = regexp.MustCompile(`^(?:sae )?(?:j429 )?(?:grade|gr\.?) ?(\d(?:\.\d)?)$|^sae (?:j429 )?(\d(?:\.\d)?)$`)
	stainless = regexp.MustCompile(`^(?:iso 3506(?:-1)? )?(?:class )?a[1-5]-(\d{2})$`)
)

// classTable finds the table that a class is spelled for, and its bare name there.
func classTable(class string) (rows []classRow, name string, u *calc.Unit, src Source) {
	s := fold(class)
	if m := saeGrade.FindStringSubmatch(s); m != nil && has(saeGrades, m[1]+m[2]) {
		return saeGrades, m[1] + m[2], kilopsi, saeSource
	}
	if m := isoClass.FindStringSubmatch(s); m != nil && has(isoClasses, m[1]) {
		return isoClasses, m[1], megapascal, isoSource
	}
	if m := stainless.FindStringSubmatch(s); m != nil && has(stainlessClasses, m[1]) {
		return stainlessClasses, m[1], megapascal, stainlessSource
	}
	return nil, "", nil, Source{}
}

func has(rows []classRow, class string) bool {
	for _, r := range rows {
		if r.class == class {
			return true
		}
	}
	return false
}

// ClassStrength gives the strength of a fastener of a class, spelled "8.8",
// "class 10.9", "grade 5" (SAE J429) or "A2-70" (stainless), in the size of t.
// A class that is unknown, or that its standard does not give for this size, is a problem.
func ClassStrength(class string, t Thread) (Strength, *calc.Problem) {
	if p := t.needScreened(); p != nil {
		return Strength{}, p
	}
	rows, name, u, src := classTable(class)
	if rows == nil {
		return Strength{}, unknownClass(class)
	}
	size := t.Major.In(millimetre).Num()
	if u == kilopsi {
		size = t.Major.In(inch).Num()
	}
	for _, r := range rows {
		if r.class == name && less(rat(r.over), size) && size.Cmp(rat(r.upTo)) <= 0 {
			return Strength{Class: class, Source: src,
				Proof: counted(r.proof, u), Yield: counted(r.yield, u), Tensile: counted(r.tensile, u)}, nil
		}
	}
	return Strength{}, &calc.Problem{
		Message: src.Cite + " gives no strength for " + quoted(class) + " in the size " + quoted(t.Text) + ".",
		Reason:  "Its tightening torque cannot be judged against the strength of the bolt.",
		Remedy:  "Give proof, from the data sheet of the fastener, in place of the class.",
	}
}

func unknownClass(class string) *calc.Problem {
	p := &calc.Problem{
		Message: quoted(class) + " is not a strength class of bolts known here.",
		Reason:  "Its tightening torque cannot be judged against the strength of the bolt.",
		Remedy:  `Write it as "8.8", "grade 5" or "A2-70", or give proof in its place.`,
	}
	if s := fold(class); has(saeGrades, s) {
		p.Remedy = `Write "grade ` + s + `" if it is an inch bolt; a metric class has a point, as in "8.8".`
	}
	return p
}

// GivenStrength is that of an authored proof: a stress such as 600 MPa or 85 ksi,
// or the proof load of one fastener such as 25 kN. It must be above zero.
func GivenStrength(proof calc.Quantity) (Strength, *calc.Problem) {
	if proof.Valid() && calc.Force.Fits(proof.Dim()) {
		return Strength{Load: proof, Source: givenSource}, positive("proof load", calc.Force, proof)
	}
	if proof.Valid() && !calc.Pressure.Fits(proof.Dim()) {
		return Strength{}, &calc.Problem{Message: "proof must be a stress or a force, and this is " + proof.Dim().String() + ".",
			Reason: "The torque cannot be judged against it.", Remedy: `Write it as "600 MPa", "85 ksi" or "25 kN".`}
	}
	return Strength{Proof: proof, Source: givenSource}, positive("proof stress", calc.Pressure, proof)
}

// ProofLoad is proof stress times stress area, in kN or lbf, or the load as
// given. Standards print it from the area rounded to three digits, so theirs
// differs by up to 0.5 %. Invalid for a thread that is not Screened.
func (s Strength) ProofLoad(t Thread) calc.Quantity {
	if s.Load.Valid() {
		return t.force(s.Load.Base())
	}
	return loadOf(s.Proof, t)
}

// BreakingLoad is tensile strength times stress area, in kN or lbf. Invalid
// where the tensile strength is not known or the thread is not Screened.
func (s Strength) BreakingLoad(t Thread) calc.Quantity { return loadOf(s.Tensile, t) }

func loadOf(stress calc.Quantity, t Thread) calc.Quantity {
	if !stress.Valid() || !t.Screened() {
		return calc.Quantity{}
	}
	return t.force(mul(stress.Base(), t.StressArea().Base()))
}

// nutFor gives the lowest nut class for a bolt class of ISO 898-1, and the
// lowest nut grade for a bolt grade of SAE J429.
// Source: ISO 898-2 and SAE J995, from memory, roughly.
var nutFor = map[string]int{
	"4.6": 4, "4.8": 4, "5.6": 5, "5.8": 5, "6.8": 6, "8.8": 8, "9.8": 9, "10.9": 10, "12.9": 12,
	"1": 2, "2": 2, "4": 5, "5": 5, "5.2": 5, "7": 8, "8": 8, "8.2": 8,
}

var (
	isoNut = regexp.MustCompile(`^(?:class )?(\d{1,2})$`)
	saeNut = regexp.MustCompile(`^(?:sae )?(?:grade|gr\.?) ?(\d)$`)
)

// NutSuits gives nil where a nut of that class is as strong as a bolt of that
// class, else what is wrong. Nuts are spelled "8", "class 10", "grade 5",
// "A2-70"; "04" and "05" are thin nuts and never carry a bolt's full load.
//
// Source: ISO 898-2 and SAE J995, from memory.
func NutSuits(nut, bolt string) *calc.Problem {
	rows, name, u, _ := classTable(bolt)
	if rows == nil {
		return unknownClass(bolt)
	}
	weak := &calc.Problem{Message: "A nut of class " + quoted(nut) + " is weaker than a bolt of class " + quoted(bolt) + ".",
		Reason: "Its threads strip before the bolt is tight.", Remedy: "Use a nut of the bolt's class or above."}
	s := fold(nut)
	if m := stainless.FindStringSubmatch(s); m != nil && has(stainlessClasses, m[1]) {
		if n, _, _ := lookUp(stainlessClasses, m[1]); tensileMPa(rows, name, u).Cmp(n) > 0 {
			return weak
		}
		return nil
	}
	m, sae := isoNut.FindStringSubmatch(s), u == kilopsi
	if sae {
		m = saeNut.FindStringSubmatch(s)
	}
	if m == nil || u == megapascal && nutFor[name] == 0 {
		return &calc.Problem{Message: quoted(nut) + " and " + quoted(bolt) + " are classes of different kinds.",
			Reason: "Whether the nut is as strong as the bolt cannot be told.",
			Remedy: `Name the nut's class in the bolt's system: "8" for "8.8", "grade 5" for "grade 5", "A2-70" for "A2-70".`}
	}
	if strings.HasPrefix(m[1], "0") || rat(m[1]).Cmp(whole(nutFor[name])) < 0 {
		return weak
	}
	return nil
}

func lookUp(rows []classRow, class string) (tensile *big.Rat, row classRow, ok bool) {
	for _, r := range rows {
		if r.class == class {
			return rat(r.tensile), r, true
		}
	}
	return nil, classRow{}, false
}

func tensileMPa(rows []classRow, class string, u *calc.Unit) *big.Rat {
	tensile, _, _ := lookUp(rows, class)
	return quo(mul(tensile, u.Factor), megapascal.Factor)
}
