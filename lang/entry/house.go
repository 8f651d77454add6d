package entry

import "fettle/calc"

// Threshold is a number that rules judge by and that house rules may change.
type Threshold struct {
	Name    string
	Default string // as an author writes it
	Dim     calc.Dim
	Limits  bool // a band, not one value
	Doc     string
	Source  string
}

// Thresholds lists them, sorted by name.
func Thresholds() []Threshold { return thresholds }

// ThresholdNamed finds one by name.
func ThresholdNamed(name string) (Threshold, bool) {
	for _, t := range thresholds {
		if t.Name == name {
			return t, true
		}
	}
	return Threshold{}, false
}

var thresholds = []Threshold{
	{"accuracy_ratio", "2", calc.Plain, false, "How many times finer than the tolerance an instrument's accuracy must be: half the width of the limit over the accuracy.", "Common practice, no source: a test accuracy ratio of 4:1 where it can be had; below 2:1 a reading decides nothing."},
	{"clean_for", "8 h", calc.Time, false, "How long a cleaned face stays clean.", "Common practice, no source: clean it the day it is sealed."},
	{"cure_in_the_cold", "2", calc.Plain, false, "How many times longer a cure takes for every 10 °C below what its maker states.", "Common practice, no source: reactions go half as fast 10 °C colder."},
	{"default_takes", "5 min", calc.Time, false, "How long a step takes that does not say.", "Common practice, no source."},
	{"explanation_words", "25", calc.Plain, false, "Most words in a sentence that explains.", "ASD-STE100, rule 6.3."},
	{"high_torque", "60 N·m", calc.Torque, false, "From this torque on, something or somebody must hold the part.", "Common practice, no source."},
	{"one_person_lift", "23 kg", calc.Mass, false, "What one person may lift.", "NIOSH load constant, 1994 equation."},
	{"option_combinations", "64", calc.Plain, false, "Up to how many combinations of options all are tried; beyond it every pair.", "Common practice, no source."},
	{"proof_band", "40..90 %", calc.Plain, true, "The share of proof load in which the preload of a clamp must lie.", "75 % is the usual aim (Shigley, 9th ed., 8-9); the band around it is common practice, no source."},
	{"resolution_ratio", "5", calc.Plain, false, "How many steps of an instrument the tolerance must hold.", "Common practice, no source: five at least, ten where it can be had."},
	{"sentence_words", "20", calc.Plain, false, "Most words in a sentence of an instruction.", "ASD-STE100, rule 5.1."},
	{"strip_margin", "1", calc.Plain, false, "How many times the bolt's breaking load the thread must hold.", "Common practice, no source: the bolt breaks first."},
	{"wrench_range", "20..100 %", calc.Plain, true, "The part of a torque wrench's range in which it is trusted.", "ISO 6789-1 test points 20, 60 and 100 %."},
}
