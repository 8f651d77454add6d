package rule

import (
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"fettle/bench"
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
)

// Breaches are what went wrong on the bench in the given ways, over all choices
// of options that were tried, each once. What keeps an otherwise block from being
// done is left to Impossible.
func (p *Pass) Breaches(what ...bench.What) []bench.Breach {
	var found []bench.Breach
	for _, b := range p.Gathered {
		if slices.Contains(what, b.What) && !impossible(b) {
			found = append(found, b)
		}
	}
	return found
}

// Impossible are the breaches inside otherwise blocks that keep them from being
// done from where the builder stands.
func (p *Pass) Impossible() []bench.Breach {
	var found []bench.Breach
	for _, b := range p.Gathered {
		if impossible(b) {
			found = append(found, b)
		}
	}
	return found
}

func impossible(b bench.Breach) bool {
	return b.Step != nil && b.Step.Branch != nil && slices.Contains(hindrances, b.What)
}

// hindrances stop a builder; other breaches let the work go on and go wrong.
var hindrances = []bench.What{
	bench.NotStarted, bench.TightenedTwice, bench.NotAsFound, bench.StackNotOn, bench.RemovedFastened, bench.LockedLoose,
	bench.SpentUsedAgain, bench.NothingToLoosen, bench.SeatNotOn, bench.Covered, bench.MarkNotMade, bench.MarkWiped,
	bench.MarkCovered, bench.RemovedUnder, bench.RemovedHeld, bench.NotOn, bench.FittedTwice, bench.MoreThanKit,
	bench.ToolElsewhere, bench.FilledClosed,
}

// Breach adds a finding about b: where b points, with the places and choices
// added to the message, and what takes part in it as related places.
func (p *Pass) Breach(b bench.Breach, message string, more ...func(*diag.Finding)) {
	node := b.Node
	if node == nil && b.Step != nil {
		node = b.Step.Node
	}
	if node == nil {
		return
	}
	at := node.Name
	if b.Attr != "" {
		at = node.At(b.Attr)
	}
	var causes []func(*diag.Finding)
	seen := []source.Span{at}
	for _, c := range b.Causes {
		if c.Node == nil {
			continue
		}
		span := c.Node.Name
		if c.Attr != "" {
			span = c.Node.At(c.Attr)
		}
		if c.Words == "" || slices.Contains(seen, span) {
			continue
		}
		seen = append(seen, span)
		causes = append(causes, Related(span, sentence(c.Words)))
	}
	p.Report(at, strings.TrimSuffix(message, ".")+circumstances(b)+".", append(causes, more...)...)
}

// circumstances are the places and choices under which a breach happens: " (left
// and right; with Ignition coil)".
func circumstances(b bench.Breach) string {
	var parts []string
	places := b.Places
	if len(places) == 0 && b.Place != "" {
		places = []string{b.Place}
	}
	if len(places) > 0 && places[0] != "" {
		parts = append(parts, Join(places, "and"))
	}
	if len(b.Under) > 0 {
		var picks []string
		for _, pick := range shared(b.Under) {
			picks = append(picks, pick.Option.Title()+" "+pick.Value)
		}
		if len(picks) > 0 {
			parts = append(parts, "with "+Join(picks, "and"))
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return " (" + strings.Join(parts, "; ") + ")"
}

// shared are the picks that all choices have in common; where they have none, the
// first choice stands for all.
func shared(choices []bench.Choice) bench.Choice {
	var common bench.Choice
	for _, pick := range choices[0] {
		if !slices.ContainsFunc(choices, func(c bench.Choice) bool { return c.Value(pick.Option) != pick.Value }) {
			common = append(common, pick)
		}
	}
	if len(common) == 0 {
		return choices[0]
	}
	return common
}

// Called is what people call a node, in quotes.
func Called(n *model.Node) string {
	if n == nil {
		return "nothing"
	}
	return "“" + strings.ReplaceAll(n.Title(), "«…»", "…") + "”"
}

// CalledObject is what people call a thing on the bench: “Cover”, or the flange
// of “Cover”.
func CalledObject(o bench.Object) string {
	if o.Sub == "" {
		return Called(o.Node)
	}
	return "the " + o.Sub + " “" + strings.ReplaceAll(o.Name, "_", " ") + "” of " + Called(o.Node)
}

// Lasting is a time as people say it: 24 h 45 min, not 1485 min.
func Lasting(q calc.Quantity) string {
	seconds := q.Base()
	if !seconds.IsInt() || !seconds.Num().IsInt64() || seconds.Num().Int64() < 2*3600 {
		return q.String()
	}
	s := seconds.Num().Int64()
	words := strconv.FormatInt(s/3600, 10) + " h"
	if m := s % 3600 / 60; m > 0 {
		words += " " + strconv.FormatInt(m, 10) + " min"
	}
	return words
}

// Is is the verb that goes with what CalledObject gives: a fastening that has
// several fasteners is mostly called by their plural.
func Is(o bench.Object) string {
	if o.Sub == "" && o.Node != nil && o.Node.Whole("quantity", "", 1) > 1 && strings.HasSuffix(o.Node.Title(), "s") {
		return "are"
	}
	return "is"
}

// CalledAll lists things, "“Cover” and “Gasket”".
func CalledAll(objects []bench.Object) string {
	var all []string
	for _, o := range objects {
		all = append(all, CalledObject(o))
	}
	return Join(all, "and")
}

// Join lists words with commas, and with the given word before the last.
func Join(words []string, last string) string {
	switch n := len(words); n {
	case 0:
		return ""
	case 1:
		return words[0]
	default:
		return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
	}
}

// sentence gives words a capital and a full stop.
func sentence(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(r)) + strings.TrimSuffix(s[n:], ".") + "."
}
