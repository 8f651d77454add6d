package joint

import (
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"fettle/calc"
)

const longestDesignation = 64

// Shapes of designation. Sub-expressions are named by what they hold.
var (
	size = `(?:(?P<whole>\d{1,2})[ -](?P<num>\d{1,2})/(?P<den>\d{1,2})|(?P<num2>\d{1,2})/(?P<den2>\d{1,2})|(?P<dec>\d{0,2}\.\d{1,4})|(?P<int>\d{1,2}))(?: ?(?:"|″|in\b))?`
	hand = `(?:[ -]*(?P<hand>LH|RH))?`

	metricShape = regexp.MustCompile(`^(?i:M) ?(?P<d>\d{1,3}(?:\.\d{1,2})?)(?: ?[xX×] ?(?P<p>\d{1,2}(?:\.\d{1,3})?))?` +
		`(?: ?- ?[3-9][a-hA-H](?:[3-9][a-hA-H])?(?:/[3-9][a-h](?:[3-9][a-h])?)?)?` + hand + `$`)
	unifiedShape = regexp.MustCompile(`^(?:(?:#|(?i:no)\.? ?)(?P<no>\d{1,2})|` + size + `)(?: ?- ?(?P<n>\d{1,2}(?:\.\d)?))?` +
		` ?-?(?P<series>UN[A-Z]{0,3}|N[CF]|NEF)?(?:[ -]*[123][AB])?` + hand + `$`)
	pipeFront = regexp.MustCompile(`^(?P<series>G|Rc|Rp|R) ?` + size + `(?: ?[AB])?` + hand + `$`)
	pipeBack  = regexp.MustCompile(`^` + size + `(?: ?- ?(?P<n>\d{1,2}(?:\.\d)?))? ?-?(?P<series>NPTF|NPT|NPSM|NPSF|NPS|BSPP|BSPT|BSP)` + hand + `$`)
	others    = regexp.MustCompile(`^(?:Tr ?\d{1,3}(?:\.\d)? ?[x×] ?\d{1,2}(?:\.\d)?|\d{1,2} ?BA|` + size + `(?: ?- ?\d{1,2})? ?-?(?P<series>BSW|BSF|BSC|ACME))` + hand + `$`)

	commaIn  = regexp.MustCompile(`^(?i:M).*\d,\d`)
	dashedIn = regexp.MustCompile(`^(?i:M) ?(\d{1,3}(?:\.\d)?) ?[-*/ ] ?(\d\.\d{1,2}|\d)$`)
)

// ParseThread reads a thread designation: "M10", "M10x1.5", "M8x1 LH",
// "1/4-20 UNC", "3/8-24", "#10-32 UNF", "1 1/8-12 UNF", "G1/4", "1/2 NPT".
// A metric size without a pitch has its coarse one, an inch size with a series
// and no count has that of its series. Tolerance classes are read over. Pipe,
// trapezoidal and Whitworth threads are known and not screened.
//
// The problem points, in Span, to the wrong part of text.
func ParseThread(text string) (Thread, *calc.Problem) {
	if len(text) > longestDesignation {
		return Thread{}, notThread("This is too long for a thread designation.", calc.Span{End: int32(len(text))})
	}
	for _, f := range []struct {
		shape *regexp.Regexp
		read  func(string, parts) (Thread, *calc.Problem)
	}{
		{metricShape, readMetric}, {pipeFront, readPipe}, {pipeBack, readPipe}, {others, readOther}, {unifiedShape, readUnified},
	} {
		if m := f.shape.FindStringSubmatchIndex(text); m != nil {
			p := parts{text, f.shape, m}
			t, problem := f.read(text, p)
			t.Text, t.LeftHand = text, p.get("hand") == "LH"
			return t, problem
		}
	}
	p := notThread(quoted(text)+" is not a thread designation.", calc.Span{End: int32(len(text))})
	if commaIn.MatchString(text) {
		p.Remedy = "Write the pitch with a point: " + quoted(strings.ReplaceAll(text, ",", ".")) + "."
	} else if m := dashedIn.FindStringSubmatch(text); m != nil {
		p.Remedy = "Write " + quoted("M"+m[1]+"x"+m[2]) + "."
	}
	return Thread{}, p
}

func notThread(message string, at calc.Span) *calc.Problem {
	return &calc.Problem{Span: at, Message: message,
		Reason: "The builder cannot tell which fastener or tap this is.",
		Remedy: `Write it as "M10x1.5", "M8x1 LH", "3/8-24 UNF", "#10-32 UNF", "G1/4" or "1/2 NPT".`}
}

// parts are the named pieces of a designation that matched its shape.
type parts struct {
	text  string
	shape *regexp.Regexp
	at    []int
}

