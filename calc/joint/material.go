package joint

import (
	"strings"
	"unicode"

	"fettle/calc"
)

// Material is what screens need of a material. Strengths are usual minimums,
// and the weakest of a family where a name says no more than the family.
type Material struct {
	Name            string
	Tensile, Shear  calc.Quantity // MPa
	StrengthSource  Source
	Expansion       Band // of length, ppm/K, near 20 to 100 °C
	ExpansionSource Source
}

type materialRow struct {
	name             string
	words            string // other names, by |; all words of one must occur
	tensile, shear   string // MPa
	expansion        string // ppm/K, low and high
	expansionSources *Source
}

var (
	handbook = Source{"handbook minimums of the family", FromMemory}

	steelGrowth     = &Source{"NIST Engineering Metrology Toolbox, slide 12: AISI 1050 11.2 (0–100 °C) to 11.5 (20–100 °C); upper end from memory", ReadInDocument}
	aluminiumGrowth = &Source{"Gere 5th ed.; Callister 3e Table B.6: 23, 356.0 21.5, 6061 23.6", ReadInReproduction}
	ironGrowth      = &Source{"Gere 5th ed.; Callister 3e Table B.6: grey 9.9–12, ductile 10.6–11.2", ReadInReproduction}
	recalledGrowth  = &Source{"handbooks", FromMemory}
)

var materialRows = []materialRow{
	{"steel", "mild steel|low carbon steel|structural steel|s235|1018|1020|a36|en3", "360", "215", "11.2 12.5", steelGrowth},
	{"medium carbon steel", "c45|1045|1050|en8|carbon steel", "560", "335", "11.2 12.5", steelGrowth},
	{"alloy steel", "42crmo4|4140|4340|en24|en19|hardened steel|tempered steel", "900", "540", "11.2 12.5", steelGrowth},
	{"stainless steel", "stainless|304|316|a2|a4|1.4301|1.4401", "500", "300", "15.9 17.3", recalledGrowth},
	{"grey cast iron", "cast iron|grey iron|iron|gjl", "200", "200", "9.9 12", ironGrowth},
	{"ductile cast iron", "ductile iron|nodular iron|nodular cast iron|spheroidal graphite iron|sg iron|gjs", "400", "360", "10.6 11.2", ironGrowth},
	{"malleable cast iron", "malleable iron", "350", "300", "10.5 12", recalledGrowth},
	{"cast aluminium", "aluminium|aluminium alloy|aluminium casting|cast aluminium alloy|light alloy|alloy casting", "180", "125", "21.5 23.6", aluminiumGrowth},
	{"cast aluminium A356-T6", "a356|356|alsi7mg|ac 42100|lm25", "230", "155", "21.5 21.5", aluminiumGrowth},
	{"die-cast aluminium", "diecast aluminium|die cast aluminium|pressure cast aluminium|a380|adc12|ac 46000", "240", "165", "21 22", recalledGrowth},
	{"wrought aluminium 6061-T6", "6061|6082|wrought aluminium|extruded aluminium|aluminium plate|aluminium bar", "290", "195", "23.6 23.6", aluminiumGrowth},
	{"wrought aluminium 2024-T4", "2024|2014|2017", "430", "260", "22.5 23.2", recalledGrowth},
	{"wrought aluminium 7075-T6", "7075", "520", "310", "23.4 23.6", recalledGrowth},
	{"magnesium alloy", "magnesium|az91|az31", "200", "120", "25 27", recalledGrowth},
	{"zinc alloy", "zinc|zamak|die cast zinc", "280", "200", "27 27.4", recalledGrowth},
	{"titanium", "titanium alloy|ti 6al 4v", "895", "540", "8.6 9.2", recalledGrowth},
	{"brass", "cw614n|free cutting brass|c360", "340", "210", "18.7 20.5", recalledGrowth},
	{"bronze", "gunmetal|bearing bronze|tin bronze|leaded bronze|phosphor bronze|lg2|sae 660", "230", "145", "17.5 18.5", recalledGrowth},
	{"aluminium bronze", "nickel aluminium bronze|ab2", "500", "300", "16 17", recalledGrowth},
	{"copper", "", "210", "140", "16.5 17", recalledGrowth},
	{"polyamide", "nylon|pa6|pa66", "70", "50", "80 100", recalledGrowth},
	{"acetal", "pom|polyoxymethylene", "60", "45", "100 120", recalledGrowth},
	{"polypropylene", "pp", "28", "20", "100 150", recalledGrowth},
	{"polycarbonate", "", "60", "40", "65 70", recalledGrowth},
	{"phenolic", "laminated phenolic|fabric laminate", "50", "40", "20 40", recalledGrowth},
	{"ptfe", "", "20", "12", "100 140", recalledGrowth},
}

// Materials lists what is known, in the order of documentation.
func Materials() []Material {
	var all []Material
	for _, r := range materialRows {
		all = append(all, r.material())
	}
	return all
}

func (r materialRow) material() Material {
	low, high, _ := cutSpace(r.expansion)
	return Material{Name: r.name, StrengthSource: handbook, ExpansionSource: *r.expansionSources,
		Tensile: counted(r.tensile, megapascal), Shear: counted(r.shear, megapascal),
		Expansion: Band{counted(low, perMillionKelvin), counted(high, perMillionKelvin)}}
}

// MaterialOf finds a material by the words of a part's entry: "cast aluminium
// A356-T6", "grey cast iron GJL-250". The name that matches most words
// wins, and a grade beats a family. A name that matches nothing, or two materials equally well, is a problem.
func MaterialOf(text string) (Material, *calc.Problem) {
	have := map[string]bool{}
	for _, w := range words(text) {
		have[w] = true
	}
	if have["insert"] || have["inserts"] {
		return Material{}, unknownMaterial(quoted(text) + " is a thread insert.")
	}
	var found []materialRow
	most := 0
	for _, r := range materialRows {
		n := 0
		for _, name := range strings.Split(r.name+"|"+r.words, "|") {
			n = max(n, matches(have, words(name)))
		}
		if n > most {
			found, most = found[:0], n
		}
		if n > 0 && n == most {
			found = append(found, r)
		}
	}
	switch len(found) {
	case 0:
		return Material{}, unknownMaterial("The strength of " + quoted(text) + " is not known here.")
	case 1:
		return found[0].material(), nil
	}
	return Material{}, unknownMaterial(quoted(text) + " could be " + found[0].name + " or " + found[1].name + ".")
}

func unknownMaterial(message string) *calc.Problem {
	var names []string
	for _, r := range materialRows {
		names = append(names, r.name)
	}
	return &calc.Problem{Message: message,
		Reason: "Whether its thread strips, or how far it grows, cannot be told.",
		Remedy: "Name one of these in it: " + strings.Join(names, ", ") + "."}
}

// matches weighs a name when all of its words are there, else it is 0. A grade,
// such as 6061, says more than any number of words.
func matches(have map[string]bool, name []string) int {
	weight := 0
	for _, w := range name {
		switch {
		case !have[w]:
			return 0
		case strings.ContainsAny(w, "0123456789"):
			weight += 10
		default:
			weight++
		}
	}
	return weight
}

func words(s string) []string {
	return strings.FieldsFunc(fold(s), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '.'
	})
}
