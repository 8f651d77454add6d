package render

import (
	"math/big"
	"strconv"
	"unicode"
	"unicode/utf8"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/render/words"
)

// front lists what the job needs. Only what a step of this build uses is listed,
// and everything of the kit.
func (l *lowering) front(d *Document) {
	for _, n := range l.m.Entries {
		switch n.Def {
		case entry.Tool:
			if l.used[n] != nil {
				d.Tools = append(d.Tools, l.tool(n))
			}
		case entry.Supply:
			if l.used[n] != nil {
				d.Supplies = append(d.Supplies, l.supply(n))
			}
		case entry.PPE:
			if l.used[n] != nil {
				d.Protection = append(d.Protection, l.item(n))
			}
		case entry.Part:
			if !n.Shared || l.used[n] != nil {
				if _, left := l.condition(n, &scope{lowering: l}); left == "" {
					d.Parts = append(d.Parts, l.part(n))
				}
			}
		}
	}
}

func (l *lowering) tool(n *model.Node) Tool {
	t := Tool{Item: l.item(n), Quantity: n.Whole("quantity", "", 1), Steps: l.used[n]}
	t.Note = n.Plain("size")
	nowhere := &scope{lowering: l}
	t.Range = l.one(n.Formula("range", ""), nowhere)
	t.Resolution = l.one(n.Formula("resolution", ""), nowhere)
	return t
}

func (l *lowering) supply(n *model.Node) Supply {
	s := Supply{Item: l.item(n), Kind: n.Plain("kind"), Amount: n.Plain("amount"), Steps: l.used[n]}
	for _, a := range n.ByRole(schema.Clock) {
		s.Clocks = append(s.Clocks, l.clocks(a)...)
	}
	for _, a := range n.ByRole(schema.Protection) {
		refs, _ := a.Value.(model.Refs)
		for _, r := range refs {
			if r.To != nil {
				s.Protection = append(s.Protection, l.item(r.To))
			}
		}
	}
	return s
}

func (l *lowering) part(n *model.Node) Part {
	p := Part{Item: l.item(n), Number: n.Plain("number"), Each: n.Places(), Supplied: n.Flag("supplied"),
		InPlace: n.Whole("in_place", "", 0), Sizes: l.sizes(n)}
	p.Note = ""
	if p.Each == nil {
		p.Quantity = n.Whole("quantity", "", 1)
	}
	for _, place := range p.Each {
		p.Quantity += n.Whole("quantity", place, 1)
	}
	if len(p.Sizes) > 0 && !n.Has("quantity") {
		p.Quantity = 0
		for _, s := range p.Sizes {
			p.Quantity += s.Held
		}
	}
	return p
}

// contents is the order of work with its times.
func (l *lowering) contents(d *Document) {
	var work, waits sum
	for i := range d.Procedures {
		p := &d.Procedures[i]
		c := Content{Ref: p.Ref, Left: p.Left}
		var w, s sum
		for _, g := range p.Groups {
			for k := range g.Steps {
				l.count(&c, &g.Steps[k], &w, &s)
			}
		}
		c.Times.Work, c.Times.Seconds = w.String(), w.seconds()
		c.Times.Waiting, c.Times.Waits = s.String(), s.seconds()
		d.Contents = append(d.Contents, c)
		work.Add(&w.Rat)
		waits.Add(&s.Rat)
		d.Totals.Unsaid += c.Times.Unsaid
	}
	d.Totals.Work, d.Totals.Seconds = work.String(), work.seconds()
	d.Totals.Waiting, d.Totals.Waits = waits.String(), waits.seconds()
}

// count takes a printed step into the line of its procedure.
func (l *lowering) count(c *Content, s *Step, work, waits *sum) {
	if s.Left != "" {
		return
	}
	c.Steps++
	if s.People > 1 {
		c.Helpers = oneEach(c.Helpers, s.Ref)
	}
	if s.Hold != nil {
		c.Holds = oneEach(c.Holds, s.Ref)
	}
	n := l.m.Find(s.Address)
	visits := max(1, len(s.Visits))
	takes := n.Quantity("takes", s.Place)
	switch {
	case does(n.Step, kind.Waits):
		if q := n.Quantity("for", s.Place); q != nil {
			takes = q
		}
		if takes != nil {
			waits.add(*takes, visits)
		}
	case takes != nil:
		work.add(*takes, visits)
	case s.Hold == nil:
		c.Times.Unsaid++
	}
}

