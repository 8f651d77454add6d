package words

import (
	"slices"
	"strings"

	"fettle/lang/diag"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// place is where something vague stands in a sentence.
type place struct{ Start, End int }

// vague is a phrase that leaves an amount or a judgement to the reader.
type vague struct {
	words  []string
	unless func(c context) bool // the phrase means something definite here
	of     bool                 // what follows belongs to it: "some grease"
}

// context is a phrase in its sentence.
type context struct {
	sentence string
	words    []prose.Word
	from, to int // of the phrase, in words
}

func (c context) has(words ...string) bool {
	return slices.ContainsFunc(c.words, func(w prose.Word) bool { return slices.Contains(words, w.Text) })
}

func (c context) next(n int) string {
	if i := c.to + n; i < len(c.words) {
		return c.words[i].Text
	}
	return ""
}

func (c context) before(n int) string {
	if i := c.from - n; i >= 0 {
		return c.words[i].Text
	}
	return ""
}

// ends reports a sign in the sentence by which a builder knows that it is enough.
func (c context) ends() bool {
	return c.has("until", "till", "home", "against", "flush", "stop", "stops", "bottoms", "clicks", "click", "touches", "touch", "level", "so", "lies", "sits")
}

// held reports a sentence about holding, which needs no amount.
func (c context) held() bool {
	if c.has("hold", "holds", "held", "holding", "grip", "grips") {
		return true
	}
	switch _, verb := prose.Opens(c.sentence); verb.Text {
	case "grasp", "clamp", "support", "stand", "steady", "brace", "keep", "chock", "wedge":
		return true
	}
	return false
}

// denied reports "not" before the phrase: "never even a little".
func (c context) denied() bool {
	for _, w := range c.words[:c.from] {
		switch w.Text {
		case "not", "never", "no", "nor", "without", "cannot", "don't", "nothing", "neither":
			return true
		}
	}
	return false
}

// given reports a phrase inside a condition or a time: "once all nuts are tight".
func (c context) given() bool {
	for i := c.from - 1; i >= 0; i-- {
		switch c.words[i].Text {
		case "if", "when", "once", "while", "after", "before", "whenever", "as", "unless", "where", "with":
			return true
		}
	}
	return false
}

func (c context) denials() bool { return c.denied() || c.ends() }

// materials are what there can be some of.
var materials = set(`oil grease sealant threadlocker solvent water fluid coolant lubricant paste compound glue adhesive paint wax fuel
	diesel petrol soap detergent anti-seize copper graphite lacquer varnish flux solder resin
	play clearance drag slack force pressure tension preload lash backlash float movement resistance friction heat pull weight
	time more turns shims washers packing tape rag`)

// spans are units that there cannot be a few of.
var spans = set(`minutes seconds hours days drops millimetres millimeters thou thousandths inches degrees litres liters shims grams newtons`)

func set(words string) map[string]bool {
	m := map[string]bool{}
	for w := range strings.FieldsSeq(words) {
		m[w] = true
	}
	return m
}

func phrase(s string, unless func(context) bool) vague {
	return vague{words: strings.Fields(s), unless: unless}
}

// phraseOf is a phrase before one of the nouns only.
func phraseOf(s string, nouns map[string]bool, unless func(context) bool) vague {
	return vague{strings.Fields(s), func(c context) bool { return !nouns[c.next(0)] || unless(c) }, true}
}

// amounts are vague in an instruction.
var amounts = index(
	phrase("as required", nil), phrase("as necessary", nil), phrase("as needed", nil), phrase("as appropriate", nil),
	phrase("a little", func(c context) bool {
		return c.next(0) == "at" && c.next(1) == "a" || c.next(0) == "and" || c.next(0) == "by" || c.denied() || c.ends()
	}),
	phrase("little by little", func(context) bool { return true }),
	phrase("a bit", func(c context) bool { return c.next(0) == "of" || c.next(0) == "at" || c.denials() }),
	phrase("a touch", func(c context) bool { return c.next(0) == "of" && !materials[c.next(1)] || c.denials() }),
	phrase("slightly", func(c context) bool {
		return c.denied() || c.ends() || c.given() || c.next(0) == "different" || c.next(0) == "larger" || c.next(0) == "smaller"
	}),
	phrase("somewhat", nil),
	phrase("firmly", func(c context) bool { return c.denied() || c.ends() || c.held() || c.has("while") }),
	phrase("tightly", func(c context) bool {
		return c.denials() || c.held() || c.has("wrap", "wind", "roll", "coil", "pack", "tie", "twist", "close", "shut")
	}),
	phrase("snugly", func(c context) bool { return c.denials() || c.held() }),
	phrase("securely", func(c context) bool {
		return c.denials() || c.held() || !c.has("tighten", "fasten", "fix", "fit", "bolt", "screw", "attach")
	}),
	phrase("tight", tightIsClear),
	phrase("as tight as", func(context) bool { return false }),
	phrase("hard", func(c context) bool {
		return !c.has("tighten", "torque", "screw") || c.denied() || c.has("face", "chrome")
	}),
	phrase("lightly", func(c context) bool { return !c.has("tighten", "torque", "nip") || c.ends() }),
	phrase("moderately", nil), phrase("sufficiently", beforeAim), phrase("sufficient", beforeAim),
	phrase("adequately", beforeAim), phrase("adequate", beforeAim),
	phraseOf("enough", materials, beforeAim), phrase("enough of it", beforeAim), phrase("more or less", func(c context) bool { return c.given() }),
	phraseOf("some", materials, func(c context) bool { return c.denied() || c.given() }),
	phrase("a small amount", nil), phrase("a generous amount", nil), phrase("a certain amount", nil), phrase("the right amount", nil),
	phrase("a small quantity", nil), phrase("plenty of", func(c context) bool { return c.has("water") }), phrase("lots of", nil), phrase("a lot of", nil),
	phrase("generously", nil), phrase("liberally", nil), phrase("sparingly", nil),
	phraseOf("a few", spans, (context).ends), phraseOf("several", spans, (context).ends), phraseOf("a couple of", spans, (context).ends),
	phrase("for a while", func(c context) bool { return c.ends() }), phrase("for some time", func(c context) bool { return c.ends() }),
	phrase("a little while", func(c context) bool { return c.ends() }),
	phrase("excessive", (context).denied), phrase("excessively", (context).denied),
)

// beforeAim reports "enough … to" and the like, which say what for.
func beforeAim(c context) bool {
	for _, w := range c.words[c.to:] {
		switch w.Text {
		case "to", "for", "that":
			return true
		}
	}
	return c.ends() || c.denied()
}

// tightIsClear reports a "tight" that is no measure of how far to turn something.
func tightIsClear(c context) bool {
	switch c.next(0) {
	case "spot", "spots", "place", "places", "corner", "fit", "against", "in", "on", "round", "around", "between", "bend", "coil", "bolts", "nuts", "screws",
		"joint", "clearance", "limit", "tolerance", "side", "to", "over", "bundle", "loop", "before", "first", "again", "turns":
		return true
	}
	switch c.before(1) {
	case "finger", "hand", "water", "leak", "air", "oil", "gas", "light", "pressure", "too", "the", "a", "thumb", "dust":
		return c.before(1) != "too" || !c.denied()
	}
	return c.denied() && c.before(1) != "too" || c.given() || c.held() || c.has("against", "whether")
}

// criteria are vague where something is judged, besides the amounts.
var criteria = index(
	phrase("properly", nil), phrase("correctly", nil), phrase("satisfactory", nil), phrase("satisfactorily", nil), phrase("acceptable", nil),
	phrase("ok", nil), phrase("okay", nil), phrase("all right", nil), phrase("in order", func(c context) bool { return c.next(0) != "" }),
	phrase("good condition", nil), phrase("good order", nil), phrase("good shape", nil), phrase("good fit", nil), phrase("good enough", nil),
	phrase("good", func(c context) bool { return c.next(0) != "" || !linked(c) }),
	phrase("fine", func(c context) bool { return c.next(0) != "" || !linked(c) }),
	phrase("correct", func(c context) bool { return c.next(0) != "" || !linked(c) }),
	phrase("right", func(c context) bool {
		return c.next(0) != "" || !slices.Contains([]string{"looks", "look", "feels", "feel", "sounds", "sound"}, c.before(1))
	}),
	phrase("normal", func(c context) bool { return c.next(0) != "" || !linked(c) }), phrase("normally", nil),
	phrase("reasonable", nil), phrase("reasonably", nil), phrase("appropriate", nil), phrase("suitable", nil), phrase("suitably", nil),
	phrase("secure", func(c context) bool { return !linked(c) }), phrase("securely", nil), phrase("serviceable", nil),
	phrase("as it should", nil), phrase("as they should", nil), phrase("well enough", nil),
	phrase("excessive", nil), phrase("excessively", nil), phrase("minimal", nil), phrase("significant", nil), phrase("noticeable", func(context) bool { return true }),
	phrase("too much", nil), phrase("acceptably", nil), phrase("adequate", nil), phrase("adequately", nil), phrase("sufficient", nil), phrase("sufficiently", nil),
	phrase("as required", nil), phrase("as necessary", nil), phrase("as needed", nil), phrase("as appropriate", nil),
	phrase("firm", func(c context) bool { return !linked(c) || c.next(0) != "" }), phrase("firmly", func(c context) bool { return c.has("against") }),
	phrase("tight", func(c context) bool {
		return c.given() || tightIsClear(c) && c.before(1) != "too"
	}), phrase("tightly", func(c context) bool { return c.has("against") }),
	phrase("a little", (context).denied), phrase("a bit", (context).denied), phrase("slightly", (context).denied),
	phraseOf("some", materials, (context).given),
	phrase("snug", func(c context) bool { return !linked(c) }), phrase("snugly", nil),
)

// linked reports a phrase that says what something is: "is good", "looks normal".
func linked(c context) bool {
	for n := 1; n <= 2; n++ {
		switch c.before(n) {
		case "is", "are", "be", "looks", "look", "feels", "feel", "sounds", "sound", "seems", "seem", "stays", "remains", "appears", "it's":
			return true
		}
	}
	return false
}

// phrases are found by their first word; longer ones come first.
type phrases struct {
	byWord map[string][]vague
	starts map[[3]byte][]string // whole phrases by their first letters
}

func index(all ...vague) phrases {
	p := phrases{map[string][]vague{}, map[[3]byte][]string{}}
	for _, v := range all {
		p.byWord[v.words[0]] = append(p.byWord[v.words[0]], v)
		s := strings.Join(v.words, " ")
		p.starts[three(s)] = append(p.starts[three(s)], s)
	}
	for _, same := range p.byWord {
		slices.SortStableFunc(same, func(a, b vague) int { return len(b.words) - len(a.words) })
	}
	return p
}

// reportVague says once for a sentence what is vague in it.
func reportVague(p *rule.Pass, s prose.Sentence, places []place, what string) {
	first := places[0]
	var more []func(*diag.Finding)
	for _, at := range places[1:] {
		more = append(more, rule.Related(s.Span(at.Start, at.End), "So is “"+s.Text[at.Start:at.End]+"”."))
	}
	p.Report(s.Span(first.Start, first.End), "“"+s.Text[first.Start:first.End]+"” "+what+".", more...)
}

// find gives the phrases of a sentence that are vague in it.
func (p phrases) find(s string) []place {
	var all []place
	words := prose.Words(s)
	for i := 0; i < len(words); i++ {
		for _, v := range p.byWord[words[i].Text] {
			to := i + len(v.words)
			if to > len(words) || !matches(words[i:to], v.words) {
				continue
			}
			if v.unless == nil || !v.unless(context{s, words, i, to}) {
				if v.of {
					to++
				}
				all = append(all, place{words[i].Start, words[to-1].End})
			}
			i = to - 1
			break
		}
	}
	return all
}

func matches(words []prose.Word, phrase []string) bool {
	for i, w := range phrase {
		if words[i].Text != w {
			return false
		}
	}
	return true
}

// three are the first three letters of s, small, with a blank for anything else.
func three(s string) (out [3]byte) {
	for i := range out {
		if i < len(s) {
			out[i] = small(s[i])
		} else {
			out[i] = ' '
		}
	}
	return out
}

func small(c byte) byte {
	if c |= 0x20; 'a' <= c && c <= 'z' {
		return c
	}
	return ' '
}

// mayStand is a quick look for any of the phrases.
func (p phrases) mayStand(s string) bool {
	before := byte(' ')
	for i := 0; i < len(s); i++ {
		c := small(s[i])
		if c != ' ' && before == ' ' {
			for _, phrase := range p.starts[three(s[i:])] {
				if stands(s[i:], phrase) {
					return true
				}
			}
		}
		before = c
	}
	return false
}

// stands reports that s begins with the words of the phrase.
func stands(s, phrase string) bool {
	for i := range len(phrase) {
		if i >= len(s) || small(s[i]) != phrase[i] {
			return false
		}
	}
	return len(s) == len(phrase) || small(s[len(phrase)]) == ' '
}
