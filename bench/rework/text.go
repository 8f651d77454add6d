package rework

import (
	"bytes"
	_ "embed"
	"encoding/json"
	"fmt"
	"strings"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// Caution stands over every plan that tells somebody to do work.
const Caution = "This plan is an aid to a competent person; it does not approve an engine for service.\nLocal codes and licensed practice come first. Before you take anything off: make the\nmachine safe, let out pressure, liquid and springs, and read the messages of each step."

// Text tells the plan to people at a terminal.
func (p *Plan) Text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s, serial %s\nbuilt to revision %s, seen from revision %s (%s)\n", p.Manual.Title(), p.State.Start.Serial,
		p.letters(), p.Manual.Plain("revision"), logbook.Short(p.Digest))
	for _, c := range p.State.Conflicts {
		fmt.Fprintf(&b, "\nTwo copies of the logbook disagree about %s. Settle that first.\n", c.About)
	}
	if p.Empty() {
		fmt.Fprintf(&b, "\nNothing is asked of this engine: all %s on record stand as they are.\n", count(len(p.Items), "step"))
	} else {
		b.WriteString("\n" + Caution + "\n")
	}
	if p.Stuck != nil {
		fmt.Fprintf(&b, "\nTHIS CANNOT BE UNDONE: %s %s. Ask the supplier before you go on.\n", p.Stuck.Object, p.Stuck.Why)
	}
	p.wayInText(&b)
	if len(p.Renew) > 0 {
		b.WriteString("\nRENEW\n")
		for _, r := range p.Renew {
			fmt.Fprintf(&b, "  %d × %s", r.Count, r.Object)
			if r.Number != "" {
				b.WriteString(", number " + r.Number)
			}
			b.WriteString(": " + r.Why + "\n")
		}
	}
	if len(p.Again) > 0 {
		b.WriteString("\nTHEN DO, IN THIS ORDER\n")
		for i, a := range p.Again {
			mark := " "
			if a.Asked {
				mark = "*"
			}
			fmt.Fprintf(&b, " %s%3d  %s %s\n        %s\n", mark, i+1, a.Step.Number, title(a.Step, a.Place), a.Why)
		}
		b.WriteString("  * asked by the revision; the others follow from what comes off\n")
	}
	p.verdictsText(&b)
	return strings.Map(printable, b.String())
}

func (p *Plan) wayInText(b *strings.Builder) {
	if len(p.WayIn)+len(p.Remove) == 0 {
		return
	}
	b.WriteString("\nTHE WAY IN, IN THIS ORDER\n")
	for i, m := range p.WayIn {
		fmt.Fprintf(b, "  %3d  %s %s", i+1, verb(m), m.Object)
		if len(m.With) > 0 {
			b.WriteString(", with " + first(objects(m.With), 4))
		}
		b.WriteByte('\n')
		if u := m.Object.Node.Plain("undo"); u != "" {
			fmt.Fprintf(b, "        %s\n", strings.Join(strings.Fields(u), " "))
		}
		for _, s := range m.Seals {
			fmt.Fprintf(b, "        This breaks the seal of %s.\n", s)
		}
	}
	for i, o := range p.Remove {
		fmt.Fprintf(b, "  %3d  take off %s for good: the new revision does not fit it\n", len(p.WayIn)+i+1, o)
	}
}

func (p *Plan) verdictsText(b *strings.Builder) {
	for _, v := range []Verdict{DoNew, DoAgain, ReadAgain, Release, Gone} {
		if list := p.Of(v); len(list) > 0 {
			fmt.Fprintf(b, "\n%s\n", strings.ToUpper(v.String()))
			for _, i := range list {
				i.text(b)
			}
		}
	}
	said := 0
	for _, i := range p.Of(AsItWas) {
		if i.Why == "" {
			continue
		}
		if said++; said == 1 {
			b.WriteString("\nCHANGED, AND STILL AS IT SHOULD BE\n")
		}
		i.text(b)
	}
	if n := len(p.Of(AsItWas)) - said; n > 0 && !p.Empty() {
		fmt.Fprintf(b, "\n%s on record are as they were. Nothing is marked as done for you.\n", count(n, "other step"))
	}
}

func (i *Item) text(b *strings.Builder) {
	fmt.Fprintf(b, "  %s %s\n      %s\n", i.Step.Number, title(i.Step, i.Place), i.Why)
}