// oneEach adds a step that is not listed yet at another place.
func oneEach(all []Ref, r Ref) []Ref {
	for _, old := range all {
		if old.Number == r.Number {
			return all
		}
	}
	return append(all, r)
}

// sum is a time in seconds.
type sum struct{ big.Rat }

func (s *sum) Add(x *big.Rat) { s.Rat.Add(&s.Rat, x) }

func (s *sum) add(q calc.Quantity, times int) {
	s.Add(new(big.Rat).Mul(q.Base(), big.NewRat(int64(times), 1)))
}

// seconds is the sum in whole seconds, rounded up.
func (s *sum) seconds() int64 {
	n, rest := new(big.Int).QuoRem(s.Num(), s.Denom(), new(big.Int))
	if rest.Sign() > 0 {
		n.Add(n, big.NewInt(1))
	}
	if !n.IsInt64() {
		return 0
	}
	return n.Int64()
}

// String is the sum in hours and minutes, rounded up to a minute.
func (s *sum) String() string {
	minutes := (s.seconds() + 59) / 60
	if minutes == 0 {
		return ""
	}
	out := ""
	for _, u := range [...]struct {
		of   int64
		name string
	}{{60, "h"}, {1, "min"}} {
		if n := minutes / u.of; n > 0 {
			if out != "" {
				out += " "
			}
			out += strconv.FormatInt(n, 10) + " " + u.name
			minutes -= n * u.of
		}
	}
	return out
}

// record is the list of what goes into the build record.
func (l *lowering) record(d *Document) {
	for i := range d.Procedures {
		for _, g := range d.Procedures[i].Groups {
			for k := range g.Steps {
				d.Record = append(d.Record, lines(&g.Steps[k])...)
			}
		}
	}
}

// lines are the lines of one step in the record.
func lines(s *Step) []RecordLine {
	if !s.Record || s.Left != "" {
		return nil
	}
	one := RecordLine{Ref: s.Ref}
	switch {
	case s.Hold != nil:
		one.Signer = s.Hold.Signer
	case s.Pick != nil:
		one.Key, one.Limit, one.Value = s.Pick.Key, s.Pick.Limit, s.Pick.Pack
	case s.Readings != nil:
		return readingLines(s)
	case s.Computed != nil:
		c := s.Computed[0]
		one.Key, one.Limit, one.Unit = c.Key, c.Accept, c.Unit
		if c.Result != nil {
			one.Value = c.Result.First
		}
	case s.Visits != nil:
		var all []RecordLine
		for _, v := range s.Visits {
			one.What = v
			all = append(all, one)
		}
		return all
	}
	return []RecordLine{one}
}

func readingLines(s *Step) []RecordLine {
	var all []RecordLine
	for _, r := range s.Readings {
		line := RecordLine{Ref: s.Ref, What: r.Place, Key: r.Key, Limit: r.Accept, Unit: r.Unit}
		if line.Limit == nil && r.Likely != nil {
			line.Likely = r.Likely
		}
		switch {
		case r.Result != nil:
			line.Value = r.Result.Value
			all = append(all, line)
		case len(r.Boxes) == 1:
			line.Value = r.Boxes[0].Value
			all = append(all, line)
		default: // each spot counts
			for _, b := range r.Boxes {
				one := line
				one.What, one.Value, one.Key = b.Label, b.Value, b.Key
				all = append(all, one)
			}
		}
	}
	return all
}

// signOff is who signs at the end: the builder, and everyone who releases a hold.
func (l *lowering) signOff(d *Document) []string {
	all := []string{words.BuilderWord}
	add := func(who string) {
		r, n := utf8.DecodeRuneInString(who)
		if who = string(unicode.ToUpper(r)) + who[n:]; !contains(all, who) {
			all = append(all, who)
		}
	}
	for _, r := range d.Record {
		if r.Signer != "" {
			add(r.Signer)
		}
	}
	for _, n := range l.m.Names("signatories") {
		add(n)
	}
	return all
}
