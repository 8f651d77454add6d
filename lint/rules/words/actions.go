package words

import (
	"slices"
	"strings"

	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/tooling"
)

// What counts in a title is stopping points, not verbs: "Push the shaft home and
// read the dial" is one. Verbs count as far as the bench would make a step of
// them; two of the same sort, or on the same thing, are mostly one motion.

// does is what the bench makes of the step, as a sort of verb; "" where it is
// several things or none.
func does(s *model.Step) sort {
	for _, e := range s.Kind.Does {
		if !s.Has(e.Attr) {
			continue
		}
		switch e.Verb {
		case kind.Cleans:
			return cleaning
		case kind.Joins, kind.Starts, kind.PutsOn:
			return joining
		case kind.Takes, kind.Opens, kind.PutsAway, kind.Slackens:
			return opening
		case kind.Tightens:
			return tightening
		case kind.Locks:
			return locking
		case kind.Wets, kind.Seals:
			return wetting
		case kind.Reads, kind.Sets, kind.Accepts:
			return judging
		case kind.Picks, kind.WorksOut:
			return picking
		case kind.Heats:
			return heating
		case kind.Fills:
			return filling
		case kind.Drains:
			return draining
		case kind.MakesMark:
			return marking
		case kind.Drives:
			return driving
		case kind.Waits:
			return waiting
		case kind.Stops:
			return stopping
		case kind.Touches, kind.Lifts:
			return working
		}
		return ""
	}
	return ""
}

// action is a verb with what it acts on.
type action struct {
	sentence prose.Sentence
	verb     prose.Word
	object   []prose.Word // up to the next verb; empty where both share one
	sort     sort
	loose    bool
	guessed  bool // the sort is the step's
	then     bool // said to come after what stands before it
}

// written is the verb as it stands in the title.
func (a action) written() string { return a.sentence.Text[a.verb.Start:a.verb.End] }

// joined is a quick look for what joins two actions: a word, or a mark with more
// behind it.
func joined(s string) bool {
	if strings.Contains(s, " and ") || strings.Contains(s, "then ") {
		return true
	}
	i := strings.IndexAny(s, ",;:.")
	return i >= 0 && strings.TrimSpace(s[i+1:]) != ""
}

// severalActions finds two verbs of a title after each of which a builder would stop.
func severalActions(sentences []prose.Sentence, s *model.Step) (a, b action, ok bool) {
	var all []action
	for _, sentence := range sentences {
		all = append(all, actions(sentence)...)
	}
	if len(all) < 2 {
		return a, b, false
	}
	own := does(s)
	for i := range all {
		all[i].sort, all[i].loose = sortOf(all[i].verb.Text, all[i].object)
		if onlyTools(all[i].object, s) {
			all[i].sort, all[i].loose = "", true
		}
	}
	switch first := &all[0]; {
	case own == "":
	case first.sort == own:
		first.loose = false
	case first.loose:
		first.sort, first.loose, first.guessed = own, false, true
	}
	for i := range all {
		for j := i + 1; j < len(all); j++ {
			if apart(all[i], all[j], own, tooling.Does(s.Kind, kind.Accepts) != "", all[i+1:j]) {
				return all[i], all[j], true
			}
		}
	}
	return a, b, false
}

// apart reports that a builder would stop after a and again after b.
func apart(a, b action, own sort, accepts bool, between []action) bool {
	if b.then && named(a.object) && named(b.object) && (own != judging || a.sort == judging && !a.guessed) {
		return true
	}
	if a.sort == "" || b.sort == "" {
		return false
	}
	shared := !things(a.object)
	for _, m := range between { // "Wash, dry and oil the shells"
		shared = shared && !things(m.object)
	}
	switch {
	case a.sort == b.sort:
		twice := a.verb.Text == b.verb.Text
		if b.verb.Text == "measure" && accepts { // which is a step of its own
			return true
		}
		if shared || a.guessed || !named(a.object) || !named(b.object) && !(twice && a.sort == judging) {
			return false
		}
		switch a.sort {
		case judging:
			return a.verb.Text != "adjust" && b.verb.Text != "adjust"
		case waiting, stopping:
			return twice
		case opening: // a clip and its hose come off in one go
			return !a.loose && !b.loose || fasteners(a.object)
		}
		return true
	case shared:
		return handling[a.sort] && handling[b.sort]
	case a.loose:
		return false
	case b.sort == judging && own == judging: // how one reading is taken
		return a.sort != cleaning && a.sort != joining && a.sort != driving && a.sort != filling && a.sort != waiting
	case b.loose:
		return !a.guessed || sorts[a.verb.Text] != ""
	}
	return true
}

