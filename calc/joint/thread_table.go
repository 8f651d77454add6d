package joint

import "math/big"

// coarse gives the coarse pitch of each metric diameter, in mm.
// Source: ISO 261, from memory; M3 to M24 agree with the ISO 898-1 table (read in reproductions).
var coarse = pairs(
	"1 0.25", "1.1 0.25", "1.2 0.25", "1.4 0.3", "1.6 0.35", "1.8 0.35", "2 0.4", "2.2 0.45", "2.5 0.45",
	"3 0.5", "3.5 0.6", "4 0.7", "4.5 0.75", "5 0.8", "6 1", "7 1", "8 1.25", "9 1.25", "10 1.5",
	"11 1.5", "12 1.75", "14 2", "16 2", "18 2.5", "20 2.5", "22 2.5", "24 3", "27 3", "30 3.5",
	"33 3.5", "36 4", "39 4", "42 4.5", "45 4.5", "48 5", "52 5", "56 5.5", "60 5.5", "64 6", "68 6",
)

// pitches are all that ISO 261 uses, in mm, rising. Source: from memory.
var pitches = rats("0.2 0.25 0.3 0.35 0.4 0.45 0.5 0.6 0.7 0.75 0.8 1 1.25 1.5 1.75 2 2.5 3 3.5 4 4.5 5 5.5 6 8")

// perInch gives the threads to an inch of each unified diameter (in inches) by series.
// Source: ASME B1.1, from memory; the sizes in Shigley 9th ed. Table 8-2 agree (read in the document).
var perInch = map[string]map[string]*big.Rat{
	"UNC": pairs(
		"#1 64", "#2 56", "#3 48", "#4 40", "#5 40", "#6 32", "#8 32", "#10 24", "#12 24",
		"1/4 20", "5/16 18", "3/8 16", "7/16 14", "1/2 13", "9/16 12", "5/8 11", "3/4 10", "7/8 9", "1 8",
		"9/8 7", "5/4 7", "11/8 6", "3/2 6", "7/4 5", "2 4.5", "9/4 4.5", "5/2 4", "11/4 4", "3 4",
		"13/4 4", "7/2 4", "15/4 4", "4 4",
	),
	"UNF": pairs(
		"#0 80", "#1 72", "#2 64", "#3 56", "#4 48", "#5 44", "#6 40", "#8 36", "#10 32", "#12 28",
		"1/4 28", "5/16 24", "3/8 24", "7/16 20", "1/2 20", "9/16 18", "5/8 18", "3/4 16", "7/8 14", "1 12",
		"9/8 12", "5/4 12", "11/8 12", "3/2 12",
	),
	"UNEF": pairs(
		"#12 32", "1/4 32", "5/16 32", "3/8 32", "7/16 28", "1/2 28", "9/16 24", "5/8 24", "11/16 24",
		"3/4 20", "13/16 20", "7/8 20", "15/16 20", "1 20",
	),
}

// seriesInOrder is the order in which a series is looked for when none is written.
var seriesInOrder = []string{"UNC", "UNF", "UNEF"}

// pipePerInch gives the threads to an inch of each pipe size.
// Source: ISO 228-1, ISO 7-1 and ASME B1.20.1, from memory.
var pipePerInch = map[string]map[string]*big.Rat{
	"G": pairs("1/16 28", "1/8 28", "1/4 19", "3/8 19", "1/2 14", "5/8 14", "3/4 14", "7/8 14", "1 11", "9/8 11",
		"5/4 11", "3/2 11", "7/4 11", "2 11", "9/4 11", "5/2 11", "11/4 11", "3 11", "7/2 11", "4 11", "5 11", "6 11"),
	"NPT": pairs("1/16 27", "1/8 27", "1/4 18", "3/8 18", "1/2 14", "3/4 14", "1 11.5", "5/4 11.5", "3/2 11.5", "2 11.5",
		"5/2 8", "3 8", "7/2 8", "4 8", "5 8", "6 8"),
}

// numberSize is the diameter in inches of a numbered screw: 0.060 + 0.013 n.
// Source: ASME B1.1, from memory; #5 to #12 agree with Shigley Table 8-2 (read in the document).
func numberSize(n int) *big.Rat { return add(rat("0.060"), mul(rat("0.013"), whole(n))) }

// pairs reads a table of "size value"; its key is the size as a reduced fraction.
func pairs(rows ...string) map[string]*big.Rat {
	table := make(map[string]*big.Rat, len(rows))
	for _, row := range rows {
		size, value, _ := cutSpace(row)
		table[sizeKey(size).RatString()] = rat(value)
	}
	return table
}

func sizeKey(size string) *big.Rat {
	if size[0] == '#' {
		return numberSize(int(rat(size[1:]).Num().Int64()))
	}
	return rat(size)
}
