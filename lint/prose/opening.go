package prose

import "strings"

// Opening says how a sentence begins.
type Opening uint8

// The openings.
const (
	Unsure Opening = iota
	Imperative
	NoVerb // with a thing, a doing in -ing, or a pronoun: no instruction
)

// lead are words that may stand before the verb of an instruction.
var lead = set(`then now next first second third finally lastly again also once twice only just always never please afterwards
	meanwhile together still otherwise so and or but do don't not temporarily trial dry finger double cross part half pre re
	too here there even at-last hand left-handed`)

// starters begin something that stands before the instruction: a condition, a
// time, a place, a means.
var starters = set(`if when whenever once before after as while until unless where wherever should with without using by in on at
	from to for through into onto till under over above below between inside outside beside behind against along across around during from
	since because having given working starting keeping holding looking turning beginning standing facing`)

// Leads reports a word that leads up to an instruction: "before", "with".
func Leads(word string) bool { return starters[word] }

// Opens says how a sentence begins, and which word is the verb where it is an
// instruction.
func Opens(s string) (Opening, Word) {
	words := Words(s)
	for i, w := range words {
		switch {
		case i > 0 && commaBefore(s, words[i-1], w) && Verb(w.Text):
			return Imperative, w
		case lead[w.Text] && !(Verb(w.Text) && i+1 < len(words) && determiners[words[i+1].Text]) || adverb(w.Text):
			continue
		case starters[w.Text]:
			return opensLater(s, words[i:])
		case Verb(w.Text):
			if i+1 < len(words) && nouns[w.Text] && nounUse(words[i+1].Text) {
				return NoVerb, w
			}
			return Imperative, w
		case !articles[w.Text] && !gerund(w.Text) && i+1 < len(words) && determiners[words[i+1].Text]:
			return Unsure, w // a verb that nobody listed
		case noVerb(w.Text):
			if orderedLater(s, words[i:]) {
				return Unsure, w
			}
			return NoVerb, w
		}
		return Unsure, w
	}
	return Unsure, Word{}
}

// BeginsWithVerb is a quick look at the first word: a verb that is nothing else.
func BeginsWithVerb(s string) bool {
	word, rest, _ := strings.Cut(s, " ")
	if word == "" || rest == "" {
		return false
	}
	var small [16]byte
	w := small[:copy(small[:], word)]
	w[0] |= 0x20
	return len(word) <= len(small) && verbs[string(w)] && (!nouns[string(w)] || strings.HasPrefix(rest, "the "))
}

// opensLater looks for the instruction behind a condition: after a comma.
func opensLater(s string, words []Word) (Opening, Word) {
	for i := 1; i < len(words); i++ {
		if !commaBefore(s, words[i-1], words[i]) {
			continue
		}
		for j := i; j < len(words); j++ {
			w := words[j]
			if lead[w.Text] || adverb(w.Text) {
				continue
			}
			if Verb(w.Text) {
				return Imperative, w
			}
			break
		}
	}
	return Unsure, words[0]
}

// orderedLater reports an instruction behind a comma or colon: "Both sides: tighten
// the nuts".
func orderedLater(s string, words []Word) bool {
	for i := 1; i < len(words); i++ {
		if commaBefore(s, words[i-1], words[i]) && Verb(words[i].Text) && (!nouns[words[i].Text] || i+1 < len(words) && Determiner(words[i+1].Text)) {
			return true
		}
	}
	return false
}

func commaBefore(s string, before, w Word) bool {
	return strings.ContainsAny(s[before.End:w.Start], ",:;")
}

// nounUse reports what follows a noun and hardly ever a verb: "check of", "test is".
func nounUse(next string) bool {
	switch next {
	case "of", "is", "are", "was", "were", "must", "should", "has", "have", "can", "will", "shall", "may":
		return true
	}
	return false
}

// determiners begin the name of a thing: what stands before them is a verb.
var determiners = set(`the a an this that these those it its them each every both all any your one two three four five six seven
	eight nine ten`)

// Determiner reports a word that begins the name of a thing.
func Determiner(word string) bool {
	return determiners[word] || word == Value || word != "" && '0' <= word[0] && word[0] <= '9'
}

// noVerb reports a word that no instruction begins with, as far as anybody can be sure.
func noVerb(w string) bool {
	if Verb(w) {
		return false
	}
	if articles[w] || things[w] {
		return true
	}
	if gerund(w) {
		return true
	}
	for _, e := range endings {
		if strings.HasSuffix(w, e) && len(w) > len(e)+2 {
			return !withEnding[w]
		}
	}
	return false
}

func adverb(w string) bool { return len(w) > 4 && strings.HasSuffix(w, "ly") && !Verb(w) }

func gerund(w string) bool {
	return strings.HasSuffix(w, "ing") && len(w) > 5 && !notGerunds[w] && !Verb(w)
}