func fasteners(object []prose.Word) bool {
	return slices.ContainsFunc(object, func(w prose.Word) bool {
		return w.Text == "bolts" || w.Text == "nuts" || w.Text == "screws" || w.Text == "studs"
	})
}

// handling are the sorts that stay apart even on the same thing: "Fit and tighten".
var handling = map[sort]bool{joining: true, opening: true, tightening: true, locking: true, wetting: true, draining: true, filling: true, heating: true, marking: true}

// named reports an object by its own name, not "it".
func named(object []prose.Word) bool {
	for _, w := range object {
		if aside[w.Text] || w.Text == "both" || w.Text == "each" || w.Text == "all" {
			continue
		}
		return w.Text != "it" && w.Text != "them"
	}
	return false
}

// things reports an object that is more than little words: not "switch off and".
func things(object []prose.Word) bool {
	return slices.ContainsFunc(object, func(w prose.Word) bool { return !aside[w.Text] })
}

// aside are little words that stand with a verb or part its object from the rest.
var aside = set("off out up down in on over back again through from to at with into onto by of for under along across around")

// onlyTools reports an object that a tool of the step is: "Fit the puller".
func onlyTools(object []prose.Word, s *model.Step) bool {
	for len(object) > 0 && aside[object[0].Text] {
		object = object[1:]
	}
	if i := slices.IndexFunc(object, func(w prose.Word) bool { return aside[w.Text] }); i >= 0 {
		object = object[:i]
	}
	if len(object) == 0 {
		return false
	}
	head := object[len(object)-1].Text
	return head == "dial" || slices.ContainsFunc(s.AllRefs("tools"), func(r model.Ref) bool {
		return r.To != nil && strings.HasSuffix(strings.ToLower(r.To.Plain("name")), head)
	})
}

// actions are the instructions of a sentence: its verb, and those joined to it.
func actions(s prose.Sentence) []action {
	opens, first := prose.Opens(s.Text)
	if opens == prose.NoVerb || first.Text == "" {
		return nil
	}
	words := prose.Words(s.Text)
	at := slices.IndexFunc(words, func(w prose.Word) bool { return w.Start == first.Start })
	all := []action{{sentence: s, verb: first}}
	from, side := at+1, main
	for i := at + 1; i < len(words); i++ {
		stop := strings.ContainsAny(s.Text[words[i-1].End:words[i].Start], ",;:")
		if c := clauseAt(words, i); c > side {
			side = c
		}
		j, then := i, false
		for j < len(words) && (words[j].Text == "and" || words[j].Text == "then" || words[j].Text == "afterwards") {
			then = then || words[j].Text != "and"
			j++
		}
		if stop && j < len(words) && objectFollows(words, j) {
			side = main
		}
		if j == i && !stop || j == len(words) || j+1 < len(words) && clauseAt(words, j) > main || side == meanwhile && !then {
			continue
		}
		w := words[j]
		if !prose.Verb(w.Text) || prose.NounToo(w.Text) && !then && !objectFollows(words, j) {
			continue
		}
		if sort, _ := sortOf(w.Text, words[j+1:]); side == limit && !then && sort == "" {
			continue
		}
		all[len(all)-1].object = words[from:i]
		all = append(all, action{sentence: s, verb: w, then: then})
		from, i, side = j+1, j, main
	}
	all[len(all)-1].object = words[min(from, len(words)):]
	return all
}

// clause says what sort of clause a verb stands in: what is asked for, a limit to
// it (until the mark shows), or what goes on meanwhile (while you turn the shaft).
type clause uint8

const (
	main clause = iota
	limit
	meanwhile
)

// clauseAt is the clause that a word opens.
func clauseAt(words []prose.Word, i int) clause {
	switch words[i].Text {
	case "before", "after", "until", "till", "once", "that", "which", "whether", "how", "what", "who":
		return limit
	case "while", "when", "as", "so", "if", "because", "unless", "where", "you":
		return meanwhile
	case "to":
		if i+1 < len(words) && prose.Verb(words[i+1].Text) && (!prose.NounToo(words[i+1].Text) || objectFollows(words, i+1)) {
			return meanwhile
		}
	}
	return main
}

func objectFollows(words []prose.Word, verb int) bool {
	if verb+1 >= len(words) {
		return false
	}
	next := words[verb+1].Text
	switch next {
	case "by", "at", "through", "for", "over", "out", "before", "until", "with":
		return words[verb].Text == "look" || words[verb].Text == "work" || words[verb].Text == "stop"
	}
	return prose.Determiner(next)
}
