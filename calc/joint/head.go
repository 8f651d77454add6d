package joint

import (
	"math/big"
	"regexp"
	"strings"

	"fettle/calc"
)

// Head is one usual width of what a socket or key fits, for one thread.
type Head struct {
	Width  calc.Quantity // across flats, mm or in
	What   string        // "ISO hexagon", "socket-head key", …
	Source Source
}

// headRow is one standard's widths: pairs of thread size and width.
type headRow struct {
	what   string
	form   Form
	widths map[string]*big.Rat
	source Source
}

var library = func(standard string) Source {
	return Source{standard + ", as data in public fastener libraries", ReadInReproduction}
}

// headRows in the order that Heads gives them.
var headRows = []headRow{
	{"ISO hexagon", Metric, pairs("1.6 3.2", "2 4", "2.5 5", "3 5.5", "4 7", "5 8", "6 10", "7 11", "8 13", "10 16", "12 18", "14 21", "16 24", "18 27",
		"20 30", "22 34", "24 36", "27 41", "30 46", "33 50", "36 55", "39 60"), library("ISO 4014, 4017 and 4032; M1.6 to M2.5, M7, M33 and M39 from memory")},
	{"DIN hexagon", Metric, pairs("3 5.5", "4 7", "5 8", "6 10", "8 13", "10 17", "12 19", "14 22", "16 24", "18 27", "20 30", "22 32", "24 36",
		"27 41", "30 46"), library("DIN 931, 933 and 934")},
	{"flanged hexagon", Metric, pairs("5 8", "6 10", "8 13", "10 15", "12 16", "14 18", "16 21"), Source{"ISO 15071 and 4162", FromMemory}},
	{"flanged hexagon, large", Metric, pairs("10 16", "12 18", "14 21", "16 24"), Source{"DIN 6921 and EN 1665", FromMemory}},
	{"small hexagon", Metric, pairs("8 12", "10 14", "12 17"), Source{"JIS B 1180 and B 1189", FromMemory}},
	{"socket-head key", Metric, pairs("3 2.5", "4 3", "5 4", "6 5", "8 6", "10 8", "12 10", "14 12", "16 14", "20 17", "24 19"), library("ISO 4762")},
	{"button-head key", Metric, pairs("3 2", "4 2.5", "5 3", "6 4", "8 5", "10 6", "12 8"), Source{"ISO 7380-1", FromMemory}},
	{"set-screw key", Metric, pairs("3 1.5", "4 2", "5 2.5", "6 3", "8 4", "10 5", "12 6", "16 8"), Source{"ISO 4026 to 4029", FromMemory}},
	{"inch hexagon", Unified, pairs("1/4 7/16", "5/16 1/2", "3/8 9/16", "7/16 5/8", "1/2 3/4", "9/16 13/16", "5/8 15/16", "3/4 9/8", "7/8 21/16", "1 3/2",
		"9/8 27/16", "5/4 15/8"), library("ASME B18.2.1; 9/16 and above 1 in from memory")},
	{"inch nut", Unified, pairs("1/4 7/16", "5/16 1/2", "3/8 9/16", "7/16 11/16", "1/2 3/4", "9/16 7/8", "5/8 15/16", "3/4 9/8", "7/8 21/16", "1 3/2"),
		Source{"ASME B18.2.2", FromMemory}},
	{"aircraft hexagon", Unified, pairs("#10 3/8", "1/4 7/16", "5/16 1/2", "3/8 9/16", "7/16 11/16", "1/2 3/4", "9/16 7/8", "5/8 15/16", "3/4 17/16"), Source{"NAS and AN hexagon bolts", FromMemory}},
	{"machine-screw hexagon", Unified, pairs("#6 1/4", "#8 1/4", "#10 5/16", "#12 5/16"), Source{"ASME B18.6.3", FromMemory}},
	{"machine-screw nut", Unified, pairs("#4 1/4", "#5 5/16", "#6 5/16", "#8 11/32", "#10 3/8", "#12 7/16"), Source{"ASME B18.6.3", FromMemory}},
	{"socket-head key", Unified, pairs("#4 3/32", "#5 3/32", "#6 7/64", "#8 9/64", "#10 5/32", "1/4 3/16", "5/16 1/4", "3/8 5/16", "7/16 3/8", "1/2 3/8",
		"5/8 1/2", "3/4 5/8", "7/8 3/4", "1 3/4"), Source{"ASME B18.3", FromMemory}},
}

// Heads lists the usual widths for a thread, in a fixed order; none for a
// thread that is not Screened or a size outside the tables.
func Heads(t Thread) []Head {
	var all []Head
	if !t.Screened() {
		return nil
	}
	for _, r := range headRows {
		if w := r.widths[t.Major.Num().RatString()]; w != nil && r.form == t.Form {
			all = append(all, Head{calc.NewQuantity(w, t.Major.Unit, calc.Exact), r.what, r.source})
		}
	}
	return all
}

// Fit is whether a socket or key fits a fastener.
type Fit uint8

// Answers to whether it fits.
const (
	FitUnknown Fit = iota // not a width across flats, or no table for the thread
	FitUsual              // one of the usual widths for the thread
	FitUnusual            // none of them
)

var widthShape = regexp.MustCompile(`^(?:(\d{1,3}) ?[- ] ?(\d{1,2})/(\d{1,2})|(\d{1,2})/(\d{1,2})|(\d{1,3}(?:\.\d{1,3})?)) ?(mm|in\.?|"|″)?(?: ?(?:AF|A/F|across flats|hex))?$`)

// AcrossFlats reads a width designation: "17 mm", "9/16 in", "1 1/8 in", "13".
// A bare whole or decimal number counts millimetres, a bare fraction inches. ok
// is false for anything else, such as "T30".
func AcrossFlats(text string) (width calc.Quantity, ok bool) {
	m := widthShape.FindStringSubmatch(text)
	if m == nil {
		return calc.Quantity{}, false
	}
	w, u := new(big.Rat), millimetre
	for _, f := range [][2]string{{m[2], m[3]}, {m[4], m[5]}} {
		if f[0] == "" {
			continue
		}
		den := rat(f[1])
		if den.Sign() == 0 {
			return calc.Quantity{}, false
		}
		w, u = quo(rat(f[0]), den), inch
	}
	if n := m[1] + m[6]; n != "" {
		w = add(w, rat(n))
	}
	switch {
	case m[7] == "mm":
		u = millimetre
	case m[7] != "":
		u = inch
	}
	return calc.NewQuantity(w, u, calc.Exact), w.Sign() > 0
}

// SocketFits judges a socket's or key's size against the usual heads of a
// thread; it also gives those heads, for the finding. Two designations that are
// both authored are compared exactly, as written, and need no table.
func SocketFits(size string, t Thread) (Fit, []Head) {
	heads := Heads(t)
	width, ok := AcrossFlats(strings.TrimSpace(size))
	if !ok || len(heads) == 0 {
		return FitUnknown, heads
	}
	for _, h := range heads {
		if h.Width.Cmp(width) == 0 {
			return FitUsual, heads
		}
	}
	return FitUnusual, heads
}