func (p parts) span(name string) calc.Span {
	i := p.shape.SubexpIndex(name)
	if i < 0 || p.at[2*i] < 0 {
		return calc.Span{End: int32(len(p.text))}
	}
	return calc.Span{Start: int32(p.at[2*i]), End: int32(p.at[2*i+1])}
}

func (p parts) get(name string) string {
	i := p.shape.SubexpIndex(name)
	if i < 0 || p.at[2*i] < 0 {
		return ""
	}
	return p.text[p.at[2*i]:p.at[2*i+1]]
}

// size is the inch size; it may be any number from zero up, or a problem.
func (p parts) size() (*big.Rat, *calc.Problem) {
	num, den := p.get("num"), p.get("den")
	if num == "" {
		num, den = p.get("num2"), p.get("den2")
	}
	switch {
	case num != "":
		switch den {
		case "2", "4", "8", "16", "32", "64":
		default:
			return nil, notThread("Inch sizes come in halves down to 64ths, and this is in parts of "+den+".", calc.Span{End: int32(len(p.text))})
		}
		r := rat(num + "/" + den)
		if w := p.get("whole"); w != "" {
			r = add(r, rat(w))
		}
		return r, nil
	case p.get("dec") != "":
		return rat("0" + p.get("dec")), nil
	}
	return rat(p.get("int")), nil
}

func readMetric(text string, p parts) (Thread, *calc.Problem) {
	d := rat(p.get("d"))
	usual, known := coarse[d.RatString()]
	pitch := usual
	if w := p.get("p"); w != "" {
		pitch = rat(w)
	} else if !known {
		return Thread{}, &calc.Problem{Span: p.span("d"), Message: quoted(text) + " has no coarse pitch.",
			Reason: "Without its pitch the builder cannot tell which thread this is.",
			Remedy: `Write the pitch too, as in "M10x1.25", and check the diameter.`}
	}
	if nearest := nearestPitches(pitch); nearest != "" {
		return Thread{}, &calc.Problem{Span: p.span("p"), Message: "No metric thread has a pitch of " + p.get("p") + " mm.",
			Reason: "The builder will not find this fastener or tap.", Remedy: "Correct the pitch: " + nearest + " mm."}
	}
	if d.Cmp(one) < 0 || less(d, mul(whole(3), pitch)) {
		return Thread{}, &calc.Problem{Span: p.span("p"), Message: "A pitch of " + pitch.RatString() + " mm is too coarse for " + d.RatString() + " mm.",
			Reason: "No such thread can be cut.", Remedy: "Correct the diameter or the pitch."}
	}
	series := "fine"
	if known && pitch.Cmp(usual) == 0 {
		series = "coarse"
	}
	return Thread{Form: Metric, Series: series,
		Major: calc.NewQuantity(d, millimetre, calc.Exact), Pitch: calc.NewQuantity(pitch, millimetre, calc.Exact)}, nil
}

// nearestPitches is empty for a pitch of ISO 261, else names the ones beside it.
func nearestPitches(pitch *big.Rat) string {
	below := ""
	for _, r := range pitches {
		switch r.Cmp(pitch) {
		case 0:
			return ""
		case 1:
			if below == "" {
				return decimal(r)
			}
			return below + " or " + decimal(r)
		}
		below = decimal(r)
	}
	return below
}

func readUnified(text string, p parts) (Thread, *calc.Problem) {
	d, n, problem := p.unifiedSize()
	if problem != nil {
		return Thread{}, problem
	}
	series := strings.NewReplacer("R", "", "J", "").Replace(p.get("series")) // root forms have the same count
	if strings.HasPrefix(series, "N") {
		series = "U" + series // names of before 1949
	}
	table, standard := perInch[series]
	if !standard && series != "" && series != "UN" && series != "UNS" {
		return Thread{}, &calc.Problem{Span: p.span("series"), Message: quoted(p.get("series")) + " is not a series of inch threads.",
			Reason: "The builder cannot tell which fastener or tap this is.", Remedy: "Write UNC, UNF, UNEF, UN or UNS."}
	}
	usual := table[d.RatString()]
	switch {
	case n == nil && usual == nil:
		return Thread{}, missingCount(text, d, p)
	case n == nil:
		n = usual
	case usual != nil && n.Cmp(usual) != 0 && !oldOneInch(d, n, series):
		return Thread{}, &calc.Problem{Span: p.span("n"),
			Message: quoted(text) + " contradicts itself: " + series + " of this size has " + decimal(usual) + " threads to the inch.",
			Reason:  "The builder will take one or the other, and the wrong one cross-threads.", Remedy: otherSeries(d, n, series)}
	case n.Cmp(rat("3")) < 0 || less(mul(d, n), whole(3)):
		return Thread{}, &calc.Problem{Span: p.span("n"), Message: decimal(n) + " threads to the inch is too coarse for this size.",
			Reason: "No such thread can be cut.", Remedy: "Correct the size or the count."}
	}
	if series == "" {
		series = seriesOf(d, n)
	}
	return Thread{Form: Unified, Series: series,
		Major: calc.NewQuantity(d, inch, calc.Exact), Pitch: calc.NewQuantity(quo(one, n), inch, calc.Exact)}, nil
}