// letters are the revisions that the build has followed, in order.
func (p *Plan) letters() string {
	all := []string{p.State.Start.Revision}
	for _, l := range p.Log.Lines {
		if l.Kind == logbook.Revision {
			all = append(all, l.Revision)
		}
	}
	return strings.Join(all, ", then ")
}

func count(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}

// verb says what a move does to its object.
func verb(m bench.Move) string {
	switch {
	case m.Verb == kind.Slackens:
		return "loosen"
	case m.Object.Node.Is(entry.Fastening):
		return "undo"
	}
	return "take off"
}

// title is what a step says to do, with its place where that is not in it.
func title(s *model.Step, place string) string {
	t := s.Title()
	if s.Text("title") != nil {
		t = strings.ReplaceAll(t, "«…»", "…")
	}
	if place != "" {
		t += " (" + place + ")"
	}
	return t
}

func objects(list []bench.Object) []string {
	var all []string
	for _, o := range list {
		all = append(all, o.String())
	}
	return all
}

// first lists some, and how many more there are.
func first(list []string, most int) string {
	if n := len(list) - most; n > 1 {
		return strings.Join(list[:most], ", ") + fmt.Sprintf(" and %d more", n)
	}
	return strings.Join(list, ", ")
}

// printable drops what could steer a terminal.
func printable(r rune) rune {
	if r < 0x20 && r != '\n' || r >= 0x7f && r < 0xa0 {
		return -1
	}
	return r
}

// Schema is the JSON Schema of what JSON gives.
//
//go:embed schema.json
var Schema string

type codedPlan struct {
	Serial   string       `json:"serial"`
	Revision string       `json:"revision"`
	Digest   string       `json:"digest"`
	Steps    []codedItem  `json:"steps"`
	WayIn    []codedMove  `json:"way_in"`
	Remove   []string     `json:"remove,omitempty"`
	Renew    []codedRenew `json:"renew"`
	Again    []codedAct   `json:"again"`
	Stuck    string       `json:"stuck,omitempty"`
}

type codedItem struct {
	Step    string `json:"step"`
	Place   string `json:"place,omitempty"`
	Verdict string `json:"verdict"`
	Why     string `json:"why,omitempty"`
	Line    string `json:"line,omitempty"`
}

type codedMove struct {
	Do     string   `json:"do"`
	Object string   `json:"object"`
	With   []string `json:"with,omitempty"`
	Seals  []string `json:"seals,omitempty"`
}

type codedRenew struct {
	Part   string `json:"part"`
	Place  string `json:"place,omitempty"`
	Number string `json:"number,omitempty"`
	Count  int    `json:"count"`
	Why    string `json:"why"`
}

type codedAct struct {
	Step  string `json:"step"`
	Place string `json:"place,omitempty"`
	Why   string `json:"why"`
	Asked bool   `json:"asked"`
}

var verdictCodes = [...]string{"as-it-was", "gone", "release-again", "read-again", "do-again", "new"}

// JSON is the plan for machines, as FORMAT.md describes.
func (p *Plan) JSON() []byte {
	out := codedPlan{p.State.Start.Serial, p.Manual.Plain("revision"), p.Digest, []codedItem{}, []codedMove{}, objects(p.Remove), []codedRenew{}, []codedAct{}, ""}
	for _, i := range p.Items {
		k := codedItem{Step: i.Step.Key(), Place: i.Place, Verdict: verdictCodes[i.Verdict], Why: i.Why}
		if i.Line != nil {
			k.Line = i.Line.Sum
		}
		out.Steps = append(out.Steps, k)
	}
	for _, m := range p.WayIn {
		out.WayIn = append(out.WayIn, codedMove{verb(m), m.Object.Node.Address + placed(m.Object.Place), objects(m.With), objects(m.Seals)})
	}
	for _, r := range p.Renew {
		out.Renew = append(out.Renew, codedRenew{r.Object.Node.Address, r.Object.Place, r.Number, r.Count, r.Why})
	}
	for _, a := range p.Again {
		out.Again = append(out.Again, codedAct{a.Step.Key(), a.Place, a.Why, a.Asked})
	}
	if p.Stuck != nil {
		out.Stuck = p.Stuck.Object.String() + " " + p.Stuck.Why
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	if err := e.Encode(out); err != nil {
		panic("internal error: " + err.Error()) // strings always encode
	}
	return b.Bytes()
}

func placed(place string) string {
	if place == "" {
		return ""
	}
	return `["` + place + `"]`
}