// unifiedSize gives the diameter and the count; the count is nil if not written.
// "10-32" is a number 10 screw and "1-8" one inch: whole numbers are numbered
// screws where the count is that of one.
func (p parts) unifiedSize() (d, n *big.Rat, _ *calc.Problem) {
	if w := p.get("n"); w != "" {
		if n = rat(w); n.Sign() == 0 {
			return nil, nil, notThread("A thread has more than 0 turns to the inch.", p.span("n"))
		}
	}
	number := p.get("no")
	if w := p.get("int"); number == "" && w != "" && n != nil {
		if i, _ := strconv.Atoi(w); i <= 12 && seriesOf(numberSize(i), n) != "UN" {
			number = w
		}
	}
	if number != "" {
		i, _ := strconv.Atoi(number)
		d = numberSize(i)
		if perInch["UNC"][d.RatString()] == nil && i != 0 {
			return nil, nil, notThread("There is no number "+number+" screw.", p.span("no"))
		}
		return d, n, nil
	}
	d, problem := p.size()
	if problem == nil && d.Sign() == 0 {
		problem = notThread("A thread has a diameter above zero.", calc.Span{End: int32(len(p.text))})
	}
	return d, n, problem
}

// oldOneInch is 1-14, UNS by the standard and sold as UNF for as long as anybody remembers.
func oldOneInch(d, n *big.Rat, series string) bool {
	return series == "UNF" && d.Cmp(one) == 0 && n.Cmp(whole(14)) == 0
}

// seriesOf names the series that d and n make, or "UN".
func seriesOf(d, n *big.Rat) string {
	for _, s := range seriesInOrder {
		if usual := perInch[s][d.RatString()]; usual != nil && usual.Cmp(n) == 0 {
			return s
		}
	}
	return "UN"
}

func otherSeries(d, n *big.Rat, written string) string {
	if s := seriesOf(d, n); s != "UN" {
		return "Write " + s + ", or " + decimal(perInch[written][d.RatString()]) + " for the count; look at the drawing."
	}
	return "Write " + decimal(perInch[written][d.RatString()]) + " for the count, or UNS for the series; look at the drawing."
}

func missingCount(text string, d *big.Rat, p parts) *calc.Problem {
	problem := &calc.Problem{Span: calc.Span{End: int32(len(text))}, Message: quoted(text) + " does not say how many threads to the inch.",
		Reason: "Coarse and fine do not fit each other.", Remedy: `Write the count, as in "3/8-24 UNF".`}
	var choices []string
	for _, s := range seriesInOrder {
		if n := perInch[s][d.RatString()]; n != nil {
			choices = append(choices, decimal(n)+" for "+s)
		}
	}
	if len(choices) > 0 {
		problem.Remedy = "Write the count: " + strings.Join(choices, ", ") + "."
	}
	return problem
}

func readPipe(text string, p parts) (Thread, *calc.Problem) {
	d, problem := p.size()
	if problem != nil {
		return Thread{}, problem
	}
	series, family := p.get("series"), "G"
	if strings.HasPrefix(series, "NP") {
		family = "NPT"
	}
	usual := pipePerInch[family][d.RatString()]
	if usual == nil {
		return Thread{}, &calc.Problem{Span: calc.Span{End: int32(len(text))}, Message: quoted(text) + " is not a size of pipe thread.",
			Reason: "The builder will not find this fitting.", Remedy: `Write a trade size, as in "G1/4" or "1/2 NPT".`}
	}
	if w := p.get("n"); w != "" && rat(w).Cmp(usual) != 0 {
		return Thread{}, &calc.Problem{Span: p.span("n"), Message: "This pipe size has " + decimal(usual) + " threads to the inch, not " + w + ".",
			Reason: "The wrong one cross-threads and leaks.", Remedy: "Write " + decimal(usual) + ", or leave the count out."}
	}
	return Thread{Form: Pipe, Series: series}, nil
}

func readOther(_ string, p parts) (Thread, *calc.Problem) {
	return Thread{Form: Other, Series: p.get("series")}, nil
}
